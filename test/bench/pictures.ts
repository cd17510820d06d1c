// Measures G10, the pictures: a warm one against a bare render of the same SVG, the first after start, the largest file; run alone it prints them.
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { pathToFileURL } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import { drawings } from '../../src/picture/drawings.ts';
import { startPainter } from '../../src/picture/painter.ts';
import { penReader } from '../../src/picture/read-pen.ts';
import { fontOptions, renderPng } from '../../src/picture/render.ts';
import { samples } from '../picture/samples.ts';

export interface PictureResult {
  id: string;
  what: string;
  ours: number;
  other: number | null;
  ratio: number | null;
  goal: string;
  holds: boolean;
}

const words = join(import.meta.dirname, '../../content/words');
const median = (values: number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;
const round = (value: number) => Number(value.toFixed(2));

export async function measurePictures(options: { quick?: boolean } = {}): Promise<PictureResult[]> {
  const rounds = options.quick ? 5 : 20;
  const penOf = penReader(words);
  const drawn = samples.map((sample) => ({
    sample,
    svg: drawings[sample.drawing](sample.subject, penOf(sample.language)).svg,
  }));
  // The ordinary pictures; the hostile ones count for the size.
  const ordinary = drawn.filter(({ sample }) => !/long|hundred|none|strange/.test(sample.name));
  const painter = startPainter({ words, log: (why) => process.stderr.write(`${why}\n`) });
  const ours: number[] = [];
  const bare: number[] = [];
  const ratios: number[] = [];
  for (let round = -2; round < rounds; round += 1) {
    // By turns, so that a busy neighbour hits both.
    let [mine, theirs] = [0, 0];
    for (const { sample, svg } of ordinary) {
      const start = performance.now();
      const painted = await painter.paint(sample);
      const between = performance.now();
      new Resvg(svg, { font: fontOptions }).render().asPng();
      theirs += performance.now() - between;
      mine += between - start;
      if (!painted) throw new Error(`${sample.name} was not drawn`);
    }
    if (round < 0) continue;
    ours.push(mine / ordinary.length);
    bare.push(theirs / ordinary.length);
    ratios.push(mine / theirs);
  }
  await painter.stop();

  const first = join(import.meta.dirname, 'first-picture.ts');
  const cold = median(
    Array.from({ length: options.quick ? 3 : 9 }, () =>
      Number(execFileSync(process.execPath, [first], { encoding: 'utf8' })),
    ),
  );
  const largest = Math.max(...drawn.map(({ svg }) => renderPng(svg).length));
  const ratio = median(ratios);
  return [
    {
      id: 'G10',
      what: `a warm picture through the thread, against a bare render (ms, ${ordinary.length} pictures)`,
      ours: round(median(ours)),
      other: round(median(bare)),
      ratio: round(ratio),
      goal: '<= 1.5',
      holds: ratio <= 1.5,
    },
    {
      id: 'G10-cold',
      what: 'the first picture after the start of a process (ms)',
      ours: round(cold),
      other: null,
      ratio: null,
      goal: '<= 400 ms',
      holds: cold <= 400,
    },
    {
      id: 'G10-size',
      what: `the largest of ${drawn.length} pictures (bytes)`,
      ours: largest,
      other: null,
      ratio: null,
      goal: '<= 60000 bytes',
      holds: largest <= 60_000,
    },
  ];
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.stdout.write(`${JSON.stringify(await measurePictures(), null, 1)}\n`);
}
