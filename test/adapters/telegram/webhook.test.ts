// Telegram by webhook: the secret, the size of a body, the health endpoint, and 200 only once committed.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect } from 'vitest';
import { until } from '../../loopback/until.ts';
import { echo } from '../echo.ts';
import { test as onTelegram } from './on-telegram.ts';

const secret = 'a_secret-of-ours';

const test = onTelegram
  .extend('port', () => freePort())
  /** So many turns fail, as on a full disk. */
  .extend('disk', () => ({ failing: 0 }))
  .override('bot', async ({ telegram, begin, port, disk }) => {
    const webhook = { url: `http://127.0.0.1:${port}/updates`, secret, port };
    const bot = await begin({ webhook }, (loaded, arrival) => {
      disk.failing -= 1;
      if (disk.failing >= 0) throw Object.assign(new Error('the disk is full'), { code: 'ENOSPC' });
      return echo(loaded, arrival);
    });
    await until('the webhook is set', () => telegram.queue.webhook());
    return bot;
  })
  .extend(
    'ask',
    ({ port }) =>
      (path: string) =>
        fetch(`http://127.0.0.1:${port}${path}`),
  )
  .extend('post', ({ port }) => (body: string, given: string | null = secret, path = '/updates') => {
    return fetch(`http://127.0.0.1:${port}${path}`, {
      method: 'POST',
      headers: given === null ? {} : { 'x-telegram-bot-api-secret-token': given },
      body,
    });
  });

test.beforeEach(async ({ bot }) => void bot);

test('posted updates are taken in order, and one that is posted twice once', async ({
  telegram,
  texts,
  post,
}) => {
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

test('what could not be committed is not confirmed, and taken once it can be', async ({
  telegram,
  bot,
  texts,
  disk,
}) => {
  disk.failing = 3;
  telegram.person(11, 'Ann').say('one');
  await until('the echo', () => texts(11).length === 1);
  expect(bot.log.join()).toContain('could not be taken yet');
});

test('a missing or wrong secret, another path, no JSON and a huge body are turned away', async ({
  post,
  ask,
}) => {
  expect((await post('{}', null)).status).toBe(401);
  expect((await post('{}', 'a_secret-of-ourz')).status).toBe(401);
  expect((await post('{}', secret, '/other')).status).toBe(404);
  expect((await post('no json')).status).toBe(400);
  expect((await post('{"no":"update"}')).status).toBe(400);
  expect((await post('x'.repeat(2_000_000))).status).toBe(413);
  expect((await ask('/updates')).status).toBe(405);
});

test('the health endpoint answers who watches over it', async ({ ask }) => {
  const answer = await ask('/health');
  expect([answer.status, await answer.json()]).toEqual([200, { ok: true }]);
});

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
  const { port: free } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return free;
}
