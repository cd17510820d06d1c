// The program is killed again and again in the middle of several owners' set-ups, on both databases: nothing is lost, done twice, or out of order.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newDatabase } from '../store/shared-postgres.ts';
import { countingLines } from './counting-lines.ts';
import { type RunningProgram, startProgram } from './drive-program.ts';
import { type Dump, dumpFile, dumpPostgres } from './dump-database.ts';
import { copyEnglishContent } from './english-content.ts';
import { type Line, type NextLine, playUndisturbed, playWithKills } from './kill-run.ts';
import { plainOwners } from './plain-owners.ts';

const root = join(import.meta.dirname, '..', '..');
const seed = Number(process.env.KILL_SEED ?? 20_260_105);

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-kill-'));
  copyEnglishContent(folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Place {
  start(): RunningProgram;
  dump(): Promise<Dump>;
}

/** `data` is a folder that is not there yet. */
type MakePlace = (command: string[], data: string) => Promise<Place>;

const engines: Record<string, MakePlace> = {
  sqlite: async (command, data) => ({
    start: () => startProgram([...command, ...chatArguments(data)], { DATABASE_URL: '' }),
    dump: async () => dumpFile(join(data, 'gaugehand.db')),
  }),
  postgres: async (command, data) => {
    const DATABASE_URL = await newDatabase();
    return {
      start: () => startProgram([...command, ...chatArguments(data)], { DATABASE_URL }),
      dump: () => dumpPostgres(DATABASE_URL),
    };
  },
};

function chatArguments(data: string): string[] {
  return ['--pipe', '--data', data, '--content', join(folder, 'content'), '--now', '2026-01-05T09:00:00Z'];
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

// Side by side: what they wait for is mostly a program that starts.
describe.concurrent('a program that is killed at random points', () => {
  test.each(combinations)(
    '$name on $engine says and keeps the same as one that is not',
    { timeout: 480_000 },
    async ({ name, engine, program, place }) => {
      const undisturbed = await place(program.command, join(folder, `${name} on ${engine}`));
      const expected = await playUndisturbed(undisturbed.start(), program.play());
      expect(expected.messages.length).toBeGreaterThan(50);
      expect(
        expected.messages.some(({ facts, case: id }) => facts?.case !== undefined || id !== undefined),
      ).toBe(true);

      const disturbed = await place(program.command, join(folder, `${name} on ${engine}, killed`));
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
