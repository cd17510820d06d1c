// What one number of a message was read as, for the files that read numbers.
import type { Decimal, Numeral } from './hear-numerals.ts';

export interface SpokenNumber {
  /** Typed with marks that can mean two things. */
  numeral: Numeral | null;
  /** Everything else. */
  decimal: Decimal | null;
  /** Several numbers in one breath: "four twelve", "three four eight". */
  juxtaposed: readonly Decimal[] | null;
  /** A fraction's denominator. */
  denominator: number | null;
  negative: boolean;
  /** A whole number without a decimal mark or word. */
  whole: boolean;
  spoken: boolean;
  echo: boolean;
  malformed: boolean;
  from: number;
  to: number;
}

export interface Habits {
  upToNineteen: ReadonlySet<number>;
}

export const plainNumber = {
  numeral: null,
  decimal: null,
  juxtaposed: null,
  denominator: null,
  negative: false,
  whole: false,
  spoken: false,
  echo: false,
  malformed: false,
};
