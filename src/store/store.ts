// What the store keeps and does, for everyone who takes turns, sends, or lists; SQLite and Postgres both keep to it.

import type { IncomingMessage } from '../chat/incoming-message.ts';
import type { OutgoingMessage } from '../chat/outgoing-message.ts';
import type { CaseListing, RecordListing } from '../desk/listing.ts';

/** The key of the conversation in which staff speak without a case. */
export const deskKey = 'desk';

/** Something that moves a conversation on. */
export type Arrival =
  /** A person said something. Repeats of the same platform and message id are dropped. */
  | { kind: 'message'; message: IncomingMessage }
  /** The instant came that a decision asked to be woken at. Dropped if it has been put off meanwhile. */
  | { kind: 'due'; key: string }
  /** A platform refused a message of this conversation for good; its row is closed by this turn, or was by those that took it. */
  | { kind: 'refused'; key: string; row: number; message: OutgoingMessage; why: string; partly?: boolean };

/** One reading of a conversation. A row with the same number replaces the earlier one, as when it is struck. */
export interface ReadingRow {
  /** Counted by the conversation, from 1. */
  number: number;
  at: number;
  stage: string;
  measure: string;
  /** What was heard, judged and struck, in the conversation's own shape. */
  body: unknown;
}

/** A case as the desk lists it; what it is made of stays in its conversation's state. */
export type CaseRow = CaseListing;
export type CaseState = CaseRow['state'];

/** A case as it lies in the store: with the conversation that it belongs to. */
export interface StoredCase extends CaseRow {
  key: string;
}

/** A record as it lies in the store; `key` is null once its owner was erased. */
export type StoredRecord = RecordListing;

/** A set-up that ended. A row with the same code replaces the earlier one. */
export type RecordRow = Omit<StoredRecord, 'key'>;

/** What `decide` is given. It must come to the same decision on the same input: a clash decides twice. */
export interface Loaded {
  now: number;
  key: string;
  /** A small number of the conversation, in order of creation; message and case ids are made from it. */
  number: number;
  state: unknown | null;
  /** The state of the desk's own conversation, to be read only; null in the desk's own turn. */
  desk: unknown | null;
  /** In the desk's own turn: every case that is not closed, oldest first. Else empty. */
  openCases: StoredCase[];
  /** In full while the conversation has an open case, or after `needs`; else empty. */
  readings: ReadingRow[];
  /** False where `readings` was left out. */
  hasReadings: boolean;
  /** After `needs: 'archive'`: cases and records of every state, newest first, as many as a desk ever looks back on. */
  archive?: { cases: StoredCase[]; records: StoredRecord[] };
}

/** So many of each. */
export const archiveDepth = 2_000;

export interface Decision {
  /** Null removes the state; the conversation keeps its number. */
  state: unknown | null;
  /** Already rendered; queued in this order. */
  messages: OutgoingMessage[];
  readings: ReadingRow[];
  caseRow: CaseRow | null;
  records: RecordRow[];
  /** When the conversation next wants a `due` arrival; null for never. Every decision says it anew. */
  dueAt: number | null;
  /** Everything about this owner goes, in this transaction. `messages` are still sent, then removed too. */
  erase?: 'all' | 'all-but-records';
  /** Content snapshots that the state pins; they are kept as long. Left out: as before. */
  pins?: string[];
  /** The messages leave no copy behind once they are sent. */
  passing?: true;
}

/** `needs` asks to be called again with the full table of readings, or with the archive. */
export type Decide = (loaded: Loaded, arrival: Arrival) => Decision | { needs: 'readings' | 'archive' };

export type TurnResult =
  | { kind: 'taken'; key: string }
  /** The same message was taken before, or the instant was put off: nothing was done. */
  | { kind: 'repeat' };

/** A queued message. `row` is its place in the queue; ids are stable, rows count up. */
export interface OutboxRow {
  row: number;
  key: string;
  /** Messages with the same destination leave in order. */
  destination: string;
  message: OutgoingMessage;
  /** How often it was tried before. */
  attempts: number;
  lastError: string | null;
  /** For each adapter by name: the parts sent so far, and whether it has them all. */
  progress: Record<string, { parts: string[]; whole: boolean }>;
  /** An earlier process had it in hand when it died. */
  perhapsSent: boolean;
}

/** What became of a row that was claimed. */
export type Mark =
  | { kind: 'sent'; row: number; at: number; progress: OutboxRow['progress'] }
  /** `attempts` counts tries only, not waiting for one's turn. */
  | {
      kind: 'retry';
      row: number;
      dueAt: number;
      attempts: number;
      error: string | null;
      progress: OutboxRow['progress'];
    };

/** Validated content by its hash, kept as long as a conversation pins it. */
export interface Snapshots {
  put(hash: string, json: string): Promise<void>;
  get(hash: string): Promise<string | undefined>;
  /** Hashes that a conversation pins. */
  inUse(): Promise<string[]>;
}

/** An adapter's own bookkeeping, as the topic that belongs to a case. */
export interface Links {
  get(link: string): Promise<string | undefined>;
  /** `about` is the conversation's key where the link could lead to an owner: it is then erased with them. */
  set(link: string, value: string, about?: string | null): Promise<void>;
  delete(link: string): Promise<void>;
  list(prefix: string): Promise<{ link: string; value: string }[]>;
}

export interface Outbox {
  /** Takes the oldest unsent row of each destination that is due, at most `limit`, for this process alone. */
  claim(now: number, limit: number): Promise<OutboxRow[]>;
  /** Resolves once committed. Marks that arrive beside a turn ride in its transaction. */
  mark(mark: Mark): Promise<void>;
  /** The instant at which a row next falls due, now included; null where nothing waits. */
  nextDue(): Promise<number | null>;
  /** Calls back when rows may have come, also from another process. Returns how to stop that. */
  onQueued(callback: () => void): () => void;
  /** What an adapter called the parts of a message that was sent, for changing it. */
  sentParts(messageId: string, adapter: string): Promise<string[]>;
}

/** The frozen clock's own memory, and due conversations. */
export interface Calendar {
  due(now: number): Promise<string[]>;
  nextDue(): Promise<number | null>;
  /** Asks for a `due` arrival for a conversation that need not exist yet, as the tips'. */
  wake(key: string, at: number): Promise<void>;
  instant(): Promise<number | null>;
  setInstant(at: number): Promise<void>;
  /** Where the frozen clock is on its way to, or null. `messageId` the same twice: false, and nothing changes. */
  target(): Promise<number | null>;
  setTarget(at: number, platform: string, messageId: string): Promise<boolean>;
}

export interface Store {
  engine: 'sqlite' | 'postgres';
  /** Loads, decides and writes in one transaction; resolves once it is committed. */
  turn(arrival: Arrival, decide: Decide): Promise<TurnResult>;
  outbox: Outbox;
  calendar: Calendar;
  snapshots: Snapshots;
  links: Links;
  /** Newest first. */
  listCases(filter?: { states?: CaseState[]; limit?: number }): Promise<StoredCase[]>;
  /** Cases whose words, reason or id hold every word of the text. */
  findCases(text: string, limit?: number): Promise<StoredCase[]>;
  records(filter?: { code?: string; key?: string; since?: number; until?: number }): Promise<StoredRecord[]>;
  readings(key: string): Promise<ReadingRow[]>;
  /** Drops every conversation that nothing happened in since that instant and no case is open in, and what was sent or taken before it; set-up records stay and lead to nobody. */
  forget(before: number): Promise<void>;
  close(): Promise<void>;
}

/** A mistake of the surroundings, said in a sentence to the operator: a full disk, a newer database, another process. */
export class StoreTrouble extends Error {
  override name = 'StoreTrouble';
}
