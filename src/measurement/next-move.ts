// What to turn next: which way and how far, or why turning on does not help; for the conversation.
import { tidy } from './counts.ts';
import { type Hand, handAmount, type MoveUnit } from './hand-amount.ts';
import { isFree, type Learned, type Trial } from './learn-part.ts';
import { contains, type Window } from './window.ts';

export interface AdjustablePart {
  unit: MoveUnit;
  hand: Hand;
  learned: Learned;
  /** The owner turns until the meter shows the band; the amount is then only what to expect. */
  watched: boolean;
  /** The moves of this loop, oldest first: whether turning helps is told from these. */
  loop: readonly Trial[];
}

export type StuckWhy = 'slots-at-end' | 'moves-stop-helping' | 'too-coarse';

export type NextMove =
  /** `direction` 1 is the part's positive direction (in, clockwise, more). `trying`: its sense is not known yet, no band can be promised. */
  | { kind: 'move'; direction: 1 | -1; amount: number; trying: boolean }
  | { kind: 'within' }
  | { kind: 'stuck'; why: StuckWhy };

/** So many moves in a row that bring the reading no nearer, and turning on is no use. */
const patience = 4;

export function nextMove(
  part: AdjustablePart,
  reading: number,
  window: Window,
  aim: number,
  noise: number,
): NextMove {
  if (contains(window, reading)) return { kind: 'within' };
  const { learned, unit } = part;
  const need = tidy(aim - reading);
  const why = stuckBecause(part, aim, noise);
  if (why) return { kind: 'stuck', why };
  if (learned.sense === 0) return tryOut(part, noise);
  const units = Math.abs(need) / learned.perUnit;
  // The click at hand is already the better of the two, once a click's size has been seen.
  if (unit === 'click' && learned.told > 0 && units < 0.5) return { kind: 'stuck', why: 'too-coarse' };
  const direction = need > 0 ? learned.sense : opposite(learned.sense);
  return { kind: 'move', direction, amount: amountFor(part, units, direction), trying: false };
}

/** A nudge and see; where it did not budge more than that, and after two such tries the other way, as it may stand at its end. */
function tryOut({ unit, hand, loop }: AdjustablePart, noise: number): NextMove {
  const still = stillTrials(loop, noise);
  const turned = still.reduce((sum, trial) => sum + Math.abs(trial.amount), 0);
  const amount = handAmount(unit, hand.smallest + turned, hand);
  return { kind: 'move', direction: still.length < 2 ? 1 : -1, amount, trying: true };
}

/** By the meter: through the rest of the dead band and on. Blind: no farther than if there were none, then twice what did nothing. */
function amountFor(
  { learned, unit, hand, watched, loop }: AdjustablePart,
  units: number,
  direction: number,
): number {
  if (watched) return handAmount(unit, units + learned.deadBand, { ...hand, largest: Number.MAX_VALUE });
  const goesOn = Math.sign(loop.at(-1)?.amount ?? 0) === direction;
  return handAmount(unit, units + (goesOn ? learned.consumed : 0), hand);
}

function stuckBecause(
  { unit, hand, learned, loop }: AdjustablePart,
  aim: number,
  noise: number,
): StuckWhy | null {
  const still = stillTrials(loop, noise);
  const oneWay = new Set(still.map((trial) => Math.sign(trial.amount))).size === 1;
  if (unit === 'nudge' && learned.sense !== 0 && still.length >= 2 && oneWay) return 'slots-at-end';

  // Turning through a dead band brings nothing nearer either, and is right: it is borne a little longer.
  const judged = loop.filter((trial) => !isFree(trial, noise));
  if (still.length > patience && still.every((trial) => trial.slack)) return 'moves-stop-helping';
  const distances = [judged[0]?.before ?? aim, ...judged.map((trial) => trial.after)].map((value) =>
    Math.abs(value - aim),
  );
  const nearest = distances.reduce((best, d, i) => (d < (distances[best] ?? 0) - noise ? i : best), 0);
  if (distances.length - 1 - nearest < patience) return null;
  const since = judged.slice(-patience);
  const crossing = since.every((trial) => (trial.before - aim) * (trial.after - aim) < 0);
  return crossing && since.every((trial) => Math.abs(trial.amount) <= hand.smallest)
    ? 'too-coarse'
    : 'moves-stop-helping';
}

/** The latest moves, as far back as nothing changed. */
function stillTrials(loop: readonly Trial[], noise: number): readonly Trial[] {
  return loop.slice(loop.findLastIndex((trial) => Math.abs(trial.after - trial.before) > noise) + 1);
}

function opposite(sense: 1 | -1): 1 | -1 {
  return sense === 1 ? -1 : 1;
}
