// The rules of a case: who has it, what it becomes, and how much of its history is kept.
import { expect, test } from 'vitest';
import {
  canReopen,
  close,
  enter,
  giveBack,
  isOpen,
  isTaken,
  keepWords,
  newCase,
  passOn,
  reopen,
  take,
} from '../../src/desk/case.ts';
import { remindNext } from '../../src/desk/remind.ts';

const sam = { platform: 'console', person: 's1', name: 'Sam' };
const kim = { platform: 'console', person: 's2', name: 'Kim' };
const day = 24 * 3_600_000;
const fresh = () => newCase('1-1', { reason: 'asked', flag: 'smoke', goOn: false, about: null }, 0);

test('it waits, is taken, given back, taken up again and closed', () => {
  const one = fresh();
  expect(isOpen(one)).toBe(true);
  expect(take(one, sam, 1)).toEqual({ from: null });
  expect(isTaken(one)).toBe(true);
  giveBack(one, 'Sam', 2);
  expect([one.state, one.flag, one.holder, isOpen(one)]).toEqual(['returned', null, null, false]);
  reopen(one, 3, null, 'asked');
  expect([one.state, one.endedAt]).toEqual(['waiting', null]);
  take(one, kim, 4);
  close(one, 'Kim', 'air-leak', 5);
  expect([one.state, one.cause, one.holder]).toEqual(['closed', 'air-leak', null]);
  expect(one.history.map(({ what }) => what)).toEqual([
    'opened',
    'taken',
    'returned',
    'reopened',
    'taken',
    'closed',
  ]);
});

test('whoever takes over is written down with whom they took it from', () => {
  const one = fresh();
  take(one, sam, 1);
  expect(take(one, kim, 2)).toEqual({ from: sam });
  expect(one.history.at(-1)).toEqual({ at: 2, by: 'Kim', what: 'taken', note: 'Sam' });
  passOn(one, kim, 'Sam', 3);
  expect([one.state, one.holder]).toEqual(['waiting', null]);
  expect(one.history.at(-1)).toEqual({ at: 3, by: 'Kim', what: 'passed', note: 'Sam' });
});

test('the same number on another platform is somebody else', () => {
  const one = fresh();
  take(one, sam, 1);
  take(one, { ...sam, platform: 'elsewhere', name: 'Samira' }, 2);
  expect(one.history.at(-1)?.note).toBe('Sam');
  take(one, { ...sam, platform: 'elsewhere', name: 'Samira' }, 3);
  expect(one.history.at(-1)?.note).toBeNull();
});

test('what was given back counts as closed after a week in which nobody needed it', () => {
  const one = fresh();
  take(one, sam, 1);
  giveBack(one, 'Sam', day);
  expect(one.remindAt).toBe(8 * day);
  take(one, sam, 2 * day);
  expect([one.remindAt, one.endedAt]).toEqual([null, null]);
});

test('whoever takes it, passes it on or ends it starts the count of reminders and of waiting anew', () => {
  for (const step of [
    (one: ReturnType<typeof fresh>) => take(one, sam, 9),
    (one: ReturnType<typeof fresh>) => passOn(one, sam, null, 9),
    (one: ReturnType<typeof fresh>) => giveBack(one, 'Sam', 9),
    (one: ReturnType<typeof fresh>) => close(one, 'Sam', null, 9),
  ]) {
    const one = fresh();
    Object.assign(one, { reminded: 4, unansweredSince: 5 });
    step(one);
    expect([one.reminded, one.unansweredSince]).toEqual([0, null]);
  }
});

test('what is taken up again has neither its old cause nor the stage that it was to go on at', () => {
  const one = fresh();
  close(one, 'Sam', 'air-leak', 1);
  Object.assign(one, { reminded: 4, goTo: 'idle' });
  reopen(one, 2, null, null);
  expect([one.cause, one.goTo, one.reminded, one.holder]).toEqual([null, null, 0, null]);
});

test('it is taken up again within a week, and not after', () => {
  const one = fresh();
  expect(canReopen(one, 0)).toBe(false);
  close(one, 'Sam', null, day);
  expect(canReopen(one, 8 * day)).toBe(true);
  expect(canReopen(one, 8 * day + 1)).toBe(false);
});

test('of a long history the beginning and the latest stay; of many words the first and the latest', () => {
  const one = fresh();
  for (let entry = 1; entry <= 100; entry += 1) {
    enter(one, entry, 'Sam', 'remark', 'x'.repeat(1_000));
    keepWords(one, `word ${entry} ${'y'.repeat(1_000)}`);
  }
  expect(one.history).toHaveLength(24);
  expect([one.history[0]?.what, one.history.at(-1)?.at]).toEqual(['opened', 100]);
  expect(one.ownWords.map((words) => words.split(' ')[1])).toEqual(['1', '2', '98', '99', '100']);
  expect(JSON.stringify(one).length).toBeLessThan(12_000);
  keepWords(one, ' \n ');
  expect(one.ownWords.at(-1)).toMatch(/^word 100 /);
});

test('reminders come more rarely each time, and only while somebody is there', () => {
  const always = { timeZone: 'UTC', hours: allWeek([['00:00', '24:00']]), holidays: [], remindMinutes: 30 };
  const waits = [0, 1, 2, 3, 4, 5, 6].map(
    (reminded) => (remindNext(always, 0, reminded, null) ?? 0) / 60_000,
  );
  expect(waits).toEqual([30, 60, 120, 240, 480, 480, 480]);
  const mornings = { ...always, hours: allWeek([['08:00', '12:00']]) };
  expect(remindNext(mornings, Date.parse('2026-01-05T11:45:00Z'), 0, null)).toBe(
    Date.parse('2026-01-06T08:00:00Z'),
  );
  expect(remindNext({ ...always, hours: {} }, 0, 0, null)).toBeNull();
});

function allWeek(spans: [string, string][]) {
  return { mon: spans, tue: spans, wed: spans, thu: spans, fri: spans, sat: spans, sun: spans };
}
