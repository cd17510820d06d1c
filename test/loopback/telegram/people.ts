// People who use the loopback Telegram in tests: they write, press, send photos, edit, and join or leave groups.
import type { CallbackQuery, Message, Update } from 'grammy/types';
import type { UpdateQueue } from './queue.ts';
import type { Group, Person, Sent, World } from './world.ts';

export interface Where {
  group?: Group;
  topic?: number;
  repliesTo?: Sent;
}

export function makeActors(
  world: World,
  queue: UpdateQueue,
  presses: Map<string, { at: number; answered: boolean }>,
) {
  function person(id: number, name: string, language = 'en') {
    const one: Person = { id, name, language, open: true };
    world.people.set(id, one);
    return {
      id,
      person: one,
      say: (text: string, where: Where = {}) => push(one, { text, ...entitiesOf(text) }, where),
      sendPhoto(fileId: string, caption = '') {
        world.files.set(fileId, Buffer.from(fileId));
        const photo = [{ file_id: fileId, file_unique_id: fileId, width: 800, height: 600 }];
        return push(one, { photo, ...(caption ? { caption } : {}) }, {});
      },
      sendSticker: () => push(one, { sticker: { emoji: '🔧' } } as never, {}),
      edit(message: Message, text: string) {
        const edited = { ...message, text, edit_date: Math.floor(Date.now() / 1000) };
        queue.push({ update_id: world.nextUpdateId(), edited_message: edited } as Update);
      },
      /** Presses the button with this label on a message of the bot's; the latest that has it unless one is named. */
      press: (label: string, on?: Sent) => press(one, label, on),
      block: () => {
        one.open = false;
      },
      heard: () => world.standing(id),
    };
  }

  function push(one: Person, content: Partial<Message>, where: Where): Message {
    const chat = world.chatOf(where.group?.id ?? one.id);
    const message = {
      message_id: world.nextMessageId(),
      date: Math.floor(Date.now() / 1000),
      chat,
      from: world.userOf(one),
      ...(where.topic ? { message_thread_id: where.topic, is_topic_message: true } : {}),
      ...(where.repliesTo
        ? { reply_to_message: { message_id: where.repliesTo.messageId, chat, date: 1, from: world.bot } }
        : {}),
      ...content,
    } as Message;
    queue.push({ update_id: world.nextUpdateId(), message } as Update);
    return message;
  }

  function press(one: Person, label: string, on?: Sent): string {
    const named = (sent: Sent) => sent.markup?.inline_keyboard.flat().find((button) => button.text === label);
    const seen = on ?? world.sent.filter((sent) => !sent.deleted && canSee(one, sent) && named(sent)).at(-1);
    const button = seen && named(seen);
    if (!seen || !button || !('callback_data' in button)) throw new Error(`no button "${label}" to press`);
    const id = `q${world.nextMessageId()}`;
    presses.set(id, { at: Date.now(), answered: false });
    const message = {
      message_id: seen.messageId,
      date: 1,
      chat: world.chatOf(seen.chat),
      from: world.bot,
      text: seen.text,
      ...(seen.topic ? { message_thread_id: seen.topic, is_topic_message: true } : {}),
    };
    const callback_query = {
      id,
      from: world.userOf(one),
      message,
      chat_instance: '1',
      data: button.callback_data,
    } as CallbackQuery;
    queue.push({ update_id: world.nextUpdateId(), callback_query } as Update);
    return id;
  }

  const canSee = (one: Person, sent: Sent) =>
    sent.chat === String(one.id) || world.groups.get(Number(sent.chat))?.members.has(one.id) === true;

  function group(
    id: number,
    options: { hasTopics?: boolean; bot?: Group['bot']; members?: number[] } = {},
  ): Group {
    const one: Group = {
      id,
      title: 'Workshop',
      hasTopics: options.hasTopics ?? true,
      members: new Set(options.members ?? []),
      bot: options.bot ?? 'administrator',
      topics: new Map(),
      movedTo: null,
    };
    world.groups.set(id, one);
    return one;
  }

  /** The group becomes another one, as Telegram does when it is upgraded. */
  function migrate(one: Group, to: number): Group {
    const moved = { ...one, id: to, topics: new Map<number, string>() };
    world.groups.set(to, moved);
    one.movedTo = to;
    return moved;
  }

  return { person, group, migrate };
}

/** Telegram finds mentions in plain text by itself. */
function entitiesOf(text: string): Partial<Message> {
  const entities = [...text.matchAll(/@\w{5,}/g)].map((match) => ({
    type: 'mention' as const,
    offset: match.index,
    length: match[0].length,
  }));
  return entities.length > 0 ? { entities } : {};
}
