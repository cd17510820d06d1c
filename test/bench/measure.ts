// How every goal is measured: our way and the other in turns within one run, medians over the rounds, the median of the rounds' ratios.

export interface BenchResult {
  id: string;
  what: string;
  unit?: string;
  ours: number;
  /** Null where there is no peer, only a limit. */
  other: number | null;
  ratio: number | null;
  goal: string;
  holds: boolean;
}

export interface BenchOptions {
  quick?: boolean;
}

export function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** Runs each side once a round, the first side changing with the round, so that a busy neighbour meets both. */
export async function alternate<Side extends string>(
  rounds: number,
  sides: Record<Side, () => number | Promise<number>>,
): Promise<Record<Side, number[]>> {
  const names = Object.keys(sides) as Side[];
  const measured = Object.fromEntries(names.map((name) => [name, [] as number[]])) as Record<Side, number[]>;
  for (let round = 0; round < rounds; round += 1) {
    const order = round % 2 === 0 ? names : names.toReversed();
    for (const name of order) measured[name].push(await sides[name]());
  }
  return measured;
}

export function medianRatio(ours: readonly number[], other: readonly number[]): number {
  return median(ours.map((value, round) => value / (other[round] ?? Number.NaN)));
}

/** Three figures are more than a noisy machine can tell. */
export function rounded(value: number): number {
  return Number(value.toPrecision(3));
}

/** `goal` is `>= 0.8`, `<= 3` and the like; it is held against the ratio, or against `ours` where there is no peer. */
export function result(given: {
  id: string;
  what: string;
  unit?: string;
  ours: readonly number[];
  other?: readonly number[];
  goal: string;
}): BenchResult {
  const { id, what, unit, goal } = given;
  const ratio = given.other === undefined ? null : medianRatio(given.ours, given.other);
  const ours = median(given.ours);
  return {
    id,
    what,
    ...(unit === undefined ? {} : { unit }),
    ours: rounded(ours),
    other: given.other === undefined ? null : rounded(median(given.other)),
    ratio: ratio === null ? null : rounded(ratio),
    goal,
    holds: holds(ratio ?? ours, goal),
  };
}

function holds(value: number, goal: string): boolean {
  const [, sign, limit] = /^([<>]=?) (\S+)$/.exec(goal) ?? [];
  if (limit === undefined) throw new Error(`"${goal}" is no goal`);
  const bound = Number(limit);
  if (sign === '<=') return value <= bound;
  if (sign === '<') return value < bound;
  return sign === '>=' ? value >= bound : value > bound;
}
