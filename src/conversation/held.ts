// Whether a person holds the set-up, and what an owner may still do meanwhile; for everything that would go on.
import { type Case, isTaken } from '../desk/case.ts';
import type { RedFlag } from '../procedure/vocabulary.ts';
import { assumeDone, canPutBack } from './give-up.ts';
import { line, say } from './say.ts';
import type { SetUp } from './state.ts';
import type { Turn } from './turn.ts';

/** Where one of these was raised, whoever goes near the machine again may be hurt. */
const handsOff: readonly RedFlag[] = [
  'engine-wont-stop',
  'fuel-leak',
  'smoke',
  'hot-leads',
  'unwell',
  'injured',
];

/** Nothing goes on until it is given back; but putting the machine back as it was does. */
export const isHeld = ({ held, step }: SetUp): boolean =>
  held && step.kind !== 'give-up' && step.kind !== 'way-back';

/** Not even the way back is open. */
export const isHandsOff = (one: Case | null): boolean =>
  one !== null && one.flag !== null && (handsOff as readonly string[]).includes(one.flag);

/** A person has it: the machine waits asleep, and what was asked before is off. */
export function holdSetUp(turn: Turn): void {
  const { setUp } = turn.state;
  if (!setUp) return;
  assumeDone(turn);
  setUp.held = true;
  setUp.paused = true;
  setUp.asked = null;
  setUp.heard = null;
  setUp.rig = { ...setUp.rig, awake: false, awakeSince: null, engine: 'off' };
  // Putting things back has to be offered anew: what happened meanwhile is not known.
  if (setUp.step.kind === 'give-up' || setUp.step.kind === 'way-back') setUp.step = { kind: 'stage' };
}

/** Who has it, and that nothing is done meanwhile. */
export function sayHeld(turn: Turn): void {
  const { state } = turn;
  const one = state.case;
  const name = isTaken(one) ? one.holder.name : null;
  const wayBack = name === null && !isHandsOff(one) && canPutBack(turn);
  say(turn, {
    lines: [
      name === null ? line('held') : line('held-by', { name }),
      ...(wayBack ? [line('called-way-back')] : []),
    ],
    buttons: wayBack ? [{ id: 'put-back', label: line('called-put-back') }] : [],
  });
}
