// A painter's thread that ends, throws or hangs when it is told to; for the painter's tests.
import { parentPort } from 'node:worker_threads';
import type { PaintAnswer, PaintRequest } from '../../src/picture/paint-worker.ts';

parentPort?.on('message', ({ drawing }: PaintRequest) => {
  if (drawing === 'ends') process.exit();
  if (drawing === 'throws') throw new Error('out of paint');
  while (drawing === 'hangs') {
    // For ever, as a renderer caught in a loop would.
  }
  const answer: PaintAnswer = { kind: 'painted', png: new Uint8Array(), alternative: drawing };
  parentPort?.postMessage(answer);
});
