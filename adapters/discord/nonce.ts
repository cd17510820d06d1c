// Gives each part of each message the mark by which Discord knows a repeat, for everything that is posted to a channel.
import { createHash } from 'node:crypto';

/** At most 25 characters; the same for every try, and never the same for two different texts or chats. */
export function nonceOf(...parts: (string | number)[]): string {
  return createHash('sha256').update(JSON.stringify(parts)).digest('base64url').slice(0, 25);
}
