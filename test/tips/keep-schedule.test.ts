// Holds what is posted by the clock against what a workshop expects of its channel: on time, rested, never at night, never in a heap.
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { quietUntil } from '../../src/tips/schedule.ts';
import { day, hour, openChannel, type Posted, tip } from './channel.ts';

const told = (posted: readonly Posted[]) =>
  posted.map((one) => `${new Date(one.at).toISOString()} ${one.tip}`);

describe('the tips that ship', () => {
  test('come out on Tuesdays and Fridays at half past five in Dublin, one after the other', () => {
    const channel = openChannel({ now: '2026-01-05T09:00:00Z' });
    channel.advance(15 * day);
    expect(told(channel.posted)).toEqual([
      '2026-01-06T17:30:00.000Z closed-stop',
      '2026-01-09T17:30:00.000Z three-decimals',
      '2026-01-13T17:30:00.000Z bars-and-revs',
      '2026-01-16T17:30:00.000Z closed-stop',
    ]);
  });

  test('keep to the wall when the clocks are changed', () => {
    const channel = openChannel({ now: '2026-03-24T12:00:00Z' });
    channel.advance(10 * day);
    expect(told(channel.posted).map((line) => line.slice(0, 16))).toEqual([
      '2026-03-24T17:30',
      '2026-03-27T17:30',
      '2026-03-31T16:30',
    ]);
  });

  test('carry their words, and a start button for their job', () => {
    const channel = openChannel({ now: '2026-01-05T09:00:00Z' });
    channel.advance(5 * day);
    expect(channel.posted.map(({ message }) => message.choices)).toEqual([
      [{ id: 'throttle-sensor/fenmoor-450', label: 'Start' }],
      [{ id: 'throttle-sensor/any-single', label: 'Start' }],
    ]);
    for (const { message } of channel.posted) {
      expect(message.to).toEqual({ kind: 'tips' });
      expect(message.text.length).toBeGreaterThan(80);
      // Every number of a text stands in its facts; these have none.
      expect(message.text).not.toMatch(/\d/);
    }
  });
});

test('a tip comes again a week later to the minute, also where the first came a moment late', () => {
  const channel = openChannel({ now: '2026-01-06T17:30:00.700Z', tips: [tip({ id: 'one' })] });
  channel.change({});
  channel.advanceTo('2026-01-09T17:30:00.700Z');
  channel.advanceTo('2026-01-16T17:30:00.000Z');
  expect(told(channel.posted)).toEqual(['2026-01-09T17:30:00.000Z one', '2026-01-16T17:30:00.000Z one']);
});

test('where the clocks went on, a week by the wall is an hour short of a week: it waits for its next day', () => {
  const days = ['sun', 'mon'] as const;
  const channel = openChannel({ now: '2026-03-21T12:00:00Z', tips: [tip({ id: 'one', days: [...days] })] });
  channel.advanceTo('2026-03-31T00:00:00Z');
  expect(told(channel.posted)).toEqual(['2026-03-22T17:30:00.000Z one', '2026-03-30T16:30:00.000Z one']);
});

test('a longer rest is kept', () => {
  const channel = openChannel({ now: '2026-01-05T09:00:00Z', tips: [tip({ id: 'one', restDays: 28 })] });
  channel.advance(60 * day);
  expect(told(channel.posted).map((line) => line.slice(0, 10))).toEqual([
    '2026-01-06',
    '2026-02-03',
    '2026-03-03',
  ]);
});

describe('after a time without the program', () => {
  test('one tip makes up for all that were missed, and the next keeps its distance', () => {
    const channel = openChannel({ now: '2026-01-05T09:00:00Z' });
    channel.advance(hour);
    // Up again on Friday at 17:29: the missed one comes at once, the one of 17:30 not right behind it.
    channel.isOffFor(Date.parse('2026-02-06T17:29:00Z') - channel.now);
    expect(told(channel.posted)).toEqual(['2026-02-06T17:29:00.000Z closed-stop']);
    channel.advance(5 * day);
    expect(told(channel.posted).slice(1)).toEqual([
      '2026-02-07T08:00:00.000Z three-decimals',
      '2026-02-10T17:30:00.000Z bars-and-revs',
    ]);
  });

  test('at night it waits for the morning', () => {
    const channel = openChannel({ now: '2026-01-05T09:00:00Z' });
    channel.advance(hour);
    channel.isOffFor(Date.parse('2026-01-08T03:00:00Z') - channel.now);
    expect(channel.posted).toEqual([]);
    channel.advance(8 * hour);
    expect(told(channel.posted)).toEqual(['2026-01-08T08:00:00.000Z closed-stop']);
  });

  test('where nothing was missed, nothing comes', () => {
    const channel = openChannel({ now: '2026-01-06T17:30:00Z' });
    channel.advance(hour);
    channel.isOffFor(2 * day);
    expect(channel.posted).toEqual([]);
  });
});

test('a first start makes up for nothing, and neither does a new tip', () => {
  const channel = openChannel({ now: '2026-01-06T18:00:00Z', tips: [tip({ id: 'one' })] });
  channel.advance(day);
  channel.advanceTo('2026-01-14T10:00:00Z');
  channel.change({ tips: [tip({ id: 'one' }), tip({ id: 'two', days: ['mon'] })] });
  channel.advanceTo('2026-01-19T16:00:00Z');
  expect(told(channel.posted)).toEqual(['2026-01-09T17:30:00.000Z one', '2026-01-16T17:30:00.000Z one']);
});

test('without a channel nothing is posted, and nobody is woken', () => {
  const channel = openChannel({ now: '2026-01-05T09:00:00Z', hasChannel: false });
  channel.advance(30 * day);
  expect(channel.posted).toEqual([]);
  expect(channel.dueAt).toBeNull();
});

test('the clock on the wall of this computer changes nothing', () => {
  const run = (today: string) => {
    vi.useFakeTimers({ now: Date.parse(today), toFake: ['Date'] });
    const channel = openChannel({ now: '2026-01-05T09:00:00Z' });
    channel.advance(40 * day);
    vi.useRealTimers();
    return told(channel.posted);
  };
  expect(run('1999-06-01T00:00:00Z')).toEqual(run('2031-12-31T23:59:00Z'));
});

// What a workshop asks of a channel (common practice, no source): held for any tips, any zone, and any times without the program.
test('no tip twice in a week, none in its quiet hours, none right behind another, and none starves', () => {
  const days = fc.subarray(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const, { minLength: 1 });
  const time = fc.integer({ min: 8, max: 20 }).map((hours) => `${String(hours).padStart(2, '0')}:15`);
  const some = fc
    .array(fc.record({ days, time }), { minLength: 1, maxLength: 5 })
    .map((given) => given.map((one, index) => tip({ id: `tip${index}`, order: index, ...one })));
  const zone = fc.constantFrom('Europe/Dublin', 'America/St_Johns', 'Asia/Kathmandu', 'UTC');
  const course = fc.array(fc.tuple(fc.integer({ min: 1, max: 20 * 24 }), fc.boolean()), { maxLength: 8 });
  fc.assert(
    fc.property(some, zone, course, (tips, timeZone, steps) => {
      const channel = openChannel({ now: '2026-03-20T09:00:00Z', tips, timeZone });
      channel.advance(0);
      for (const [hours, isOff] of steps) {
        const before = channel.posted.length;
        if (isOff) {
          channel.isOffFor(hours * hour);
          expect(channel.posted.length - before).toBeLessThanOrEqual(1);
        } else channel.advance(hours * hour);
      }
      channel.advance(60 * day);
      const { posted } = channel;
      for (const [index, one] of posted.entries()) {
        const same = posted.slice(0, index).findLast((other) => other.tip === one.tip);
        if (same) expect(one.at - same.at).toBeGreaterThanOrEqual(7 * day);
        const before = posted[index - 1];
        if (before) expect(one.at - before.at).toBeGreaterThanOrEqual(4 * hour);
        const own = tips.find(({ id }) => id === one.tip);
        expect(own && quietUntil(own, timeZone, one.at)).toBeNull();
      }
      expect(new Set(posted.map((one) => one.tip)).size).toBe(tips.length);
    }),
    { numRuns: 40 },
  );
});
