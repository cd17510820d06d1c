// A case: an owner's call for a person, from the call to its close; plain rules for the conversation and the desk's lists.
import type { CaseFact } from '../chat/facts.ts';

export interface Member {
  platform: string;
  person: string;
  name: string;
}

/** One thing that happened to a case, for its history; `by` is a display name, null for the program. */
export interface CaseEntry {
  at: number;
  by: string | null;
  what:
    | 'opened'
    | 'taken'
    | 'passed'
    | 'returned'
    | 'closed'
    | 'reopened'
    | 'accepted'
    | 'asked'
    | 'jumped'
    | 'remark'
    | 'reminded';
  note: string | null;
}

export interface Case {
  id: string;
  state: CaseFact['state'];
  /** The id of the reason, with words of its own. */
  reason: string;
  /** A red flag holds the set-up until a person gives it back. */
  flag: string | null;
  /** Whether the owner may go on meanwhile. */
  goOn: boolean;
  openedAt: number;
  closedAt: number | null;
  holder: Member | null;
  /** The latest entries only. */
  history: CaseEntry[];
  /** The latest of the owner's own words, for the card. */
  ownWords: string[];
  remindAt: number | null;
  /** A measure that the holder asked for, whose answer the program takes. */
  asking: string | null;
}

export const isOpen = (one: Case | null): one is Case =>
  one !== null && one.state !== 'closed' && one.state !== 'returned';
