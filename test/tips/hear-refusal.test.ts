// Holds what follows where a platform does not take a tip: the desk reads why, and the tip comes again.
import { expect, test } from 'vitest';
import { day, openChannel, tip } from './channel.ts';

const open = () => openChannel({ now: '2026-01-05T12:00:00Z', tips: [tip({ id: 'one' })] });
const why = 'telegram: the chat is not there';

test('a tip that did not get into the channel counts as not posted, and comes at its next time', () => {
  const channel = open();
  channel.advanceTo('2026-01-06T18:00:00Z');
  channel.refuse(channel.posted[0]!.message, why);
  expect(channel.desk.at(-1)?.text).toBe(
    `The tip "one" did not get into the channel: ${why}\nIt comes again, not before Fri 9 Jan, 17:30.`,
  );
  channel.advanceTo('2026-01-10T00:00:00Z');
  expect(channel.posted.map(({ at }) => new Date(at).toISOString())).toEqual([
    '2026-01-06T17:30:00.000Z',
    '2026-01-09T17:30:00.000Z',
  ]);
});

test('a channel that stays away is told once for each try, not in a circle', () => {
  const channel = open();
  for (let passed = 0; passed < 28; passed += 1) {
    const before = channel.posted.length;
    channel.advance(day);
    for (const { message } of channel.posted.slice(before)) channel.refuse(message, why);
  }
  // Four weeks, two times in each.
  expect(channel.posted).toHaveLength(8);
  expect(channel.desk).toHaveLength(8);
});

test('an earlier message of the tip stays, and its rest counts from that one', () => {
  const channel = open();
  channel.advanceTo('2026-01-13T18:00:00Z');
  expect(channel.posted).toHaveLength(2);
  channel.refuse(channel.posted[1]!.message, why);
  expect(channel.ask('')).toContain('one: posted Tue 6 Jan, 17:30, comes not before Fri 16 Jan, 17:30.');
});

test('where one of two channels has it, it is posted all the same, and the desk reads which has not', () => {
  const channel = open();
  channel.advanceTo('2026-01-06T18:00:00Z');
  channel.refuse(channel.posted[0]!.message, why, true);
  expect(channel.desk.at(-1)?.text).toBe(`The tip "one" did not get into every channel: ${why}`);
  expect(channel.ask('')).toContain('one: posted 17:30');
});

test('a change that was not taken is said; the tip stays as it was', () => {
  const channel = open();
  channel.advance(2 * day);
  channel.ask('one');
  channel.ask('withdraw one');
  channel.refuse(channel.edits[0]!, why);
  expect(channel.desk.at(-1)?.text).toBe(`The tip "one" could not be changed in the channel: ${why}`);
});

test('what could not be said to the desk is not said again', () => {
  const channel = open();
  channel.ask('');
  channel.refuse(channel.desk[0]!, why);
  expect(channel.desk).toHaveLength(1);
});
