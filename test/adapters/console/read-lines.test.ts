// Lines end at "\n" alone, however the bytes are cut.
import { PassThrough, Readable } from 'node:stream';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readLines } from '../../../adapters/console/read-lines.ts';

async function linesOf(chunks: Uint8Array[]): Promise<string[]> {
  const lines: string[] = [];
  for await (const line of readLines(Readable.from(chunks))) lines.push(line);
  return lines;
}

const bytes = (text: string) => new TextEncoder().encode(text);

test('a carriage return, a form feed and the Unicode line ends are part of a line', async () => {
  const text = 'a\rb\u2028c\u2029d\u0085e\x0bf\fg\nh\n\ni';
  expect(await linesOf([bytes(text)])).toEqual(['a\rb\u2028c\u2029d\u0085e\x0bf\fg', 'h', '', 'i']);
});

test('the same lines come out wherever the bytes are cut', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.string({ unit: 'binary' })), fc.array(fc.nat(40)), async (texts, cuts) => {
      const lines = texts.map((text) => text.toWellFormed().replaceAll('\n', ' ').replaceAll('\ufeff', ''));
      const whole = bytes(lines.map((line) => `${line}\n`).join(''));
      const chunks: Uint8Array[] = [];
      let at = 0;
      for (const cut of cuts) {
        chunks.push(whole.subarray(at, at + cut));
        at += cut;
      }
      chunks.push(whole.subarray(at));
      expect(await linesOf(chunks)).toEqual(lines);
    }),
  );
});

test('no more lines come once it is told to stop, and a close on purpose is an ordinary end', async () => {
  const stopping = new AbortController();
  const input = new PassThrough();
  input.write('one\ntwo\nhalf a li');
  const lines: string[] = [];
  for await (const line of readLines(input, stopping.signal)) {
    lines.push(line);
    stopping.abort();
    input.destroy();
  }
  expect(lines).toEqual(['one']);
});

test('a close that nobody asked for is a failure', async () => {
  const input = new PassThrough();
  const reading = readLines(input, new AbortController().signal).next();
  input.destroy();
  await expect(reading).rejects.toThrow(/premature close/i);
});

test('a line without end is cut, and takes no memory without end', async () => {
  const chunks = Array.from({ length: 40 }, () => bytes('x'.repeat(100_000)));
  const [line, after] = await linesOf([...chunks, bytes('\nnext\n')]);
  expect(line?.length).toBe(1 << 20);
  expect(after).toBe('next');
});
