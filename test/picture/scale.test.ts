// Holds places and ticks to a general-purpose library of scales (d3-scale), and label places to what they promise.
import { scaleLinear } from 'd3-scale';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limitDigits, linear, placeLabels, reach, ticks } from '../../src/picture/scale.ts';

const value = fc.double({ min: -1e4, max: 1e4, noNaN: true });
const width = fc.double({ min: 1e-3, max: 1e4, noNaN: true });

describe('a linear scale', () => {
  test('agrees with the library at any value, inside and beyond', () => {
    fc.assert(
      fc.property(value, width, value, value, value, (from, wide, a, b, at) => {
        const ours = linear([from, from + wide], [a, b])(at);
        const theirs = scaleLinear([from, from + wide], [a, b])(at);
        expect(ours).toBeCloseTo(theirs, 3 - Math.ceil(Math.log10(1 + Math.abs(theirs))));
      }),
    );
  });

  test('a span without width stands in the middle', () => {
    expect(linear([2, 2], [0, 100])(2)).toBe(50);
  });
});

describe('ticks', () => {
  test('are those of the library, for any span and any count from two (for one it may double them)', () => {
    fc.assert(
      fc.property(value, width, fc.integer({ min: 2, max: 12 }), (from, wide, count) => {
        const theirs = scaleLinear([from, from + wide], [0, 1]).ticks(count);
        const ours = ticks([from, from + wide], count).values;
        // The library counts its steps a little differently where a span's end lies within rounding of a tick.
        const clear = (tick: number) => Math.min(tick - from, from + wide - tick) > wide * 1e-6;
        expect(ours.filter(clear).map((tick) => tick.toPrecision(9))).toEqual(
          theirs.filter(clear).map((tick) => tick.toPrecision(9)),
        );
      }),
      { numRuns: 1000 },
    );
  });

  test.each([
    [[0.61, 0.63], 5, ['0.610', '0.615', '0.620', '0.625', '0.630']],
    [[0, 4.6], 5, ['0', '1', '2', '3', '4']],
    [[1650, 1900], 5, ['1650', '1700', '1750', '1800', '1850', '1900']],
  ] as const)('within %j read as a person would number them', (span, count, texts) => {
    const { values, digits } = ticks(span, count);
    expect(values.map((tick) => tick.toFixed(digits))).toEqual(texts);
  });

  test('a span without width has none', () => {
    expect(ticks([1, 1], 5).values).toEqual([]);
  });
});

describe('how far a scale reaches', () => {
  const limits = fc
    .tuple(value, width)
    .map(([low, wide]) => ({ low, high: low + wide, target: low + wide / 2 }));

  test('always holds the limits, and any reading within six bands', () => {
    fc.assert(
      fc.property(limits, fc.double({ min: -5.999, max: 6.999, noNaN: true }), (band, share) => {
        const reading = band.low + share * (band.high - band.low);
        const [from, to] = reach(band, [reading], 3);
        for (const held of [band.low, band.high, reading]) {
          expect(held).toBeGreaterThanOrEqual(from);
          expect(held).toBeLessThanOrEqual(to);
        }
        // The band stays wide enough to be seen: a fifteenth of the scale at least.
        expect((band.high - band.low) / (to - from)).toBeGreaterThan(1 / 15);
      }),
    );
  });

  test('leaves a reading far off the scale', () => {
    expect(reach({ low: 0.615, high: 0.625 }, [4.98], 3)[1]).toBeLessThan(1);
  });

  test('reads "at most" from zero', () => {
    expect(reach({ low: null, high: 0.05 }, [0.012], 3)[0]).toBe(0);
  });

  test('needs neither limits nor readings', () => {
    expect(reach({ low: null, high: null }, [], 3)).toEqual([0, 1]);
  });
});

test('labels keep apart and within their line whenever they fit', () => {
  const wanted = fc.array(
    fc.record({
      at: fc.double({ min: -50, max: 850, noNaN: true }),
      width: fc.double({ min: 1, max: 120, noNaN: true }),
    }),
    { minLength: 1, maxLength: 6 },
  );
  fc.assert(
    fc.property(wanted, (labels) => {
      labels.sort((a, b) => a.at - b.at);
      const gap = 10;
      const needed = labels.reduce((sum, label) => sum + label.width + gap, -gap);
      fc.pre(needed <= 800);
      const places = placeLabels(labels, gap, [0, 800]);
      for (const [index, place] of places.entries()) {
        const half = labels[index]!.width / 2;
        expect(place - half).toBeGreaterThanOrEqual(-1e-6);
        expect(place + half).toBeLessThanOrEqual(800 + 1e-6);
        if (index > 0) {
          const apart = place - half - (places[index - 1]! + labels[index - 1]!.width / 2);
          expect(apart).toBeGreaterThanOrEqual(gap - 1e-6);
        }
      }
    }),
  );
});

test('limits are shown with the digits that they have, and no fewer than the reading', () => {
  expect(limitDigits({ low: 0.615, high: 0.625 }, 1)).toBe(3);
  expect(limitDigits({ low: 1700, high: 1800 }, 0)).toBe(0);
  expect(limitDigits({ low: null, high: 0.05 }, 3)).toBe(3);
});
