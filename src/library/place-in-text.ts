// Tells line and column of a place in a text, for readers that only know how many characters precede it.
import type { Place } from './problem.ts';

export function lineStarts(text: string): number[] {
  return [0, ...Array.from(text.matchAll(/\n/g), (newline) => newline.index + 1)];
}

export function placeAt(starts: readonly number[], offset: number): Place {
  const line = starts.findLastIndex((start) => start <= offset);
  return { line: line + 1, column: offset - (starts[line] ?? 0) + 1 };
}
