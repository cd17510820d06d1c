// The lines of the pipe contract, as the model garage writes and reads them.
import type { Facts } from '../../src/chat/facts.ts';

export type InputLine =
  | { from: string; text: string }
  | { from: string; choose: string }
  | { from: string; start: string }
  | { advance: string };

export interface OutputLine {
  id: string;
  to: string;
  case?: string;
  text: string;
  choices: { id: string; label: string }[];
  facts: Facts;
  edit?: number;
}

/** Whatever stands behind the contract: a program in a process of its own, or a function. */
export interface Engine {
  /** Hands over one line; resolves to all that it caused, in order. */
  send(line: InputLine): Promise<OutputLine[]>;
  close(): Promise<void>;
}
