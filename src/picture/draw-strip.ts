// The strip: every stage's last reading against its own band, one row each; for the desk.
import { z } from 'zod';
import { digitsSchema, figureSchema, limitSchema } from './amounts.ts';
import { colours, results, type } from './look.ts';
import { arrowHead, readingDot, resultMark } from './marks.ts';
import type { Pen } from './pen.ts';
import { linear, reach } from './scale.ts';
import { left, right, sheet, wayBack } from './sheet.ts';
import { box, line } from './svg.ts';
import { write } from './text.ts';

export const stripSchema = z.object({
  title: z.string(),
  stages: z.array(
    z.object({
      label: z.string(),
      unit: z.string(),
      digits: digitsSchema,
      low: limitSchema,
      high: limitSchema,
      /** Oldest first; nulls are readings without a figure. Empty where the stage has not been measured. */
      readings: z.array(figureSchema.nullable()),
      result: z.enum(results).nullable(),
    }),
  ),
});

export type StripSubject = z.infer<typeof stripSchema>;
type Stage = StripSubject['stages'][number];

const top = 84;
const roomy = 8;
const most = 16;

export function drawStrip(subject: StripSubject, pen: Pen): string {
  const shown = subject.stages.slice(-most);
  const hidden = subject.stages.length - shown.length;
  const columns = shown.length > roomy ? 2 : 1;
  const perColumn = Math.ceil(shown.length / columns);
  const pitch = Math.min(48, 340 / Math.max(1, perColumn));
  const width = columns === 1 ? right - left : (right - left - 32) / 2;
  const title =
    hidden > 0 ? `${subject.title} · ${pen.say('strip-hidden', { count: hidden })}` : subject.title;
  return sheet(
    pen,
    title,
    null,
    shown.length === 0
      ? write(pen, { x: left, y: 140, size: type.title }, pen.say('picture-no-readings'))
      : '',
    ...shown.map((stage, index) => {
      const x = left + Math.floor(index / perColumn) * (width + 32);
      const y = top + (index % perColumn) * pitch + pitch / 2;
      return columns === 1 ? wideRow(stage, x, y, pen) : narrowRow(stage, x, y, width, pen);
    }),
  );
}

function wideRow(stage: Stage, x: number, y: number, pen: Pen): string {
  return (
    sign(stage, x + 13, y) +
    write(pen, { x: x + 40, y: y + 8, size: type.body, max: 290 }, stage.label) +
    smallGauge(stage, x + 350, y, 210) +
    figure(stage, right, y, 150, pen)
  );
}

function narrowRow(stage: Stage, x: number, y: number, width: number, pen: Pen): string {
  const figureWidth = Math.min(160, pen.width(pen.clean(figureText(stage, pen)), type.small, true));
  return (
    sign(stage, x + 12, y) +
    write(pen, { x: x + 36, y: y + 8, max: width - 36 - 16 - figureWidth }, stage.label) +
    figure(stage, x + width, y, figureWidth + 1, pen)
  );
}

function sign(stage: Stage, x: number, y: number): string {
  if (stage.result === null) return line(x - 9, y, x + 9, y, { stroke: colours.soft, 'stroke-width': 3 });
  return resultMark(stage.result, x, y, 12, wayBack(stage.readings.at(-1) ?? null, stage.low, stage.high));
}

function figure(stage: Stage, x: number, y: number, max: number, pen: Pen): string {
  return write(pen, { x, y: y + 8, bold: true, anchor: 'end', max }, figureText(stage, pen));
}

function figureText(stage: Stage, pen: Pen): string {
  const last = stage.readings.at(-1);
  if (last === undefined) return '–';
  return last === null ? pen.say('picture-overload') : `${pen.figure(last, stage.digits)} ${stage.unit}`;
}

/** The band, and the readings as a trail of open dots that ends in a filled one. */
function smallGauge(stage: Stage, x: number, y: number, width: number): string {
  const values = stage.readings.filter((value) => value !== null);
  const domain = reach(stage, values.slice(-1), stage.digits);
  const scale = linear(domain, [x + 8, x + width - 8]);
  const at = (value: number) => Math.min(Math.max(scale(value), x + 8), x + width - 8);
  const { low, high } = stage;
  const edge = { stroke: colours.bandEdge, 'stroke-width': 3 };
  const last = values.at(-1);
  const beyond = last === undefined ? 0 : last < domain[0] ? -1 : last > domain[1] ? 1 : 0;
  const bandFrom = low === null ? x : at(low);
  const bandTo = high === null ? x + width : at(high);
  return [
    box(x, y - 13, width, 26, { fill: colours.track }),
    low === null && high === null ? '' : box(bandFrom, y - 13, bandTo - bandFrom, 26, { fill: colours.band }),
    low === null ? '' : line(bandFrom, y - 15, bandFrom, y + 15, edge),
    high === null ? '' : line(bandTo, y - 15, bandTo, y + 15, edge),
    ...values.slice(-9, -1).map((value) => readingDot(at(value), y, 6, 'open')),
    last === undefined
      ? ''
      : beyond === 0
        ? readingDot(at(last), y, 9)
        : arrowHead(at(last) + beyond * 8, y, beyond * 90, 22, colours.ink),
  ].join('');
}

export function describeStrip(subject: StripSubject, pen: Pen): string {
  return pen.say('strip-alternative', {
    title: subject.title,
    count: subject.stages.length,
    passed: subject.stages.filter(({ result }) => result === 'pass').length,
  });
}
