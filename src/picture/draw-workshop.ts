// Figures for the workshop: where owners stop, how long each stage takes, and which causes were found month by month.
import { z } from 'zod';
import { colours, frame, type } from './look.ts';
import type { Pen } from './pen.ts';
import { linear, ticks } from './scale.ts';
import { left, right, sheet } from './sheet.ts';
import { box, disc, line } from './svg.ts';
import { write } from './text.ts';

const count = z.number().int().nonnegative();

export const workshopFigureSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('stops'),
    title: z.string(),
    /** In the procedure's order: how many owners came to the stage, and how many got no further. */
    rows: z.array(z.object({ label: z.string(), reached: count, stopped: count })),
  }),
  z.object({
    kind: z.literal('times'),
    title: z.string(),
    /** Minutes: the middle half of owners, and the one in the middle. */
    rows: z.array(
      z.object({
        label: z.string(),
        quarter: z.number().nonnegative(),
        median: z.number().nonnegative(),
        threeQuarters: z.number().nonnegative(),
      }),
    ),
  }),
  z.object({
    kind: z.literal('months'),
    title: z.string(),
    /** Oldest first, as `2026-03`. */
    months: z.array(z.string().regex(/^\d{4}-\d{2}$/)),
    /** For each cause, how often it was found in each of the months. */
    rows: z.array(z.object({ label: z.string(), counts: z.array(count) })),
  }),
]);

export type WorkshopFigureSubject = z.infer<typeof workshopFigureSchema>;

const top = 84;
const bottom = frame.height - 64;
const most = 9;
const bars = { left: 330, right: right - 120 } as const;

export function drawWorkshop(subject: WorkshopFigureSubject, pen: Pen): string {
  const drawing =
    subject.rows.length === 0
      ? write(pen, { x: left, y: 140, size: type.title }, pen.say('workshop-nothing'))
      : subject.kind === 'stops'
        ? stops(subject, pen)
        : subject.kind === 'times'
          ? times(subject, pen)
          : months(subject, pen);
  return sheet(pen, subject.title, null, drawing);
}

/** Rows from the top, no more than find room; what is left out is said. */
function inRows<Row extends { label: string }>(
  rows: readonly Row[],
  pen: Pen,
  draw: (row: Row, y: number) => string,
): string {
  const shown = rows.slice(0, most);
  const pitch = Math.min(52, (bottom - top) / shown.length);
  const hidden = rows.length - shown.length;
  return (
    shown
      .map((row, index) => {
        const y = top + (index + 0.5) * pitch;
        return write(pen, { x: left, y: y + 8, max: bars.left - left - 20 }, row.label) + draw(row, y);
      })
      .join('') + note(hidden > 0 ? pen.say('workshop-hidden', { count: hidden }) : '', 'end', pen)
  );
}

function note(text: string, anchor: 'start' | 'end', pen: Pen): string {
  const x = anchor === 'start' ? left : right;
  return write(
    pen,
    { x, y: frame.height - 24, anchor, fill: colours.soft, max: (right - left) / 2 - 12 },
    text,
  );
}

function stops({ rows }: Extract<WorkshopFigureSubject, { kind: 'stops' }>, pen: Pen): string {
  const scale = linear([0, Math.max(1, ...rows.map(({ reached }) => reached))], [0, bars.right - bars.left]);
  return (
    inRows(rows, pen, ({ reached, stopped }, y) => {
      const [all, ended] = [scale(reached), scale(Math.min(stopped, reached))];
      return (
        box(bars.left, y - 12, all, 24, { fill: colours.band }) +
        box(bars.left + all - ended, y - 12, ended, 24, { fill: colours.adjust }) +
        write(
          pen,
          { x: right, y: y + 8, bold: stopped > 0, anchor: 'end', max: 112 },
          pen.say('workshop-of', { stopped: pen.figure(stopped, 0), reached: pen.figure(reached, 0) }),
        )
      );
    }) + note(pen.say('workshop-stops-note'), 'start', pen)
  );
}

function times({ rows }: Extract<WorkshopFigureSubject, { kind: 'times' }>, pen: Pen): string {
  const longest = Math.max(1, ...rows.map(({ threeQuarters }) => threeQuarters));
  const scale = linear([0, longest], [bars.left, bars.right]);
  const round = ticks([0, longest], 4);
  const uprights = round.values.map((tick) =>
    line(scale(tick), top, scale(tick), bottom, { stroke: colours.rule, 'stroke-width': 2 }),
  );
  return (
    uprights.join('') +
    inRows(rows, pen, ({ quarter, median, threeQuarters }, y) => {
      return (
        box(scale(quarter), y - 9, scale(threeQuarters) - scale(quarter), 18, { fill: colours.band }) +
        disc(scale(median), y, 10, { fill: colours.bandEdge }) +
        write(
          pen,
          { x: right, y: y + 8, bold: true, anchor: 'end', max: 112 },
          pen.say('workshop-minutes', { minutes: pen.figure(median, 0) }),
        )
      );
    }) +
    note(pen.say('workshop-times-note'), 'start', pen)
  );
}

/** A grid: causes down, months across, a disc whose area is the count, with the count in it. */
function months({ months, rows }: Extract<WorkshopFigureSubject, { kind: 'months' }>, pen: Pen): string {
  const shown = months.slice(-8);
  const skipped = months.length - shown.length;
  const pitch = (right - bars.left + 20) / Math.max(1, shown.length);
  const x = (index: number) => bars.left - 20 + (index + 0.5) * pitch;
  const largest = Math.max(1, ...rows.flatMap(({ counts }) => counts));
  const rowPitch = Math.min(52, (bottom - top) / Math.min(rows.length, most));
  const radius = Math.min(24, rowPitch / 2 - 2, pitch / 2 - 3);
  return (
    inRows(rows, pen, ({ counts }, y) =>
      shown
        .map((_, index) => {
          const found = counts[skipped + index] ?? 0;
          if (found === 0) return disc(x(index), y, 3, { fill: colours.rule });
          const r = Math.max(6, radius * Math.sqrt(found / largest));
          return (
            disc(x(index), y, r, { fill: colours.band, stroke: colours.bandEdge, 'stroke-width': 2 }) +
            write(pen, { x: x(index), y: y + 8, bold: true, anchor: 'middle' }, pen.figure(found, 0))
          );
        })
        .join(''),
    ) +
    shown
      .map((month, index) =>
        write(
          pen,
          { x: x(index), y: bottom + 12, anchor: 'middle', fill: colours.soft, max: pitch - 6 },
          pen.month(month),
        ),
      )
      .join('')
  );
}

export function describeWorkshop(subject: WorkshopFigureSubject, pen: Pen): string {
  return pen.say('workshop-alternative', { title: subject.title, count: subject.rows.length });
}
