// Turns what Telegram reports into what the inbox understands, or into what the adapter itself has to do about it.
import type { CallbackQuery, Chat, Message, Update, User } from 'grammy/types';
import type { Body, IncomingMessage } from '../../src/chat/incoming-message.ts';
import { cleanName, cleanText } from '../wire/clean-text.ts';
import { decodePress } from '../wire/press.ts';
import { decodeStart } from '../wire/start-link.ts';
import { bodyOfCommand, isMenuCommand } from '../wire/steering.ts';

/** Where in the desk's group something was said. */
export interface DeskPlace {
  group: string;
  hasTopics: boolean;
  topic: number | null;
  repliesTo: number | null;
}

export type Arrived =
  | { kind: 'message'; message: IncomingMessage; place: DeskPlace | null }
  | { kind: 'press'; message: IncomingMessage; place: DeskPlace | null; pressed: Pressed }
  /** A press that leads nowhere: it is only answered. */
  | { kind: 'dead-press'; query: string }
  | { kind: 'claim'; chat: Chat; code: string; topic: number | null; locale: string | null }
  /** Somebody spoke to the bot where others read along. */
  | { kind: 'elsewhere'; chat: string; topic: number | null; locale: string | null }
  | { kind: 'migrated'; from: string; to: string }
  | { kind: 'removed'; chat: string }
  | { kind: 'nothing' };

interface Pressed {
  query: string;
  chat: string;
  messageId: number;
}

export interface Self {
  id: number;
  username: string;
}

const nothing: Arrived = { kind: 'nothing' };

export function decodeUpdate(update: Update, self: Self, deskGroup: string | null): Arrived {
  if (update.message) return decodeMessage(update.message, self, deskGroup);
  if (update.edited_message) return decodeEdit(update.edited_message, update.update_id, self, deskGroup);
  if (update.callback_query) return decodePressed(update.callback_query, deskGroup);
  if (update.my_chat_member) {
    const { chat, new_chat_member: now } = update.my_chat_member;
    const gone = now.status === 'left' || now.status === 'kicked';
    return gone && chat.type !== 'private' ? { kind: 'removed', chat: String(chat.id) } : nothing;
  }
  return nothing;
}

function decodeMessage(message: Message, self: Self, deskGroup: string | null): Arrived {
  const { chat, from } = message;
  if (message.migrate_to_chat_id !== undefined) {
    return { kind: 'migrated', from: String(chat.id), to: String(message.migrate_to_chat_id) };
  }
  if (!from || from.is_bot || message.sender_chat || isService(message)) return nothing;
  const command = readCommand(message.text ?? '', self);
  if (command?.name === 'desk') {
    const locale = from.language_code ?? null;
    return { kind: 'claim', chat, code: command.rest, topic: topicOf(message), locale };
  }
  const id = `${chat.id}:${message.message_id}`;
  if (chat.type === 'private') {
    return { kind: 'message', message: incoming(from, chat, id, bodyOf(message, command)), place: null };
  }
  if (String(chat.id) === deskGroup) {
    const staff = { ...incoming(from, chat, id, bodyOf(message, command)), role: 'staff' as const };
    return { kind: 'message', message: staff, place: placeOf(message) };
  }
  if (command === null && !isAddressed(message, self)) return nothing;
  const locale = from.language_code ?? null;
  return { kind: 'elsewhere', chat: String(chat.id), topic: topicOf(message), locale };
}

function decodeEdit(message: Message, updateId: number, self: Self, deskGroup: string | null): Arrived {
  const { chat, from } = message;
  if (!from || from.is_bot || message.sender_chat) return nothing;
  // What staff said is relayed at once; a later change of it is not.
  if (chat.type !== 'private' || String(chat.id) === deskGroup) return nothing;
  const text = cleanText(message.text ?? message.caption ?? '');
  if (text === '' || readCommand(text, self)) return nothing;
  const body: Body = { kind: 'edited', text };
  return { kind: 'message', message: incoming(from, chat, `edit:${updateId}`, body), place: null };
}

function decodePressed(query: CallbackQuery, deskGroup: string | null): Arrived {
  const { message, from, data } = query;
  if (!message || data === undefined) return { kind: 'dead-press', query: query.id };
  const { chat } = message;
  const atDesk = String(chat.id) === deskGroup;
  if (chat.type !== 'private' && !atDesk) return { kind: 'dead-press', query: query.id };
  const body: Body = { kind: 'choice', ...decodePress(cleanText(data)) };
  const pressed = { query: query.id, chat: String(chat.id), messageId: message.message_id };
  const owners = incoming(from, chat, `press:${query.id}`, body);
  if (!atDesk) return { kind: 'press', message: owners, place: null, pressed };
  // A message too old for Telegram to show comes with a date of 0 and without its topic.
  const place = placeOf(message.date === 0 ? { ...message, is_topic_message: false } : message);
  const staff = { ...owners, role: 'staff' as const };
  return { kind: 'press', message: staff, place: { ...place, repliesTo: message.message_id }, pressed };
}

function incoming(from: User, chat: Chat, messageId: string, body: Body): IncomingMessage {
  return {
    platform: 'telegram',
    messageId,
    person: String(from.id),
    name: cleanName([from.first_name, from.last_name].filter(Boolean).join(' ')),
    role: 'owner',
    chat: String(chat.id),
    caseId: null,
    locale: from.language_code ?? null,
    body,
  };
}

/** What is neither text nor picture (a sticker, a voice) comes as empty text, which is asked back about. */
function bodyOf(message: Message, command: Command | null): Body {
  const caption = cleanText(message.caption ?? '');
  const photo = message.photo?.at(-1);
  if (photo) return { kind: 'picture', picture: photo.file_id, caption };
  if (message.document?.mime_type?.startsWith('image/')) {
    return { kind: 'picture', picture: `document:${message.document.file_id}`, caption };
  }
  if (command?.name === 'start') return { kind: 'start', ...decodeStart(command.rest) };
  if (command && isMenuCommand(command.name)) return bodyOfCommand(command.name);
  return { kind: 'text', text: cleanText(message.text ?? message.caption ?? '') };
}

interface Command {
  name: string;
  rest: string;
}

/** A command to another bot of the group is no command. */
function readCommand(text: string, self: Self): Command | null {
  const match = /^\/([a-z0-9_]{1,32})(?:@(\w+))?(?:\s+([\s\S]*))?$/i.exec(text);
  const [, name, bot, rest] = match ?? [];
  if (name === undefined || (bot && bot.toLowerCase() !== self.username.toLowerCase())) return null;
  return { name: name.toLowerCase(), rest: (rest ?? '').trim() };
}

function isAddressed(message: Message, self: Self): boolean {
  if (message.reply_to_message?.from?.id === self.id) return true;
  return (message.text ?? message.caption ?? '').toLowerCase().includes(`@${self.username.toLowerCase()}`);
}

const topicOf = (message: Pick<Message, 'is_topic_message' | 'message_thread_id'>) =>
  message.is_topic_message ? (message.message_thread_id ?? null) : null;

function placeOf(
  message: Pick<Message, 'chat' | 'is_topic_message' | 'message_thread_id' | 'reply_to_message'>,
): DeskPlace {
  const { chat, reply_to_message } = message;
  const repliesTo = reply_to_message?.message_id ?? null;
  return { group: String(chat.id), hasTopics: chat.is_forum === true, topic: topicOf(message), repliesTo };
}

const serviceFields = [
  'new_chat_members',
  'left_chat_member',
  'new_chat_title',
  'new_chat_photo',
  'delete_chat_photo',
  'group_chat_created',
  'supergroup_chat_created',
  'migrate_from_chat_id',
  'pinned_message',
  'forum_topic_created',
  'forum_topic_edited',
  'forum_topic_closed',
  'forum_topic_reopened',
  'general_forum_topic_hidden',
  'general_forum_topic_unhidden',
  'message_auto_delete_timer_changed',
] as const satisfies (keyof Message)[];

/** Telegram tells of what happened to a chat in messages too. */
const isService = (message: Message) => serviceFields.some((field) => message[field] !== undefined);
