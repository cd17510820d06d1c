// What can speak for or against a cause: readings, answers, and what a tried check did; made by the conversation.

export type Seen =
  | { kind: 'value'; value: number; resolution: number }
  /** A reading that moves between two values. */
  | { kind: 'range'; low: number; high: number; resolution: number }
  | { kind: 'overload' }
  /** A blank meter. */
  | { kind: 'none' }
  /** A sweep, from closed to open and back; null where the meter showed an overload. */
  | { kind: 'series'; values: readonly (number | null)[]; resolution: number };

export interface Band {
  low: number | null;
  high: number | null;
}

export interface Observation {
  kind: 'observation';
  measure: string;
  /** The target's situation (`as-found`, `closed`, `static`, `engaged`, `open`, `sweep`, `warm` …) or a check's id. */
  situation: string;
  seen: Seen;
  /**
   * What a healthy, rightly set machine would show here, scaled by its supply already; null where nobody knows.
   * Of a sweep: `low` is the closed end, `high` the open one.
   */
  expected: Band | null;
  /** Out of the band may simply mean: not set yet. */
  settable: boolean;
  /** How far off a machine may be that is only not set yet, in the measure's unit; ±0.25 where absent. */
  reach?: number;
  /** The measured supply, null where it was not measured or makes no sense. */
  supply: number | null;
  /**
   * The same quantity before, what the owner did in between (an action, or null for nothing), and how a healthy
   * machine would have moved. After nothing, or where `alone`, the reading counts only for having moved or not.
   */
  previous?: { seen: Seen; after: string | null; expect: 'falls' | 'rises' | 'same'; alone?: true };
  /** Read twice: no slip of the pen. */
  sure?: true;
}

export interface Answer {
  kind: 'answer';
  question: string;
  answer: string;
}

/** A check that mends was carried out, and the odd reading taken again. */
export interface Tried {
  kind: 'tried';
  check: string;
  /** `right`: in order now; `changed`: another reading, odd still; `as-before`: no difference. */
  result: 'right' | 'changed' | 'as-before';
}

/** A check that mends was carried out with nothing odd to see, as a step of the straight path: what it mends is likely gone. */
export interface SeenTo {
  kind: 'seen-to';
  check: string;
}

export type Evidence = Observation | Answer | Tried | SeenTo;

/**
 * How much the evidence so far speaks for each cause or pair, against a healthy machine: whole thousandths of a nat,
 * so that sums do not depend on the order; what is absent is 0. Plain data for the conversation's state.
 */
export type Weights = Record<string, number>;
