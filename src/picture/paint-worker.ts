// The painter's thread: takes one request, draws it, answers with the PNG or with why not; started by `startPainter`.
import { parentPort, workerData } from 'node:worker_threads';
import { drawings, isDrawing } from './drawings.ts';
import { penReader } from './read-pen.ts';
import { renderPng } from './render.ts';

export interface PaintRequest {
  drawing: string;
  language: string;
  subject: unknown;
}

export type PaintAnswer =
  | { kind: 'painted'; png: Uint8Array; alternative: string }
  | { kind: 'failed'; why: string };

const penOf = penReader((workerData as { words: string }).words);

function answer({ drawing, language, subject }: PaintRequest): PaintAnswer {
  if (!isDrawing(drawing)) return { kind: 'failed', why: `there is no drawing "${drawing}"` };
  try {
    const { svg, alternative } = drawings[drawing](subject, penOf(language));
    return { kind: 'painted', png: renderPng(svg), alternative };
  } catch (error) {
    return { kind: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
}

parentPort?.on('message', (request: PaintRequest) => parentPort?.postMessage(answer(request)));
