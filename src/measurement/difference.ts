// Whether two readings of one meter differ; for everything that compares before with after.
import { toCounts } from './counts.ts';
import type { Value } from './heard.ts';

/**
 * Which way the second reading differs from the first: by more than the coarser last digit and the noise seen.
 * The meter's gain error is the same in both and plays no part.
 */
export function change(from: Value, to: Value, noise: number): 1 | -1 | 0 {
  const resolution = Math.max(from.resolution, to.resolution);
  const counts = toCounts(to.value - from.value, resolution);
  if (Math.abs(counts) <= toCounts(resolution + noise, resolution)) return 0;
  return counts > 0 ? 1 : -1;
}

export function differ(a: Value, b: Value, noise: number): boolean {
  return change(a, b, noise) !== 0;
}

/** The noise seen: how far apart the repeats of one state lay. */
export function noiseSeen(repeats: readonly number[]): number {
  return repeats.length < 2 ? 0 : Math.max(...repeats) - Math.min(...repeats);
}
