// Holds `check` against tips that are spoilt one thing at a time: each is told with its file and line, and how to mend it.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { loadContent } from '../../src/library/load-content.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-tips-'));
  cpSync(join(import.meta.dirname, '../../content'), folder, { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function errorsWith(spoil: (yaml: string) => string, file = 'closed-stop'): Promise<string[]> {
  const path = join(folder, 'tips', `${file}.yaml`);
  writeFileSync(path, spoil(readFileSync(path, 'utf8')));
  const { problems, newest } = await loadContent(folder);
  const errors = problems.filter(({ level }) => level === 'error');
  expect(newest === null).toBe(errors.length > 0);
  return errors.map(
    ({ file: at, line, message, mend }) => `${at.split('/').at(-1)}:${line} ${message} ${mend}`,
  );
}

test('the tips that ship are sound', async () => {
  expect(await errorsWith((yaml) => yaml)).toEqual([]);
});

test.each<[string, (yaml: string) => string, RegExp]>([
  [
    'a machine that is not there',
    (yaml) => yaml.replace('fenmoor-450', 'fenmoor-459'),
    /There is no machine "fenmoor-459"\. Did you mean "fenmoor-450"\?/,
  ],
  [
    'a procedure that is not there',
    (yaml) => yaml.replace('procedure: throttle-sensor', 'procedure: chain'),
    /There is no procedure "chain"\. Use one of: throttle-sensor\./,
  ],
  [
    'a time in the quiet hours',
    (yaml) => yaml.replace('17:30', '07:59'),
    /posted at 07:59, in the quiet hours from 21:00 to 08:00\./,
  ],
  [
    'quiet hours of its own',
    (yaml) => `${yaml}quiet: ["12:00", "18:00"]\n`,
    /posted at 17:30, in the quiet hours from 12:00 to 18:00\./,
  ],
  ['less than a week of rest', (yaml) => `${yaml}restDays: 6\n`, /restDays|7/],
  ['a time that is none', (yaml) => yaml.replace('17:30', '24:00'), /17:30/],
  ['a day that is none', (yaml) => yaml.replace('tue', 'tuesday'), /tue/],
  ['no words', (yaml) => yaml.replace('id: closed-stop', 'id: closed-top'), /"tip-closed-top" is missing/],
  [
    'an id that is taken',
    (yaml) => yaml.replace('id: closed-stop', 'id: three-decimals'),
    /The tip "three-decimals" is in/,
  ],
])('%s', async (_, spoil, expected) => {
  const errors = await errorsWith(spoil);
  expect(errors.length).toBeGreaterThan(0);
  expect(errors[0]).toMatch(/^[\w-]+\.yaml:\d+ /);
  expect(errors.join('\n')).toMatch(expected);
});
