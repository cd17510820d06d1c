// Text on a picture: fitted into the width there is, wrapped where it may be, escaped; for all drawings.
import { colours, type } from './look.ts';
import type { Pen } from './pen.ts';
import { element, escapeXml } from './svg.ts';

export interface Lettering {
  x: number;
  y: number;
  size?: number;
  bold?: boolean;
  fill?: string;
  anchor?: 'start' | 'middle' | 'end';
  /** The width there is: text shrinks down to the smallest size, then loses its end. */
  max?: number;
  /** A rim of the ground's colour, where text lies over lines. */
  halo?: string;
}

/** The size at which clean text fits, and what of it fits then. */
export function fit(
  pen: Pen,
  text: string,
  size: number,
  bold: boolean,
  max: number,
): { text: string; size: number; width: number } {
  const full = pen.width(text, size, bold);
  if (full <= max) return { text, size, width: full };
  const smaller = Math.max(Math.min(size, type.small), Math.floor((size * max) / full));
  const letters = [...text];
  let kept = text;
  while (letters.length > 0 && pen.width(kept, smaller, bold) > max) {
    letters.pop();
    kept = `${letters.join('').trimEnd()}…`;
  }
  return { text: kept, size: smaller, width: pen.width(kept, smaller, bold) };
}

export function write(pen: Pen, lettering: Lettering, text: string): string {
  const {
    x,
    y,
    size = type.small,
    bold = false,
    fill = colours.ink,
    anchor = 'start',
    max,
    halo,
  } = lettering;
  const fitted = fit(pen, pen.clean(text), size, bold, max ?? Number.POSITIVE_INFINITY);
  if (fitted.text === '') return '';
  return element(
    'text',
    {
      x,
      y,
      'font-size': fitted.size,
      'font-weight': bold ? 'bold' : undefined,
      fill,
      'text-anchor': anchor === 'start' ? undefined : anchor,
      ...(halo && { stroke: halo, 'stroke-width': 6, 'stroke-linejoin': 'round', 'paint-order': 'stroke' }),
    },
    escapeXml(fitted.text),
  );
}

/** Clean text broken at spaces into at most `count` lines; the last one takes what is left, and is fitted when written. */
export function wrap(
  pen: Pen,
  text: string,
  size: number,
  bold: boolean,
  max: number,
  count: number,
): string[] {
  const lines: string[] = [];
  for (const word of pen.clean(text).split(' ')) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && (lines.length === count || pen.width(longer, size, bold) <= max)) {
      lines[lines.length - 1] = longer;
    } else {
      lines.push(word);
    }
  }
  return lines.filter((entry) => entry !== '');
}

/** Several lines of one text, one below the other. */
export function writeLines(pen: Pen, lettering: Lettering, lines: readonly string[], pitch: number): string {
  return lines
    .map((text, index) => write(pen, { ...lettering, y: lettering.y + index * pitch }, text))
    .join('');
}
