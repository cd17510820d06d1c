// What a message says, in data: its text is rendered from this, and every adapter and picture draws on the same.

export type Direction = 'in' | 'out' | 'clockwise' | 'counter-clockwise' | 'more' | 'less';

/** A number as it is to be shown: with so many digits after the point. */
export interface Figure {
  value: number;
  digits: number;
}

/** What a line of text is filled in with. Words that content brings, and names, are strings; a line within a line is put into words first. */
export type LineArgument = number | string | Figure | Line;

/** One line of a message: the key of its words, and what they are filled in with. */
export interface Line {
  key: string;
  with?: Record<string, LineArgument>;
}

export type Ask =
  | { kind: 'confirm' }
  | { kind: 'choice'; question: string }
  | { kind: 'reading'; measure: string; unit: string }
  | { kind: 'readings'; measure: string; unit: string; count: number }
  | { kind: 'count'; part: string; unit: 'turn' | 'click' }
  | { kind: 'target'; measure: string; unit: string };

export interface VerdictFact {
  result: 'pass' | 'adjust' | 'unclear' | 'implausible';
  measure: string;
  unit: string;
  value?: number | null;
  values?: (number | null)[];
  /** The width of a reading that wanders; `value` is then its middle. */
  spread?: number;
  low: number | null;
  high: number | null;
  /** The worth of the reading's last digit. */
  resolution?: number;
  /** The chance that the true value lies within the limits; shown at the desk only. */
  conformance?: number;
}

export interface MoveFact {
  part: string;
  direction: Direction;
  amount: number;
  unit: 'turn' | 'click' | 'nudge' | 'mm';
  /** The band to watch for on the meter while turning. */
  until?: { low: number; high: number };
}

export interface CauseFact {
  id: string;
  row: string | null;
  probability?: number;
}

export interface CaseFact {
  id: string;
  owner: string;
  state: 'waiting' | 'taken' | 'returned' | 'closed';
  reason: string;
}

export interface RecordFact {
  result: 'set' | 'right-as-found' | 'accepted' | 'not-set';
  values: Record<string, { value: number; unit: string }>;
  static?: Record<string, { value: number; unit: string }>;
  baseline?: 'checked' | 'not-checked';
  /** Who accepted a value, where somebody did. */
  acceptedBy?: string;
  /** The short code by which staff find the record. */
  code?: string;
}

export interface Facts {
  procedure?: string;
  stage?: string;
  do?: string[];
  ask?: Ask;
  heard?: { value: number; unit: string };
  verdict?: VerdictFact;
  move?: MoveFact;
  cautions?: string[];
  causes?: CauseFact[];
  case?: CaseFact;
  record?: RecordFact;
  /** The text, line by line, before it is put into words. Every number of the text stands here. */
  lines?: Line[];
}
