// A member of the desk chooses the stage at which the set-up goes on when it is given back; the guards stand before it all the same.
import { enter } from '../desk/case.ts';
import { landing } from './enter-stage.ts';
import { line } from './say.ts';
import { answer, hasSetUp, holds, type Seat } from './seat.ts';
import { benchOf } from './turn.ts';

export function chooseStage(seat: Seat, rest: string): void {
  if (!holds(seat) || !hasSetUp(seat)) return;
  const { turn, one, member } = seat;
  const { procedure, setUp } = benchOf(turn);
  const wanted = rest.trim().toLowerCase().replaceAll(/\s+/gu, '-');
  const ids = procedure.stages.filter((stage) => stage.ask).map(({ id }) => id);
  const stage =
    ids.find((id) => id === wanted) ?? onlyOne(ids.filter((id) => wanted !== '' && id.includes(wanted)));
  if (stage === undefined) {
    return answer(
      seat,
      line('desk-stages', { stages: ids.map((id) => (id === setUp.stage ? `[${id}]` : id)).join(', ') }),
    );
  }
  one.goTo = stage;
  enter(one, turn.scene.now, member.name, 'jumped', stage);
  const first = landing(turn, stage);
  answer(
    seat,
    first.id === stage
      ? line('desk-goes-on-at', { stage })
      : line('desk-goes-on-at-after', { stage, first: first.id }),
  );
}

const onlyOne = <T>(found: T[]): T | undefined => (found.length === 1 ? found[0] : undefined);
