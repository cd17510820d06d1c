// A reading held against its window: pass, low, high, or not good enough to tell; for the conversation.
import { conformanceProbability } from './conformance.ts';
import { toCounts } from './counts.ts';
import type { Value } from './heard.ts';
import { type Meter, standardUncertainty } from './uncertainty.ts';
import { contains, roundInward, type Window, widthOf } from './window.ts';

export interface Policy {
  /** `guarded`: the limits are drawn in by the expanded uncertainty U = 2u (ILAC-G8, w = U). */
  acceptance: 'simple' | 'guarded';
}

interface Limits {
  /** The limits that decided, rounded inward to the reading's last digit. */
  low: number | null;
  high: number | null;
  conformance: number;
}

/** Why nothing can be told: the last digit is too coarse (`needed` is one that would do), or no meter of this class is good enough. */
type Unclear = { result: 'unclear' } & ({ why: 'digit'; needed: number } | { why: 'meter' }) & Limits;

export type Judged = ({ result: 'pass' | 'low' | 'high' } & Limits) | Unclear;

const countsInWindow = 4;

export function judge(reading: Value, window: Window, meter: Meter, policy: Policy): Judged {
  const accepted = policy.acceptance === 'guarded' ? guard(window, reading.resolution, meter) : window;
  const deciding = roundInward(accepted, reading.resolution);
  const limits = {
    ...printable(deciding, window, reading.resolution),
    conformance: conformanceProbability(reading.value, standardUncertainty(reading, meter), window),
  };
  const needed = digitNeeded(reading, window);
  if (needed < reading.resolution) return { result: 'unclear', why: 'digit', needed, ...limits };
  if (isEmpty(deciding)) return { result: 'unclear', why: 'meter', ...limits };
  if (contains(limits, reading.value)) return { result: 'pass', ...limits };
  const isLow = limits.low !== null && reading.value < limits.low;
  return { result: isLow ? 'low' : 'high', ...limits };
}

/** The reading's own last digit where that can tell, else the coarsest decimal one that could. */
export function digitNeeded(reading: Value, window: Window): number {
  const { value, resolution } = reading;
  if (window.low !== null && window.high !== null) {
    const width = widthOf(window);
    if (toCounts(width, resolution) >= countsInWindow) return resolution;
    const coarse = 10 ** Math.floor(Math.log10(width));
    return Number((toCounts(width, coarse) >= countsInWindow ? coarse : coarse / 10).toPrecision(12));
  }
  const limit = window.low ?? window.high;
  if (limit === null || Math.abs(toCounts(value - limit, resolution)) >= 1) return resolution;
  return Number((resolution / 10).toPrecision(12));
}

/** How far the limits are drawn in is worked out at each limit, so that what is printed does not hang on the reading. */
function guard(window: Window, resolution: number, meter: Meter): Window {
  const expanded = (limit: number) => 2 * standardUncertainty({ value: limit, resolution }, meter);
  return {
    low: window.low === null ? null : window.low + expanded(window.low),
    high: window.high === null ? null : window.high - expanded(window.high),
  };
}

/** Where nothing is left inside, as with a coarse digit or a poor meter, the content's own limits are shown. */
function printable(deciding: Window, window: Window, resolution: number): Window {
  const shown = [deciding, roundInward(window, resolution), window];
  return shown.find((limits) => !isEmpty(limits)) ?? window;
}

function isEmpty({ low, high }: Window): boolean {
  return low !== null && high !== null && low > high;
}
