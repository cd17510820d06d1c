// What finding and mending a fault is expected to cost in minutes, by order of the steps (Heckerman, Breese and Rommelse 1995).

export interface Step {
  /** The chance that this step is the one that mends it. */
  probability: number;
  /** Minutes to look. */
  check: number;
  /** Minutes to mend, where it is this. */
  repair?: number;
}

/** Σ [(1 − Σ before p)·check + p·repair], and what is left over at the end goes to a person. */
export function expectedCostOfRepair(steps: readonly Step[], call = 0): number {
  let left = 1;
  let cost = 0;
  for (const step of steps) {
    cost += left * step.check + step.probability * (step.repair ?? 0);
    left -= step.probability;
  }
  return cost + Math.max(0, left) * call;
}

/** The best order for single faults and steps that do not bear on each other: falling p/c (Kadane and Simon). */
export function repairOrder<T extends Step>(steps: readonly T[]): T[] {
  return [...steps].sort((a, b) => b.probability / b.check - a.probability / a.check);
}

/** What it costs to look first: the look itself, and what is expected afterwards for each outcome. */
export function expectedCostOfObserving(
  minutes: number,
  outcomes: readonly { probability: number; cost: number }[],
): number {
  return outcomes.reduce((sum, outcome) => sum + outcome.probability * outcome.cost, minutes);
}

/** Bits of doubt in a distribution. */
export function entropy(probabilities: readonly number[]): number {
  return probabilities.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
}
