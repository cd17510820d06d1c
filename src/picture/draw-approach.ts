// The approach: a stage's readings in order against the band, with the moves between them; for owner and desk.
import { z } from 'zod';
import {
  amountFigure,
  amountWords,
  digitsSchema,
  figureSchema,
  limitSchema,
  moveSchema,
  type PicturedMove,
} from './amounts.ts';
import { colours, results, type } from './look.ts';
import { arrowHead, noFigureCross, readingDot } from './marks.ts';
import type { Pen } from './pen.ts';
import { reach } from './scale.ts';
import { resultWord, right, sheet, wayBack } from './sheet.ts';
import { line } from './svg.ts';
import { write } from './text.ts';
import { type Plot, valueAxis } from './value-axis.ts';

export const approachSchema = z.object({
  label: z.string(),
  unit: z.string(),
  digits: digitsSchema,
  low: limitSchema,
  high: limitSchema,
  target: figureSchema.nullable().optional(),
  /** Oldest first; `value` is null where the meter showed no figure, `move` is what was done before this reading. */
  readings: z.array(
    z.object({
      value: figureSchema.nullable(),
      move: moveSchema.nullable().optional(),
      /** Struck out: it no longer counts. */
      struck: z.boolean().optional(),
    }),
  ),
  result: z.enum(results).nullable(),
});

export type ApproachSubject = z.infer<typeof approachSchema>;

/** So many of the latest readings get room for their figures and moves; earlier ones stand close together. */
const latest = 5;
/** So many earlier ones are still told apart as dots. */
const dots = 24;
const plot: Plot = { left: 128, right, top: 84, bottom: 346 };
const divide = plot.left + 130;

export function drawApproach(subject: ApproachSubject, pen: Pen): string {
  const { readings } = subject;
  const domain = reach(
    subject,
    readings.flatMap(({ value }) => value ?? []),
    subject.digits,
  );
  const axis = valueAxis(pen, plot, domain, subject, 42);
  const places = placeReadings(readings.length);
  const value = readings.at(-1)?.value ?? null;
  const way = wayBack(value, subject.low, subject.high);
  const tag = subject.result && { result: subject.result, word: resultWord(pen, subject.result, way), way };
  return sheet(
    pen,
    `${subject.label} · ${subject.unit}`,
    tag,
    axis.drawn,
    readings.length === 0
      ? write(
          pen,
          {
            x: (plot.left + plot.right) / 2,
            y: 226,
            size: type.title,
            anchor: 'middle',
            halo: colours.paper,
          },
          pen.say('picture-no-readings'),
        )
      : drawReadings(subject, places, axis, pen),
  );
}

/** Where each reading stands from left to right. */
export function placeReadings(count: number): number[] {
  const spread = (from: number, to: number, many: number) =>
    Array.from({ length: many }, (_, index) =>
      many === 1 ? (from + to) / 2 : from + ((to - from) * index) / (many - 1),
    );
  if (count <= latest + 1) return spread(plot.left + 48, plot.right - 48, count);
  return [
    ...spread(plot.left + 14, divide - 14, count - latest),
    ...spread(divide + 48, plot.right - 48, latest),
  ];
}

function drawReadings(
  { readings, digits }: ApproachSubject,
  places: readonly number[],
  axis: ReturnType<typeof valueAxis>,
  pen: Pen,
): string {
  const earlier = readings.length > latest + 1 ? readings.length - latest : 0;
  const heights = readings.map(({ value }) => (value === null ? null : axis.y(value)));
  const drawn: string[] = [];
  for (const [index, y] of heights.entries()) {
    const before = heights[index - 1];
    if (y === null || before === null || before === undefined) continue;
    const style = { stroke: colours.ink, 'stroke-width': index < earlier ? 1.5 : 3 };
    drawn.push(line(places[index - 1]!, before, places[index]!, y, style));
  }
  if (earlier > 0) drawn.push(drawDivide(earlier, pen));
  for (const [index, entry] of readings.entries()) {
    const x = places[index]!;
    const small = index < earlier;
    if (small && earlier > dots) continue;
    const last = index === readings.length - 1;
    const y = heights[index] ?? plot.top + 24;
    const beyond = entry.value === null ? 0 : axis.beyond(entry.value);
    if (entry.value === null) drawn.push(noFigureCross(x, y, small ? 4 : 9));
    else if (beyond !== 0) drawn.push(arrowHead(x, y, beyond > 0 ? 0 : 180, small ? 12 : 24, colours.ink));
    else drawn.push(readingDot(x, y, small ? 4 : last ? 11 : 8, entry.struck ? 'open' : 'filled'));
    if (small) continue;
    const text = entry.value === null ? pen.say('picture-overload') : pen.figure(entry.value, digits);
    drawn.push(
      write(
        pen,
        { ...besideLines(x, y, heights[index - 1], heights[index + 1]), bold: last, max: 104 },
        text,
      ),
    );
    if (entry.move && index > earlier) {
      const before = places[index - 1]!;
      drawn.push(drawMove(entry.move, (before + x) / 2, x - before - 8, pen));
    }
  }
  return drawn.join('');
}

function drawDivide(earlier: number, pen: Pen): string {
  const style = { stroke: colours.soft, 'stroke-width': 2, 'stroke-dasharray': '6 6' };
  return (
    line(divide, plot.top, divide, plot.bottom, style) +
    write(
      pen,
      { x: plot.left, y: plot.bottom + 36, fill: colours.soft, max: divide - plot.left + 16 },
      pen.say('approach-earlier', { count: earlier }),
    )
  );
}

/** Where a reading's figure keeps clear of the lines to its neighbours; heights grow downwards. */
function besideLines(x: number, y: number, before?: number | null, after?: number | null) {
  const halo = colours.paper;
  const above = y - 38 < plot.top ? y + 36 : y - 18;
  const below = y + 40 > plot.bottom ? y - 18 : y + 36;
  const [from, to] = [before ?? y, after ?? y];
  if (from > y && to < y) return { x: x + 8, y: above, anchor: 'end', halo } as const;
  if (from < y && to > y) return { x: x - 8, y: above, anchor: 'start', halo } as const;
  return { x, y: from + to < 2 * y ? below : above, anchor: 'middle', halo } as const;
}

/** A move in the lane under the plot: how much, then which way; the bare amount where its unit finds no room. */
function drawMove(move: PicturedMove, x: number, max: number, pen: Pen): string {
  const style = { x, anchor: 'middle', max } as const;
  const words = amountWords(pen, move);
  const fits = pen.width(pen.clean(words), type.small, false) <= max;
  return (
    write(pen, { ...style, y: plot.bottom + 36 }, fits ? words : amountFigure(pen, move.amount)) +
    write(pen, { ...style, y: plot.bottom + 70, bold: true }, pen.say(`picture-way-${move.direction}`))
  );
}

export function describeApproach(subject: ApproachSubject, pen: Pen): string {
  const last = subject.readings.at(-1);
  if (last === undefined) return pen.say('approach-alternative-none', { label: subject.label });
  return pen.say('approach-alternative', {
    label: subject.label,
    count: subject.readings.length,
    value:
      last.value === null
        ? pen.say('picture-no-figure')
        : `${pen.figure(last.value, subject.digits)} ${subject.unit}`,
  });
}
