// The house is put in order at the start: the desk is woken, and what is older than the workshop keeps it is dropped.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { keepHouse } from '../../src/inbox/keep-house.ts';
import type { Calendar } from '../../src/store/store.ts';

const start = join(import.meta.dirname, '..', '..', 'src', 'start.mjs');

async function keep(waiting: string[], days: number): Promise<string[]> {
  const done: string[] = [];
  let now = Date.parse('2026-01-31T00:00:00Z');
  const calendar = {
    due: async () => waiting,
    wake: async (key: string, at: number) => void done.push(`wake ${key} ${new Date(at).toISOString()}`),
  };
  const house = await keepHouse({
    store: {
      calendar: calendar as unknown as Calendar,
      forget: async (before) => void done.push(`forget ${new Date(before).toISOString()}`),
    },
    keepDays: days,
    now: () => now,
    report: (trouble) => done.push(trouble),
  });
  now += 86_400_000;
  await house.tidy();
  await house.stop();
  return done;
}

test('the desk is woken and what is too old goes, by the workshop’s own number of days', async () => {
  expect(await keep([], 30)).toEqual([
    'wake desk 2026-01-31T00:00:00.000Z',
    'forget 2026-01-01T00:00:00.000Z',
    'forget 2026-01-02T00:00:00.000Z',
  ]);
});

test('a desk that an earlier process left waiting for its instant is left to it', async () => {
  expect((await keep(['desk'], 30))[0]).toMatch(/^forget /);
});

test('an owner is kept for the days that the greeting promises, then nothing of them is left in the files', () => {
  const folder = mkdtempSync(join(tmpdir(), 'gaugehand-keep-'));
  const play = (...lines: object[]): string => {
    const input = lines.map((line) => `${JSON.stringify(line)}\n`).join('');
    const args = [start, 'chat', '--pipe', '--data', folder, '--now', '2026-01-05T09:00:00Z'];
    const env = { ...process.env, DATABASE_URL: '' };
    const { status, stderr, stdout } = spawnSync(process.execPath, args, { input, encoding: 'utf8', env });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    return stdout;
  };
  const isKept = () =>
    readdirSync(folder).some((file) => readFileSync(join(folder, file)).includes('zebedee-71'));
  try {
    const greeting = play({ from: 'zebedee-71', text: 'hello' });
    const days = Number(/for (\d+) days/.exec(greeting)?.[1]);
    expect(isKept()).toBe(true);
    play({ advance: `${days - 1}d` });
    expect(isKept()).toBe(true);
    play({ advance: '2d' });
    expect(isKept()).toBe(false);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
