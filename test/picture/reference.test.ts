// Holds a few pictures to how they looked when a person last looked at them, pixel by pixel, with a small tolerance.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { drawings } from '../../src/picture/drawings.ts';
import { penReader } from '../../src/picture/read-pen.ts';
import { renderPng } from '../../src/picture/render.ts';
import { sampleNamed } from './samples.ts';

const folder = join(import.meta.dirname, 'reference');
const penOf = penReader(join(import.meta.dirname, '../../content/words'));
const width = 400;

/** Half the size, to keep the repository small. `REFERENCE=write` looks anew: then look at what it wrote. */
const kept = [
  'gauge-pass',
  'approach-five',
  'sweep-drop-out',
  'connector-six-in-two-rows',
  'part-in-german',
  'record-set',
];

function draw(name: string): PNG {
  const { drawing, subject, language } = sampleNamed(name);
  return PNG.sync.read(Buffer.from(renderPng(drawings[drawing](subject, penOf(language)).svg, width)));
}

function differing(a: PNG, b: PNG): number {
  return pixelmatch(a.data, b.data, undefined, a.width, a.height, { threshold: 0.1 });
}

test.each(kept)('%s looks as it did', (name) => {
  const file = join(folder, `${name}.png`);
  const drawn = draw(name);
  if (process.env.REFERENCE === 'write') {
    const { drawing, subject, language } = sampleNamed(name);
    writeFileSync(file, renderPng(drawings[drawing](subject, penOf(language)).svg, width));
  }
  expect(existsSync(file)).toBe(true);
  const reference = PNG.sync.read(readFileSync(file));
  expect([drawn.width, drawn.height]).toEqual([reference.width, reference.height]);
  // One pixel in a thousand.
  expect(differing(drawn, reference)).toBeLessThan((drawn.width * drawn.height) / 1000);
});

test('the comparison sees a reading that moved', () => {
  expect(differing(draw('gauge-pass'), draw('gauge-too-low'))).toBeGreaterThan(1000);
});
