// Limits: what lies inside, how wide they are, where to aim, and how near a part must come back.
import { describe, expect, test } from 'vitest';
import { noiseSeen } from '../../src/measurement/difference.ts';
import { learnShift } from '../../src/measurement/learn-shift.ts';
import { returned } from '../../src/measurement/repeatability.ts';
import { aimOf, contains, type Window, widthOf } from '../../src/measurement/window.ts';

const both = { low: 0.345, high: 0.355 };
const from = { low: 0.345, high: null };
const upTo = { low: null, high: 0.355 };
const none = { low: null, high: null };

// Both limits belong to the window (ILAC-G8:09/2019, simple acceptance).
test.each<[string, Window, number, boolean]>([
  ['on the lower limit', both, 0.345, true],
  ['on the upper limit', both, 0.355, true],
  ['below', both, 0.344, false],
  ['above', both, 0.356, false],
  ['above, where there is no upper limit', from, 9, true],
  ['below, where there is only a lower limit', from, 0.344, false],
  ['below, where there is no lower limit', upTo, -9, true],
  ['above, where there is only an upper limit', upTo, 0.356, false],
  ['anything, where there are none', none, 5, true],
  // 3 × 0.115 comes out as 0.34500000000000003.
  ['on the upper limit but for binary fractions', { low: null, high: 0.345 }, 3 * 0.115, true],
  // 0.7 + 0.1 comes out as 0.7999999999999999.
  ['on the lower limit but for binary fractions', { low: 0.8, high: null }, 0.7 + 0.1, true],
])('inside or not: %s', (_, window, value, inside) => {
  expect(contains(window, value)).toBe(inside);
});

test('a window that is open on one side is as wide as can be', () => {
  expect(widthOf(both)).toBeCloseTo(0.01, 12);
  expect(widthOf(from)).toBe(Number.POSITIVE_INFINITY);
  expect(widthOf(upTo)).toBe(Number.POSITIVE_INFINITY);
});

describe('the aim', () => {
  test.each<[string, Window, number]>([
    ['the middle of two limits', both, 0.35],
    ['just above the only lower limit', from, 0.355],
    ['just below the only upper limit', upTo, 0.345],
    ['nowhere, where there is no limit', none, 0],
  ])('is %s', (_, window, aim) => {
    expect(aimOf(window, 0.01)).toBeCloseTo(aim, 12);
  });
});

test('a reading of fewer decimals is held against a finer one by its own last digit', () => {
  const fine = { value: 0.712, resolution: 0.001 };
  expect(returned({ value: 0.73, resolution: 0.01 }, fine, 0.02)).toBe(true);
  expect(returned(fine, { value: 0.74, resolution: 0.01 }, 0.02)).toBe(false);
  // 0.71 and 0.73 are two counts apart, whichever of them was read to three decimals.
  expect(returned({ value: 0.731, resolution: 0.001 }, { value: 0.711, resolution: 0.001 }, 0.02)).toBe(true);
});

test('of nothing, and of one, no noise is seen', () => {
  expect(noiseSeen([])).toBe(0);
  expect(noiseSeen([0.71])).toBe(0);
  expect(noiseSeen([0.71, 0.71])).toBe(0);
});

test('a shift of four times what content gives is still believed, a larger one is not', () => {
  const prior = { shift: 0.01, spread: 0.005 };
  expect(learnShift(prior, [0.03])).toBe(0.03);
  expect(learnShift(prior, [-0.01])).toBe(-0.01);
  expect(learnShift(prior, [0.031])).toBe(0.01);
  expect(learnShift(prior, [-0.011])).toBe(0.01);
});
