// The few signs that recur in all pictures: result shapes, the reading, its whisker, the target, arrows; for all drawings.
import { colours, type Result } from './look.ts';
import { disc, element, line, onCircle, path, round, shape } from './svg.ts';

/** Which way the reading has to go, where that is known. */
export type Way = 'up' | 'down' | null;

const white = { fill: 'none', stroke: colours.paper, 'stroke-linecap': 'round', 'stroke-linejoin': 'round' };

/**
 * A result by its outline alone: pass is a disc with a tick, adjust a triangle that points where the reading has to go
 * (a lozenge where that is not known), unclear a broken ring, implausible a square with a stroke through it.
 */
export function resultMark(result: Result, cx: number, cy: number, r: number, way: Way = null): string {
  const fill = colours[result];
  const thick = r * 0.28;
  switch (result) {
    case 'pass':
      return (
        disc(cx, cy, r, { fill }) +
        path(
          `M${round(cx - r * 0.45)} ${round(cy + r * 0.05)}L${round(cx - r * 0.1)} ${round(cy + r * 0.4)}L${round(cx + r * 0.5)} ${round(cy - r * 0.38)}`,
          { ...white, 'stroke-width': thick },
        )
      );
    case 'adjust': {
      if (way === null) {
        return shape(
          [
            [cx, cy - r * 1.1],
            [cx + r * 1.1, cy],
            [cx, cy + r * 1.1],
            [cx - r * 1.1, cy],
          ],
          { fill },
        );
      }
      const sign = way === 'up' ? -1 : 1;
      return shape(
        [
          [cx, cy + sign * r],
          [cx + r * 1.1, cy - sign * r * 0.85],
          [cx - r * 1.1, cy - sign * r * 0.85],
        ],
        { fill },
      );
    }
    case 'unclear':
      return disc(cx, cy, r * 0.85, {
        fill: colours.paper,
        stroke: fill,
        'stroke-width': thick,
        'stroke-dasharray': `${round(r * 0.75)} ${round(r * 0.585)}`,
      });
    case 'implausible':
      return (
        shape(
          [
            [cx - r * 0.9, cy - r * 0.9],
            [cx + r * 0.9, cy - r * 0.9],
            [cx + r * 0.9, cy + r * 0.9],
            [cx - r * 0.9, cy + r * 0.9],
          ],
          { fill },
        ) +
        line(cx - r * 0.45, cy - r * 0.45, cx + r * 0.45, cy + r * 0.45, {
          ...white,
          'stroke-width': thick,
        }) +
        line(cx - r * 0.45, cy + r * 0.45, cx + r * 0.45, cy - r * 0.45, { ...white, 'stroke-width': thick })
      );
  }
}

/** A reading is a filled ink dot; an earlier or a struck one is an open dot. */
export function readingDot(cx: number, cy: number, r: number, kind: 'filled' | 'open' = 'filled'): string {
  return kind === 'filled'
    ? disc(cx, cy, r, { fill: colours.ink, stroke: colours.paper, 'stroke-width': 2 })
    : disc(cx, cy, r - 1.5, { fill: colours.paper, stroke: colours.ink, 'stroke-width': 3 });
}

/** Where the meter showed no figure. */
export function noFigureCross(cx: number, cy: number, r: number): string {
  const style = { stroke: colours.implausible, 'stroke-width': 4, 'stroke-linecap': 'round' };
  return line(cx - r, cy - r, cx + r, cy + r, style) + line(cx - r, cy + r, cx + r, cy - r, style);
}

/** How far the meter itself may be off: a bar with end caps. */
export function whisker(x1: number, x2: number, y: number, cap = 12): string {
  const style = { stroke: colours.ink, 'stroke-width': 3 };
  return (
    line(x1, y, x2, y, style) + line(x1, y - cap, x1, y + cap, style) + line(x2, y - cap, x2, y + cap, style)
  );
}

/** The value to aim for: a small lozenge. */
export function targetMark(cx: number, cy: number, r = 9): string {
  return shape(
    [
      [cx, cy - r],
      [cx + r, cy],
      [cx, cy + r],
      [cx - r, cy],
    ],
    { fill: colours.paper, stroke: colours.bandEdge, 'stroke-width': 3 },
  );
}

/** A solid arrow head whose tip is at the point; degrees go clockwise from up. */
export function arrowHead(x: number, y: number, degrees: number, size: number, fill: string): string {
  const [leftX, leftY] = onCircle(x, y, size, degrees + 180 - 28);
  const [rightX, rightY] = onCircle(x, y, size, degrees + 180 + 28);
  return shape(
    [
      [x, y],
      [leftX, leftY],
      [rightX, rightY],
    ],
    { fill, stroke: fill, 'stroke-width': 2, 'stroke-linejoin': 'round' },
  );
}

/** An arrow along a circle from twelve o'clock, so many degrees; negative ones go counter-clockwise. */
export function turnArrow(
  cx: number,
  cy: number,
  r: number,
  degrees: number,
  fill: string,
  thick = 12,
): string {
  const sign = Math.sign(degrees);
  const long = Math.min(Math.abs(degrees), 330);
  const headDegrees = ((thick * 2) / r) * (180 / Math.PI);
  const [startX, startY] = onCircle(cx, cy, r, 0);
  const [endX, endY] = onCircle(cx, cy, r, sign * Math.max(long - headDegrees * 0.7, 1));
  const [tipX, tipY] = onCircle(cx, cy, r, sign * long);
  const large = long > 180 ? 1 : 0;
  return (
    path(`M${startX} ${startY}A${r} ${r} 0 ${large} ${sign > 0 ? 1 : 0} ${endX} ${endY}`, {
      fill: 'none',
      stroke: fill,
      'stroke-width': thick,
    }) + arrowHead(tipX, tipY, sign * long + sign * (90 - headDegrees * 0.4), thick * 2.4, fill)
  );
}

/** An eye, for "seen from here". */
export function eye(cx: number, cy: number, r: number): string {
  const style = { fill: 'none', stroke: colours.ink, 'stroke-width': 3, 'stroke-linejoin': 'round' };
  return element(
    'g',
    {},
    path(
      `M${round(cx - r)} ${cy}Q${cx} ${round(cy - r * 1.1)} ${round(cx + r)} ${cy}Q${cx} ${round(cy + r * 1.1)} ${round(cx - r)} ${cy}Z`,
      style,
    ),
    disc(cx, cy, r * 0.32, { fill: colours.ink }),
  );
}
