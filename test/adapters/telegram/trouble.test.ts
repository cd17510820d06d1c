// What each kind of refusal by Telegram means, read from single calls as the real address would answer them.
import { Api } from 'grammy';
import nock from 'nock';
import { afterAll, afterEach, beforeEach, expect, test } from 'vitest';
import { nativeFetch } from '../../../adapters/telegram/native-fetch.ts';
import { readTrouble } from '../../../adapters/telegram/trouble.ts';

const token = '77:SECRET';
const api = new Api(token, { fetch: nativeFetch as never });

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

const refuse = (code: number, description: string, parameters = {}) =>
  nock('https://api.telegram.org')
    .post(`/bot${token}/sendMessage`)
    .reply(code, { ok: false, error_code: code, description, parameters });

const trouble = () => api.sendMessage(11, 'text').then(() => null, readTrouble);

// The descriptions are those that the public Bot API server answers with.
test.each([
  {
    code: 429,
    says: 'Too Many Requests: retry after 7',
    parameters: { retry_after: 7 },
    means: { kind: 'wait', ms: 7_000 },
  },
  { code: 401, says: 'Unauthorized', means: { kind: 'revoked' } },
  {
    code: 403,
    says: 'Forbidden: bot was blocked by the user',
    means: { kind: 'refused', why: '403: Forbidden: bot was blocked by the user' },
  },
  {
    code: 400,
    says: 'Bad Request: group chat was upgraded to a supergroup chat',
    parameters: { migrate_to_chat_id: -1009 },
    means: { kind: 'migrated', chat: '-1009' },
  },
  { code: 400, says: 'Bad Request: message thread not found', means: { kind: 'topic-gone' } },
  { code: 400, says: 'Bad Request: TOPIC_DELETED', means: { kind: 'topic-gone' } },
  { code: 400, says: 'Bad Request: message to edit not found', means: { kind: 'message-gone' } },
  {
    code: 400,
    says: 'Bad Request: message is not modified: specified new message content',
    means: { kind: 'unchanged' },
  },
  { code: 400, says: 'Bad Request: the chat is not a forum', means: { kind: 'no-topics' } },
  { code: 400, says: 'Bad Request: not enough rights to create a topic', means: { kind: 'no-topics' } },
  {
    code: 409,
    says: 'Conflict: terminated by other getUpdates request',
    means: { kind: 'conflict', webhook: false },
  },
  { code: 500, says: 'Internal Server Error', means: { kind: 'passing', why: '500: Internal Server Error' } },
])('$code "$says" means $means.kind', async ({ code, says, parameters, means }) => {
  refuse(code, says, parameters);
  expect(await trouble()).toEqual(means);
});

test('a connection that fails never shows the token', async () => {
  nock('https://api.telegram.org')
    .post(/.*/)
    .replyWithError(Object.assign(new Error(`at ${token}`), { code: 'ECONNRESET' }));
  const found = await trouble();
  expect(found?.kind).toBe('passing');
  expect(JSON.stringify(found)).not.toContain('SECRET');
});
