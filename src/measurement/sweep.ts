// A sweep of the throttle, closed to full and back, as a hand on the grip gives it; for the conversation and the diagnosis.
import { tidy } from './counts.ts';
import type { Window } from './window.ts';

/** An overload is null: above the meter's range. */
export type SweepValue = number | null;

/** `where` is a share of the travel, 0 closed and 1 full. */
export type Sweep =
  | { kind: 'progressive' }
  | { kind: 'drop-out' | 'dead-spot' | 'reversal' | 'no-return' | 'not-wide-open'; where: number }
  /** It never moved; it falls where it should rise; it ends before it has come back: none of these can be judged further. */
  | { kind: 'flat' | 'falling' | 'incomplete' };

export interface SweepLimits {
  /** Plausible at full throttle. */
  wideOpen: Window;
  /** How near the end must come to the start. */
  returnTolerance: number;
  noise: number;
}

/**
 * A hand's positions do not repeat, so the way up and the way down are not held against each other:
 * only the direction of each step counts, and both ends.
 */
export function examineSweep(values: readonly SweepValue[], resolution: number, limits: SweepLimits): Sweep {
  const slack = tidy(resolution + limits.noise);
  const heights = values.map((value) => value ?? Number.POSITIVE_INFINITY);
  const first = heights[0] ?? 0;
  const last = heights.at(-1) ?? 0;
  const ends: Ends = { top: Math.max(...heights), bottom: Math.min(first, last), slack };
  const inner = heights.slice(1, -1);
  const isBelow = (height: number) => height < ends.bottom - slack;
  if (heights.length < 3) return { kind: 'incomplete' };
  if (heights.every((height) => level(height, first, slack))) return { kind: 'flat' };
  if (inner.filter(isBelow).length * 2 > inner.length) return { kind: 'falling' };
  if (level(last, ends.top, slack)) return { kind: 'incomplete' };

  const peak = heights.indexOf(ends.top);
  const steps = inner.map((_, i) => i + 1);
  const turn = steps.find((i) => turnsBack(heights, peak, i, ends));
  // Higher than full throttle can be, and followed by another rise: a spike, not the top.
  const spiked =
    turn !== undefined && Number.isFinite(ends.top) && ends.top > (limits.wideOpen.high ?? ends.top);
  const faults = [
    ['drop-out', steps.find((i) => isBelow(heights[i] ?? 0))],
    ['reversal', spiked ? peak : turn],
    ['dead-spot', steps.find((i) => standsStill(heights, i, ends))],
  ] as const;
  for (const [kind, index] of faults) {
    if (index !== undefined) return { kind, where: shareOfTravel(heights, peak, index, ends) };
  }
  if (Math.abs(tidy(last - first)) > Math.max(limits.returnTolerance, slack))
    return { kind: 'no-return', where: 0 };
  const { low } = limits.wideOpen;
  return low !== null && ends.top < low ? { kind: 'not-wide-open', where: 1 } : { kind: 'progressive' };
}

interface Ends {
  top: number;
  /** The lower of the two closed readings. */
  bottom: number;
  slack: number;
}

function level(a: number, b: number, slack: number): boolean {
  return a === b || Math.abs(tidy(a - b)) <= slack;
}

/** The step goes against its leg: down before the peak, up after it. At full throttle a held hand wavers. */
function turnsBack(heights: readonly number[], peak: number, i: number, ends: Ends): boolean {
  const here = heights[i] ?? 0;
  const before = heights[i - 1] ?? 0;
  const after = heights[i + 1] ?? 0;
  if (nearTop(here, ends)) return false;
  return i < peak ? tidy(before - here) > ends.slack : tidy(after - here) > ends.slack && i > peak;
}

/** The hand moved on and the reading stayed. At both ends it may stay: a hand rests there. */
function standsStill(heights: readonly number[], i: number, ends: Ends): boolean {
  const here = heights[i] ?? 0;
  const atAnEnd = nearTop(here, ends) || here <= ends.bottom + 2 * ends.slack;
  return !atAnEnd && level(here, heights[i + 1] ?? 0, ends.slack);
}

/** The last twentieth of the travel, where a hand cannot hold still. */
function nearTop(height: number, { top, bottom, slack }: Ends): boolean {
  return level(height, top, slack) || height >= top - 0.05 * (top - bottom);
}

/** By what the signal shows before and after, as steps of a hand are uneven; by the steps where an overload hides it. */
function shareOfTravel(heights: readonly number[], peak: number, index: number, ends: Ends): number {
  const sound = (height: number) => height >= ends.bottom - ends.slack;
  const before = heights.slice(0, index).findLast(sound) ?? ends.bottom;
  const after = heights.slice(index + 1).find(sound) ?? ends.bottom;
  const bySignal = ((before + after) / 2 - ends.bottom) / (ends.top - ends.bottom);
  const bySteps = index <= peak ? index / peak : (heights.length - 1 - index) / (heights.length - 1 - peak);
  const share = Number.isFinite(bySignal) ? bySignal : bySteps;
  return Math.min(1, Math.max(0, Number(share.toFixed(2))));
}
