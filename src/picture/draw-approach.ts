// The approach: a stage's readings in order against the band, with the moves between them; for owner and desk.
import { z } from 'zod';
import {
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
const latest = 6;
const plot: Plot = { left: 128, right, top: 96, bottom: 340 };

export function drawApproach(subject: ApproachSubject, pen: Pen): string {
  const { readings } = subject;
  const domain = reach(
    subject,
    readings.flatMap(({ value }) => value ?? []),
    subject.digits,
  );
  const axis = valueAxis(pen, plot, domain, subject);
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
            halo: colours.track,
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
  if (count <= latest + 1) return spread(plot.left + 46, plot.right - 46, count);
  const divide = plot.left + 130;
  return [
    ...spread(plot.left + 14, divide - 14, count - latest),
    ...spread(divide + 46, plot.right - 46, latest),
  ];
}

function drawReadings(
  { readings, digits }: ApproachSubject,
  places: readonly number[],
  axis: ReturnType<typeof valueAxis>,
  pen: Pen,
): string {
  const earlier = readings.length > latest + 1 ? readings.length - latest : 0;
  const drawn: string[] = [];
  let before: { x: number; y: number } | null = null;
  for (const [index, { value }] of readings.entries()) {
    const here: { x: number; y: number } | null =
      value === null ? null : { x: places[index]!, y: axis.y(value) };
    if (before && here) {
      drawn.push(
        line(before.x, before.y, here.x, here.y, {
          stroke: colours.ink,
          'stroke-width': earlier > index ? 1.5 : 3,
        }),
      );
    }
    before = here;
  }
  if (earlier > 0) {
    const divide = plot.left + 130;
    drawn.push(
      line(divide, plot.top, divide, plot.bottom, {
        stroke: colours.soft,
        'stroke-width': 2,
        'stroke-dasharray': '6 6',
      }),
      write(
        pen,
        { x: plot.left, y: plot.bottom + 34, fill: colours.soft, max: 136 },
        pen.say('approach-earlier', { count: earlier }),
      ),
    );
  }
  for (const [index, entry] of readings.entries()) {
    const x = places[index]!;
    const small = index < earlier;
    const last = index === readings.length - 1;
    const { value } = entry;
    const y = value === null ? plot.top + 24 : axis.y(value);
    const beyond = value === null ? 0 : axis.beyond(value);
    if (value === null) drawn.push(noFigureCross(x, y, small ? 4 : 9));
    else if (beyond !== 0) drawn.push(arrowHead(x, y, beyond > 0 ? 0 : 180, small ? 12 : 24, colours.ink));
    else drawn.push(readingDot(x, y, small ? 4 : last ? 11 : 8, entry.struck ? 'open' : 'filled'));
    if (small) continue;
    drawn.push(figureOf(value, x, y, last, digits, pen));
    if (entry.move && index > earlier) drawn.push(moveOf(entry.move, (places[index - 1]! + x) / 2, pen));
  }
  return drawn.join('');
}

function figureOf(
  value: number | null,
  x: number,
  y: number,
  last: boolean,
  digits: number,
  pen: Pen,
): string {
  const text = value === null ? pen.say('picture-overload') : pen.figure(value, digits);
  const below = y - 44 < plot.top;
  return write(
    pen,
    { x, y: below ? y + 38 : y - 20, bold: last, anchor: 'middle', halo: colours.track, max: 104 },
    text,
  );
}

/** A move in the lane under the plot: how much, then which way. */
function moveOf(move: PicturedMove, x: number, pen: Pen): string {
  const style = { x, anchor: 'middle', max: 106, fill: colours.ink } as const;
  return (
    write(pen, { ...style, y: plot.bottom + 36 }, amountWords(pen, move)) +
    write(pen, { ...style, y: plot.bottom + 68, bold: true }, pen.say(`picture-way-${move.direction}`))
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
