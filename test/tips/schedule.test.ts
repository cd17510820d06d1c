// Holds a tip's times against what the clocks of Dublin did and will do, and against the calendar that the runtime itself keeps.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quietUntil, restedAt, slotAfter } from '../../src/tips/schedule.ts';

const dublin = 'Europe/Dublin';
const everyDay = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
const at = (text: string) => Date.parse(text);
const told = (instant: number | null) => instant && new Date(instant).toISOString();

// In 2026 Dublin's clocks go from 01:00 to 02:00 on 29 March and from 02:00 to 01:00 on 25 October
// (last Sundays of March and October at 01:00 UTC: Directive 2000/84/EC, IANA time zone database; from memory).
describe('at half past five, whatever the clocks do', () => {
  test.each([
    ['the day before they go on', '2026-03-27T17:30:00Z', '2026-03-28T17:30:00.000Z'],
    ['the day they go on', '2026-03-28T17:30:00Z', '2026-03-29T16:30:00.000Z'],
    ['the day before they go back', '2026-10-23T16:30:00Z', '2026-10-24T16:30:00.000Z'],
    ['the day they go back', '2026-10-24T16:30:00Z', '2026-10-25T17:30:00.000Z'],
    ['the same day, a moment before', '2026-03-29T16:29:59.999Z', '2026-03-29T16:30:00.000Z'],
  ])('%s', (_, after, expected) => {
    expect(told(slotAfter({ days: [...everyDay], time: '17:30' }, dublin, at(after)))).toBe(expected);
  });
});

describe('at half past one, on the nights when there is none or two of it', () => {
  const nightly = { days: [...everyDay], time: '01:30' };
  test('where it is left out, it comes when the clocks go on, and then the next night', () => {
    const first = slotAfter(nightly, dublin, at('2026-03-28T12:00:00Z'));
    expect(told(first)).toBe('2026-03-29T01:00:00.000Z');
    expect(told(slotAfter(nightly, dublin, first))).toBe('2026-03-30T00:30:00.000Z');
  });
  test('where it comes twice, only the first counts', () => {
    const first = slotAfter(nightly, dublin, at('2026-10-24T12:00:00Z'));
    expect(told(first)).toBe('2026-10-25T00:30:00.000Z');
    expect(told(slotAfter(nightly, dublin, first))).toBe('2026-10-26T01:30:00.000Z');
  });
});

// The reference is the runtime's own calendar (ECMA-402 Intl), which the schedule's library is not asked about.
test.each([dublin, 'America/St_Johns', 'Australia/Lord_Howe', 'Asia/Kathmandu', 'UTC'])(
  'in %s it is the first quarter of an hour behind the instant that shows that day and time',
  (timeZone) => {
    const shown = new Intl.DateTimeFormat('en-GB', {
      timeZone,
      weekday: 'short',
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
    });
    const quarter = 15 * 60_000;
    const reads = (instant: number) => {
      const parts = Object.fromEntries(shown.formatToParts(instant).map(({ type, value }) => [type, value]));
      return { day: parts.weekday?.toLowerCase(), time: `${parts.hour}:${parts.minute}` };
    };
    fc.assert(
      fc.property(
        fc.integer({ min: at('2026-01-01T00:00:00Z'), max: at('2027-12-01T00:00:00Z') }),
        fc.subarray([...everyDay], { minLength: 1 }),
        // Away from the hours of the night at which clocks are changed.
        fc.integer({ min: 4 * 4, max: 23 * 4 + 3 }),
        (after, days, quarters) => {
          const time = `${String(Math.floor(quarters / 4)).padStart(2, '0')}:${String((quarters % 4) * 15).padStart(2, '0')}`;
          let expected = Math.floor(after / quarter) * quarter + quarter;
          while (!(reads(expected).time === time && (days as string[]).includes(reads(expected).day ?? ''))) {
            expected += quarter;
          }
          expect(slotAfter({ days, time }, timeZone, after)).toBe(expected);
        },
      ),
      { numRuns: 25 },
    );
  },
);

describe('quiet hours', () => {
  const night: [string, string] = ['21:00', '08:00'];
  const noon: [string, string] = ['12:00', '14:00'];
  test.each<[string, [string, string], string, string | null]>([
    ['before the night', night, '2026-01-05T20:59:59.999Z', null],
    ['as the night begins', night, '2026-01-05T21:00:00Z', '2026-01-06T08:00:00.000Z'],
    ['after midnight', night, '2026-01-06T03:00:00Z', '2026-01-06T08:00:00.000Z'],
    ['as the night ends', night, '2026-01-06T08:00:00Z', null],
    ['in summer, by the wall', night, '2026-07-06T20:00:00Z', '2026-07-07T07:00:00.000Z'],
    ['over the night when the clocks go on', night, '2026-03-28T22:00:00Z', '2026-03-29T07:00:00.000Z'],
    ['over the night when they go back', night, '2026-10-24T22:00:00Z', '2026-10-25T08:00:00.000Z'],
    ['at noon', noon, '2026-01-05T13:00:00Z', '2026-01-05T14:00:00.000Z'],
    ['after noon', noon, '2026-01-05T14:00:00Z', null],
    ['none at all', ['00:00', '00:00'], '2026-01-05T00:00:00Z', null],
  ])('%s', (_, quiet, instant, expected) => {
    expect(told(quietUntil({ quiet }, dublin, at(instant)))).toBe(expected);
  });
});

test('a week of rest is seven times 24 hours', () => {
  expect(told(restedAt({ restDays: 7 }, at('2026-03-22T17:30:00Z')))).toBe('2026-03-29T17:30:00.000Z');
});
