// Holds the painter to its promises: never in the way, never a rejection, the same bytes for the same request, small, with text in it.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { colours } from '../../src/picture/look.ts';
import { type Painter, startPainter } from '../../src/picture/painter.ts';
import { sampleNamed, samples } from './samples.ts';

const words = join(import.meta.dirname, '../../content/words');
const logged: string[] = [];
let painter: Painter;

beforeAll(() => {
  painter = startPainter({ words, log: (why, { drawing }) => logged.push(`${drawing}: ${why}`) });
});
afterAll(() => painter.stop());

describe('a picture', () => {
  test.each(samples)('$name is 800 × 450, opaque, within 60 kB, and says what it shows', async (sample) => {
    const painted = await painter.paint(sample);
    expect(painted).not.toBeNull();
    expect(painted!.png.length).toBeLessThanOrEqual(60_000);
    expect(painted!.alternative.length).toBeGreaterThan(5);
    expect(painted!.alternative).not.toMatch(/\p{Cc}/u);
    const { width, height, data } = PNG.sync.read(Buffer.from(painted!.png));
    expect([width, height]).toEqual([800, 450]);
    expect(data.filter((_, index) => index % 4 === 3).every((alpha) => alpha === 255)).toBe(true);
    expect(titlePixels(data, width)).toBeGreaterThan(150);
  });

  test('is the same, byte for byte, in another painter', async () => {
    const other = startPainter({ words, log: () => {} });
    const sample = sampleNamed('approach-five');
    const [first, second] = [await painter.paint(sample), await other.paint(sample)];
    await other.stop();
    expect(Buffer.compare(first!.png, second!.png)).toBe(0);
  });

  test('speaks the workshop’s own words where it has them, the shipped ones elsewhere', async () => {
    const own = mkdtempSync(join(tmpdir(), 'gaugehand-words-'));
    mkdirSync(join(own, 'de'));
    const shipped = readFileSync(join(words, 'de/pictures.ftl'), 'utf8');
    writeFileSync(
      join(own, 'de/pictures.ftl'),
      shipped.replace('picture-pass = passt', 'picture-pass = sitzt'),
    );
    const other = startPainter({ words: own, log: () => {} });
    const sample = sampleNamed('gauge-pass');
    expect((await other.paint({ ...sample, language: 'de' }))!.alternative).toContain('sitzt');
    expect((await other.paint({ ...sample, language: 'fr' }))!.alternative).toContain('correct');
    await other.stop();
    rmSync(own, { recursive: true });
  });
});

/** Ink in the strip of the title: where a font is missing, the renderer draws no text and raises no error. */
function titlePixels(data: Uint8Array, width: number): number {
  const ink = Number.parseInt(colours.ink.slice(1), 16);
  let count = 0;
  for (let y = 30; y < 62; y++) {
    for (let x = 32; x < 330; x++) {
      const at = (y * width + x) * 4;
      const colour = (data[at]! << 16) | (data[at + 1]! << 8) | data[at + 2]!;
      if (colour === ink) count++;
    }
  }
  return count;
}

describe('a picture that cannot be drawn comes back as null, and the log says why', () => {
  const good = sampleNamed('gauge-pass');

  test.each([
    ['a drawing that there is not', { ...good, drawing: 'constructor' }, /no drawing "constructor"/],
    ['a subject without what it needs', { ...good, subject: { label: 'x' } }, /digits/],
    ['a subject that is nothing', { ...good, subject: null }, /./],
    ['a subject that no thread can be sent', { ...good, subject: () => 1 }, /clone/],
    [
      'a lead in a pin that is not there',
      {
        ...good,
        drawing: 'connector',
        subject: { ...(sampleNamed('connector-three-pins').subject as object), red: 7 },
      },
      /pin that is not there/,
    ],
  ])('%s', async (_, request, why) => {
    logged.length = 0;
    expect(await painter.paint(request)).toBeNull();
    expect(logged).toEqual([expect.stringMatching(why)]);
    expect(await painter.paint(good)).not.toBeNull();
  });

  const threadThatDies = new URL('./dying-thread.ts', import.meta.url);

  test.each([
    ['ends', 'the painting thread ended'],
    ['throws', 'out of paint'],
    ['hangs', 'no picture after 3000 ms'],
  ])('a thread that %s takes one picture with it, not those behind', async (drawing, why) => {
    const told: string[] = [];
    const other = startPainter({
      words,
      log: (said) => told.push(said),
      thread: threadThatDies,
      // Also time enough for the next thread to start on a busy machine.
      limitMs: 3_000,
    });
    const answers = await Promise.all(
      ['well', drawing, 'well'].map((name) => other.paint({ ...good, drawing: name })),
    );
    expect(answers.map((answer) => answer?.alternative)).toEqual(['well', undefined, 'well']);
    expect(told).toEqual([why]);
    await other.stop();
  });

  test('words that cannot be read cost their own pictures alone', async () => {
    const told: string[] = [];
    const broken = mkdtempSync(join(tmpdir(), 'gaugehand-words-'));
    mkdirSync(join(broken, 'de/pictures.ftl'), { recursive: true });
    const other = startPainter({ words: broken, log: (why) => told.push(why) });
    const answers = await Promise.all(['de', 'fr'].map((language) => other.paint({ ...good, language })));
    expect(answers.map((answer) => answer !== null)).toEqual([false, true]);
    expect(told).toEqual([expect.stringContaining('EISDIR')]);
    await other.stop();
    rmSync(broken, { recursive: true });
  });

  test('what waits when the painter stops comes back as null', async () => {
    const other = startPainter({ words, log: () => {} });
    const waiting = [other.paint(good), other.paint(good)];
    await other.stop();
    expect(await Promise.all(waiting)).toEqual([null, null]);
    expect(await other.paint(good)).toBeNull();
  });
});

test('many at once come back each to its own request', async () => {
  const some = samples.slice(0, 12);
  const painted = await Promise.all(some.map((sample) => painter.paint(sample)));
  const alone = [];
  for (const sample of some) alone.push(await painter.paint(sample));
  expect(painted.map((one) => one?.alternative)).toEqual(alone.map((one) => one?.alternative));
});
