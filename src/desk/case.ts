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
    | 'flagged'
    | 'cleared'
    | 'taken'
    | 'passed'
    | 'returned'
    | 'closed'
    | 'reopened'
    | 'accepted'
    | 'asked'
    | 'checked'
    | 'jumped'
    | 'remark';
  note: string | null;
}

export interface Case {
  id: string;
  state: CaseFact['state'];
  /** The id of the reason, with words of its own. */
  reason: string;
  /** A red flag that nobody has declared over: while it is up, nothing is measured or moved. */
  flag: string | null;
  /** Whether the owner may go on meanwhile. */
  goOn: boolean;
  openedAt: number;
  /** When it was last given back or closed; null while it is open. */
  endedAt: number | null;
  /** Whose hands it is in; null in every state but taken. */
  holder: Member | null;
  /** The latest entries only. */
  history: CaseEntry[];
  /** The owner's own words: those that a person was called with, and the latest. */
  ownWords: string[];
  /** When the clock next looks at this case; null for never. */
  remindAt: number | null;
  /** How often in a row the desk was reminded. */
  reminded: number;
  /** Since when the owner waits for an answer from whoever has the case. */
  unansweredSince: number | null;
  /** The card's message, how often it was changed, and a short sum of what it shows. */
  card: { id: string; edit: number; face: string } | null;
  /** The set-up that it is about, kept when that ends. */
  about: { code: string; procedure: string; machine: string } | null;
  /** The stage at which it goes on when it is given back, where staff chose one. */
  goTo: string | null;
  /** The workshop's own job or customer number. */
  job: string | null;
  /** The cause found, as staff named it. */
  cause: string | null;
}

/** A case that waits or is in somebody's hands. */
export const isOpen = (one: Case | null): one is Case & { state: 'waiting' | 'taken' } =>
  one !== null && one.state !== 'closed' && one.state !== 'returned';

export const isTaken = (one: Case | null): one is Case & { holder: Member } =>
  one !== null && one.holder !== null;

export const isSame = (a: Pick<Member, 'platform' | 'person'>, b: Pick<Member, 'platform' | 'person'>) =>
  a.platform === b.platform && a.person === b.person;

const entriesKept = 24;
const noteKept = 300;
/** The words that a person was called with, and the latest after them. */
const firstWords = 2;
const latestWords = 3;
const wordLength = 300;
/** A case that was closed or given back is taken up again within this time (ms) instead of a new one. */
const reopenWithin = 7 * 24 * 3_600_000;

export function newCase(
  id: string,
  call: Pick<Case, 'reason' | 'flag' | 'goOn' | 'about'>,
  now: number,
): Case {
  const one: Case = {
    id,
    state: 'waiting',
    ...call,
    openedAt: now,
    endedAt: null,
    holder: null,
    history: [],
    ownWords: [],
    remindAt: null,
    reminded: 0,
    unansweredSince: null,
    card: null,
    goTo: null,
    job: null,
    cause: null,
  };
  enter(one, now, null, 'opened', call.reason);
  return one;
}

/** Writes into the history; the first entry stays, the latest follow. */
export function enter(
  one: Case,
  at: number,
  by: string | null,
  what: CaseEntry['what'],
  note: string | null = null,
): void {
  const all = [...one.history, { at, by, what, note: note?.slice(0, noteKept) ?? null }];
  one.history = [...all.slice(0, 1), ...all.slice(1).slice(1 - entriesKept)];
}

export function keepWords(one: Case, text: string): void {
  if (text.trim() === '') return;
  const all = [...one.ownWords, text.slice(0, wordLength)];
  one.ownWords = [...all.slice(0, firstWords), ...all.slice(firstWords).slice(-latestWords)];
}

export const canReopen = (one: Case, now: number): boolean =>
  one.endedAt !== null && now - one.endedAt <= reopenWithin;

export function reopen(one: Case, now: number, by: string | null, note: string | null): void {
  one.state = 'waiting';
  one.endedAt = null;
  one.holder = null;
  one.reminded = 0;
  one.goTo = null;
  one.cause = null;
  enter(one, now, by, 'reopened', note);
}

/** The first who takes it has it; `from` names whoever had it before. */
export function take(one: Case, member: Member, now: number): { from: Member | null } {
  const from = one.holder;
  one.state = 'taken';
  one.holder = member;
  one.endedAt = null;
  one.remindAt = null;
  one.reminded = 0;
  one.unansweredSince = null;
  enter(one, now, member.name, 'taken', from && !isSame(from, member) ? from.name : null);
  return { from };
}

/** It waits for a colleague; `to` is whom the holder named, or null for anyone. */
export function passOn(one: Case, member: Member, to: string | null, now: number): void {
  one.state = 'waiting';
  one.holder = null;
  one.reminded = 0;
  one.unansweredSince = null;
  enter(one, now, member.name, 'passed', to);
}

export function giveBack(one: Case, by: string, now: number): void {
  end(one, now);
  one.state = 'returned';
  enter(one, now, by, 'returned', one.flag);
  one.flag = null;
  // After a week in which nobody needed it, it counts as closed.
  one.remindAt = now + reopenWithin;
}

export function close(one: Case, by: string | null, cause: string | null, now: number): void {
  end(one, now);
  one.state = 'closed';
  one.remindAt = null;
  one.flag = null;
  one.cause = cause;
  enter(one, now, by, 'closed', cause);
}

function end(one: Case, now: number): void {
  one.endedAt = now;
  one.holder = null;
  one.reminded = 0;
  one.unansweredSince = null;
}
