// A reading that moves between two values, held against its window; for the conversation.
import { fromCounts, toCounts } from './counts.ts';
import { type Judged, judge, type Policy } from './judge.ts';
import type { Meter } from './uncertainty.ts';
import type { Window } from './window.ts';

export interface WanderingReading {
  low: number;
  high: number;
  resolution: number;
}

type Wandered = { value: number; spread: number } & (
  | Judged
  | (Omit<Judged, 'result'> & { result: 'wandering' })
);

/**
 * Passes only if it lies wholly inside and is no wider than content allows. A flicker no wider than that and wholly
 * on one side is low or high like any reading; every other wanders, and no move can be told from it.
 */
export function judgeRange(
  reading: WanderingReading,
  widest: number,
  window: Window,
  meter: Meter,
  policy: Policy,
): Wandered {
  const { low, high, resolution } = reading;
  const width = toCounts(high - low, resolution);
  const value = fromCounts((toCounts(low, resolution) + toCounts(high, resolution)) / 2, resolution);
  const middle = { value, spread: fromCounts(width, resolution) };
  const ends = [low, high].map((end) => judge({ value: end, resolution }, window, meter, policy));
  const judged = judge({ value, resolution }, window, meter, policy);
  const unclear = [judged, ...ends].find((end) => end.result === 'unclear');
  if (unclear) return { ...unclear, ...middle };
  const agree = ends.every((end) => end.result === judged.result);
  if (!agree || width > toCounts(widest, resolution)) return { ...judged, ...middle, result: 'wandering' };
  return { ...judged, ...middle };
}
