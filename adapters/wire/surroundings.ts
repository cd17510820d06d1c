// What an adapter of a real platform is given by whoever starts it: bookkeeping, words, a log, and how to say that it cannot go on.
import type { Adapter } from '../../src/chat/adapter.ts';

/** A platform where owners, a desk and a tips channel can be. */
export interface PlatformAdapter extends Adapter {
  /** Whether cases can be shown here: a group or channel was claimed as the desk. */
  hasDesk(): boolean;
  /** When the platform last gave a sign of life; null before the first. */
  lastSign(): number | null;
  /** The bytes of a picture that somebody sent here; null where they cannot be had. */
  fetchPicture(picture: string): Promise<Uint8Array | null>;
}

/** A small memory that outlives the process; `about` is the conversation's key where a link could lead to an owner. */
export interface Links {
  get(link: string): Promise<string | undefined>;
  set(link: string, value: string, about?: string | null): Promise<void>;
  delete(link: string): Promise<void>;
  list(prefix: string): Promise<{ link: string; value: string }[]>;
}

/** Fields never hold a token or what a person wrote. */
export interface Log {
  info(fields: Record<string, unknown>, what: string): void;
  warn(fields: Record<string, unknown>, what: string): void;
  error(fields: Record<string, unknown>, what: string): void;
}

/** Words that are needed outside of any turn. */
export type PlatformText =
  | 'platform-menu-begin'
  | 'platform-menu-where'
  | 'platform-menu-help'
  | 'platform-menu-person'
  | 'platform-menu-desk'
  | 'platform-menu-desk-code'
  | 'platform-pointer'
  | 'platform-open-chat'
  | 'platform-written-privately'
  | 'platform-not-taken'
  | 'platform-type-reading'
  | 'platform-reading-field'
  | 'platform-room-name'
  | 'platform-case-name'
  | 'platform-desk-claimed'
  | 'platform-desk-code-wrong'
  | 'platform-desk-only-in-group';

export interface Words {
  /** In the language nearest to what the platform reports. */
  say(text: PlatformText, locale: string | null, fillIn?: Record<string, string>): string;
  languages: readonly string[];
  /** The language of the desk and of what stands in the workshop's rooms. */
  workshop: string;
}

/** Why an adapter cannot go on, each for a different hand to mend. */
export type Fatal = 'revoked-token' | 'second-poller' | 'not-allowed';

export interface Surroundings {
  links: Links;
  words: Words;
  log: Log;
  /** The one-time code by which a group or channel becomes the desk; null where none is given out. */
  deskCode: string | null;
  /** Whether all is well, for a health endpoint. */
  isHealthy(): boolean;
  /** Called once; `why` is a sentence for the operator. */
  onFatal(kind: Fatal, why: string): void;
  /** What this adapter called the parts of a message that was sent before, for changing it. */
  sentParts(messageId: string): Promise<string[]>;
  /** The bytes of a picture that lies on another platform; null where it cannot be had. */
  fetchForeign(platform: string, picture: string): Promise<Uint8Array | null>;
}
