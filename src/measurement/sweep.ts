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
  const lowestEnd = Math.min(first, last);
  const top = Math.max(...heights);
  const bottom = Math.min(...heights);
  if (heights.length < 3) return { kind: 'incomplete' };
  if (level(top, bottom, slack)) return { kind: 'flat' };
  const inner = heights.slice(1, -1);
  if (inner.filter((height) => height < lowestEnd - slack).length * 2 > inner.length)
    return { kind: 'falling' };
  if (level(last, top, slack)) return { kind: 'incomplete' };

  const peak = heights.indexOf(top);
  const at = (index: number) => shareOfTravel(heights, peak, index);
  const steps = inner.map((_, i) => i + 1);
  const dropOut = steps.find((i) => (heights[i] ?? 0) < lowestEnd - slack);
  if (dropOut !== undefined) return { kind: 'drop-out', where: at(dropOut) };
  const reversal = steps.find((i) => turnsBack(heights, peak, i, slack));
  if (reversal !== undefined) return { kind: 'reversal', where: at(reversal) };
  const deadSpot = steps.find((i) => standsStill(heights, i, { top, lowestEnd, slack }));
  if (deadSpot !== undefined) return { kind: 'dead-spot', where: at(deadSpot) };
  if (Math.abs(tidy(last - first)) > Math.max(limits.returnTolerance, slack))
    return { kind: 'no-return', where: 0 };
  if (limits.wideOpen.low !== null && top < limits.wideOpen.low) return { kind: 'not-wide-open', where: 1 };
  return { kind: 'progressive' };
}

function level(a: number, b: number, slack: number): boolean {
  return a === b || Math.abs(tidy(a - b)) <= slack;
}

/** The step to the next value goes against its leg: down before the peak, up after it. */
function turnsBack(heights: readonly number[], peak: number, i: number, slack: number): boolean {
  const here = heights[i] ?? 0;
  const before = heights[i - 1] ?? 0;
  const after = heights[i + 1] ?? 0;
  return i < peak ? tidy(before - here) > slack : i > peak && !level(here, after, slack) && after > here;
}

/** The hand moved on and the reading stayed. At both ends it may stay: a hand rests there. */
function standsStill(
  heights: readonly number[],
  i: number,
  { top, lowestEnd, slack }: { top: number; lowestEnd: number; slack: number },
): boolean {
  const here = heights[i] ?? 0;
  const after = heights[i + 1] ?? 0;
  const atAnEnd = level(here, top, slack) || here <= lowestEnd + 2 * slack;
  return !atAnEnd && level(here, after, slack);
}

/** By what the signal shows before and after, as steps of a hand are uneven; by the steps where an overload hides it. */
function shareOfTravel(heights: readonly number[], peak: number, index: number): number {
  const top = heights[peak] ?? 0;
  const closed = Math.min(heights[0] ?? 0, heights.at(-1) ?? 0);
  const around = ((heights[index - 1] ?? 0) + (heights[index + 1] ?? 0)) / 2;
  const bySignal = (around - closed) / (top - closed);
  const bySteps = index <= peak ? index / peak : (heights.length - 1 - index) / (heights.length - 1 - peak);
  const share = Number.isFinite(bySignal) ? bySignal : bySteps;
  return Math.min(1, Math.max(0, Number(share.toFixed(2))));
}
