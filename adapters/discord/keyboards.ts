// Takes the buttons off an owner's message on Discord once they are no longer the ones to press.
import { type REST, Routes } from 'discord.js';
import type { Links } from '../wire/surroundings.ts';

export interface Keyboards {
  /** The message with these buttons is the latest now: an earlier one loses its own. */
  opened(chat: string, person: string, channel: string, id: string, messageId: string): Promise<void>;
  /** One of the message's buttons was pressed. */
  pressed(chat: string, channel: string, id: string): Promise<void>;
  /** Whether our message with this id is the one whose buttons stand. */
  stands(chat: string, messageId: string): Promise<boolean>;
}

interface Open {
  channel: string;
  id: string;
  messageId: string;
}

const openLink = (chat: string) => `discord:open:${chat}`;

export function makeKeyboards(rest: REST, links: Links): Keyboards {
  async function read(chat: string): Promise<Open | null> {
    const value = await links.get(openLink(chat));
    return value === undefined ? null : JSON.parse(value);
  }
  /** Left standing, a stale button does no harm: a press on it never acts. So a failure is no matter. */
  async function retire(channel: string, id: string): Promise<void> {
    const body = { components: [], allowed_mentions: { parse: [] } };
    await rest.patch(Routes.channelMessage(channel, id), { body }).catch(() => {});
  }
  return {
    async opened(chat, person, channel, id, messageId) {
      const before = await read(chat);
      if (before?.id === id) return;
      await links.set(openLink(chat), JSON.stringify({ channel, id, messageId }), `discord:${person}`);
      if (before) await retire(before.channel, before.id);
    },
    async pressed(chat, channel, id) {
      if ((await read(chat))?.id === id) await links.delete(openLink(chat));
      await retire(channel, id);
    },
    stands: async (chat, messageId) => (await read(chat))?.messageId === messageId,
  };
}
