// Holds the command that reads a message a line to the lines that it is given, and to what it prints for each.
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
