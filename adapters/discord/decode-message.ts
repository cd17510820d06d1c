// Turns a message on Discord into what the inbox understands, whether it came live or was fetched later.
import { type APIMessage, type APIUser, MessageType } from 'discord.js';
import type { Body, IncomingMessage } from '../../src/chat/incoming-message.ts';
import { cleanName, cleanText } from '../wire/clean-text.ts';
import type { Place } from './places.ts';

export type Arrived =
  | { kind: 'message'; message: IncomingMessage }
  /** Somebody spoke to the bot where others read along. */
  | { kind: 'elsewhere' }
  | { kind: 'nothing' };

/** What the gateway adds to a message; what is fetched by REST lacks it. */
export type SeenMessage = APIMessage & {
  guild_id?: string | undefined;
  member?: { nick?: string | null | undefined } | undefined;
};

const nothing: Arrived = { kind: 'nothing' };

export function decodeMessage(seen: SeenMessage, place: Place | null, self: string): Arrived {
  if (!isFromAPerson(seen)) return nothing;
  if (place === null && seen.guild_id !== undefined) {
    return seen.mentions?.some((user) => user.id === self) ? { kind: 'elsewhere' } : nothing;
  }
  return arrive(seen, place, seen.id, bodyOf(seen));
}

/** Discord reports as edited also what only unfolded a link: that has no time of editing. */
export function decodeEdit(seen: SeenMessage, place: Place | null): Arrived {
  if (!seen.author || !isFromAPerson(seen) || seen.edited_timestamp === null) return nothing;
  if (place?.kind === 'desk' || (place === null && seen.guild_id !== undefined)) return nothing;
  const text = cleanText(seen.content);
  if (text === '') return nothing;
  return arrive(seen, place, `${seen.id}:${seen.edited_timestamp}`, { kind: 'edited', text });
}

function arrive(seen: SeenMessage, place: Place | null, messageId: string, body: Body): Arrived {
  // In an owner's room others may read along, but only the owner is heard.
  if (place?.kind === 'room' && seen.author.id !== place.person) return nothing;
  return {
    kind: 'message',
    message: incoming(seen.author, seen.member?.nick, seen.channel_id, place, messageId, null, body),
  };
}

export function incoming(
  user: APIUser,
  nick: string | null | undefined,
  channel: string,
  place: Place | null,
  messageId: string,
  locale: string | null,
  body: Body,
): IncomingMessage {
  return {
    platform: 'discord',
    messageId,
    person: user.id,
    name: cleanName(nick ?? user.global_name ?? user.username),
    role: place?.kind === 'desk' ? 'staff' : 'owner',
    chat: place?.kind === 'room' ? place.chat : channel,
    caseId: place?.kind === 'desk' ? place.caseId : null,
    locale,
    body,
  };
}

function isFromAPerson({ author, webhook_id, type }: SeenMessage): boolean {
  if (author?.bot || author?.system || webhook_id !== undefined) return false;
  return type === undefined || type === MessageType.Default || type === MessageType.Reply;
}

/** The address of a picture expires, so where it stands is kept. Other attachments come as empty text, which is asked back about. */
function bodyOf(seen: SeenMessage): Body {
  const text = cleanText(seen.content ?? '');
  const picture = seen.attachments?.find((attachment) => attachment.content_type?.startsWith('image/'));
  if (!picture) return { kind: 'text', text };
  return { kind: 'picture', picture: `${seen.channel_id}/${seen.id}/${picture.id}`, caption: text };
}
