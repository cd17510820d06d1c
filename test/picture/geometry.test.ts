// Holds every drawing to the sheet: nothing outside the frame, no label over another, no type too small, sound XML.
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DrawingName, drawings } from '../../src/picture/drawings.ts';
import { results, type } from '../../src/picture/look.ts';
import { penReader } from '../../src/picture/read-pen.ts';
import { overlaps, readMarks, readTexts } from './read-svg.ts';
import { samples } from './samples.ts';

const penOf = penReader(join(import.meta.dirname, '../../content/words'));
const languages = ['en', 'de', 'es', 'fr', 'pt', 'it'];

function faultsOf(drawing: DrawingName, subject: unknown, language: string): unknown[] {
  const pen = penOf(language);
  const { svg } = drawings[drawing](subject, pen);
  const texts = readTexts(svg, pen);
  const inside = ({
    left,
    right,
    top,
    bottom,
  }: {
    left: number;
    right: number;
    top: number;
    bottom: number;
  }) => left >= 0 && right <= 800 && top >= 0 && bottom <= 450;
  return [
    ...texts.filter((text) => !inside(text)).map(({ what }) => ({ outside: what })),
    ...readMarks(svg)
      .filter((mark) => !inside(mark))
      .map(({ what }) => ({ outside: what })),
    ...texts.filter(({ size }) => size < type.small).map(({ what }) => ({ small: what })),
    ...overlaps(texts).map((pair) => ({ overlap: pair })),
    ...(/NaN|Infinity|undefined/.test(svg)
      ? [{ number: svg.match(/.{40}(NaN|Infinity|undefined)/)?.[0] }]
      : []),
  ];
}

describe('every sample stays on its sheet, with no label over another, in all languages', () => {
  test.each(samples)('$name', ({ drawing, subject }) => {
    for (const language of languages) expect(faultsOf(drawing, subject, language), language).toEqual([]);
  });
});

const digits = fc.integer({ min: 0, max: 3 });
const volts = fc.double({ min: -6, max: 16, noNaN: true }).map((value) => Number(value.toFixed(3)));
const name = fc.string({ unit: 'grapheme', maxLength: 120, size: 'max' });
const limits = fc
  .tuple(fc.option(volts), fc.option(fc.double({ min: 0.002, max: 3, noNaN: true })), fc.boolean())
  .map(([low, width, open]) => ({
    low,
    high: low !== null && width !== null ? Number((low + width).toFixed(3)) : open ? 0.5 : null,
  }));
const result = fc.constantFrom(...results);
const direction = fc.constantFrom('in', 'out', 'clockwise', 'counter-clockwise', 'more', 'less');
const move = fc.record({
  direction,
  amount: fc.constantFrom(0.0625, 0.125, 0.25, 0.75, 1, 1.5, 2, 3, 12, 0.4),
  unit: fc.constantFrom('turn', 'click', 'nudge', 'mm'),
});
const language = fc.constantFrom(...languages);

const subjects: Partial<Record<DrawingName, fc.Arbitrary<unknown>>> = {
  gauge: fc
    .record({
      label: name,
      unit: fc.constantFrom('V', '1/min', 'mm', 'kPa', 'Nm', '%'),
      value: fc.option(volts),
      spread: fc.constantFrom(0, 0.02, 0.4),
      digits,
      limits,
      target: fc.option(volts),
      uncertainty: fc.option(fc.constantFrom(0, 0.0004, 0.02, 1.5)),
      result,
    })
    .map(({ limits: { low, high }, ...rest }) => ({ ...rest, low, high })),
  approach: fc
    .record({
      label: name,
      unit: fc.constant('V'),
      digits,
      limits,
      target: fc.option(volts),
      readings: fc.array(fc.record({ value: fc.option(volts), move: fc.option(move) }), {
        maxLength: 30,
        size: 'max',
      }),
      result: fc.option(result),
    })
    .map(({ limits: { low, high }, ...rest }) => ({ ...rest, low, high })),
  strip: fc.record({
    title: name,
    stages: fc.array(
      fc
        .record({
          label: name,
          unit: fc.constantFrom('V', '1/min'),
          digits,
          limits,
          readings: fc.array(fc.option(volts), { maxLength: 12 }),
          result: fc.option(result),
        })
        .map(({ limits: { low, high }, ...rest }) => ({ ...rest, low, high })),
      { maxLength: 20, size: 'max' },
    ),
  }),
  sweep: fc.record({
    label: name,
    unit: fc.constant('V'),
    digits,
    up: fc.array(fc.option(volts), { maxLength: 60, size: 'max' }),
    down: fc.array(fc.option(volts), { maxLength: 60, size: 'max' }),
    faults: fc.array(
      fc.record({
        kind: fc.constantFrom('drop-out', 'dead-spot', 'reversal', 'no-return', 'not-wide-open'),
        where: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
      { maxLength: 5 },
    ),
    result: fc.option(result),
  }),
  part: fc.record({
    part: fc.constantFrom('sensor-body', 'upper-screw', 'idle-stop', 'fast-idle', 'cable', 'preload-collar'),
    move: fc.option(move),
    where: fc.option(name),
    upsideDown: fc.boolean(),
    until: fc.option(fc.record({ low: volts, high: volts, digits, unit: fc.constant('V') })),
    effect: fc.option(fc.constantFrom('raises', 'lowers')),
  }),
  connector: fc.integer({ min: 1, max: 8 }).chain((count) =>
    fc.record({
      pins: fc.array(
        fc.record({
          label: fc.string({ minLength: 1, maxLength: 4 }),
          role: fc.option(fc.constantFrom('supply', 'signal', 'ground')),
          colours: fc.array(fc.constantFrom('light-green', 'light-blue', 'black', 'white'), { maxLength: 2 }),
        }),
        { minLength: count, maxLength: count },
      ),
      rows: fc.constantFrom(1, 2),
      red: fc.integer({ min: -1, max: count - 1 }),
      black: fc.integer({ min: -1, max: count - 1 }),
      latch: fc.option(fc.constantFrom('up', 'down')),
    }),
  ),
  causes: fc.record({
    title: name,
    rows: fc.array(
      fc.record({
        name,
        probability: fc.double({ min: 0, max: 1, noNaN: true }),
        evidence: fc.array(fc.record({ text: name, speaks: fc.constantFrom('for', 'against') }), {
          maxLength: 6,
        }),
      }),
      { maxLength: 8 },
    ),
  }),
  workshop: fc.oneof(
    fc.record({
      kind: fc.constant('stops'),
      title: name,
      rows: fc.array(fc.record({ label: name, reached: fc.nat(9999), stopped: fc.nat(9999) }), {
        maxLength: 12,
      }),
    }),
    fc.record({
      kind: fc.constant('times'),
      title: name,
      rows: fc.array(
        fc.tuple(name, fc.nat(90), fc.nat(90), fc.nat(90)).map(([label, quarter, more, most]) => ({
          label,
          quarter,
          median: quarter + more,
          threeQuarters: quarter + more + most,
        })),
        { maxLength: 12 },
      ),
    }),
    fc.record({
      kind: fc.constant('months'),
      title: name,
      months: fc.array(fc.constantFrom('2025-09', '2026-03'), { maxLength: 14, size: 'max' }),
      rows: fc.array(
        fc.record({ label: name, counts: fc.array(fc.nat(999), { maxLength: 14, size: 'max' }) }),
        {
          maxLength: 12,
        },
      ),
    }),
  ),
  record: fc.record({
    title: name,
    machine: name,
    workshop: name,
    date: fc.constant('2026-09-30'),
    result: fc.constantFrom('set', 'right-as-found', 'accepted', 'not-set'),
    values: fc.array(
      fc
        .record({ label: name, value: volts, unit: fc.constantFrom('V', '1/min'), digits, limits })
        .map(({ limits: { low, high }, ...rest }) => ({ ...rest, low, high })),
      { maxLength: 14, size: 'max' },
    ),
    code: fc.option(fc.string({ maxLength: 20 })),
  }),
};

describe('any subject at all stays on its sheet', () => {
  test.each(Object.entries(subjects))('%s', (drawing, subject) => {
    fc.assert(
      fc.property(subject, language, (given, spoken) => {
        expect(faultsOf(drawing as DrawingName, given, spoken)).toEqual([]);
      }),
      { numRuns: 300, seed: 9 },
    );
  });
});

test('the check of overlaps sees two texts that run into each other, and lets neighbours be', () => {
  const pen = penOf('en');
  const write = (x: number, text: string) => `<text x="${x}" y="50" font-size="22">${text}</text>`;
  expect(overlaps(readTexts(write(10, 'one') + write(20, 'two'), pen))).toEqual([['one', 'two']]);
  expect(overlaps(readTexts(write(10, 'one') + write(110, 'two'), pen))).toEqual([]);
});
