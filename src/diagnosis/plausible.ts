// Whether one reading can come from a machine that is only not set yet, or calls for a diagnosis; the first gate of a reading.
import { tidy } from '../measurement/counts.ts';
import { change } from '../measurement/difference.ts';
import type { Observation } from './evidence.ts';
import { usualReach } from './healthy.ts';
import { shapeOf } from './sweep-shape.ts';

export type Plausibility = 'plausible' | 'implausible';

/**
 * `wander` is how far a reading may move to and fro and still count as one. A reading out of a band that nothing can be
 * set for is implausible; so is one that stood still, or went the wrong way, where the owner's hand had to move it.
 */
export function plausible(observation: Observation, options: { wander?: number } = {}): Plausibility {
  return looksRight(observation, options.wander ?? 0.02) ? 'plausible' : 'implausible';
}

function looksRight(observation: Observation, wander: number): boolean {
  const { seen } = observation;
  switch (seen.kind) {
    case 'overload':
    case 'none':
      return false;
    case 'series':
      return shapeOf(seen.values, seen.resolution).shape === 'rising';
    case 'range':
      return (
        tidy(seen.high - seen.low) <= wander &&
        within(observation, seen.low) &&
        within(observation, seen.high)
      );
    case 'value':
      return within(observation, seen.value) && movedAsItMust(observation, seen);
  }
}

function within({ expected, settable, reach, seen }: Observation, value: number): boolean {
  if (expected === null) return true;
  const slack = settable ? (reach ?? usualReach) : 'resolution' in seen ? seen.resolution / 2 : 0;
  const low = expected.low === null ? Number.NEGATIVE_INFINITY : expected.low - slack;
  const high = expected.high === null ? Number.POSITIVE_INFINITY : expected.high + slack;
  return low <= value && value <= high;
}

function movedAsItMust({ previous }: Observation, now: { value: number; resolution: number }): boolean {
  if (previous === undefined || previous.seen.kind !== 'value') return true;
  const sign = change(previous.seen, now, now.resolution);
  if (previous.expect === 'same') return true;
  return previous.expect === 'rises' ? sign > 0 : sign < 0;
}
