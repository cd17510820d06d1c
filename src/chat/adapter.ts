// The port between the program and a chat platform: every adapter takes messages in and sends messages out through these.
import type { IncomingMessage } from './incoming-message.ts';
import type { OutgoingMessage } from './outgoing-message.ts';

/** Resolves once the message and everything that follows from it is committed; only then may a platform be told so. */
export type Receive = (message: IncomingMessage) => Promise<void>;

/** A message as the outbox hands it over: the picture drawn, and how far an earlier try came. */
export interface Sendable {
  message: OutgoingMessage;
  /** The drawn PNG with its alternative text, or null where there is none or drawing failed. */
  picture: { png: Uint8Array; alternative: string } | null;
  /** What the platform called the parts that were sent already, oldest first; empty on a first try. */
  sentParts: string[];
  /** True where an earlier process may have sent this without recording it. */
  perhapsSent: boolean;
}

export type SendOutcome =
  /** `platformIds` are the platform's ids of the parts, in order. */
  | { kind: 'sent'; platformIds: string[] }
  /** To be tried again after `waitMs`; `scope` says what the wait holds up. */
  | { kind: 'retry'; waitMs: number | null; scope: 'chat' | 'platform'; sentParts: string[]; why: string }
  /** For good: blocked, deleted, no right. */
  | { kind: 'refused'; why: string };

/** One platform. */
export interface Adapter {
  name: string;
  /** Starts taking messages in; resolves once it listens. */
  start(receive: Receive): Promise<void>;
  send(sendable: Sendable): Promise<SendOutcome>;
  /** Stops taking messages in, waits for those in work; nothing is confirmed that was not committed. */
  stop(): Promise<void>;
}
