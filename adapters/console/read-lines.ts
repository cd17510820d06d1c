// Splits a stream of bytes into lines that end at "\n" alone, for the program's face and for input that is no terminal.
import type { Readable } from 'node:stream';

/** A longer line is cut here; what follows up to its end is dropped. */
const longestLine = 1 << 20;

/** Once `stopping` is aborted no more lines come: what is half read, or read but not taken, is dropped. */
export async function* readLines(input: Readable, stopping?: AbortSignal): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8');
  let begun: string[] = [];
  let length = 0;

  function keep(piece: string): void {
    if (length < longestLine) begun.push(piece.slice(0, longestLine - length));
    length += piece.length;
  }

  try {
    for await (const chunk of input) {
      const pieces = decoder.decode(chunk as Uint8Array, { stream: true }).split('\n');
      for (const piece of pieces.slice(0, -1)) {
        if (stopping?.aborted) return;
        keep(piece);
        yield begun.join('');
        begun = [];
        length = 0;
      }
      keep(pieces.at(-1) ?? '');
    }
  } catch (error) {
    // A stream that is closed before its end says so, also where it was closed on purpose.
    if (stopping?.aborted) return;
    throw error;
  }
  if (stopping?.aborted) return;
  keep(decoder.decode());
  if (length > 0) yield begun.join('');
}
