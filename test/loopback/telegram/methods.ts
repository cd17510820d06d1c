// What each method of the loopback Telegram does, and the errors by which the real one refuses.
import type { InlineKeyboardMarkup } from 'grammy/types';
import type { Group, Sent, World } from './world.ts';

/** An answer that Telegram gives with `ok: false`. */
export class Refusal extends Error {
  readonly code: number;
  readonly parameters: Record<string, unknown> | undefined;
  constructor(code: number, description: string, parameters?: Record<string, unknown>) {
    super(description);
    this.code = code;
    this.parameters = parameters;
  }
}

type Fields = Record<string, unknown>;
type Answer = (fields: Fields, files: Map<string, Buffer>) => unknown;

const bad = (why: string) => new Refusal(400, `Bad Request: ${why}`);

export function makeMethods(world: World, answerPress: (query: string) => boolean): Record<string, Answer> {
  function reach(chatId: number | string): Group | null {
    const chat = world.chatOf(chatId);
    if (chat === null) throw bad('chat not found');
    if (chat.type === 'private' && !world.people.get(chat.id)?.open) {
      throw new Refusal(403, 'Forbidden: bot was blocked by the user');
    }
    const group = world.groups.get(chat.id) ?? null;
    if (group?.movedTo) {
      const parameters = { migrate_to_chat_id: group.movedTo };
      throw new Refusal(400, 'Bad Request: group chat was upgraded to a supergroup chat', parameters);
    }
    if (group?.bot === 'left') throw new Refusal(403, 'Forbidden: bot was kicked from the supergroup chat');
    return group;
  }

  function post(fields: Fields, text: string, photo: Sent['photo']): unknown {
    const { chat_id, message_thread_id, reply_parameters, reply_markup } = fields as {
      chat_id: number | string;
      message_thread_id?: number;
      reply_parameters?: { message_id: number };
      reply_markup?: InlineKeyboardMarkup;
    };
    const group = reach(chat_id);
    if (message_thread_id !== undefined && !group?.topics.has(message_thread_id)) {
      throw bad('message thread not found');
    }
    const one: Sent = {
      chat: String(chat_id),
      messageId: world.nextMessageId(),
      text,
      photo,
      topic: message_thread_id ?? null,
      repliesTo: reply_parameters?.message_id ?? null,
      markup: reply_markup ?? null,
      edits: 0,
      deleted: false,
    };
    world.sent.push(one);
    return show(one);
  }

  function show(one: Sent): unknown {
    return {
      message_id: one.messageId,
      date: Math.floor(Date.now() / 1000),
      chat: world.chatOf(one.chat),
      from: world.bot,
      ...(one.photo === null ? { text: one.text } : { caption: one.text, photo: [] }),
      ...(one.markup ? { reply_markup: one.markup } : {}),
    };
  }

  function find(fields: Fields): Sent {
    const { chat_id, message_id } = fields as { chat_id: number | string; message_id: number };
    reach(chat_id);
    const one = world.standing(chat_id).find(({ messageId }) => messageId === message_id);
    if (!one) throw bad('message to edit not found');
    return one;
  }

  function change(one: Sent, changed: Partial<Sent>): unknown {
    const before = JSON.stringify([one.text, one.markup]);
    const after = { ...one, ...changed };
    if (changed.photo === undefined && JSON.stringify([after.text, after.markup]) === before) {
      throw bad(
        'message is not modified: specified new message content and reply markup are exactly the same',
      );
    }
    Object.assign(one, changed, { edits: one.edits + 1 });
    return show(one);
  }

  const shown = (markup: InlineKeyboardMarkup | undefined) =>
    markup && markup.inline_keyboard.length > 0 ? markup : null;

  const upload = (value: string, files: Map<string, Buffer>) =>
    value.startsWith('attach://') ? (files.get(value.slice('attach://'.length)) ?? null) : value;

  return {
    getMe: () => ({ ...world.bot, can_join_groups: true, can_read_all_group_messages: false }),
    getWebhookInfo: () => ({ url: '', has_custom_certificate: false, pending_update_count: 0 }),
    setMyCommands: () => true,
    sendMessage: (fields) => post(fields, (fields as { text: string }).text, null),
    sendPhoto: (fields, files) => {
      const { photo, caption } = fields as { photo: string; caption?: string };
      const bytes = upload(photo, files);
      if (bytes === null) throw bad('there is no photo in the request');
      return post(fields, caption ?? '', bytes);
    },
    sendDocument: (fields) => {
      const { document, caption } = fields as { document: string; caption?: string };
      return post(fields, caption ?? '', document);
    },
    editMessageText: (fields) => {
      const { text, reply_markup } = fields as { text: string; reply_markup?: InlineKeyboardMarkup };
      const one = find(fields);
      if (one.photo !== null) throw bad('there is no text in the message to edit');
      return change(one, { text, markup: shown(reply_markup) });
    },
    editMessageMedia: (fields, files) => {
      const { media, reply_markup } = fields as {
        media: { media: string; caption?: string };
        reply_markup?: InlineKeyboardMarkup;
      };
      const photo = upload(media.media, files);
      if (photo === null) throw bad('there is no photo in the request');
      return change(find(fields), { text: media.caption ?? '', photo, markup: shown(reply_markup) });
    },
    editMessageReplyMarkup: (fields) => {
      const { reply_markup } = fields as { reply_markup?: InlineKeyboardMarkup };
      return change(find(fields), { markup: shown(reply_markup) });
    },
    deleteMessage: (fields) => {
      find(fields).deleted = true;
      return true;
    },
    answerCallbackQuery: (fields) => {
      const { callback_query_id } = fields as { callback_query_id: string };
      if (answerPress(callback_query_id)) return true;
      throw bad('query is too old and response timeout expired or query ID is invalid');
    },
    getChatMember: (fields) => {
      const { chat_id, user_id } = fields as { chat_id: number; user_id: number };
      const group = reach(chat_id);
      const person = world.people.get(user_id);
      if (!group || !person) throw bad('user not found');
      return { status: group.members.has(user_id) ? 'member' : 'left', user: world.userOf(person) };
    },
    getChat: (fields) => world.chatOf((fields as { chat_id: number }).chat_id),
    createForumTopic: (fields) => {
      const { chat_id, name } = fields as { chat_id: number; name: string };
      const group = reach(chat_id);
      if (!group?.hasTopics) throw bad('the chat is not a forum');
      if (group.bot !== 'administrator') throw bad('not enough rights to create a topic');
      const topic = world.nextMessageId();
      group.topics.set(topic, name);
      return { message_thread_id: topic, name, icon_color: 7322096 };
    },
    getFile: (fields) => {
      const { file_id } = fields as { file_id: string };
      if (!world.files.has(file_id)) throw bad('invalid file_id');
      return { file_id, file_unique_id: file_id, file_path: `photos/${file_id}.jpg` };
    },
  };
}
