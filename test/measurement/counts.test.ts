import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromCounts, tidy, toCounts } from '../../src/measurement/counts.ts';
import { contains, roundInward, scaleWindow, shiftWindow } from '../../src/measurement/window.ts';

test.each([
  [0.355, 0.001, 355],
  [0.29, 0.01, 29],
  [1.005, 0.001, 1005],
  [-0.5, 0.1, -5],
  [0, 0.001, 0],
  [1900, 100, 19],
  // An eighth of an inch is 3.175 mm (international inch of 25.4 mm, 1959).
  [9.525, 3.175, 3],
])('%d shown to the nearest %d is %d counts', (value, resolution, counts) => {
  expect(toCounts(value, resolution)).toBe(counts);
  expect(fromCounts(counts, resolution)).toBe(value);
});

test.each([
  [
    'a limit that the display can show stays',
    { low: 0.345, high: 0.355 },
    0.001,
    { low: 0.345, high: 0.355 },
  ],
  ['others go inward', { low: 0.3441, high: 0.3559 }, 0.001, { low: 0.345, high: 0.355 }],
  [
    'below zero inward is the other way',
    { low: -0.0251, high: -0.0149 },
    0.001,
    { low: -0.025, high: -0.015 },
  ],
  ['an open side stays open', { low: null, high: 0.087 }, 0.01, { low: null, high: 0.08 }],
  ['zero has no sign', { low: -0.0004, high: 0.0004 }, 0.001, { low: 0, high: 0 }],
])('%s', (_, window, resolution, rounded) => {
  expect(roundInward(window, resolution)).toEqual(rounded);
});

test('limits go with the supply', () => {
  // A potentiometer's signal is its supply times a share (domain facts 1.1: 4.50 V gives 0.450 for 0.1, 5.25 V gives 0.525; from memory).
  expect(scaleWindow({ low: 0.5, high: null }, 4.5, 5)).toEqual({ low: 0.45, high: null });
  expect(scaleWindow({ low: null, high: 0.5 }, 5.25, 5)).toEqual({ low: null, high: 0.525 });
  expect(shiftWindow({ low: 0.345, high: 0.355 }, -0.003)).toEqual({ low: 0.342, high: 0.352 });
});

const decimals = fc.constantFrom(1, 0.1, 0.01, 0.001, 0.0001);
const count = fc.integer({ min: -20_000, max: 20_000 });

test('what a display shows and its count are the same thing', () => {
  fc.assert(
    fc.property(count, decimals, (n, resolution) => {
      const shown = Number((n * resolution).toFixed(4)) + 0;
      expect(toCounts(shown, resolution)).toBe(n + 0);
      expect(fromCounts(n, resolution)).toBe(shown);
    }),
  );
});

test('whole counts decide, whatever binary fractions say', () => {
  fc.assert(
    fc.property(count, count, count, decimals, (value, low, high, resolution) => {
      const window = { low: low * resolution, high: high * resolution };
      const printed = roundInward(window, resolution);
      expect(contains(printed, value * resolution)).toBe(low <= value && value <= high);
    }),
  );
});

test('rounded limits never lie outside, and never leave out a place inside', () => {
  fc.assert(
    fc.property(fc.double({ min: -5, max: 5, noNaN: true }), decimals, (limit, resolution) => {
      const { low, high } = roundInward({ low: limit, high: limit }, resolution);
      const dust = resolution * 1e-5;
      expect(low).toBeGreaterThanOrEqual(limit - dust);
      expect(low).toBeLessThan(limit + resolution);
      expect(high).toBeLessThanOrEqual(limit + dust);
      expect(high).toBeGreaterThan(limit - resolution);
    }),
  );
});

test('tidying drops what binary fractions add', () => {
  expect(0.1 + 0.2).not.toBe(0.3);
  expect(tidy(0.1 + 0.2)).toBe(0.3);
});
