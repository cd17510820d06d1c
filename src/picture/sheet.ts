// The sheet that every picture stands on: ground, edge, title, result at the top right, legend; for all drawings.
import { colours, frame, type Result, type } from './look.ts';
import { resultMark, type Way } from './marks.ts';
import type { Pen } from './pen.ts';
import { box, element } from './svg.ts';
import { fit, write } from './text.ts';

export const left = frame.margin;
export const right = frame.width - frame.margin;

export interface Tag {
  result: Result;
  word: string;
  way?: Way;
}

/** A whole picture: the title at the top left, the result as a sign and a word at the top right, then the drawing. */
export function sheet(pen: Pen, title: string, tag: Tag | null, ...drawing: string[]): string {
  const word = tag === null ? null : fit(pen, pen.clean(tag.word), type.title, true, 300);
  const tagWidth = word === null ? 0 : word.width + 44;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: frame.width,
      height: frame.height,
      viewBox: `0 0 ${frame.width} ${frame.height}`,
      'font-family': 'DejaVu Sans',
    },
    box(0, 0, frame.width, frame.height, { fill: colours.paper }),
    box(1.5, 1.5, frame.width - 3, frame.height - 3, {
      fill: 'none',
      stroke: colours.edge,
      'stroke-width': 3,
    }),
    write(pen, { x: left, y: 56, size: type.title, bold: true, max: right - left - tagWidth - 24 }, title),
    ...(tag === null || word === null
      ? []
      : [
          resultMark(tag.result, right - word.width - 26, 46, 16, tag.way),
          write(
            pen,
            { x: right, y: 56, size: word.size, bold: true, anchor: 'end', fill: colours[tag.result] },
            word.text,
          ),
        ]),
    ...drawing,
  );
}

/** Which way a reading has to go to come within its limits. */
export function wayBack(value: number | null, low: number | null, high: number | null): Way {
  if (value === null) return null;
  if (low !== null && value < low) return 'up';
  if (high !== null && value > high) return 'down';
  return null;
}

/** The word for a result, which says too low or too high where that is known. */
export function resultWord(pen: Pen, result: Result, way: Way): string {
  if (result === 'adjust' && way !== null) {
    return pen.say(way === 'up' ? 'picture-too-low' : 'picture-too-high');
  }
  return pen.say(`picture-${result}`);
}

export interface LegendEntry {
  /** Draws the sign about this point. */
  sign: (cx: number, cy: number) => string;
  text: string;
}

/** Signs with what they mean, in up to two rows; what finds no room is left out, the last first. */
export function legend(pen: Pen, entries: readonly LegendEntry[], bottom: number): string {
  const rows: { entry: LegendEntry; text: string; x: number }[][] = [[]];
  let x = left;
  for (const entry of entries) {
    const { text, width } = fit(pen, pen.clean(entry.text), type.small, false, right - left - 40);
    if (x > left && x + 36 + width > right) {
      if (rows.length === 2) break;
      rows.push([]);
      x = left;
    }
    rows.at(-1)!.push({ entry, text, x });
    x += 36 + width + 28;
  }
  return rows
    .flatMap((row, index) => {
      const y = bottom - (rows.length - 1 - index) * 32;
      return row.map(
        (placed) =>
          placed.entry.sign(placed.x + 13, y - 8) + write(pen, { x: placed.x + 36, y }, placed.text),
      );
    })
    .join('');
}
