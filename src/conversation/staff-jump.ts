// A member of the desk chooses the stage at which the set-up goes on when it is given back; the guards stand before it all the same.
import { enter } from '../desk/case.ts';
import { forDesk, named, stageName } from './desk-names.ts';
import { landing } from './enter-stage.ts';
import { line } from './say.ts';
import { answer, hasSetUp, holds, type Seat } from './seat.ts';
import { benchOf } from './turn.ts';

export function chooseStage(seat: Seat, rest: string): void {
  if (!holds(seat) || !hasSetUp(seat)) return;
  const { turn, one, member } = seat;
  const { procedure, setUp } = benchOf(turn);
  const ids = procedure.stages.filter((stage) => stage.ask).map(({ id }) => id);
  const nameOf = (id: string) => stageName(procedure.id, id);
  const stage = named(turn, rest, ids, nameOf);
  if (stage === null) {
    const stages = ids.map((id) => {
      const name = forDesk(turn, nameOf(id));
      return id === setUp.stage ? `[${name}]` : name;
    });
    return answer(seat, line('desk-stages', { stages: stages.join('; ') }));
  }
  one.goTo = stage;
  enter(one, turn.scene.now, member.name, 'jumped', stage);
  const first = landing(turn, stage);
  answer(
    seat,
    first.id === stage
      ? line('desk-goes-on-at', { stage: nameOf(stage) })
      : line('desk-goes-on-at-after', { stage: nameOf(stage), first: nameOf(first.id) }),
  );
}
