// The house is put in order at the start: the desk is woken, and what is older than the workshop keeps it is dropped.
import { expect, test } from 'vitest';
import { keepHouse } from '../../src/inbox/keep-house.ts';
import type { Calendar } from '../../src/store/store.ts';

test('the desk is woken and what is too old goes, by the workshop’s own number of days', async () => {
  const done: string[] = [];
  const calendar = { wake: async (key: string, at: number) => void done.push(`wake ${key} ${at}`) };
  const now = Date.parse('2026-01-31T00:00:00Z');
  const house = await keepHouse({
    store: {
      calendar: calendar as unknown as Calendar,
      forget: async (before) => void done.push(`forget ${new Date(before).toISOString()}`),
    },
    keepDays: 30,
    now: () => now,
    report: (trouble) => done.push(trouble),
  });
  await house.stop();
  expect(done).toEqual([`wake desk ${now}`, 'forget 2026-01-01T00:00:00.000Z']);
});
