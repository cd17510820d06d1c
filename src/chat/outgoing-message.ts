// What the program says: one message to one destination, rendered once, stored in the outbox, and sent by an adapter.
import type { Facts } from './facts.ts';

/** An owner in their private chat, the desk (as a whole, or one case's thread), or the workshop's channel. */
export type Destination =
  | { kind: 'owner'; platform: string; person: string; chat: string }
  | { kind: 'desk'; caseId: string | null }
  | { kind: 'tips' };

export interface Choice {
  id: string;
  label: string;
}

/** A picture to be drawn from the message's facts, or one that a person sent and that is passed on. */
export type PictureRequest =
  | { kind: 'drawn'; drawing: string; contentHash: string; language: string; subject: unknown }
  | { kind: 'relayed'; platform: string; picture: string };

export interface OutgoingMessage {
  /** The message's own id, stable over every retry. */
  id: string;
  /** 0 for a new message; 1, 2, … where the message with this id is changed. */
  edit: number;
  to: Destination;
  /** Plain text; the adapter escapes what its platform needs escaped. */
  text: string;
  choices: Choice[];
  picture: PictureRequest | null;
  facts: Facts;
}
