// The shape of a sweep in one word, and whether a reading can come from a machine that is only not set yet.
import { describe, expect, test } from 'vitest';
import type { Observation, Seen } from '../../src/diagnosis/evidence.ts';
import { healthyAt, usualSupply } from '../../src/diagnosis/healthy.ts';
import { plausible } from '../../src/diagnosis/plausible.ts';
import { shapeOf } from '../../src/diagnosis/sweep-shape.ts';

const n = null;

// A sound track rises with the throttle and comes back; common practice, no source.
test.each<[string, (number | null)[], string, number | null, number | null]>([
  ['up and back', [0.62, 2, 4.3, 2, 0.62], 'rising', 0.62, 4.3],
  ['up only', [0.62, 2, 4.3], 'rising', 0.62, 4.3],
  ['up and back, with the last digits wavering', [0.62, 2, 1.99, 4.3, 4.29, 2, 0.63], 'rising', 0.62, 4.3],
  ['over the range of the meter at the top', [0.62, 1.6, n, n, 1.6, 0.62], 'rising', 0.62, null],
  ['down and back', [4.3, 2, 0.62, 2, 4.3], 'falling', 4.3, 0.62],
  ['below nought with crossed leads', [-0.62, -2, -4.3, -2, -0.62], 'falling', -0.62, -4.3],
  ['always the same', [0.62, 0.62, 0.62], 'flat', 0.62, 0.62],
  ['the same but for a few digits', [0.62, 0.66, 0.62], 'flat', 0.62, 0.62],
  ['all over range', [n, n, n], 'overload', null, null],
  ['a drop-out on the way up', [0.62, 0.01, 4.3, 2, 0.62], 'broken', 0.62, 4.3],
  ['a step back on the way up', [0.62, 2, 1.5, 4.3, 2, 0.62], 'broken', 0.62, 4.3],
  ['a step up on the way home', [0.62, 2, 4.3, 1.5, 2, 0.62], 'broken', 0.62, 4.3],
  ['a dip between two overloads', [0.62, n, 1, n, 0.62], 'broken', 0.62, null],
  ['it stays up', [0.62, 2, 4.3, 2, 1], 'not-back', 0.62, 4.3],
  ['it goes lower than it began', [0.62, 2, 4.3, 2, 0.4], 'not-back', 0.62, 4.3],
])('%s', (_, values, shape, start, top) => {
  expect(shapeOf(values, 0.01)).toEqual({ shape, start, top });
});

const value = (volts: number, resolution = 0.001): Seen => ({ kind: 'value', value: volts, resolution });
const at = (seen: Seen, more: Partial<Observation> = {}): Observation => ({
  kind: 'observation',
  measure: 'signal-closed-stop',
  situation: 'closed',
  seen,
  expected: { low: 0.61, high: 0.63 },
  settable: false,
  supply: null,
  ...more,
});
const before = (volts: number, expect_: 'falls' | 'rises' | 'same') => ({
  previous: { seen: value(volts), after: 'back-off:idle-stop', expect: expect_ },
});

describe('the first gate of a reading', () => {
  test.each<[string, Observation, boolean]>([
    ['inside', at(value(0.62)), true],
    ['on a limit', at(value(0.63)), true],
    ['outside, where nothing can be set', at(value(0.64)), false],
    ['below, where nothing can be set', at(value(0.6)), false],
    ['a coarse digit that may hide a figure inside', at(value(0.64, 0.02)), true],
    ['a coarse digit that hides none', at(value(0.65, 0.02)), false],
    ['off, and only not set yet', at(value(0.75), { settable: true }), true],
    ['farther off than any setting', at(value(1), { settable: true }), false],
    ['as far off as content allows', at(value(1), { settable: true, reach: 0.4 }), true],
    ['farther than content allows', at(value(0.75), { settable: true, reach: 0.1 }), false],
    ['where nobody knows what it should be', at(value(3), { expected: null }), true],
    ['above the only lower limit', at(value(3), { expected: { low: 0.61, high: null } }), true],
    ['below the only upper limit', at(value(-3), { expected: { low: null, high: 0.63 } }), true],
    ['below the only lower limit', at(value(0.5), { expected: { low: 0.61, high: null } }), false],
    ['above the only upper limit', at(value(0.7), { expected: { low: null, high: 0.63 } }), false],
    ['an overload', at({ kind: 'overload' }), false],
    ['a blank meter', at({ kind: 'none' }), false],
    ['a flicker', at({ kind: 'range', low: 0.61, high: 0.625, resolution: 0.001 }), true],
    ['a flicker over a limit', at({ kind: 'range', low: 0.62, high: 0.635, resolution: 0.001 }), false],
    ['a flicker under a limit', at({ kind: 'range', low: 0.605, high: 0.62, resolution: 0.001 }), false],
    [
      'it wanders, if well inside',
      at({ kind: 'range', low: 0.5, high: 0.7, resolution: 0.001 }, { settable: true }),
      false,
    ],
    ['a sound sweep', at({ kind: 'series', values: [0.62, 2, 4.3, 2, 0.62], resolution: 0.01 }), true],
    ['a sweep that falls', at({ kind: 'series', values: [4.3, 2, 0.62, 2, 4.3], resolution: 0.01 }), false],
    ['it fell, as it had to', at(value(0.62), before(0.7, 'falls')), true],
    ['it stood still and had to fall', at(value(0.62), before(0.62, 'falls')), false],
    ['it rose and had to fall', at(value(0.62), before(0.55, 'falls')), false],
    ['it rose, as it had to', at(value(0.62), before(0.55, 'rises')), true],
    ['it fell and had to rise', at(value(0.62), before(0.7, 'rises')), false],
    ['it stood still and had to rise', at(value(0.62), before(0.62, 'rises')), false],
    ['it need not have moved', at(value(0.62), before(0.7, 'same')), true],
    [
      'before it there was no figure',
      at(value(0.62), { previous: { seen: { kind: 'overload' }, after: null, expect: 'falls' } }),
      true,
    ],
  ])('%s', (_, observation, expected) => {
    expect(plausible(observation)).toBe(expected ? 'plausible' : 'implausible');
  });

  test('how far it may move to and fro is for the content to say', () => {
    const flicker = at({ kind: 'range', low: 0.612, high: 0.628, resolution: 0.001 });
    expect(plausible(flicker, { wander: 0.0165 })).toBe('plausible');
    expect(plausible(flicker, { wander: 0.01 })).toBe('implausible');
  });
});

describe('where the reading of a machine in order lies', () => {
  test('in the middle of its limits, and as far off as it may be where it is not set yet', () => {
    const right = healthyAt(at(value(0)), { low: 0.6, high: 0.64 })!;
    expect(right.right.middle).toBeCloseTo(0.62, 12);
    expect(right.right.half).toBeCloseTo(0.02, 12);
    expect(right.any).toEqual([right.right]);
    const off = healthyAt(at(value(0), { settable: true, reach: 0.4 }), { low: 0.6, high: 0.64 })!;
    expect(off.any[1]!.half).toBeCloseTo(0.42, 12);
    expect(off.any.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(off.right).toEqual(right.right);
  });

  test.each([
    ['a lower limit only', { low: 12, high: null }, 12, 13.2],
    ['an upper limit only', { low: null, high: 0.1 }, 0, 0.1],
  ])('%s is closed by how such figures usually lie', (_, band, low, high) => {
    const { right } = healthyAt(at(value(0)), band)!;
    expect(right.middle - right.half).toBeCloseTo(low, 12);
    expect(right.middle + right.half).toBeCloseTo(high, 12);
  });

  test('nowhere without limits', () => {
    expect(healthyAt(at(value(0)), { low: null, high: null })).toBeNull();
  });

  test('the supply is the measured one, known the better the smaller it is, or the usual one', () => {
    expect(healthyAt(at(value(0)), { low: 0, high: 1 })!.supply).toEqual(usualSupply);
    const measured = (supply: number) => healthyAt(at(value(0), { supply }), { low: 0, high: 1 })!.supply;
    expect(measured(4.9).middle).toBe(4.9);
    expect(measured(12).spread).toBeGreaterThan(measured(5).spread);
    expect(measured(4.9).spread).toBeLessThan(usualSupply.spread);
  });

  test('a meter shows as much as its range: five volts at least, and half as much again as the limit', () => {
    const scale = (high: number) => healthyAt(at(value(0)), { low: 0, high })!.scale;
    expect([scale(0.63), scale(4.6), scale(1350)]).toEqual([5, expect.closeTo(6.9, 9), 2025]);
  });
});
