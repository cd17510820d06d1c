// Draws pictures off the event loop, one after the other, in a thread of its own; for the outbox, which sends text where one fails.
import { Worker } from 'node:worker_threads';
import type { PaintAnswer, PaintRequest } from './paint-worker.ts';

interface Painted {
  png: Uint8Array;
  alternative: string;
}

export interface Painter {
  /** Never rejects: null where the picture could not be drawn, and the log has been told why. */
  paint(request: PaintRequest): Promise<Painted | null>;
  /** What still waits comes back as null. */
  stop(): Promise<void>;
}

export interface PainterOptions {
  /** The folder of words, `content/words`; a language without `pictures.ftl` there speaks with the shipped one. */
  words: string;
  log: (why: string, request: { drawing: string; language: string }) => void;
  /** A picture takes some 10 ms; one that takes this long never ends. */
  limitMs?: number;
  /** The thread's program; tests put in one that dies. */
  thread?: URL;
}

interface Job {
  request: PaintRequest;
  settle: (painted: Painted | null) => void;
}

const ownThread = new URL('./start-paint-worker.mjs', import.meta.url);

export function startPainter({ words, log, limitMs = 5000, thread = ownThread }: PainterOptions): Painter {
  const waiting: Job[] = [];
  let worker: Worker | null = null;
  let busy: { job: Job; timer: NodeJS.Timeout } | null = null;
  let stopped = false;

  function start(): Worker {
    const started = new Worker(thread, { workerData: { words } });
    let why = 'the painting thread ended';
    started.on('message', (answer: PaintAnswer) => {
      // What a thread given up says too late belongs to no one.
      if (worker === started) finish(answer);
    });
    started.on('error', (error) => {
      why = error instanceof Error ? error.message : String(error);
    });
    started.on('exit', () => {
      // A thread that was given up ends after its successor has started.
      if (worker !== started) return;
      worker = null;
      finish({ kind: 'failed', why });
    });
    // An idle painter keeps no process alive; a picture under way does.
    started.unref();
    return started;
  }

  function next(): void {
    if (busy || stopped) return;
    const job = waiting.shift();
    if (!job) return;
    worker ??= start();
    const timer = setTimeout(giveUp, limitMs);
    busy = { job, timer };
    worker.ref();
    try {
      worker.postMessage(job.request);
    } catch (error) {
      finish({ kind: 'failed', why: String(error) });
    }
  }

  function giveUp(): void {
    const stuck = worker;
    worker = null;
    void stuck?.terminate();
    finish({ kind: 'failed', why: `no picture after ${limitMs} ms` });
  }

  function finish(answer: PaintAnswer): void {
    if (!busy) return;
    const { job, timer } = busy;
    busy = null;
    clearTimeout(timer);
    worker?.unref();
    if (answer.kind === 'painted') {
      job.settle({ png: answer.png, alternative: answer.alternative });
    } else {
      log(answer.why, { drawing: job.request.drawing, language: job.request.language });
      job.settle(null);
    }
    next();
  }

  worker = start();
  return {
    paint: (request) =>
      new Promise((settle) => {
        if (stopped) return settle(null);
        waiting.push({ request, settle });
        next();
      }),
    async stop() {
      stopped = true;
      for (const job of waiting.splice(0)) job.settle(null);
      const ending = worker;
      worker = null;
      if (busy) {
        clearTimeout(busy.timer);
        busy.job.settle(null);
        busy = null;
      }
      await ending?.terminate();
    },
  };
}
