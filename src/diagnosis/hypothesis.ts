// What may be the matter: each fault of content, and each pair that content names, with what it predicts; for the likelihoods.
import {
  type Fault,
  type FaultContent,
  layers,
  type Predictor,
  type SweepShape,
} from '../procedure/fault.ts';
import { healthyWay, layOver, type Way, waysOf } from './way.ts';

export interface Hypothesis {
  /** The fault's id, or both joined by `+`. */
  id: string;
  /** One fault or two, in the order in which they act on a reading. */
  causes: readonly Fault[];
  prior: { complaint: number; 'odd-reading': number };
  /** What a reading may come out as; remembered, since content never changes. */
  predictions: Map<string, readonly Way[]>;
}

/** A machine in order, rightly set or not: what all others are held against. */
export const inOrder: Hypothesis = {
  id: '',
  causes: [],
  prior: { complaint: 0, 'odd-reading': 0 },
  predictions: new Map(),
};

const known = new WeakMap<FaultContent, readonly Hypothesis[]>();

export function hypothesesOf(content: FaultContent): readonly Hypothesis[] {
  const before = known.get(content);
  if (before !== undefined) return before;
  const byId = new Map(content.faults.map((fault) => [fault.id, fault]));
  const single = content.faults.map((fault) => newHypothesis([fault], fault.prior));
  const double = content.pairs.map((pair) =>
    newHypothesis(
      pair.of
        .flatMap((id) => byId.get(id) ?? [])
        .sort((a, b) => layers.indexOf(a.layer) - layers.indexOf(b.layer)),
      pair.prior,
    ),
  );
  const all = [...single, ...double];
  known.set(content, all);
  return all;
}

function newHypothesis(causes: Fault[], prior: Hypothesis['prior']): Hypothesis {
  return { id: causes.map((cause) => cause.id).join('+'), causes, prior, predictions: new Map() };
}

/** The ways in which this hypothesis lets a measure come out in a situation. */
export function predict(
  hypothesis: Hypothesis,
  measure: string,
  situation: string,
  supplyMeasured: boolean,
): readonly Way[] {
  const key = keyOf(measure, situation, supplyMeasured);
  const before = hypothesis.predictions.get(key);
  if (before !== undefined) return before;
  let ways: readonly Way[] = healthyWay;
  for (const cause of hypothesis.causes) {
    const shown = predictorsFor(cause, measure, situation);
    if (shown === null) continue;
    const its = shown.flatMap((predictor) => waysOf(predictor, supplyMeasured));
    ways = ways === healthyWay ? its : layOver(ways, its);
  }
  hypothesis.predictions.set(key, ways);
  return ways;
}

const tables = new WeakMap<readonly Hypothesis[], Map<string, readonly (readonly Way[])[]>>();

/** The same for a whole list of hypotheses that stays the same, in its order. */
export function predictAll(
  hypotheses: readonly Hypothesis[],
  measure: string,
  situation: string,
  supplyMeasured: boolean,
): readonly (readonly Way[])[] {
  const table = tables.get(hypotheses) ?? new Map<string, readonly (readonly Way[])[]>();
  tables.set(hypotheses, table);
  const key = keyOf(measure, situation, supplyMeasured);
  const before = table.get(key);
  if (before !== undefined) return before;
  const all = hypotheses.map((hypothesis) => predict(hypothesis, measure, situation, supplyMeasured));
  table.set(key, all);
  return all;
}

function keyOf(measure: string, situation: string, supplyMeasured: boolean): string {
  return `${measure}@${situation}${supplyMeasured ? '' : '?'}`;
}

function predictorsFor(fault: Fault, measure: string, situation: string): readonly Predictor[] | null {
  const entry = fault.shows.find(
    (shown) =>
      shown.on.some((on) => matches(on, measure)) && (shown.at === undefined || shown.at.includes(situation)),
  );
  return entry?.as ?? null;
}

function matches(pattern: string, name: string): boolean {
  return pattern.endsWith('*') ? name.startsWith(pattern.slice(0, -1)) : pattern === name;
}

/** How the signal itself moves after an action, where a cause says so. */
export function movesAfter(
  hypothesis: Hypothesis,
  action: string,
): { falls: number; same: number; rises: number } | null {
  for (const cause of hypothesis.causes) {
    const change = cause.changes.find((entry) => entry.after.some((after) => matches(after, action)));
    if (change !== undefined) return change;
  }
  return null;
}

/** The shapes of a sweep, where a cause says so. */
export function sweepSaid(hypothesis: Hypothesis): Partial<Record<SweepShape, number>> | null {
  return hypothesis.causes.find((cause) => cause.sweep !== undefined)?.sweep ?? null;
}
