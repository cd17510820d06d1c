// Whether a part comes back to where it was, as a throttle after a snap; for the conversation.
import { toCounts } from './counts.ts';
import type { Value } from './heard.ts';

/** Within the tolerance of the reference, in whole counts of the coarser last digit. */
export function returned(reading: Value, reference: Value, tolerance: number): boolean {
  const resolution = Math.max(reading.resolution, reference.resolution);
  return Math.abs(toCounts(reading.value - reference.value, resolution)) <= toCounts(tolerance, resolution);
}
