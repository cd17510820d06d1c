// Telegram in bad weather: waits, errors, broken connections, a second poller, a revoked token; side by side, since these mostly wait.
import { describe, expect } from 'vitest';
import type { Fault } from '../../loopback/faults.ts';
import type { LoopbackTelegram } from '../../loopback/telegram/server.ts';
import { until } from '../../loopback/until.ts';
import { test } from './on-telegram.ts';

const sendsTo = (telegram: LoopbackTelegram, chat: number) =>
  telegram.calls.filter(({ method, body }) => method === 'sendMessage' && Number(body.chat_id) === chat);

/** Says two things, the first of which is answered into a fault, and waits for the second answer. */
async function sayTwo(telegram: LoopbackTelegram, texts: (chat: number) => string[], fault: Fault) {
  telegram.faults.on('sendMessage', fault);
  const ann = telegram.person(11, 'Ann');
  ann.say('one');
  ann.say('two');
  await until('both', () => texts(11).includes('echo: two'));
}

describe.concurrent('Telegram in bad weather', () => {
  test('asked to wait, it waits as long as told in that chat, and goes on in the others', async ({
    telegram,
    begin,
    texts,
  }) => {
    await begin();
    telegram.faults.on(({ method, body }) => method === 'sendMessage' && Number(body.chat_id) === 11, {
      kind: 'wait',
      seconds: 2,
    });
    telegram.person(11, 'Ann').say('one');
    await until('the wait', () => sendsTo(telegram, 11).length === 1);
    telegram.person(12, 'Bob').say('two');
    await until('the other chat', () => texts(12).length === 1);
    expect(texts(11)).toEqual([]);
    await until('the first chat', () => texts(11).length === 1);
    // The loopback counts a call within the wait as a breach.
    expect(sendsTo(telegram, 11)).toHaveLength(2);
  });

  test.for([
    { name: 'a bad gateway', fault: { kind: 'status' as const, status: 502 } },
    { name: 'an internal error', fault: { kind: 'status' as const, status: 500 } },
    { name: 'a connection reset before the effect', fault: { kind: 'reset' as const, after: false } },
  ])(
    '$name is survived: the message comes once and in order',
    async ({ fault }, { telegram, begin, texts }) => {
      await begin();
      await sayTwo(telegram, texts, fault);
      expect(texts(11)).toEqual(['echo: one', 'echo: two']);
    },
  );

  test.for([
    { name: 'a connection reset after the effect', fault: { kind: 'reset' as const, after: true } },
    { name: 'an answer that breaks off', fault: { kind: 'half-body' as const } },
  ])(
    '$name loses nothing and keeps the order; Telegram has no key against the repeat',
    async ({ fault }, { telegram, begin, texts }) => {
      await begin();
      await sayTwo(telegram, texts, fault);
      expect([...new Set(texts(11))]).toEqual(['echo: one', 'echo: two']);
      expect(texts(11).length).toBeLessThanOrEqual(3);
    },
  );

  test('failing polls are repeated, and what waits is fetched then', async ({ telegram, begin, texts }) => {
    await begin();
    for (const status of [500, 502]) telegram.faults.on('getUpdates', { kind: 'status', status });
    telegram.faults.on('getUpdates', { kind: 'reset', after: false });
    telegram.faults.on('getUpdates', { kind: 'wait', seconds: 1 });
    telegram.person(11, 'Ann').say('one');
    telegram.person(11, 'Ann').say('two');
    await until('both', () => texts(11).length === 2);
  });

  test('a platform that is away at the start is waited for', async ({ telegram, begin, texts }) => {
    telegram.faults.on('getMe', { kind: 'status', status: 502 }, 2);
    telegram.faults.on('deleteWebhook', { kind: 'wait', seconds: 1 });
    await begin();
    telegram.person(11, 'Ann').say('one');
    await until('the echo', () => texts(11).length === 1);
  });

  test('an owner who blocked the bot is not written to for ever: the desk hears of it', async ({
    telegram,
    begin,
    texts,
  }) => {
    await begin();
    const eve = telegram.person(21, 'Eve');
    const group = telegram.group(-300, { members: [21] });
    eve.say('/desk open-sesame-9', { group });
    await until('the claim', () => texts(-300).length === 1);
    const ann = telegram.person(11, 'Ann');
    ann.block();
    ann.say('one');
    await until('the desk hears', () => texts(-300).some((text) => text.includes('blocked by the user')));
    expect(sendsTo(telegram, 11)).toHaveLength(1);
  });

  test('a revoked token ends the program with its own code and a sentence', async ({ telegram, begin }) => {
    const bot = await begin();
    await until('it polls', () => telegram.calls.some(({ method }) => method === 'getUpdates'));
    telegram.revoke();
    telegram.person(11, 'Ann').say('one');
    expect(await bot.ended).toBe(77);
    expect(bot.said).toEqual(['Telegram does not take the token: TELEGRAM_TOKEN is wrong or was revoked.']);
  });

  test('a second poller that goes away again is outlasted', async ({ telegram, begin, texts }) => {
    telegram.setConflict(true);
    await begin();
    telegram.person(11, 'Ann').say('one');
    await until(
      'conflicts',
      () => telegram.calls.filter(({ method }) => method === 'getUpdates').length >= 2,
    );
    telegram.setConflict(false);
    await until('the echo', () => texts(11).length === 1);
  });

  test('a second poller that stays ends the program with its own code', async ({ telegram, begin }) => {
    telegram.setConflict(true);
    const bot = await begin();
    expect(await bot.ended).toBe(75);
    expect(bot.said).toHaveLength(1);
  });

  test('a press that Telegram holds for too old still acts', async ({ telegram, begin, texts }) => {
    await begin();
    const ann = telegram.person(11, 'Ann');
    ann.say('one');
    await until('the echo', () => texts(11).length === 1);
    telegram.faults.on('answerCallbackQuery', { kind: 'status', status: 400 });
    ann.press('Yes');
    await until('the press', () => texts(11).includes('echo: [yes]'));
  });
});
