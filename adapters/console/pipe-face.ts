// The program's face of the console: takes lines one at a time, and answers each with what it caused and its `done`.
import type { Readable, Writable } from 'node:stream';
import type { Adapter, Receive } from '../../src/chat/adapter.ts';
import { decodeLine } from './decode-line.ts';
import { encodeMessage } from './encode-message.ts';
import { keepPicture } from './keep-picture.ts';
import { readLines } from './read-lines.ts';

export interface PipeOptions {
  input: Readable;
  output: Writable;
  pictures: string | null;
  /** Runs what falls due on the way, and leaves the clock there; null where the clock is the real one. */
  advance: ((ms: number, messageId: string) => Promise<void>) | null;
  /** Sends all that is queued, and returns once it is recorded. */
  settle: () => Promise<void>;
  /** Keeps what happens by the clock from coming between a line and its `done`. */
  alone: (work: () => Promise<void>) => Promise<void>;
  /** What to say of a line that could not be taken; throws on where nothing more can be done. */
  failed: (error: unknown) => string;
}

export interface PipeFace extends Adapter {
  /** Resolves at the end of input or once told to stop, with everything processed and sent. */
  ended: Promise<void>;
}

export function makePipeFace(options: PipeOptions): PipeFace {
  const { input, output, pictures, advance, settle, alone, failed } = options;
  const { promise: ended, resolve, reject } = Promise.withResolvers<void>();
  const stopping = new AbortController();

  async function take(line: string, number: number, receive: Receive): Promise<void> {
    const decoded = decodeLine(line);
    if (decoded.kind === 'message') {
      try {
        await receive(decoded.message);
      } catch (error) {
        await write(JSON.stringify({ error: failed(error), line: number }));
      }
    }
    if (decoded.kind === 'wrong') await write(JSON.stringify({ error: decoded.why, line: number }));
    if (decoded.kind === 'advance') {
      if (advance === null) {
        const error = 'the clock is the real one: start with --now to move it';
        await write(JSON.stringify({ error, line: number }));
      } else {
        await advance(decoded.ms, decoded.messageId);
      }
    }
    await settle();
    await write(JSON.stringify({ done: number }));
  }

  function write(line: string): Promise<void> {
    return new Promise((resolve, reject) => {
      output.write(`${line}\n`, (error) => (error ? reject(error) : resolve()));
    });
  }

  async function run(receive: Receive): Promise<void> {
    let number = 0;
    for await (const line of readLines(input, stopping.signal)) {
      number += 1;
      const current = number;
      await alone(() => take(line, current, receive));
    }
  }

  return {
    name: 'console',
    ended,
    async start(receive) {
      run(receive).then(resolve, reject);
    },
    async send(sendable) {
      await write(encodeMessage(sendable.message, await keepPicture(pictures, sendable)));
      return { kind: 'sent', platformIds: [sendable.message.id] };
    },
    async stop() {
      stopping.abort();
      input.destroy();
    },
  };
}
