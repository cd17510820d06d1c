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

type Of<Kind extends WorkshopFigureSubject['kind']> = Extract<WorkshopFigureSubject, { kind: Kind }>;

const top = 84;
const bottom = frame.height - 76;
const most = 8;
const barsFrom = 330;

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

const pitchOf = (rows: readonly unknown[]) => Math.min(52, (bottom - top) / Math.min(rows.length, most));

/** Rows in their order; where they find no room, those that weigh most, and how many were left out. */
function inRows<Row extends { label: string }>(
  rows: readonly Row[],
  pen: Pen,
  weight: (row: Row) => number,
  draw: (row: Row, y: number) => string,
): string {
  const hidden = rows.length - most;
  const kept = new Set([...rows].sort((a, b) => weight(b) - weight(a)).slice(0, most));
  return (
    rows
      .filter((row) => kept.has(row))
      .map((row, index) => {
        const y = top + (index + 0.5) * pitchOf(rows);
        return write(pen, { x: left, y: y + 8, max: barsFrom - left - 20 }, row.label) + draw(row, y);
      })
      .join('') + note(hidden > 0 ? pen.say('workshop-hidden', { count: hidden }) : '', 'end', pen)
  );
}

function note(text: string, anchor: 'start' | 'end', pen: Pen): string {
  const x = anchor === 'start' ? left : right;
  const max = anchor === 'start' ? 540 : 180;
  return write(pen, { x, y: frame.height - 20, anchor, fill: colours.soft, max }, text);
}

/** Words at the right end of the rows, and where the bars have to end for them. */
function ends(
  texts: readonly string[],
  pen: Pen,
): { barsTo: number; write: (text: string, y: number) => string } {
  const widest = Math.min(
    240,
    Math.max(...texts.map((text) => pen.width(pen.clean(text), type.small, true))),
  );
  return {
    barsTo: right - widest - 20,
    write: (text, y) => write(pen, { x: right, y: y + 8, bold: true, anchor: 'end', max: widest + 1 }, text),
  };
}

function stops({ rows }: Of<'stops'>, pen: Pen): string {
  const said = ({ stopped, reached }: (typeof rows)[number]) =>
    pen.say('workshop-of', { stopped: pen.figure(stopped, 0), reached: pen.figure(reached, 0) });
  const end = ends(rows.map(said), pen);
  const scale = linear([0, Math.max(1, ...rows.map(({ reached }) => reached))], [0, end.barsTo - barsFrom]);
  return (
    inRows(
      rows,
      pen,
      ({ stopped }) => stopped,
      (row, y) => {
        const [all, ended] = [scale(row.reached), scale(Math.min(row.stopped, row.reached))];
        return (
          box(barsFrom, y - 12, all, 24, { fill: colours.band }) +
          box(barsFrom + all - ended, y - 12, ended, 24, { fill: colours.adjust }) +
          end.write(said(row), y)
        );
      },
    ) + note(pen.say('workshop-stops-note'), 'start', pen)
  );
}

function times({ rows }: Of<'times'>, pen: Pen): string {
  const said = ({ median }: (typeof rows)[number]) =>
    pen.say('workshop-minutes', { minutes: pen.figure(median, 0) });
  const end = ends(rows.map(said), pen);
  const longest = Math.max(1, ...rows.map(({ threeQuarters }) => threeQuarters));
  const scale = linear([0, longest], [barsFrom, end.barsTo]);
  const round = ticks([0, longest], 4);
  const foot = top + Math.min(rows.length, most) * pitchOf(rows);
  return (
    round.values
      .map(
        (tick) =>
          line(scale(tick), top, scale(tick), foot, { stroke: colours.rule, 'stroke-width': 2 }) +
          write(
            pen,
            { x: scale(tick), y: foot + 24, anchor: 'middle', fill: colours.soft },
            pen.figure(tick, round.digits),
          ),
      )
      .join('') +
    inRows(
      rows,
      pen,
      ({ median }) => median,
      (row, y) => {
        const [from, to] = [scale(row.quarter), scale(row.threeQuarters)];
        return (
          box(from, y - 9, to - from, 18, {
            fill: colours.band,
            stroke: colours.bandEdge,
            'stroke-width': 2,
          }) +
          disc(scale(row.median), y, 10, { fill: colours.bandEdge }) +
          end.write(said(row), y)
        );
      },
    ) +
    note(pen.say('workshop-times-note'), 'start', pen)
  );
}

/** Four steps from none to most; the count stands in each field, so that the shade is never needed. */
const shades = [
  { fill: colours.track, text: colours.ink },
  { fill: colours.band, text: colours.ink },
  { fill: colours.bandMiddle, text: colours.ink },
  { fill: colours.bandEdge, text: colours.paper },
] as const;

/** A grid: causes down, months across, a field for each with how often. */
function months({ months, rows }: Of<'months'>, pen: Pen): string {
  const shown = months.slice(-8);
  const skipped = months.length - shown.length;
  const pitch = (right - barsFrom) / Math.max(1, shown.length);
  const x = (index: number) => barsFrom + index * pitch;
  const height = pitchOf(rows) - 4;
  const largest = Math.max(1, ...rows.flatMap(({ counts }) => counts.slice(skipped)));
  const foot = top + Math.min(rows.length, most) * pitchOf(rows);
  return (
    inRows(
      rows,
      pen,
      ({ counts }) => counts.reduce((sum, count) => sum + count, 0),
      ({ counts }, y) =>
        shown
          .map((_, index) => {
            const found = counts[skipped + index] ?? 0;
            const shade = shades[Math.ceil((found / largest) * 3)] ?? shades[0];
            const middle = x(index) + (pitch - 4) / 2;
            const style = { x: middle, y: y + 8, anchor: 'middle', max: pitch - 8 } as const;
            return (
              box(x(index), y - height / 2, pitch - 4, height, { fill: shade.fill }) +
              (found === 0
                ? ''
                : write(pen, { ...style, bold: true, fill: shade.text }, pen.figure(found, 0)))
            );
          })
          .join(''),
    ) +
    shown
      .map((month, index) =>
        write(
          pen,
          {
            x: x(index) + (pitch - 4) / 2,
            y: foot + 24,
            anchor: 'middle',
            fill: colours.soft,
            max: pitch - 4,
          },
          pen.month(month),
        ),
      )
      .join('')
  );
}

export function describeWorkshop(subject: WorkshopFigureSubject, pen: Pen): string {
  return pen.say('workshop-alternative', { title: subject.title, count: subject.rows.length });
}
