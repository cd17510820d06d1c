// The program is killed again and again in the middle of several owners' set-ups, on both databases: nothing is lost, done twice, or out of order.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { newDatabase } from '../store/shared-postgres.ts';
import { countingLines } from './counting-lines.ts';
import { type RunningProgram, startProgram } from './drive-program.ts';
import { type Dump, dumpFile, dumpPostgres } from './dump-database.ts';
import { type Line, type NextLine, playUndisturbed, playWithKills } from './kill-run.ts';
import { plainOwners } from './plain-owners.ts';

const root = join(import.meta.dirname, '..', '..');
const seed = Number(process.env.KILL_SEED ?? 20_260_105);

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-kill-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

interface Place {
  start(): RunningProgram;
  dump(): Promise<Dump>;
}

type MakePlace = (command: string[], name: string) => Promise<Place>;

const engines: Record<string, MakePlace> = {
  sqlite: async (command, name) => {
    const place = join(folder, name);
    return {
      start: () => startProgram([...command, ...chatArguments(place)], { DATABASE_URL: '' }),
      dump: async () => dumpFile(join(place, 'gaugehand.db')),
    };
  },
  postgres: async (command, name) => {
    const DATABASE_URL = await newDatabase();
    return {
      start: () => startProgram([...command, ...chatArguments(join(folder, name))], { DATABASE_URL }),
      dump: () => dumpPostgres(DATABASE_URL),
    };
  },
};

function chatArguments(data: string): string[] {
  return ['--pipe', '--data', data, '--now', '2026-01-05T09:00:00Z'];
}

const programs: Record<string, { command: string[]; kills: number; play: () => NextLine }> = {
  'the counting conversation': {
    command: [join(root, 'test', 'kill', 'counting-program.ts')],
    kills: 12,
    play: () => {
      const lines = countingLines(80);
      return () => lines.shift() ?? null;
    },
  },
  'the whole program': {
    command: [join(root, 'src', 'start.mjs'), 'chat'],
    kills: 30,
    play: () => plainOwners(260),
  },
};

const combinations = Object.entries(programs).flatMap(([name, program]) =>
  Object.entries(engines).map(([engine, place]) => ({ name, engine, program, place })),
);

describe('a program that is killed at random points', () => {
  test.each(combinations)(
    '$name on $engine says and keeps the same as one that is not',
    { timeout: 180_000 },
    async ({ program, place }) => {
      const undisturbed = await place(program.command, 'undisturbed');
      const expected = await playUndisturbed(undisturbed.start(), program.play());
      expect(expected.messages.length).toBeGreaterThan(50);
      expect(
        expected.messages.some(({ facts, case: id }) => facts?.case !== undefined || id !== undefined),
      ).toBe(true);

      const disturbed = await place(program.command, 'disturbed');
      const lines: Line[] = expected.lines;
      const { kills } = program;
      const seen = await playWithKills({
        start: disturbed.start,
        lines,
        kills,
        seed,
        usualMs: expected.usualMs,
      });

      expect(seen.kills).toBe(kills);
      expect(seen.errors).toEqual(expected.errors);
      expect(seen.messages).toEqual(expected.messages);
      // What was said again had left just before a kill: at most one message for each.
      expect(seen.again.length).toBeLessThanOrEqual(kills);
      expect(await disturbed.dump()).toEqual(await undisturbed.dump());
    },
  );
});
