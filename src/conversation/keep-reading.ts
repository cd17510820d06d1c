// Puts a judged reading into words and facts, into the set-up and into the table of readings; for taking readings.

import type { Facts, Line, VerdictFact } from '../chat/facts.ts';
import type { Seen } from '../diagnosis/evidence.ts';
import type { ReadingOf } from './awaited.ts';
import { figure, unitSaid } from './fill-in.ts';
import { readingKey } from './limits.ts';
import { carry, line } from './say.ts';
import type { Kept } from './state.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';

export function keep(
  turn: Turn,
  { setUp }: Bench,
  { measure, situation }: ReadingOf,
  verdict: VerdictFact,
  judged: { low: number | null; high: number | null },
  resolution: number,
  passed: boolean,
): void {
  const value = verdict.value ?? 0;
  const kept: Kept = {
    value,
    resolution,
    result: passed ? 'pass' : 'out',
    low: judged.low,
    high: judged.high,
    at: turn.state.taken,
  };
  const key = readingKey(measure, situation);
  const before = setUp.readings[key];
  if (before) setUp.found[key] ??= before;
  setUp.readings[key] = kept;
  if (measure === 'supply-voltage') setUp.supply = passed ? value : null;
}

/** A reading that others are held against has to show as fine a digit as they need. */
export function digitForOthers({ machine }: Bench, measure: string): number {
  const tolerances = Object.values(machine.targets).flatMap(({ like, tolerance }) =>
    like === measure && tolerance !== undefined ? [tolerance] : [],
  );
  return tolerances.length === 0
    ? Number.POSITIVE_INFINITY
    : 10 ** Math.floor(Math.log10(Math.min(...tolerances) / 2));
}

export function carryPass(turn: Turn, bench: Bench, verdict: VerdictFact, resolution: number): void {
  const value = figure(verdict.value ?? 0, resolution);
  const facts: Facts = { verdict };
  const { step, loop } = bench.setUp;
  const loose = bench.stage.adjust?.free !== undefined && loop?.free && step.kind !== 'fixed';
  carry(
    turn,
    [line(loose ? 'verdict-loose' : 'verdict-pass', { value, unit: unitSaid(verdict.unit) })],
    facts,
  );
}

export function outLine(verdict: VerdictFact, resolution: number): Line {
  const { value, low, high, unit } = verdict;
  const key = low === null ? 'verdict-out-high' : high === null ? 'verdict-out-low' : 'verdict-out';
  return line(key, {
    value: figure(value ?? 0, resolution),
    unit: unitSaid(unit),
    low: figure(low ?? 0, resolution),
    high: figure(high ?? 0, resolution),
  });
}

export function record(
  turn: Turn,
  { measure, situation }: ReadingOf,
  seen: Seen,
  typed: string,
  verdict: VerdictFact,
): void {
  const { setUp } = benchOf(turn);
  turn.state.taken += 1;
  turn.taken.push({
    setUp: setUp.code,
    stage: setUp.stage,
    measure,
    situation,
    typed,
    value: seen.kind === 'value' ? seen.value : (verdict.value ?? null),
    low: verdict.low,
    high: verdict.high,
    result: verdict.result,
    struck: verdict.result === 'implausible' || verdict.result === 'unclear' ? verdict.result : null,
    at: turn.scene.now,
  });
}
