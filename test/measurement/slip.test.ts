// Slips of the fingers: two neighbouring digits that changed places while a figure was typed.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { digitsSwapped, swapsOf } from '../../src/measurement/slip.ts';

// Transposed neighbours are the commonest slip in copied figures after a single wrong digit: common practice, no source.
describe('two figures are one figure typed twice', () => {
  test.each<[string, number, number, number, boolean]>([
    ['the last two changed places', 0.748, 0.784, 0.001, true],
    ['the first two changed places', 0.748, 0.478, 0.001, true],
    ['those on both sides of the point', 12.5, 15.2, 0.1, true],
    ['the first and the last, over one that stayed', 12.5, 52.1, 0.1, false],
    ['a nought that went to the front', 0.5, 0.05, 0.01, true],
    ['below nought too', -0.748, -0.784, 0.001, true],
    ['the same figure is no slip', 0.748, 0.748, 0.001, false],
    ['one digit off is no slip', 0.748, 0.749, 0.001, false],
    ['two digits off, next to each other, but not changed about', 0.748, 0.759, 0.001, false],
    ['only one of the two fits', 0.748, 0.783, 0.001, false],
    ['the other of the two fits', 0.748, 0.794, 0.001, false],
    ['places that are no neighbours', 0.748, 0.847, 0.001, false],
    ['two swaps at once', 1.234, 2.143, 0.001, false],
    ['speeds in whole turns', 1350, 1530, 1, true],
    // At two decimals 0.75 and 0.57 are swapped, at three 0.750 and 0.570 are as well.
    ['a coarser display', 0.75, 0.57, 0.01, true],
    ['a finer display', 0.75, 0.57, 0.001, true],
  ])('%s: %d and %d', (_, a, b, resolution, expected) => {
    expect(digitsSwapped(a, b, resolution)).toBe(expected);
    expect(digitsSwapped(b, a, resolution)).toBe(expected);
  });
});

describe('what may have been meant', () => {
  test.each<[number, number, number[]]>([
    [0.748, 0.001, [0.478, 0.784]],
    [1350, 1, [3150, 1530, 1305]],
    [-0.48, 0.01, [-0.84]],
    // Two that are alike can change places unseen.
    [0.448, 0.001, [0.484]],
    [0.44, 0.01, []],
    [0.4, 0.1, []],
    [0.04, 0.01, []],
  ])('by %d, shown to the nearest %d: %j', (value, resolution, meant) => {
    expect(swapsOf(value, resolution)).toEqual(meant);
  });

  test('each of them is a slip of what was typed, and there are no others of that length', () => {
    const counts = fc.integer({ min: 10, max: 99_999 });
    fc.assert(
      fc.property(counts, (typed) => {
        const meant = swapsOf(typed, 1);
        for (const one of meant) expect(digitsSwapped(typed, one, 1)).toBe(true);
        expect(new Set(meant).size).toBe(meant.length);
        const digits = [...String(typed)];
        const unlike = digits.slice(1).filter((digit, place) => digit !== digits[place]);
        expect(meant).toHaveLength(unlike.length);
      }),
    );
  });
});
