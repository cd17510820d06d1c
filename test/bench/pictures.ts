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
import { type BenchOptions, type BenchResult, result } from './measure.ts';

const words = join(import.meta.dirname, '../../content/words');

export async function measurePictures(options: BenchOptions = {}): Promise<BenchResult[]> {
  const rounds = options.quick ? 2 : 20;
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
  for (let round = -1; round < rounds; round += 1) {
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
  }
  await painter.stop();

  const first = join(import.meta.dirname, 'first-picture.ts');
  const cold = Array.from({ length: options.quick ? 3 : 9 }, () =>
    Number(execFileSync(process.execPath, [first], { encoding: 'utf8' })),
  );
  const largest = Math.max(...drawn.map(({ svg }) => renderPng(svg).length));
  return [
    result({
      id: 'G10',
      what: `a warm picture through the thread, against a bare render of the same, ${ordinary.length} pictures`,
      unit: 'ms',
      ours,
      other: bare,
      goal: '<= 1.5',
    }),
    result({
      id: 'G10',
      what: 'the first picture after the start of a process',
      unit: 'ms',
      ours: cold,
      goal: '<= 400',
    }),
    result({
      id: 'G10',
      what: `the largest of ${drawn.length} pictures`,
      unit: 'bytes',
      ours: [largest],
      goal: '<= 60000',
    }),
  ];
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.stdout.write(`${JSON.stringify(await measurePictures(), null, 1)}\n`);
}
