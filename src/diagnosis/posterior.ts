// How probable each cause is, given the priors and all weights so far; for the conversation and the desk.
import type { FaultContent, PriorSet } from '../procedure/fault.ts';
import type { Weights } from './evidence.ts';
import { type Hypothesis, hypothesesOf } from './hypothesis.ts';

/** Probabilities by hypothesis id. */
export type Priors = Record<string, number>;

export interface RankedCause {
  id: string;
  /** Its row of the signature table, null where there is none. */
  row: string | null;
  probability: number;
}

export interface Belief {
  /** Each cause with the chance that it is at work, alone or beside another; most probable first. */
  causes: RankedCause[];
  /** Single causes and pairs; these chances add to 1. */
  hypotheses: { hypothesis: Hypothesis; probability: number }[];
}

export function posterior(content: FaultContent, priors: Priors, weights: Weights): Belief {
  const hypotheses = hypothesesOf(content);
  const logs = hypotheses.map(({ id }) => Math.log(priors[id] ?? 0) + (weights[id] ?? 0) / 1000);
  return beliefOf(hypotheses, normalise(logs));
}

function beliefOf(hypotheses: readonly Hypothesis[], probabilities: readonly number[]): Belief {
  const sums = new Map<string, RankedCause>();
  for (const [index, hypothesis] of hypotheses.entries()) {
    const probability = probabilities[index] ?? 0;
    for (const cause of hypothesis.causes) {
      const ranked = sums.get(cause.id);
      if (ranked === undefined) sums.set(cause.id, { id: cause.id, row: cause.row, probability });
      else ranked.probability += probability;
    }
  }
  return {
    causes: [...sums.values()].sort((a, b) => b.probability - a.probability || (a.id < b.id ? -1 : 1)),
    hypotheses: hypotheses.map((hypothesis, index) => ({
      hypothesis,
      probability: probabilities[index] ?? 0,
    })),
  };
}

/** Logarithms of weights to probabilities, without overflow. */
export function normalise(logs: readonly number[]): number[] {
  const highest = Math.max(...logs);
  if (highest === Number.NEGATIVE_INFINITY) return logs.map(() => 1 / logs.length);
  const sizes = logs.map((log) => Math.exp(log - highest));
  const total = sizes.reduce((sum, size) => sum + size, 0);
  return sizes.map((size) => size / total);
}

/** The content's own priors. */
export function priorsOf(content: FaultContent, set: PriorSet): Priors {
  return priorsFromCases(content, set, {});
}

/** How many cases the content's own shares are worth against the workshop's. */
const worth = 200;

/**
 * Dirichlet: the content's shares count as `worth` cases, and each closed case as one. `counts` is by cause, or by
 * pair (`a+b`), as the desk closed them.
 */
export function priorsFromCases(
  content: FaultContent,
  set: PriorSet,
  counts: Readonly<Record<string, number>>,
): Priors {
  const hypotheses = hypothesesOf(content);
  const shares = hypotheses.reduce((sum, { prior }) => sum + prior[set], 0);
  const cases = hypotheses.reduce((sum, { id }) => sum + (counts[id] ?? 0), 0);
  return Object.fromEntries(
    hypotheses.map(({ id, prior }) => [
      id,
      (worth * (prior[set] / shares) + (counts[id] ?? 0)) / (worth + cases),
    ]),
  );
}

/** The causes to name to an owner: those likely enough to be worth a sentence, at most three. */
export function likelyCauses(belief: Belief, least = 0.3): RankedCause[] {
  return belief.causes.filter((cause) => cause.probability >= least).slice(0, 3);
}
