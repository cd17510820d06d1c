// The doctor on loopback platforms: what it finds right, and what it says to do.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { doctor } from '../../src/commands/doctor.ts';
import { makeFolder, removeFolder } from '../adapters/start-bot.ts';
import { type LoopbackDiscord, startDiscord } from '../loopback/discord/server.ts';
import { type LoopbackTelegram, startTelegram } from '../loopback/telegram/server.ts';

let telegram: LoopbackTelegram;
let discord: LoopbackDiscord;
let folder: string;

beforeEach(async () => {
  telegram = await startTelegram();
  discord = await startDiscord();
  folder = await makeFolder();
  for (const [name, value] of Object.entries({
    TELEGRAM_TOKEN: telegram.token,
    TELEGRAM_API_ROOT: telegram.url,
    DISCORD_TOKEN: discord.token,
    DISCORD_API_ROOT: discord.url,
    DATA_DIR: folder,
  })) {
    vi.stubEnv(name, value);
  }
});

afterEach(async () => {
  vi.unstubAllEnvs();
  await telegram.close();
  await discord.close();
  await removeFolder(folder);
});

async function examine() {
  let text = '';
  const code = await doctor([], { write: (more) => (text += more) });
  return { code, text };
}

test('where everything is there, each line says so', async () => {
  const { code, text } = await examine();
  expect(text).not.toContain('WRONG');
  for (const line of [
    'right  content: sound',
    'right  fonts: there',
    'right  database: opens',
    'right  Telegram token: the bot is @bench_bot',
    'right  Telegram updates: fetched by polling, 0 waiting',
    'right  Discord token: the bot is bench',
    'right  Discord intents: message content is on',
    'right  clock: agrees with Telegram',
    'right  clock: agrees with Discord',
    'note   desk: not claimed yet. Set DESK_CODE',
  ]) {
    expect(text).toContain(line);
  }
  expect(code).toBe(0);
});

test('a token that is refused is named, with what to do, and never shown', async () => {
  telegram.revoke();
  discord.revoke();
  const { code, text } = await examine();
  expect(text).toContain('WRONG  Telegram token: not accepted.');
  expect(text).toContain('WRONG  Discord token: not accepted. Reset the token in the developer portal');
  expect(text).not.toContain(telegram.token);
  expect(code).toBe(78);
});

test('mistakes in the settings are said before anything is tried', async () => {
  vi.stubEnv('LOG_LEVEL', 'loud');
  const { code, text } = await examine();
  expect(text).toContain('WRONG  settings: LOG_LEVEL is one of');
  expect([code, telegram.calls.length]).toEqual([78, 0]);
});
