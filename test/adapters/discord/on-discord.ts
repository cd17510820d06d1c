// For one test, a loopback Discord and the bot on it; behind the test both are gone, no rule was broken, and no token logged.
import { expect, test as plain } from 'vitest';
import type { Decide } from '../../../src/store/store.ts';
import { type LoopbackDiscord, startDiscord } from '../../loopback/discord/server.ts';
import { until } from '../../loopback/until.ts';
import { makeHome } from '../start-bot.ts';

export type Person = ReturnType<LoopbackDiscord['person']>;

/** What the bot said to a person directly, as it stands there now. */
export const heard = (person: Person) => person.heard().map(({ content }) => content);

export const test = plain
  .extend('heartbeatMs', 10_000)
  .extend('discord', async ({ heartbeatMs }, { onCleanup }) => {
    const discord = await startDiscord({ heartbeatMs });
    onCleanup(async () => {
      await discord.close();
      expect(discord.violations).toEqual([]);
    });
    return discord;
  })
  .extend('tipsChannel', null as string | null)
  /** Starts the bot, also where it will not come to be connected. */
  .extend('start', async ({ discord, tipsChannel }, { onCleanup }) => {
    const home = await makeHome();
    onCleanup(async () => {
      await home.leave();
      expect(home.logged()).not.toContain(discord.token);
    });
    return (decide?: Decide) => {
      const { token, url: apiRoot } = discord;
      return home.start({ discord: { token, apiRoot, tipsChannel } }, decide);
    };
  })
  /** Starts it and waits until it is connected; after a stop once more, with what it has kept. */
  .extend('begin', ({ start }) => async (decide?: Decide) => {
    const bot = await start(decide);
    await until('the session', () => bot.log.some((line) => line.includes('Discord is ready')));
    return bot;
  })
  .extend('bot', ({ begin }) => begin());
