// The gauge: one reading against its band, with the meter's uncertainty, the target, and the result; for the owner.
import { z } from 'zod';
import { digitsSchema, figureSchema, limitSchema, limitWords } from './amounts.ts';
import { colours, frame, results, type } from './look.ts';
import { arrowHead, readingDot, targetMark, whisker } from './marks.ts';
import type { Pen } from './pen.ts';
import { limitDigits, linear, placeLabels, reach, type Span, ticks } from './scale.ts';
import { type LegendEntry, left, legend, resultWord, right, sheet, wayBack } from './sheet.ts';
import { box, line } from './svg.ts';
import { write } from './text.ts';

export const gaugeSchema = z.object({
  /** What was measured, in the owner's words. */
  label: z.string(),
  unit: z.string(),
  /** The reading, or the middle of one that wanders; null where the meter showed no figure. */
  value: figureSchema.nullable(),
  /** How far it wanders from end to end. */
  spread: z.number().nonnegative().optional(),
  digits: digitsSchema,
  low: limitSchema,
  high: limitSchema,
  target: figureSchema.nullable().optional(),
  /** How far the meter may be off either way. */
  uncertainty: z.number().nonnegative().nullable().optional(),
  result: z.enum(results),
});

export type GaugeSubject = z.infer<typeof gaugeSchema>;

const bar = { top: 244, bottom: 314, middle: 279 } as const;
const range: Span = [left + 16, right - 16];

export function drawGauge(subject: GaugeSubject, pen: Pen): string {
  const { value, digits, low, high } = subject;
  const half = (subject.spread ?? 0) / 2;
  const seen = value === null ? [] : [value - half, value + half];
  const domain = reach(subject, seen, digits);
  const at = linear(domain, range);
  const way = wayBack(value, low, high);
  return sheet(
    pen,
    subject.label,
    { result: subject.result, word: resultWord(pen, subject.result, way), way },
    band(subject, at),
    labels(subject, domain, at, pen),
    reading(subject, domain, at, pen),
    legend(pen, legendEntries(subject, pen), frame.height - 26),
  );
}

function band({ low, high, target }: GaugeSubject, at: (value: number) => number): string {
  const from = low === null ? range[0] : at(low);
  const to = high === null ? range[1] : at(high);
  const edge = { stroke: colours.bandEdge, 'stroke-width': 5 };
  return [
    box(range[0], bar.top, range[1] - range[0], bar.bottom - bar.top, { fill: colours.track }),
    low === null && high === null
      ? ''
      : box(from, bar.top, to - from, bar.bottom - bar.top, { fill: colours.band }),
    low === null ? '' : line(from, bar.top - 10, from, bar.bottom + 10, edge),
    high === null ? '' : line(to, bar.top - 10, to, bar.bottom + 10, edge),
    typeof target === 'number' ? targetMark(at(target), bar.bottom) : '',
  ].join('');
}

/** The limits in bold under their edges; round ticks beside them where there is room. */
function labels(subject: GaugeSubject, domain: Span, at: (value: number) => number, pen: Pen): string {
  const limits = [subject.low, subject.high].filter((limit) => limit !== null);
  const digits = limitDigits(subject, subject.digits);
  const texts = limits.map((limit) => pen.figure(limit, digits));
  const widths = texts.map((text) => pen.width(text, type.body, true));
  const places = placeLabels(
    limits.map((limit, index) => ({ at: at(limit), width: widths[index]! })),
    24,
    [left, right],
  );
  const y = bar.bottom + 38;
  const round = ticks(domain, 5);
  const shown = (tick: number) => pen.figure(tick, Math.max(round.digits, digits));
  const spare = round.values.filter((tick) => {
    const room = pen.width(shown(tick), type.small, false) / 2 + 18;
    return (
      at(tick) - room >= left - 18 &&
      at(tick) + room <= right + 18 &&
      places.every((place, index) => Math.abs(place - at(tick)) >= room + widths[index]! / 2)
    );
  });
  return [
    ...spare.map(
      (tick) =>
        line(at(tick), bar.bottom, at(tick), bar.bottom + 8, { stroke: colours.soft, 'stroke-width': 2 }) +
        write(pen, { x: at(tick), y, anchor: 'middle', fill: colours.soft }, shown(tick)),
    ),
    ...texts.map((text, index) =>
      write(
        pen,
        { x: places[index]!, y, size: type.body, bold: true, anchor: 'middle', fill: colours.bandEdge },
        text,
      ),
    ),
  ].join('');
}

function reading(subject: GaugeSubject, domain: Span, at: (value: number) => number, pen: Pen): string {
  const { value, spread = 0, digits, uncertainty } = subject;
  if (value === null) {
    return write(
      pen,
      { x: frame.width / 2, y: 170, size: type.loud, bold: true, anchor: 'middle', max: right - left },
      pen.say('picture-no-figure'),
    );
  }
  const off = value < domain[0] ? -1 : value > domain[1] ? 1 : 0;
  const x = off === 0 ? at(value) : off < 0 ? range[0] : range[1];
  const shown =
    spread > 0
      ? `${pen.figure(value - spread / 2, digits)} – ${pen.figure(value + spread / 2, digits)}`
      : pen.figure(value, digits);
  const size = spread > 0 ? 60 : type.huge;
  const [width, unitWidth] = [pen.width(shown, size, true), pen.width(pen.clean(subject.unit), 40, false)];
  const start = Math.min(Math.max(x - width / 2, left), right - width - unitWidth - 14);
  const near = Math.min(Math.max(x, start + 20), start + width - 20);
  const stroke = { stroke: colours.ink, 'stroke-width': 4 };
  const inside = (place: number) => Math.min(Math.max(place, range[0]), range[1]);
  return [
    write(pen, { x: start, y: 176, size, bold: true }, shown),
    write(pen, { x: start + width + 14, y: 176, size: 40, fill: colours.soft }, subject.unit),
    off === 0
      ? line(near, 194, x, bar.top - 16, stroke) + line(x, bar.top - 16, x, bar.bottom, stroke)
      : arrowHead(x + off * 12, bar.middle, off * 90, 40, colours[subject.result]) +
        write(
          pen,
          {
            x: off < 0 ? left : right,
            y: bar.top - 14,
            anchor: off < 0 ? 'start' : 'end',
            fill: colours.soft,
          },
          pen.say('picture-off-scale'),
        ),
    off === 0 && spread > 0
      ? box(
          inside(at(value - spread / 2)),
          bar.middle - 9,
          inside(at(value + spread / 2)) - inside(at(value - spread / 2)),
          18,
          { fill: colours.ink, opacity: 0.45 },
        )
      : '',
    off === 0 && typeof uncertainty === 'number' && uncertainty > 0
      ? whisker(
          inside(at(value - spread / 2 - uncertainty)),
          inside(at(value + spread / 2 + uncertainty)),
          bar.middle,
        )
      : '',
    off === 0 ? readingDot(x, bar.middle, 13) : '',
  ].join('');
}

function legendEntries(subject: GaugeSubject, pen: Pen): LegendEntry[] {
  const { unit, target, uncertainty } = subject;
  const digits = limitDigits(subject, subject.digits);
  const limits = limitWords(pen, subject);
  const entries: LegendEntry[] = [];
  if (limits !== null) {
    entries.push({
      sign: (cx, cy) =>
        box(cx - 13, cy - 9, 26, 18, { fill: colours.band, stroke: colours.bandEdge, 'stroke-width': 3 }),
      text: pen.say('picture-right-band', { limits }),
    });
  }
  if (typeof target === 'number') {
    entries.push({
      sign: targetMark,
      text: pen.say('picture-aim', { value: pen.figure(target, digits), unit }),
    });
  }
  if (typeof uncertainty === 'number' && uncertainty > 0) {
    entries.push({
      sign: (cx, cy) => whisker(cx - 13, cx + 13, cy, 8),
      text: pen.say('picture-meter', {
        // One digit that is not a nought, at least.
        value: pen.figure(uncertainty, Math.max(subject.digits, Math.ceil(-Math.log10(uncertainty)))),
        unit,
      }),
    });
  }
  return entries;
}

export function describeGauge(subject: GaugeSubject, pen: Pen): string {
  const way = wayBack(subject.value, subject.low, subject.high);
  return pen.say('gauge-alternative', {
    label: subject.label,
    value:
      subject.value === null
        ? pen.say('picture-no-figure')
        : `${pen.figure(subject.value, subject.digits)} ${subject.unit}`,
    result: resultWord(pen, subject.result, way),
    limits: limitWords(pen, subject) ?? pen.say('picture-no-limits'),
  });
}
