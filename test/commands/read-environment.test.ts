// The settings of the bot: what they become, and the sentence for each mistake.
import { expect, test } from 'vitest';
import { readEnvironment } from '../../src/commands/read-environment.ts';

const sound = { TELEGRAM_TOKEN: '77:abc', DISCORD_TOKEN: 'x.y.z' };

test('two tokens are enough: everything else has a sensible default', () => {
  expect(readEnvironment(sound)).toEqual({
    settings: {
      telegram: { token: '77:abc', apiRoot: 'https://api.telegram.org', webhook: null, tipsChannel: null },
      discord: { token: 'x.y.z', apiRoot: 'https://discord.com/api', tipsChannel: null },
      databaseUrl: null,
      folder: 'data',
      deskCode: null,
      healthPort: null,
      logLevel: 'info',
    },
  });
});

test('one platform alone is normal, and a setting that is left empty is not set', () => {
  const read = readEnvironment({ TELEGRAM_TOKEN: '77:abc', DISCORD_TOKEN: '', DESK_CODE: ' ' });
  expect(read).toMatchObject({ settings: { discord: null, deskCode: null } });
});

test.each([
  { port: undefined, url: 'https://bot.example.org/x', expected: 443 },
  { port: undefined, url: 'https://bot.example.org:8443/x', expected: 8443 },
  { port: undefined, url: 'http://127.0.0.1:9000/x', expected: 9000 },
  { port: '8080', url: 'https://bot.example.org/x', expected: 8080 },
])('the webhook at $url with PORT $port listens on $expected', ({ port, url, expected }) => {
  const read = readEnvironment({
    ...sound,
    TELEGRAM_WEBHOOK_URL: url,
    TELEGRAM_WEBHOOK_SECRET: 's',
    PORT: port,
  });
  expect(read).toMatchObject({
    settings: { healthPort: null, telegram: { webhook: { url, secret: 's', port: expected } } },
  });
});

test('without a webhook, PORT is the health endpoint’s', () => {
  expect(readEnvironment({ ...sound, PORT: '8080' })).toMatchObject({ settings: { healthPort: 8080 } });
});

test.each([
  { set: {}, name: 'nothing at all', says: 'There is nothing to start' },
  {
    set: { ...sound, TELEGRAM_TOKEN: '77:a b' },
    name: 'a token with a blank',
    says: 'TELEGRAM_TOKEN holds a blank',
  },
  {
    set: { ...sound, DISCORD_TOKEN: 'a/b' },
    name: 'a token with a slash',
    says: 'DISCORD_TOKEN holds a blank or a slash',
  },
  {
    set: { ...sound, TELEGRAM_API_ROOT: 'localhost' },
    name: 'an address without its kind',
    says: 'TELEGRAM_API_ROOT is no web address',
  },
  {
    set: { ...sound, TELEGRAM_WEBHOOK_URL: 'http://bot.example.org/x', TELEGRAM_WEBHOOK_SECRET: 's' },
    name: 'a webhook without encryption',
    says: 'must begin with https',
  },
  {
    set: { ...sound, TELEGRAM_WEBHOOK_URL: 'https://bot.example.org/x' },
    name: 'a webhook without a secret',
    says: 'needs TELEGRAM_WEBHOOK_SECRET',
  },
  {
    set: { ...sound, TELEGRAM_WEBHOOK_URL: 'https://a.example.org', TELEGRAM_WEBHOOK_SECRET: 'ä' },
    name: 'a secret that cannot travel',
    says: 'TELEGRAM_WEBHOOK_SECRET may hold',
  },
  { set: { ...sound, DESK_CODE: 'short' }, name: 'a code that is guessed', says: 'DESK_CODE is too short' },
  {
    set: { ...sound, DATABASE_URL: 'mysql://x' },
    name: 'another database',
    says: 'DATABASE_URL is no address of a Postgres',
  },
  { set: { ...sound, PORT: '70000' }, name: 'a port beyond the last', says: 'PORT is a number up to 65535' },
  { set: { ...sound, LOG_LEVEL: 'loud' }, name: 'an unknown log level', says: 'LOG_LEVEL is one of' },
  {
    set: { ...sound, TELEGRAM_TIPS_CHANNEL: 'tips' },
    name: 'a channel without its sign',
    says: 'TELEGRAM_TIPS_CHANNEL is a name as',
  },
  {
    set: { ...sound, DISCORD_TIPS_CHANNEL: '#tips' },
    name: 'a channel by its name',
    says: 'DISCORD_TIPS_CHANNEL is the channel’s id',
  },
])('$name is said in a sentence', ({ set, says }) => {
  const read = readEnvironment(set);
  const mistakes = 'mistakes' in read ? read.mistakes : [];
  expect(mistakes).toHaveLength(1);
  expect(mistakes[0]).toContain(says);
});

test('several mistakes are said at once', () => {
  const read = readEnvironment({ PORT: 'x', LOG_LEVEL: 'loud' });
  expect('mistakes' in read && read.mistakes).toHaveLength(3);
});
