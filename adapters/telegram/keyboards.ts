// Takes the buttons off an owner's message on Telegram once they are no longer the ones to press.
import type { Api } from 'grammy';
import type { Links } from '../wire/surroundings.ts';

export interface Keyboards {
  /** The message with these buttons is the latest now: an earlier one loses its own. */
  opened(chat: string, person: string, messageId: number): Promise<void>;
  /** One of the message's buttons was pressed. */
  pressed(chat: string, messageId: number): Promise<void>;
}

const openLink = (chat: string) => `telegram:open:${chat}`;

export function makeKeyboards(api: Api, links: Links): Keyboards {
  /** Left standing, a stale button does no harm: a press on it never acts. So a failure is no matter. */
  async function retire(chat: string, messageId: number): Promise<void> {
    await api.editMessageReplyMarkup(chat, messageId).catch(() => {});
  }
  return {
    async opened(chat, person, messageId) {
      const before = await links.get(openLink(chat));
      if (before === String(messageId)) return;
      await links.set(openLink(chat), String(messageId), `telegram:${person}`);
      if (before) await retire(chat, Number(before));
    },
    async pressed(chat, messageId) {
      if ((await links.get(openLink(chat))) === String(messageId)) await links.delete(openLink(chat));
      await retire(chat, messageId);
    },
  };
}
