// The sweep: readings from closed to wide open and back, with the places where something is wrong; for owner and desk.
import { z } from 'zod';
import { digitsSchema, figureSchema } from './amounts.ts';
import { colours, frame, results, type } from './look.ts';
import { noFigureCross, readingDot } from './marks.ts';
import type { Pen } from './pen.ts';
import { placeLabels, type Span } from './scale.ts';
import { left, legend, resultWord, right, sheet } from './sheet.ts';
import { box, line, shape } from './svg.ts';
import { write } from './text.ts';
import { type Plot, valueAxis } from './value-axis.ts';

const sweepFaults = ['drop-out', 'dead-spot', 'reversal', 'no-return', 'not-wide-open'] as const;

export const sweepSchema = z.object({
  label: z.string(),
  unit: z.string(),
  digits: digitsSchema,
  /** From closed to wide open, in the order sent; null where the meter showed no figure. */
  up: z.array(figureSchema.nullable()),
  /** What came after, back to closed, in the order sent. */
  down: z.array(figureSchema.nullable()),
  /** `where` is the share of the travel: 0 is closed, 1 is wide open. */
  faults: z.array(z.object({ kind: z.enum(sweepFaults), where: z.number().min(0).max(1) })),
  result: z.enum(results).nullable(),
});

export type SweepSubject = z.infer<typeof sweepSchema>;

const plot: Plot = { left: 128, right, top: 124, bottom: 338 };
const travel: Span = [plot.left + 24, plot.right - 24];

interface SweepPoint {
  x: number;
  value: number | null;
}

/** Steps are spread evenly over the travel: a hand does not say where it stood. The way back starts one step below wide open. */
export function placeSweep({ up, down }: Pick<SweepSubject, 'up' | 'down'>): {
  up: SweepPoint[];
  down: SweepPoint[];
} {
  const at = (share: number) => travel[0] + (travel[1] - travel[0]) * share;
  return {
    up: up.map((value, index) => ({ x: at(up.length === 1 ? 0 : index / (up.length - 1)), value })),
    down: down.map((value, index) => ({ x: at(1 - (index + 1) / down.length), value })),
  };
}

export function drawSweep(subject: SweepSubject, pen: Pen): string {
  const values = [...subject.up, ...subject.down].filter((value) => value !== null);
  const highest = values.length === 0 ? 1 : Math.max(...values);
  const lowest = values.length === 0 ? 0 : Math.min(0, ...values);
  const domain: Span = [lowest, highest > lowest ? lowest + (highest - lowest) * 1.08 : lowest + 1];
  const axis = valueAxis(pen, plot, domain, { low: null, high: null, digits: subject.digits });
  const points = placeSweep(subject);
  const tag = subject.result && { result: subject.result, word: resultWord(pen, subject.result, null) };
  const ends = { y: plot.bottom + 32, fill: colours.soft, max: 300 } as const;
  return sheet(
    pen,
    `${subject.label} · ${subject.unit}`,
    tag,
    axis.drawn,
    faults(subject, pen),
    branch(points.up, axis.y, false),
    branch(points.up.length > 0 ? [points.up.at(-1)!, ...points.down] : points.down, axis.y, true),
    dots(points.down, axis.y, true),
    dots(points.up, axis.y, false),
    values.length === 0
      ? write(
          pen,
          {
            x: (plot.left + plot.right) / 2,
            y: 236,
            size: type.title,
            anchor: 'middle',
            halo: colours.paper,
          },
          pen.say('picture-no-readings'),
        )
      : '',
    write(pen, { ...ends, x: plot.left }, pen.say('sweep-closed')),
    write(pen, { ...ends, x: plot.right, anchor: 'end' }, pen.say('sweep-open')),
    legend(
      pen,
      [
        {
          sign: (cx, cy) => line(cx - 15, cy, cx + 15, cy, upStyle) + readingDot(cx, cy, 8),
          text: pen.say('sweep-up'),
        },
        {
          sign: (cx, cy) => line(cx - 15, cy, cx + 15, cy, downStyle) + square(cx, cy, 7),
          text: pen.say('sweep-down'),
        },
        ...(values.length < subject.up.length + subject.down.length
          ? [
              {
                sign: (cx: number, cy: number) => noFigureCross(cx, cy, 8),
                text: pen.say('picture-no-figure'),
              },
            ]
          : []),
      ],
      frame.height - 24,
    ),
  );
}

const upStyle = { stroke: colours.ink, 'stroke-width': 4 };
const downStyle = { stroke: colours.bandEdge, 'stroke-width': 4, 'stroke-dasharray': '10 7' };

const square = (cx: number, cy: number, r: number) =>
  box(cx - r, cy - r, 2 * r, 2 * r, { fill: colours.paper, stroke: colours.bandEdge, 'stroke-width': 3 });

/** The line breaks where the meter showed nothing: a gap is not bridged. */
function branch(points: readonly SweepPoint[], y: (value: number) => number, back: boolean): string {
  const drawn: string[] = [];
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    if (before?.value == null || point.value === null) continue;
    drawn.push(line(before.x, y(before.value), point.x, y(point.value), back ? downStyle : upStyle));
  }
  return drawn.join('');
}

function dots(points: readonly SweepPoint[], y: (value: number) => number, back: boolean): string {
  const r = points.length > 40 ? 4 : 8;
  return points
    .map(({ x, value }) => {
      if (value === null) return noFigureCross(x, plot.bottom - 14, r);
      return back ? square(x, y(value), r - 1) : readingDot(x, y(value), r);
    })
    .join('');
}

/** Each fault: an upright at its place, and its word in the lane above the plot. */
function faults(subject: SweepSubject, pen: Pen): string {
  const ordered = [...subject.faults].sort((a, b) => a.where - b.where);
  const x = (where: number) => travel[0] + (travel[1] - travel[0]) * where;
  const texts = ordered.map(({ kind, where }) =>
    pen.clean(pen.say(`sweep-${kind}`, { where: pen.percent(where) })),
  );
  const widths = texts.map((text) => pen.width(text, type.small, true));
  const gap = 18;
  const room = widths.reduce((sum, width) => sum + width + gap, -gap) <= right - left;
  const places = placeLabels(
    ordered.map(({ where }, index) => ({ at: x(where), width: widths[index]! })),
    gap,
    [left, right],
  );
  const style = { stroke: colours.adjust, 'stroke-width': 3, 'stroke-dasharray': '3 6' };
  return ordered
    .map(({ where }, index) => {
      const at = x(where);
      const spot =
        line(at, plot.top, at, plot.bottom, style) +
        shape(
          [
            [at, plot.top + 2],
            [at + 11, plot.top - 14],
            [at - 11, plot.top - 14],
          ],
          { fill: colours.adjust },
        );
      // Where the words would run into each other, the first alone is written: the text below the picture has them all.
      if (!room && index > 0) return spot;
      const place = room
        ? places[index]!
        : Math.min(Math.max(at, left + widths[0]! / 2), right - widths[0]! / 2);
      return (
        spot +
        write(
          pen,
          { x: place, y: plot.top - 22, bold: true, anchor: 'middle', fill: colours.adjust },
          texts[index]!,
        )
      );
    })
    .join('');
}

export function describeSweep(subject: SweepSubject, pen: Pen): string {
  const found = subject.faults.map(({ kind, where }) =>
    pen.say(`sweep-${kind}`, { where: pen.percent(where) }),
  );
  return pen.say('sweep-alternative', {
    label: subject.label,
    count: subject.up.length + subject.down.length,
    found: found.length === 0 ? pen.say('sweep-nothing') : found.join(', '),
  });
}
