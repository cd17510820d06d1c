// What becomes of one message as Discord answers the call that posts it, from single calls as the real address would answer them.
import { REST } from 'discord.js';
import nock from 'nock';
import { afterAll, afterEach, beforeEach, expect, test } from 'vitest';
import { type Sending, send } from '../../../adapters/discord/send.ts';
import type { Sendable } from '../../../src/chat/adapter.ts';

const channel = '300000000000000001';

// The library asks through its own HTTP client, which nock does not see; it takes Node's fetch as well.
const rest = new REST({
  retries: 0,
  rejectOnRateLimit: ['/channels'],
  makeRequest: fetch as never,
}).setToken('secret');

const sending = {
  rest,
  self: '1',
  tipsChannel: channel,
  seen: { sent: () => {}, find: () => undefined },
  around: { words: { say: () => 'Type the reading' } },
  caughtUp: async () => {},
} as unknown as Sending;

const sendable: Sendable = {
  message: {
    id: 'c1-1',
    edit: 0,
    to: { kind: 'tips' },
    text: 'One tip.',
    choices: [],
    picture: null,
    facts: {},
  },
  picture: null,
  sentParts: [],
  perhapsSent: false,
};

const posted = () =>
  nock('https://discord.com').post(`/api/v10/channels/${channel}/messages`, (body) => {
    // enforce_nonce makes Discord drop a repeat: its reference, "Create Message".
    return (
      body.content === 'One tip.' && body.enforce_nonce === true && body.allowed_mentions.parse.length === 0
    );
  });

beforeEach(() => {
  if (!nock.isActive()) nock.activate();
  nock.disableNetConnect();
});
// Other files that share this process speak over real sockets.
afterAll(() => nock.restore());

afterEach(() => {
  expect(nock.isDone()).toBe(true);
  nock.cleanAll();
  nock.enableNetConnect();
});

test('a message that was taken is sent, and its part is named after the channel and its id there', async () => {
  posted().reply(200, { id: '42' });
  expect(await send(sendable, sending)).toEqual({ kind: 'sent', platformIds: [`${channel}/42`] });
});

test('one whose wait was said is tried again after it', async () => {
  // As in Discord's reference, "Rate Limits": seconds, as the header and as the body's retry_after.
  posted().reply(
    429,
    { message: 'You are being rate limited.', retry_after: 3.5, global: false },
    { 'retry-after': '4', 'x-ratelimit-scope': 'user', 'x-ratelimit-reset-after': '3.5' },
  );
  const outcome = await send(sendable, sending);
  expect(outcome).toMatchObject({ kind: 'retry', scope: 'chat', sentParts: [], why: 'Discord asks to wait' });
  if (outcome.kind === 'retry') expect(outcome.waitMs).toBeGreaterThanOrEqual(3_500);
});
