// Posts by the clock: at most one tip at a time, the one that has been away longest, never in quiet hours; and says when to look again.
import { tipsInOrder } from '../procedure/content.ts';
import type { Tip } from '../procedure/tip.ts';
import { postTip } from './post-tip.ts';
import { quietUntil, restedAt, slotAfter } from './schedule.ts';
import { postedAt } from './state.ts';
import { type TipsTurn, tipState } from './turn.ts';

/** What goes by itself keeps so far from what was posted last, by hand or not: a channel is not to be flooded. */
const apartMs = 4 * 3_600_000;

/** What was missed while the program did not run is made good by one tip; the others wait for their next time. */
export function keepSchedule(turn: TipsTurn): void {
  const { now, hasChannel } = turn.scene;
  if (!hasChannel) return;
  const ready = scheduled(turn).filter((tip) => goesAt(turn, tip) <= now);
  const awaySince = (tip: Tip) => postedAt(tipState(turn, tip.id)) ?? Number.NEGATIVE_INFINITY;
  const [chosen] = ready.toSorted((a, b) => compare(awaySince(a), awaySince(b)));
  for (const tip of ready) tipState(turn, tip.id).seenTo = now;
  if (chosen) postTip(turn, chosen);
}

/** The first of a tip's instants that is not dealt with, and that finds it rested. */
export function comesAt(turn: TipsTurn, tip: Tip): number {
  const known = tipState(turn, tip.id);
  const last = postedAt(known);
  const after = last === null ? known.seenTo : Math.max(known.seenTo, restedAt(tip, last) - 1);
  return slotAfter(tip, turn.scene.content.workshop.timeZone, after);
}

/** When the clock should next wake the tips; null for never. */
export function looksAgainAt(turn: TipsTurn): number | null {
  const instants = turn.scene.hasChannel ? scheduled(turn).map((tip) => goesAt(turn, tip)) : [];
  return instants.length === 0 ? null : Math.min(...instants);
}

/** Not before its time, not in the quiet hours that may be now, and not right behind another. */
function goesAt(turn: TipsTurn, tip: Tip): number {
  const { content, now } = turn.scene;
  const others = Object.values(turn.state.tips).map((known) => postedAt(known) ?? Number.NEGATIVE_INFINITY);
  const quietEnds = quietUntil(tip, content.workshop.timeZone, now) ?? now;
  return Math.max(comesAt(turn, tip), quietEnds, Math.max(...others) + apartMs);
}

const scheduled = (turn: TipsTurn): Tip[] =>
  tipsInOrder(turn.scene.content).filter((tip) => !tipState(turn, tip.id).withdrawn);

/** Infinities cannot be subtracted. */
const compare = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1);
