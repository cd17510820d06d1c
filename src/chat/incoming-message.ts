// What a platform hands to the inbox: one message of one person, in the same shape whatever the platform.

/** Owners are guided; staff sit at the workshop's desk. */
type Role = 'owner' | 'staff';

export type Body =
  | { kind: 'text'; text: string }
  /** A button: `choice` is its id; `of` is our id of the message that offered it, null for the latest one. */
  | { kind: 'choice'; choice: string; of: string | null }
  /** `picture` is the platform's own reference (file id, path, message link). */
  | { kind: 'picture'; picture: string; caption: string }
  /** A start link was opened; null where the link leaves it open. */
  | { kind: 'start'; procedure: string | null; machine: string | null }
  /** The person edited a message that they had sent; the text is the new one. */
  | { kind: 'edited'; text: string };

export interface IncomingMessage {
  /** The adapter's name: `console`, `telegram`, `discord`. */
  platform: string;
  /** The platform's own id of this message: the same id twice is one message. */
  messageId: string;
  /** The platform's id of the person, and the display name it reports. */
  person: string;
  name: string | null;
  role: Role;
  /** The platform's id of the chat, where answers go. */
  chat: string;
  /** For staff: the case in whose thread this was said. */
  caseId: string | null;
  /** The language that the platform reports for the person, as `de` or `pt-BR`. */
  locale: string | null;
  body: Body;
}
