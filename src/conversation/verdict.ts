// The verdict on one reading, as facts tell it; for the owner's path and for the desk.

import type { VerdictFact } from '../chat/facts.ts';
import type { Seen } from '../diagnosis/evidence.ts';
import { type Judged, judge } from '../measurement/judge.ts';
import { judgeRange } from '../measurement/judge-range.ts';
import { unknownMeter } from '../measurement/uncertainty.ts';
import type { Window } from '../measurement/window.ts';
import type { Target } from '../procedure/target.ts';
import type { ReadingOf } from './awaited.ts';
import { unitOf } from './fill-in.ts';

/** Wider than this a reading wanders, and no verdict can be told from it (V; common practice, no source). */
export const widestFlicker = 0.004;

/** One figure, or one that moves between two. */
export type Figure = Extract<Seen, { kind: 'value' | 'range' }>;

/** `window` is what it is held against now, which may be the target's own or what is aimed for on the way there. */
export function judgeFigure(seen: Figure, window: Window, { guarded }: Pick<Target, 'guarded'>) {
  const policy = { acceptance: guarded ? 'guarded' : 'simple' } as const;
  return seen.kind === 'value'
    ? judge(seen, window, unknownMeter, policy)
    : judgeRange(seen, widestFlicker, window, unknownMeter, policy);
}

export function verdictOf(
  { measure }: ReadingOf,
  seen: Seen,
  judged: Judged | (Omit<Judged, 'result'> & { result: 'wandering' }),
): VerdictFact {
  const result =
    judged.result === 'pass' || judged.result === 'unclear'
      ? judged.result
      : judged.result === 'wandering'
        ? 'implausible'
        : 'adjust';
  const verdict: VerdictFact = {
    result,
    measure,
    unit: unitOf(measure),
    value:
      'value' in judged ? (judged as { value: number }).value : seen.kind === 'value' ? seen.value : null,
    low: judged.low,
    high: judged.high,
    conformance: Number(judged.conformance.toFixed(3)),
  };
  if (seen.kind === 'value' || seen.kind === 'range') verdict.resolution = seen.resolution;
  if (seen.kind === 'range') verdict.spread = Number((seen.high - seen.low).toPrecision(12));
  return verdict;
}

export function implausible({ measure }: ReadingOf, seen: Seen, window: Window | null): VerdictFact {
  const verdict: VerdictFact = {
    result: 'implausible',
    measure,
    unit: unitOf(measure),
    value: seen.kind === 'value' ? seen.value : seen.kind === 'range' ? (seen.low + seen.high) / 2 : null,
    low: window?.low ?? null,
    high: window?.high ?? null,
  };
  if (seen.kind === 'range') verdict.spread = Number((seen.high - seen.low).toPrecision(12));
  return verdict;
}

/** Nothing is known to hold it against. */
export function noted({ measure }: ReadingOf, seen: Seen): VerdictFact {
  const value = seen.kind === 'value' ? seen.value : null;
  return { result: 'pass', measure, unit: unitOf(measure), value, low: null, high: null };
}
