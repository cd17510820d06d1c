// When the desk is open: against the calendar and the time zone rules that everybody has.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayEndsNext, dayOf, isOpenAt, opensNext, tellTime } from '../../src/desk/opening-hours.ts';

const weekdayHours: [string, string][] = [
  ['08:30', '12:30'],
  ['13:30', '18:00'],
];
const dublin = {
  timeZone: 'Europe/Dublin',
  language: 'en',
  hours: { mon: weekdayHours, fri: weekdayHours, sat: [['09:00', '13:00']] as [string, string][] },
  holidays: ['2026-12-25'],
};

const at = (iso: string) => Date.parse(iso);

// In 2026 the clocks go forward on 29 March and back on 25 October at 01:00 UTC (IANA time zone database, Europe/Dublin).
test.each([
  ['a Monday morning in winter, one minute before', '2026-01-05T08:29:59Z', false],
  ['on the minute', '2026-01-05T08:30:00Z', true],
  ['at lunch', '2026-01-05T12:30:00Z', false],
  ['after lunch', '2026-01-05T13:30:00Z', true],
  ['in summer the same wall clock is an hour earlier in UTC', '2026-06-29T07:30:00Z', true],
  ['in summer, before', '2026-06-29T07:29:00Z', false],
  ['the Monday after the clocks went forward', '2026-03-30T07:30:00Z', true],
  ['the Monday before', '2026-03-23T07:30:00Z', false],
  ['the Monday after they went back', '2026-10-26T07:30:00Z', false],
  ['a holiday that is a Friday', '2026-12-25T10:00:00Z', false],
  ['a day without hours', '2026-01-06T10:00:00Z', false],
])('%s', (_what, instant, open) => {
  expect(isOpenAt(dublin, at(instant), null)).toBe(open);
});

test.each([
  ['2026-01-05T05:00:00Z', '2026-01-05T08:30:00Z'],
  ['2026-01-05T09:00:00Z', '2026-01-05T13:30:00Z'],
  ['2026-01-05T19:00:00Z', '2026-01-09T08:30:00Z'],
  // Over the change of the clocks.
  ['2026-03-28T14:00:00Z', '2026-03-30T07:30:00Z'],
  ['2026-10-24T13:00:00Z', '2026-10-26T08:30:00Z'],
  // Over the holiday.
  ['2026-12-24T12:00:00Z', '2026-12-26T09:00:00Z'],
])('after %s it opens at %s', (from, opens) => {
  expect(new Date(opensNext(dublin, at(from), null) ?? 0).toISOString().replace('.000', '')).toBe(opens);
});

// In 2026 Auckland's clocks go back at 03:00 on Sunday 5 April and forward at 02:00 on Sunday 27 September; its summer is
// UTC+13, its winter UTC+12 (IANA time zone database).
test.each([
  ['2026-04-04T00:00:00Z', '2026-04-04T07:00:00Z'],
  ['2026-09-26T00:00:00Z', '2026-09-26T08:00:00Z'],
])(
  'half a day ahead of Greenwich, on the evening before the clocks change: after %s it opens at %s',
  (from, opens) => {
    const auckland = {
      ...dublin,
      timeZone: 'Pacific/Auckland',
      hours: { sat: [['20:00', '22:00']] as [string, string][] },
    };
    expect(opensNext(auckland, at(from), null)).toBe(at(opens));
  },
);

test('a day that is called off counts as closed, and only that day', () => {
  expect(isOpenAt(dublin, at('2026-01-05T10:00:00Z'), '2026-01-05')).toBe(false);
  expect(isOpenAt(dublin, at('2026-01-09T10:00:00Z'), '2026-01-05')).toBe(true);
  expect(opensNext(dublin, at('2026-01-05T05:00:00Z'), '2026-01-05')).toBe(at('2026-01-09T08:30:00Z'));
});

test('the day ends with its last span', () => {
  expect(dayEndsNext(dublin, at('2026-01-05T09:00:00Z'), null)).toBe(at('2026-01-05T18:00:00Z'));
  expect(dayEndsNext(dublin, at('2026-01-05T18:00:00Z'), null)).toBe(at('2026-01-09T18:00:00Z'));
});

test('a workshop without hours never opens', () => {
  const never = { ...dublin, hours: {} };
  expect(opensNext(never, at('2026-01-05T09:00:00Z'), null)).toBeNull();
  expect(dayEndsNext(never, at('2026-01-05T09:00:00Z'), null)).toBeNull();
});

test('a span up to midnight is open in its last minute', () => {
  const late = { ...dublin, timeZone: 'UTC', hours: { mon: [['20:00', '24:00']] as [string, string][] } };
  expect(isOpenAt(late, at('2026-01-05T23:59:59Z'), null)).toBe(true);
  expect(isOpenAt(late, at('2026-01-06T00:00:00Z'), null)).toBe(false);
  expect(dayEndsNext(late, at('2026-01-05T21:00:00Z'), null)).toBe(at('2026-01-06T00:00:00Z'));
});

test('days are those of the workshop, not of Greenwich', () => {
  const auckland = { ...dublin, timeZone: 'Pacific/Auckland' };
  // Auckland is thirteen hours ahead in January (IANA).
  expect(dayOf(auckland, at('2026-01-05T11:30:00Z'))).toBe('2026-01-06');
  expect(tellTime(auckland, at('2026-01-05T11:30:00Z'), null)).toContain('00:30');
});

// The order of weekday, day and month is that of the Unicode locale data for British English.
test('a time is told with its day, but for today', () => {
  const instant = at('2026-01-05T09:14:00Z');
  expect(tellTime(dublin, instant, null)).toBe('Mon 5 Jan, 09:14');
  expect(tellTime(dublin, instant, at('2026-01-06T00:00:00Z'))).toBe('Mon 5 Jan, 09:14');
  expect(tellTime(dublin, instant, at('2026-01-05T23:59:00Z'))).toBe('09:14');
  expect(tellTime({ ...dublin, language: 'de' }, instant, null)).toMatch(/^Mo\.?, 5\. Jan/);
});

test('whatever the instant: the next opening is open, and the minute before it is not', () => {
  const zones = ['Europe/Dublin', 'America/St_Johns', 'Asia/Kathmandu', 'Australia/Lord_Howe', 'UTC'];
  fc.assert(
    fc.property(
      fc.integer({ min: at('2026-01-01T00:00:00Z'), max: at('2027-12-31T00:00:00Z') }),
      fc.constantFrom(...zones),
      (instant, timeZone) => {
        const workshop = { ...dublin, timeZone };
        const opens = opensNext(workshop, instant, null);
        expect(opens).not.toBeNull();
        expect(opens).toBeGreaterThan(instant);
        expect(isOpenAt(workshop, opens ?? 0, null)).toBe(true);
        expect(isOpenAt(workshop, (opens ?? 0) - 1, null)).toBe(false);
      },
    ),
    { numRuns: 300 },
  );
});
