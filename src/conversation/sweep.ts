// A sweep of the throttle within a set-up: what it is held against, its verdict, and what follows; for taking a series of readings.
import type { VerdictFact } from '../chat/facts.ts';
import type { Band, Seen } from '../diagnosis/evidence.ts';
import { examineSweep } from '../measurement/sweep.ts';
import { unitOf } from './fill-in.ts';
import { limitsFor, middleOf, referenceFor } from './limits.ts';
import type { Bench } from './turn.ts';

/** How far a hand's closed throttle may differ from start to end (V; common practice, no source). */
const returnTolerance = 0.012;

export type Series = Extract<Seen, { kind: 'series' }>;

/** Closed end and open end of a healthy sweep; null where nobody knows. */
export function sweepLimits(bench: Bench, series: Series): Band | null {
  const closed = referenceFor(bench, 'signal-idle', null)?.value ?? series.values[0] ?? null;
  const open = limitsFor(bench, 'signal-wide-open', 'open');
  return closed === null || !open ? null : { low: closed, high: middleOf(open.window) };
}

export function judgeSweep(bench: Bench, measure: string, series: Series): VerdictFact {
  const open = limitsFor(bench, 'signal-wide-open', 'open')?.window ?? { low: null, high: null };
  const sweep = examineSweep(series.values, series.resolution, {
    wideOpen: open,
    returnTolerance,
    noise: 0.002,
  });
  return {
    result: sweep.kind === 'progressive' ? 'pass' : 'implausible',
    measure,
    unit: unitOf(measure),
    values: [...series.values],
    low: null,
    high: null,
  };
}
