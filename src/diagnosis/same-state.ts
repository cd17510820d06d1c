// Whether two looks at the meter were of one and the same state; for the detours.
import type { Seen } from './evidence.ts';

/** The same figure, as far as the digits tell. */
export function sameSeen(a: Seen, b: Seen): boolean {
  if (a.kind === 'value' && b.kind === 'value')
    return Math.abs(a.value - b.value) <= 3 * Math.max(a.resolution, b.resolution);
  return a.kind === b.kind && a.kind !== 'series';
}

/** Another figure, and yet so near (V) that it is the same state once more. */
export function isNear(a: Seen, b: Seen): boolean {
  if (a.kind === 'value' && b.kind === 'value')
    return Math.abs(a.value - b.value) <= 0.02 + 0.02 * Math.abs(b.value);
  return a.kind === b.kind;
}
