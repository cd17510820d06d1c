// A process of its own that draws one picture and prints how many milliseconds after its own start that was; for G10.
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { startPainter } from '../../src/picture/painter.ts';
import { sampleNamed } from '../picture/samples.ts';

const painter = startPainter({
  words: join(import.meta.dirname, '../../content/words'),
  log: (why) => process.stderr.write(`${why}\n`),
});
const painted = await painter.paint(sampleNamed('approach-five'));
process.stdout.write(`${painted ? performance.now() : 'nothing drawn'}\n`);
await painter.stop();
