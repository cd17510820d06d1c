// The chats, people and messages of the loopback Telegram, and what its bot has been told of them.
import type { Chat, InlineKeyboardMarkup, User } from 'grammy/types';

export interface Person {
  id: number;
  name: string;
  language: string;
  /** Started the chat with the bot, and did not block it. */
  open: boolean;
}

export interface Group {
  id: number;
  title: string;
  hasTopics: boolean;
  members: Set<number>;
  bot: 'administrator' | 'member' | 'left';
  topics: Map<number, string>;
  /** Set once the group moved. */
  movedTo: number | null;
}

/** A message of the bot's, as it stands now. */
export interface Sent {
  chat: string;
  messageId: number;
  text: string;
  photo: Buffer | string | null;
  topic: number | null;
  repliesTo: number | null;
  markup: InlineKeyboardMarkup | null;
  edits: number;
  deleted: boolean;
}

export interface World {
  bot: User & { is_bot: true; username: string };
  people: Map<number, Person>;
  groups: Map<number, Group>;
  channels: Set<string>;
  sent: Sent[];
  files: Map<string, Buffer>;
  nextMessageId(): number;
  nextUpdateId(): number;
  chatOf(id: number | string): Chat | null;
  userOf(person: Person): User;
  /** The bot's standing messages in a chat, oldest first. */
  standing(chat: number | string): Sent[];
}

export function makeWorld(): World {
  let messageId = 100;
  let updateId = 5_000;
  const people = new Map<number, Person>();
  const groups = new Map<number, Group>();
  const channels = new Set<string>();
  const sent: Sent[] = [];
  return {
    bot: { id: 77, is_bot: true, first_name: 'Bench', username: 'bench_bot' },
    people,
    groups,
    channels,
    sent,
    files: new Map(),
    nextMessageId: () => ++messageId,
    nextUpdateId: () => ++updateId,
    chatOf(id) {
      const person = people.get(Number(id));
      if (person) return { id: person.id, type: 'private', first_name: person.name };
      const group = groups.get(Number(id));
      if (group) {
        const { title } = group;
        return { id: group.id, type: 'supergroup', title, ...(group.hasTopics ? { is_forum: true } : {}) };
      }
      return channels.has(String(id)) ? { id: -1001, type: 'channel', title: 'Tips' } : null;
    },
    userOf: ({ id, name, language }) => ({
      id,
      is_bot: false,
      first_name: name,
      language_code: language,
    }),
    standing: (chat) => sent.filter((one) => one.chat === String(chat) && !one.deleted),
  };
}
