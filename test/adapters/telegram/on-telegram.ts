// For one test, a loopback Telegram and the bot on it; behind the test both are gone, no rule was broken, and no token logged.
import { expect, test as plain } from 'vitest';
import type { TelegramSettings } from '../../../src/commands/read-environment.ts';
import type { Decide } from '../../../src/store/store.ts';
import { startTelegram } from '../../loopback/telegram/server.ts';
import { makeHome } from '../start-bot.ts';

export const test = plain
  // biome-ignore lint/correctness/noEmptyPattern: vitest reads from the pattern what is needed first
  .extend('telegram', async ({}, { onCleanup }) => {
    const telegram = await startTelegram();
    onCleanup(async () => {
      await telegram.close();
      expect(telegram.violations).toEqual([]);
    });
    return telegram;
  })
  .extend('tipsChannel', null as string | null)
  /** Starts the bot; after a stop once more, with what it has kept. */
  .extend('begin', async ({ telegram, tipsChannel }, { onCleanup }) => {
    if (tipsChannel !== null) telegram.world.channels.add(tipsChannel);
    const home = await makeHome();
    onCleanup(async () => {
      await home.leave();
      expect(home.logged()).not.toContain(telegram.token);
    });
    return (settings: Partial<TelegramSettings> = {}, decide?: Decide) => {
      const { token, url: apiRoot } = telegram;
      return home.start({ telegram: { token, apiRoot, webhook: null, tipsChannel, ...settings } }, decide);
    };
  })
  .extend('bot', ({ begin }) => begin())
  /** What the bot said in a chat, as it stands there now. */
  .extend('texts', ({ telegram }) => {
    return (chat: number) => telegram.world.standing(chat).map(({ text }) => text);
  });
