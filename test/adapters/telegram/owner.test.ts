// An owner's side of Telegram, over real sockets against the strict loopback server.
import type { Update } from 'grammy/types';
import { expect } from 'vitest';
import { until } from '../../loopback/until.ts';
import { test as onTelegram } from './on-telegram.ts';

const test = onTelegram.override('tipsChannel', '@tips_here').extend('labels', ({ telegram }) => {
  return (chat: number) =>
    telegram.world
      .standing(chat)
      .map(({ markup }) => markup?.inline_keyboard.flat().map((button) => button.text) ?? []);
});

test.beforeEach(async ({ bot }) => void bot);

test.afterEach(async ({ telegram }) => {
  await until('every press is answered', () => telegram.unanswered() === 0);
});

test('a typed message is answered with buttons, and a press is answered and acts', async ({
  telegram,
  texts,
  labels,
}) => {
  const ann = telegram.person(11, 'Ann');
  ann.say('0.348');
  await until('the echo', () => texts(11).includes('echo: 0.348'));
  ann.press('Yes');
  await until('the press', () => texts(11).includes('echo: [yes]'));
  await until('the old buttons are gone', () => labels(11)[0]?.length === 0);
  expect(labels(11).at(-1)).toEqual(['Yes', 'No']);
});

test('buttons of an older message go once a newer one has some', async ({ telegram, texts, labels }) => {
  const ann = telegram.person(11, 'Ann');
  ann.say('one');
  await until('the first', () => texts(11).length === 1);
  ann.say('two');
  await until('the second', () => texts(11).length === 2);
  await until(
    'only the second has buttons',
    () => labels(11)[0]?.length === 0 && labels(11)[1]?.length === 2,
  );
});

test('a start link opens the procedure and machine that it names', async ({ telegram, texts }) => {
  telegram.person(11, 'Ann').say('/start throttle-sensor_any-single');
  await until('the start', () => texts(11).includes('echo: start throttle-sensor any-single'));
});

test('a long text comes in parts that end with a sentence, with the buttons on the last', async ({
  telegram,
  texts,
  labels,
}) => {
  telegram.person(11, 'Ann').say('long');
  await until('both parts', () => texts(11).length === 2);
  expect(texts(11)[0]?.endsWith('again.')).toBe(true);
  expect(texts(11).join(' ')).toBe('This sentence is said again and again. '.repeat(150).trim());
  expect(labels(11).map((row) => row.length)).toEqual([0, 2]);
});

test('the commands of the menu steer like words, in each language', async ({ telegram, texts }) => {
  const menus = () => telegram.calls.filter(({ method }) => method === 'setMyCommands');
  await until('a menu for each language', () => menus().length === 6);
  expect(menus().map(({ body }) => body.language_code)).toEqual([undefined, 'de', 'es', 'fr', 'it', 'pt']);
  const ann = telegram.person(11, 'Ann', 'de');
  for (const command of ['/where', '/help', '/person@bench_bot', '/begin']) ann.say(command);
  const heard = ['echo: repeat', 'echo: help', 'echo: human', 'echo: start null null'];
  await until('all four', () => heard.every((text) => texts(11).includes(text)));
});

test('an edited reading comes in as an edit', async ({ telegram, texts }) => {
  const ann = telegram.person(11, 'Ann');
  const message = ann.say('0.384');
  await until('the echo', () => texts(11).length === 1);
  ann.edit(message, '0.348');
  await until('the edit', () => texts(11).includes('echo: edited to 0.348'));
});

test('a sticker is asked back about, and a name or text never becomes a mention', async ({
  telegram,
  texts,
}) => {
  const ann = telegram.person(11, 'Ann');
  ann.sendSticker();
  ann.say('call @someone_else and /stop <b>now</b>');
  await until('both', () => texts(11).length === 2);
  expect(texts(11)[0]).toBe('echo:');
  expect(texts(11)[1]).toBe('echo: call @\u2060someone_else and /stop <b>now</b>');
});

test('in a group the bot only points to the private chat, and only when it is spoken to', async ({
  telegram,
  texts,
}) => {
  const ann = telegram.person(11, 'Ann');
  const group = telegram.group(-200, { members: [11], bot: 'member' });
  ann.say('0.348', { group });
  ann.say('hello @bench_bot', { group });
  ann.say('/help', { group });
  await until('the pointer', () => texts(-200).length > 0);
  ann.say('private');
  await until('the echo', () => texts(11).length === 1);
  expect(
    telegram.world.standing(-200).map(({ text, markup }) => [text, markup?.inline_keyboard[0]?.[0]]),
  ).toEqual([
    ['I only guide in private.', { text: 'Open our chat', url: 'https://t.me/bench_bot?start=hello' }],
  ]);
});

test('an update that comes twice, or out of order, is taken once and in order', async ({
  telegram,
  texts,
}) => {
  const ann = telegram.person(11, 'Ann');
  telegram.queue.hold();
  ann.say('first');
  ann.say('second');
  const [first, second] = telegram.queue.waiting();
  telegram.queue.reorderNext((updates) => [...updates].reverse());
  telegram.queue.release();
  await until('both', () => texts(11).length === 2);
  telegram.queue.push(second as Update, first as Update);
  ann.say('third');
  await until('all', () => texts(11).includes('echo: third'));
  expect(texts(11)).toEqual(['echo: first', 'echo: second', 'echo: third']);
});

test('a tip goes to the channel with a start button that opens the private chat', async ({ telegram }) => {
  telegram.person(11, 'Ann').say('tip');
  const [tip] = await until('the tip', () => {
    const standing = telegram.world.standing('@tips_here');
    return standing.length > 0 ? standing : null;
  });
  expect(tip?.markup?.inline_keyboard).toEqual([
    [{ text: 'Start', url: 'https://t.me/bench_bot?start=throttle-sensor_any-single' }],
  ]);
});

test('what arrives while the bot is away is answered after the restart, and nothing twice', async ({
  telegram,
  bot,
  begin,
  texts,
}) => {
  const ann = telegram.person(11, 'Ann');
  ann.say('before');
  await until('the first', () => texts(11).length === 1);
  expect(await bot.stop()).toBe(0);
  ann.say('while away');
  await begin();
  await until('the second', () => texts(11).length === 2);
  expect(texts(11)).toEqual(['echo: before', 'echo: while away']);
});
