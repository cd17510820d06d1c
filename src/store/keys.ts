// Names the conversation of a message, the queue of a destination, and the inbox key that drops repeats, for both engines.
import { createHmac, type KeyObject } from 'node:crypto';
import type { IncomingMessage } from '../chat/incoming-message.ts';
import type { Destination } from '../chat/outgoing-message.ts';

export function ownerKey(platform: string, person: string): string {
  return `${platform}:${person}`;
}

/** Messages with the same destination leave one after the other. */
export function destinationKey(to: Destination): string {
  if (to.kind === 'owner') return `owner:${to.platform}:${to.chat}`;
  if (to.kind === 'tips') return 'tips';
  return to.caseId === null ? 'desk' : `desk:${to.caseId}`;
}

/** A keyed hash, so that what drops repeats names nobody, also once all else about an owner is gone. */
export function inboxKey(secret: KeyObject, platform: string, messageId: string): string {
  return createHmac('sha256', secret).update(`${platform}\n${messageId}`).digest('base64url');
}

/** Where a message belongs before cases are looked up: staff inside a case wait for one another by the case. */
export function lane(message: IncomingMessage): string {
  if (message.role === 'owner') return ownerKey(message.platform, message.person);
  return message.caseId === null ? 'desk' : `case:${message.caseId}`;
}
