// The shape of a sweep in one word, for the causes that bend it; where it is wrong is the measurement's business.
import type { SweepShape } from '../procedure/fault.ts';

/** A sweep as its ends and its shape; `overload` where the meter showed nothing else. */
export interface Sweep {
  start: number | null;
  top: number | null;
  shape: SweepShape | 'overload';
}

/** Overloads count as above everything: on a small range they are normal near wide open. */
export function shapeOf(values: readonly (number | null)[], resolution: number): Sweep {
  const numbers = values.filter((value) => value !== null);
  if (numbers.length === 0) return { start: null, top: null, shape: 'overload' };
  const levels = values.map((value) => value ?? Number.POSITIVE_INFINITY);
  const start = values[0] ?? null;
  const last = values[values.length - 1] ?? null;
  const lowest = Math.min(...levels);
  const highest = Math.max(...levels);
  const noise = 2 * resolution + 0.01;
  if (highest - lowest <= 2 * noise) return { start, top: numbers[0] ?? null, shape: 'flat' };

  const rise = highest - (start ?? lowest);
  const fall = (start ?? highest) - lowest;
  const turning = levels.indexOf(rise >= fall ? highest : lowest);
  const way = rise >= fall ? 1 : -1;
  const there = levels.slice(0, turning + 1);
  const home = levels.slice(turning).reverse();
  const top = values[turning] ?? null;
  if (!isProgressive(there, way, noise) || !isProgressive(home, way, noise)) {
    return { start, top, shape: 'broken' };
  }
  if (start !== null && last !== null && home.length > 1 && Math.abs(last - start) > 3 * noise) {
    return { start, top, shape: 'not-back' };
  }
  return { start, top, shape: way === 1 ? 'rising' : 'falling' };
}

function isProgressive(levels: readonly number[], way: number, noise: number): boolean {
  return levels.every((level, index) => {
    const before = levels[index - 1];
    return before === undefined || level === before || way * (level - before) > -noise;
  });
}
