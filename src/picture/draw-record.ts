// The record card: what was set, with values, limits, date, machine, workshop and check code; for the owner to keep.
import { z } from 'zod';
import { digitsSchema, figureSchema, limitSchema, limitWords } from './amounts.ts';
import { colours, frame, type Result, type } from './look.ts';
import type { Pen } from './pen.ts';
import { left, right, sheet } from './sheet.ts';
import { box, line } from './svg.ts';
import { write } from './text.ts';

export const recordCardSchema = z.object({
  /** The procedure's name. */
  title: z.string(),
  machine: z.string(),
  workshop: z.string(),
  date: z.string().regex(/^\d{4}-\d{2}-\d{2}$/),
  result: z.enum(['set', 'right-as-found', 'accepted', 'not-set']),
  /** Who accepted a value, where somebody did. */
  acceptedBy: z.string().optional(),
  values: z.array(
    z.object({
      label: z.string(),
      value: figureSchema,
      unit: z.string(),
      digits: digitsSchema,
      low: limitSchema,
      high: limitSchema,
    }),
  ),
  /** The short code by which staff find the record. */
  code: z.string().nullable(),
});

export type RecordCardSubject = z.infer<typeof recordCardSchema>;
type Entry = RecordCardSubject['values'][number];

const stamp = {
  set: 'pass',
  'right-as-found': 'pass',
  accepted: 'unclear',
  'not-set': 'adjust',
} as const satisfies Record<RecordCardSubject['result'], Result>;

const top = 122;
const foot = frame.height - 68;
const inOneColumn = 6;
const perColumn = 5;

export function drawRecord(subject: RecordCardSubject, pen: Pen): string {
  const columns = subject.values.length > inOneColumn ? 2 : 1;
  const shown = subject.values.slice(0, columns === 2 ? 2 * perColumn : inOneColumn);
  const rows = Math.ceil(shown.length / columns);
  const hidden = subject.values.length - shown.length;
  const half = (right - left - 32) / 2;
  const pitch = columns === 2 ? (foot - top) / rows : Math.min(44, (foot - top) / Math.max(shown.length, 1));
  return sheet(
    pen,
    subject.title,
    { result: stamp[subject.result], word: pen.say(`record-${subject.result}`) },
    write(
      pen,
      { x: left, y: 94, size: type.body, max: right - left },
      `${pen.clean(subject.machine)} · ${pen.day(subject.date)}`,
    ),
    line(left, 112, right, 112, { stroke: colours.rule, 'stroke-width': 2 }),
    ...shown.map((entry, index) => {
      if (columns === 1) return wideRow(entry, top + (index + 0.5) * pitch + 4, pen);
      const x = left + Math.floor(index / rows) * (half + 32);
      return narrowRow(entry, x, top + (index % rows) * pitch + 20, half, pen);
    }),
    shown.length === 0
      ? write(pen, { x: left, y: top + 40, max: right - left }, pen.say('record-no-values'))
      : '',
    footer(subject, hidden, pen),
  );
}

function wideRow(entry: Entry, y: number, pen: Pen): string {
  return (
    write(pen, { x: left, y, size: type.body, max: 310 }, entry.label) +
    write(
      pen,
      { x: left + 470, y, size: type.body, bold: true, anchor: 'end', max: 152 },
      shownValue(entry, pen),
    ) +
    write(pen, { x: right, y, anchor: 'end', max: 250, fill: colours.soft }, limits(entry, pen) ?? '–')
  );
}

function narrowRow(entry: Entry, x: number, y: number, width: number, pen: Pen): string {
  const value = pen.clean(shownValue(entry, pen));
  const valueWidth = Math.min(pen.width(value, type.small, true), 150);
  const allowed = limits(entry, pen);
  return (
    write(pen, { x, y, max: width, fill: colours.soft }, entry.label) +
    write(pen, { x, y: y + 24, bold: true, max: 150 }, value) +
    (allowed === null
      ? ''
      : write(
          pen,
          { x: x + valueWidth + 16, y: y + 24, max: width - valueWidth - 16, fill: colours.soft },
          allowed,
        ))
  );
}

/** The unit stands with the value already. */
const limits = (entry: Entry, pen: Pen) => limitWords(pen, { ...entry, unit: '' });

const shownValue = (entry: Entry, pen: Pen) => `${pen.figure(entry.value, entry.digits)} ${entry.unit}`;

/** Who vouches on the left, the code on the right: at a counter it is the one thing that is looked for. */
function footer(subject: RecordCardSubject, hidden: number, pen: Pen): string {
  const y = frame.height - 26;
  const code = subject.code === null ? '' : pen.clean(subject.code);
  const codeWidth = code === '' ? 0 : Math.min(pen.width(code, type.title, true) + 32, 300);
  const said = [
    subject.workshop,
    ...(subject.acceptedBy === undefined
      ? []
      : [pen.say('record-accepted-by', { name: subject.acceptedBy })]),
    ...(hidden > 0 ? [pen.say('record-hidden', { count: hidden })] : []),
  ];
  return (
    line(left, foot + 6, right, foot + 6, { stroke: colours.rule, 'stroke-width': 2 }) +
    write(pen, { x: left, y, size: type.body, max: right - left - codeWidth - 24 }, said.join(' · ')) +
    (code === ''
      ? ''
      : box(right - codeWidth, y - 32, codeWidth, 44, {
          fill: 'none',
          stroke: colours.ink,
          'stroke-width': 3,
          rx: 8,
        }) +
        write(
          pen,
          {
            x: right - codeWidth / 2,
            y,
            size: type.title,
            bold: true,
            anchor: 'middle',
            max: codeWidth - 24,
          },
          code,
        ))
  );
}

export function describeRecord(subject: RecordCardSubject, pen: Pen): string {
  return pen.say('record-alternative', {
    title: subject.title,
    machine: subject.machine,
    date: pen.day(subject.date),
    result: pen.say(`record-${subject.result}`),
    count: subject.values.length,
    code: subject.code ?? '–',
  });
}
