// Two looks at the meter: the same figure as far as its digits tell, or one so near that it is the same state once more.
import { describe, expect, test } from 'vitest';
import type { Seen } from '../../src/diagnosis/evidence.ts';
import { isNear, sameSeen } from '../../src/diagnosis/same-state.ts';

const volts = (value: number, resolution = 0.001): Seen => ({ kind: 'value', value, resolution });
const overload: Seen = { kind: 'overload' };
const blank: Seen = { kind: 'none' };
const range: Seen = { kind: 'range', low: 0.6, high: 0.7, resolution: 0.001 };
const series: Seen = { kind: 'series', values: [0.6, 4.4, 0.6], resolution: 0.01 };

// The last digit of a meter tumbles by one or two from look to look: common practice, no source.
describe('the same figure', () => {
  test.each<[string, Seen, Seen, boolean]>([
    ['to the digit', volts(0.65), volts(0.65), true],
    ['two digits up', volts(0.65), volts(0.652), true],
    ['two digits down', volts(0.65), volts(0.648), true],
    ['five digits up', volts(0.65), volts(0.655), false],
    ['five digits down', volts(0.65), volts(0.645), false],
    ['by the coarser of the two', volts(0.65, 0.01), volts(0.67), true],
    ['by the coarser, the other way about', volts(0.67), volts(0.65, 0.01), true],
    ['with its sign turned', volts(0.65), volts(-0.65), false],
    ['an overload twice', overload, overload, true],
    ['a blank meter twice', blank, blank, true],
    ['a range twice', range, range, true],
    // Of two sweeps nobody can say: a hand does not repeat itself.
    ['a sweep twice', series, series, false],
    ['a figure and an overload', volts(0.65), overload, false],
    ['an overload and a blank meter', overload, blank, false],
  ])('%s', (_, a, b, expected) => {
    expect(sameSeen(a, b)).toBe(expected);
  });
});

describe('near enough to be the same state', () => {
  test.each<[string, Seen, Seen, boolean]>([
    ['a few millivolts off', volts(0.65), volts(0.66), true],
    ['the other way', volts(0.65), volts(0.64), true],
    ['a tenth of a volt off', volts(0.65), volts(0.75), false],
    ['a tenth below', volts(0.75), volts(0.65), false],
    // A share of the figure is allowed too: a hand at full throttle wavers by more.
    ['a tenth of a volt off at four and a half', volts(4.4), volts(4.5), true],
    ['the same, the other way', volts(4.5), volts(4.4), true],
    ['below nought', volts(-4.4), volts(-4.5), true],
    ['with its sign turned', volts(0.65), volts(-0.65), false],
    ['an overload twice', overload, overload, true],
    ['a sweep twice', series, series, true],
    ['a figure and a range', volts(0.65), range, false],
  ])('%s', (_, a, b, expected) => {
    expect(isNear(a, b)).toBe(expected);
  });
});
