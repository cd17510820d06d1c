// What a workshop's own numbers say: where owners stop, how long the stages take, which causes were found when; for `report`.

export interface EndedSetUp {
  procedure: string;
  result: string;
  /** The stage at which it ended. */
  stage: string;
  /** The readings of this set-up, in the order taken. */
  readings: readonly { stage: string; at: number }[];
}

export interface ClosedCase {
  /** The cause as the desk closed it; null where it named none. */
  cause: string | null;
  at: number;
}

export interface StopRow {
  stage: string;
  reached: number;
  stopped: number;
}

export interface TimeRow {
  stage: string;
  /** Minutes: the middle half of owners, and the one in the middle. */
  quarter: number;
  median: number;
  threeQuarters: number;
}

/** In the order of the stages; those that nobody stopped at are left out. */
export function whereOwnersStop(stages: readonly string[], ended: readonly EndedSetUp[]): StopRow[] {
  const stoppedAt = (one: EndedSetUp) => stages.indexOf(one.stage);
  return stages
    .map((stage, place) => ({
      stage,
      reached: ended.filter((one) => stoppedAt(one) >= place).length,
      stopped: ended.filter((one) => one.result === 'not-set' && one.stage === stage).length,
    }))
    .filter((row) => row.stopped > 0);
}

/** A stage's time runs from its first reading to the first reading of another stage; pauses of an hour and more do not count. */
export function timeByStage(stages: readonly string[], ended: readonly EndedSetUp[]): TimeRow[] {
  const minutes = new Map<string, number[]>();
  for (const { readings } of ended) {
    let from = readings[0];
    for (const reading of readings) {
      if (!from || reading.stage === from.stage) continue;
      const spent = (reading.at - from.at) / 60_000;
      if (spent < 60) minutes.set(from.stage, [...(minutes.get(from.stage) ?? []), spent]);
      from = reading;
    }
  }
  return stages.flatMap((stage) => {
    const spent = minutes.get(stage)?.sort((a, b) => a - b);
    if (!spent) return [];
    return [
      {
        stage,
        quarter: quantile(spent, 0.25),
        median: quantile(spent, 0.5),
        threeQuarters: quantile(spent, 0.75),
      },
    ];
  });
}

/** The causes that the desk found, by month; the commonest first. */
export function causesByMonth(cases: readonly ClosedCase[]): {
  months: string[];
  rows: { cause: string; counts: number[] }[];
} {
  const found = cases.filter((one) => one.cause !== null);
  const monthOf = (at: number) => new Date(at).toISOString().slice(0, 7);
  const months = [...new Set(found.map((one) => monthOf(one.at)))].sort();
  const causes = [...new Set(found.map((one) => one.cause ?? ''))];
  const rows = causes.map((cause) => ({
    cause,
    counts: months.map(
      (month) => found.filter((one) => one.cause === cause && monthOf(one.at) === month).length,
    ),
  }));
  const total = (counts: number[]) => counts.reduce((sum, count) => sum + count, 0);
  rows.sort((a, b) => total(b.counts) - total(a.counts) || (a.cause < b.cause ? -1 : 1));
  return { months, rows };
}

/** By linear interpolation between the order statistics (Hyndman and Fan's type 7, the default of R; from memory). */
function quantile(sorted: readonly number[], share: number): number {
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const low = sorted[below] ?? 0;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? low;
  return Number((low + (high - low) * (place - below)).toFixed(2));
}
