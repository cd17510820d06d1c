// Takes an open set-up out of a procedure that the workshop withdrew as wrong: into the one instead of it, at the same stage, or to the desk.
import { machinesFor } from '../procedure/content.ts';
import { inLanguage, type Localised } from '../procedure/localised.ts';
import { type Procedure, stageOf } from '../procedure/procedure.ts';
import { callPerson } from './call-person.ts';
import { jumpAhead } from './enter-stage.ts';
import { newLoop } from './learn-loop.ts';
import { carry, line } from './say.ts';
import type { SetUp } from './state.ts';
import type { Turn } from './turn.ts';

/** Whether the set-up left its procedure, and that was said: what the owner sent was for a stage that holds no more. */
export function leaveWithdrawn(turn: Turn): boolean {
  const { setUp, offered } = turn.state;
  if (!setUp || setUp.held || offered) return false;
  // Whoever puts the machine back as it was goes on with that.
  if (setUp.step.kind === 'way-back' || setUp.step.kind === 'give-up') return false;
  const way = wayOut(turn, setUp);
  if (way === null) return false;
  const why = line('withdrawn', { why: inLanguage(way.why, turn.state.language) });
  if (way.into === null) {
    callPerson(turn, { reason: 'procedure-withdrawn', goOn: false, first: [why] });
    return true;
  }
  carry(turn, [why, line('withdrawn-goes-on'), line('')]);
  setUp.content = turn.scene.current.hash;
  setUp.procedure = way.into.id;
  Object.assign(setUp, nothingAwaited());
  const { loop } = setUp;
  jumpAhead(turn, setUp.stage);
  if (loop?.free && turn.state.setUp?.stage === setUp.stage) setUp.loop = { ...newLoop(), free: true };
  return true;
}

const nothingAwaited = (): Partial<SetUp> => ({
  step: { kind: 'stage' },
  paused: false,
  heard: null,
  asked: null,
  oddity: null,
  reread: null,
  doing: [],
  extra: [],
  unclear: 0,
  wakes: 0,
  failures: {},
});

/** Where an open set-up has to go on; null where its procedure holds, and `into` null where only a person can help. */
export function wayOut({ scene }: Turn, setUp: SetUp): { why: Localised; into: Procedure | null } | null {
  const { procedures } = scene.current;
  const withdrawn = procedures[setUp.procedure]?.withdrawn;
  if (!withdrawn) return null;
  const { why, instead } = withdrawn;
  const other = instead === undefined ? undefined : procedures[instead];
  const stage = other && stageOf(other, setUp.stage);
  const isFor = other && machinesFor(scene.current, other.id).some(({ id }) => id === setUp.machine);
  // What was let go has to be fixed where it is now.
  const fixes = setUp.rig.sensor === 'tight' || stage?.adjust?.fix !== undefined;
  return { why, into: stage?.ask && isFor && fixes && !other.withdrawn ? other : null };
}
