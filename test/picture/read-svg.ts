// Reads back what a drawing put where, from its SVG alone: texts with their boxes, marks with their extents; for the geometry tests.
import type { Pen } from '../../src/picture/pen.ts';

export interface Box {
  what: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export interface TextBox extends Box {
  size: number;
}

const attribute = (tag: string, name: string) => tag.match(new RegExp(`\\s${name}="([^"]*)"`))?.[1];
const number = (tag: string, name: string) => Number(attribute(tag, name) ?? 0);

const entities: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

export function readTexts(svg: string, pen: Pen): TextBox[] {
  return [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, head, body]) => {
    const tag = ` ${head}`;
    const what = body!.replaceAll(/&(#?\w+);/g, (_, name: string) => entities[name] ?? '?');
    const size = number(tag, 'font-size');
    const width = pen.width(what, size, attribute(tag, 'font-weight') === 'bold');
    const anchor = attribute(tag, 'text-anchor') ?? 'start';
    const [x, y] = [number(tag, 'x'), number(tag, 'y')];
    const left = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width : x;
    // Capitals of this face rise 0.73 em above the line, tails fall 0.24 em below it.
    return { what, size, left, right: left + width, top: y - 0.73 * size, bottom: y + 0.24 * size };
  });
}

export function readMarks(svg: string): Box[] {
  const marks: Box[] = [];
  for (const [tag, name] of svg.matchAll(/<(rect|circle|line|polygon|path) [^>]*>/g)) {
    const xs: number[] = [];
    const ys: number[] = [];
    if (name === 'rect') {
      xs.push(number(tag, 'x'), number(tag, 'x') + number(tag, 'width'));
      ys.push(number(tag, 'y'), number(tag, 'y') + number(tag, 'height'));
    } else if (name === 'circle') {
      xs.push(number(tag, 'cx') - number(tag, 'r'), number(tag, 'cx') + number(tag, 'r'));
      ys.push(number(tag, 'cy') - number(tag, 'r'), number(tag, 'cy') + number(tag, 'r'));
    } else if (name === 'line') {
      xs.push(number(tag, 'x1'), number(tag, 'x2'));
      ys.push(number(tag, 'y1'), number(tag, 'y2'));
    } else if (name === 'polygon') {
      for (const point of attribute(tag, 'points')!.split(' ')) {
        const [x, y] = point.split(',').map(Number);
        xs.push(x!);
        ys.push(y!);
      }
    } else {
      // Only the ends of a path's pieces; none of ours bulges beyond the frame between them but by its own pieces' radius.
      for (const [, x, y] of attribute(tag, 'd')!.matchAll(/[MLQ](-?[\d.]+) (-?[\d.]+)/g)) {
        xs.push(Number(x));
        ys.push(Number(y));
      }
    }
    if (xs.length === 0) continue;
    marks.push({
      what: tag,
      left: Math.min(...xs),
      right: Math.max(...xs),
      top: Math.min(...ys),
      bottom: Math.max(...ys),
    });
  }
  return marks;
}

/** Pairs of texts that run into each other by more than a hair. */
export function overlaps(texts: readonly TextBox[]): [string, string][] {
  const hair = 1;
  const found: [string, string][] = [];
  for (const [index, a] of texts.entries()) {
    for (const b of texts.slice(index + 1)) {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (across > hair && down > hair) found.push([a.what, b.what]);
    }
  }
  return found;
}
