// A message is handed over until it is committed; one that can never be taken does not hold up the chat.
import { describe, expect, test } from 'vitest';
import { makeLanes } from '../../../adapters/wire/lanes.ts';
import { takeSurely } from '../../../adapters/wire/take-surely.ts';
import type { IncomingMessage } from '../../../src/chat/incoming-message.ts';
import { StoreTrouble } from '../../../src/store/store.ts';

const message: IncomingMessage = {
  platform: 'telegram',
  messageId: '1',
  person: '11',
  name: 'Ann',
  role: 'owner',
  chat: '11',
  caseId: null,
  locale: null,
  body: { kind: 'text', text: 'what I wrote' },
};

function failing(times: number, error: Error) {
  const lines: string[] = [];
  const keep = (fields: object, what: string) => void lines.push(JSON.stringify({ ...fields, what }));
  let left = times;
  const receive = async () => {
    left -= 1;
    if (left >= 0) throw error;
  };
  return { receive, lines, log: { info: keep, warn: keep, error: keep } };
}

describe.concurrent('a message on its way to the inbox', () => {
  test('a database that is away is waited for', async () => {
    // As often as would be too often for a message that is at fault itself.
    const { receive, log } = failing(4, new StoreTrouble('the disk is full'));
    expect(await takeSurely(receive, message, log, new AbortController().signal)).toBe(true);
  });

  test('a message that can never be taken is given up, and its words stay out of the log', async () => {
    const { receive, log, lines } = failing(1_000, new TypeError('cannot read "what I wrote"'));
    expect(await takeSurely(receive, message, log, new AbortController().signal)).toBe(false);
    expect(lines.at(-1)).toContain('left out');
    expect(lines.join()).not.toContain('what I wrote');
  });

  test('once the program stops, a message that was not taken is not confirmed', async () => {
    const stopper = new AbortController();
    const { receive, log } = failing(1_000, new StoreTrouble('the disk is full'));
    const taking = takeSurely(receive, message, log, stopper.signal);
    stopper.abort();
    await expect(taking).rejects.toThrow('the disk is full');
  });

  test('what belongs to one chat is done in order, different chats side by side', async () => {
    const lanes = makeLanes();
    const done: string[] = [];
    const gate = Promise.withResolvers<void>();
    lanes.run('a', async () => {
      await gate.promise;
      done.push('a1');
    });
    const failed = lanes.run('a', async () => {
      done.push('a2');
      throw new Error('no matter');
    });
    lanes.run('a', async () => void done.push('a3'));
    await lanes.run('b', async () => void done.push('b1'));
    gate.resolve();
    await expect(failed).rejects.toThrow();
    await lanes.idle();
    expect(done).toEqual(['b1', 'a1', 'a2', 'a3']);
  });
});
