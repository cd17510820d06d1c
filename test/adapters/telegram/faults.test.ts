// Telegram in bad weather: waits, errors, broken connections, a second poller, a revoked token.
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type LoopbackTelegram, startTelegram } from '../../loopback/telegram/server.ts';
import { until } from '../../loopback/until.ts';
import { makeFolder, type RunningBot, removeFolder, startBot } from '../start-bot.ts';

let telegram: LoopbackTelegram;
let folder: string;
let bot: RunningBot;

beforeEach(async () => {
  telegram = await startTelegram();
  folder = await makeFolder();
});

afterEach(async () => {
  await bot.stop();
  await telegram.close();
  await removeFolder(folder);
  expect(telegram.violations).toEqual([]);
  expect(bot.log.join()).not.toContain(telegram.token);
});

async function begin() {
  bot = await startBot(folder, {
    telegram: { token: telegram.token, apiRoot: telegram.url, webhook: null, tipsChannel: null },
  });
}

const texts = (chat: number) => telegram.world.standing(chat).map(({ text }) => text);
const sendsTo = (chat: number) =>
  telegram.calls.filter(({ method, body }) => method === 'sendMessage' && Number(body.chat_id) === chat);

test('asked to wait, it waits as long as told in that chat, and goes on in the others', async () => {
  await begin();
  telegram.faults.on(({ method, body }) => method === 'sendMessage' && Number(body.chat_id) === 11, {
    kind: 'wait',
    seconds: 2,
  });
  telegram.person(11, 'Ann').say('one');
  await until('the wait', () => sendsTo(11).length === 1);
  telegram.person(12, 'Bob').say('two');
  await until('the other chat', () => texts(12).length === 1);
  expect(texts(11)).toEqual([]);
  await until('the first chat', () => texts(11).length === 1);
  // The loopback counts a call within the wait as a breach.
  expect(sendsTo(11)).toHaveLength(2);
});

test.each([
  { name: 'a bad gateway', fault: { kind: 'status' as const, status: 502 } },
  { name: 'an internal error', fault: { kind: 'status' as const, status: 500 } },
  { name: 'a connection reset before the effect', fault: { kind: 'reset' as const, after: false } },
])('$name is survived: the message comes once and in order', async ({ fault }) => {
  await begin();
  telegram.faults.on('sendMessage', fault);
  const ann = telegram.person(11, 'Ann');
  ann.say('one');
  ann.say('two');
  await until('both', () => texts(11).includes('echo: two'));
  expect(texts(11)).toEqual(['echo: one', 'echo: two']);
});

test.each([
  { name: 'a connection reset after the effect', fault: { kind: 'reset' as const, after: true } },
  { name: 'an answer that breaks off', fault: { kind: 'half-body' as const } },
])('$name loses nothing and keeps the order; Telegram has no key against the repeat', async ({ fault }) => {
  await begin();
  telegram.faults.on('sendMessage', fault);
  const ann = telegram.person(11, 'Ann');
  ann.say('one');
  ann.say('two');
  await until('both', () => texts(11).includes('echo: two'));
  expect([...new Set(texts(11))]).toEqual(['echo: one', 'echo: two']);
  expect(texts(11).length).toBeLessThanOrEqual(3);
});

test('failing polls are repeated, and what waits is fetched then', async () => {
  await begin();
  for (const status of [500, 502]) telegram.faults.on('getUpdates', { kind: 'status', status });
  telegram.faults.on('getUpdates', { kind: 'reset', after: false });
  telegram.faults.on('getUpdates', { kind: 'wait', seconds: 1 });
  telegram.person(11, 'Ann').say('one');
  telegram.person(11, 'Ann').say('two');
  await until('both', () => texts(11).length === 2);
});

test('a platform that is away at the start is waited for', async () => {
  telegram.faults.on('getMe', { kind: 'status', status: 502 }, 2);
  telegram.faults.on('deleteWebhook', { kind: 'wait', seconds: 1 });
  await begin();
  telegram.person(11, 'Ann').say('one');
  await until('the echo', () => texts(11).length === 1);
});

test('an owner who blocked the bot is not written to for ever: the desk hears of it', async () => {
  await begin();
  const eve = telegram.person(21, 'Eve');
  const group = telegram.group(-300, { members: [21] });
  eve.say('/desk open-sesame-9', { group });
  await until('the claim', () => texts(-300).length === 1);
  const ann = telegram.person(11, 'Ann');
  ann.block();
  ann.say('one');
  await until('the desk hears', () => texts(-300).some((text) => text.includes('blocked by the user')));
  expect(sendsTo(11)).toHaveLength(1);
});

test('a revoked token ends the program with its own code and a sentence', async () => {
  await begin();
  await until('it polls', () => telegram.calls.some(({ method }) => method === 'getUpdates'));
  telegram.revoke();
  telegram.person(11, 'Ann').say('one');
  expect(await bot.ended).toBe(77);
  expect(bot.said).toEqual(['Telegram does not take the token: TELEGRAM_TOKEN is wrong or was revoked.']);
});

test('a second poller that goes away again is outlasted', async () => {
  telegram.setConflict(true);
  await begin();
  telegram.person(11, 'Ann').say('one');
  await until('conflicts', () => telegram.calls.filter(({ method }) => method === 'getUpdates').length >= 2);
  telegram.setConflict(false);
  await until('the echo', () => texts(11).length === 1);
});

test('a second poller that stays ends the program with its own code', async () => {
  telegram.setConflict(true);
  await begin();
  expect(await bot.ended).toBe(75);
  expect(bot.said).toHaveLength(1);
});

test('a press that Telegram holds for too old still acts', async () => {
  await begin();
  const ann = telegram.person(11, 'Ann');
  ann.say('one');
  await until('the echo', () => texts(11).length === 1);
  telegram.faults.on('answerCallbackQuery', { kind: 'status', status: 400 });
  ann.press('Yes');
  await until('the press', () => texts(11).includes('echo: [yes]'));
});
