// Holds the command that reads a message a line to the lines that it is given, and to what it prints for each.
import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable, Writable } from 'node:stream';
import { expect, test } from 'vitest';
import { interpret } from '../../src/commands/interpret.ts';

async function run(args: string[], chunks: string[]): Promise<unknown[]> {
  let printed = '';
  const output = new Writable({
    write(chunk, _, done) {
      printed += String(chunk);
      done();
    },
  });
  expect(await interpret(args, Readable.from(chunks.map((chunk) => Buffer.from(chunk))), output)).toBe(0);
  return printed
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
}

test('one object a line, for a blank line and an unfinished last one too', async () => {
  const heard = await run(['--unit', 'V'], ['0.348 V\n\nOL\ny', 'es']);
  expect(heard).toEqual([
    { kind: 'reading', value: 0.348, unit: 'V', resolution: 0.001 },
    { kind: 'unclear', why: 'nothing-understood' },
    { kind: 'overload' },
    { kind: 'word', word: 'yes' },
  ]);
});

test('only a line feed ends a line', async () => {
  expect(await run(['--unit', 'V'], ['0.46\u20281.3\u20292.2\r\n'])).toMatchObject([
    { kind: 'series', values: [0.46, 1.3, 2.2] },
  ]);
});

test('the language is the one asked for, English beside it', async () => {
  expect(await run(['--unit', 'V', '--locale', 'de-DE'], ['fertig\ndone\n'])).toEqual([
    { kind: 'word', word: 'done' },
    { kind: 'word', word: 'done' },
  ]);
});

test('an unknown unit is named with those there are', async () => {
  await expect(run(['--unit', 'W'], ['1\n'])).rejects.toThrow(/V, 1\/min, mm, kPa, Nm, %/);
});

test('a language that is not there is said with those that are', async () => {
  await expect(run(['--unit', 'V', '--locale', 'xx'], ['1\n'])).rejects.toThrow(
    /lexicon\.yaml:1:1 {2}This file is missing\..*\nThe languages in .* are: de, en, es, fr, it, pt\./,
  );
});

test('a lexicon with a mistake is explained as check does it', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'content-'));
  try {
    await mkdir(join(folder, 'words', 'nl'), { recursive: true });
    await writeFile(join(folder, 'words', 'nl', 'lexicon.yaml'), 'language: nl\ndecimals: ","\n');
    await cp('content/words/en/lexicon.yaml', join(folder, 'words/en/lexicon.yaml'));
    const heard = run(['--unit', 'V', '--locale', 'nl', '--content', folder], ['1\n']);
    await expect(heard).rejects.toThrow(
      /lexicon\.yaml:2:11 {2}"decimals" should not be the text ","\. Mend: Write a list out of: "\.", ","\./,
    );
    await expect(heard).rejects.toThrow(
      /"words" is missing\. Mend: Add "words": a list of texts for each of yes/,
    );
  } finally {
    await rm(folder, { recursive: true });
  }
});
