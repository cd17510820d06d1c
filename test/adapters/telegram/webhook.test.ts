// Telegram by webhook: the secret, the size of a body, the health endpoint, and 200 only once committed.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type LoopbackTelegram, startTelegram } from '../../loopback/telegram/server.ts';
import { until } from '../../loopback/until.ts';
import { echo } from '../echo.ts';
import { makeFolder, type RunningBot, removeFolder, startBot } from '../start-bot.ts';

const secret = 'a_secret-of-ours';

let telegram: LoopbackTelegram;
let folder: string;
let bot: RunningBot;
let port: number;
let failing: number;

beforeEach(async () => {
  telegram = await startTelegram();
  folder = await makeFolder();
  port = await freePort();
  failing = 0;
  const url = `http://127.0.0.1:${port}/updates`;
  const webhook = { url, secret, port };
  const settings = { telegram: { token: telegram.token, apiRoot: telegram.url, webhook, tipsChannel: null } };
  bot = await startBot(folder, settings, (loaded, arrival) => {
    if (failing > 0) {
      failing -= 1;
      throw Object.assign(new Error('the disk is full'), { code: 'ENOSPC' });
    }
    return echo(loaded, arrival);
  });
  await until('the webhook is set', () => telegram.queue.webhook());
});

afterEach(async () => {
  await bot.stop();
  await telegram.close();
  await removeFolder(folder);
  expect(telegram.violations).toEqual([]);
});

const texts = (chat: number) => telegram.world.standing(chat).map(({ text }) => text);

const post = (body: string, given: string | null = secret, path = '/updates') =>
  fetch(`http://127.0.0.1:${port}${path}`, {
    method: 'POST',
    headers: given === null ? {} : { 'x-telegram-bot-api-secret-token': given },
    body,
  });

test('posted updates are taken in order, and one that is posted twice once', async () => {
  const ann = telegram.person(11, 'Ann');
  ann.say('one');
  ann.say('two');
  await until('both', () => texts(11).length === 2);
  const update = {
    update_id: 1,
    message: {
      message_id: 9,
      date: 1,
      chat: { id: 11, type: 'private' },
      from: { id: 11, is_bot: false, first_name: 'Ann' },
      text: 'again',
    },
  };
  for (let time = 0; time < 2; time += 1) expect((await post(JSON.stringify(update))).status).toBe(200);
  await until('once', () => texts(11).length === 3);
  expect(texts(11)).toEqual(['echo: one', 'echo: two', 'echo: again']);
});

test('what could not be committed is not confirmed, and taken once it can be', async () => {
  failing = 3;
  telegram.person(11, 'Ann').say('one');
  await until('the echo', () => texts(11).length === 1);
  expect(bot.log.join()).toContain('could not be taken yet');
});

test('a missing or wrong secret, another path, no JSON and a huge body are turned away', async () => {
  expect((await post('{}', null)).status).toBe(401);
  expect((await post('{}', 'a_secret-of-ourz')).status).toBe(401);
  expect((await post('{}', secret, '/other')).status).toBe(404);
  expect((await post('no json')).status).toBe(400);
  expect((await post('{"no":"update"}')).status).toBe(400);
  expect((await post('x'.repeat(2_000_000))).status).toBe(413);
  expect((await fetch(`http://127.0.0.1:${port}/updates`)).status).toBe(405);
});

test('the health endpoint answers who watches over it', async () => {
  const answer = await fetch(`http://127.0.0.1:${port}/health`);
  expect([answer.status, await answer.json()]).toEqual([200, { ok: true }]);
});

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
  const { port: free } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return free;
}
