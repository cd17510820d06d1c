import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { digitNeeded, judge } from '../../src/measurement/judge.ts';
import { judgeRange } from '../../src/measurement/judge-range.ts';
import { unknownMeter } from '../../src/measurement/uncertainty.ts';
import type { Window } from '../../src/measurement/window.ts';

const simple = { acceptance: 'simple' } as const;
const guarded = { acceptance: 'guarded' } as const;
const baseline = { low: 0.345, high: 0.355 };

describe('simple acceptance', () => {
  // Simple acceptance, ILAC-G8:09/2019: accepted when the reading is inside the limits, a reading on a limit too.
  test.each<[number, number, Window, string]>([
    [0.355, 0.001, baseline, 'pass'],
    [0.345, 0.001, baseline, 'pass'],
    [0.356, 0.001, baseline, 'high'],
    [0.344, 0.001, baseline, 'low'],
    [0.35, 0.01, baseline, 'unclear'],
    [0.5, 0.1, baseline, 'unclear'],
    [4.31, 0.01, { low: 4, high: 4.6 }, 'pass'],
    [-0.35, 0.001, baseline, 'low'],
    [1700, 100, { low: 1650, high: 1850 }, 'unclear'],
    [1700, 50, { low: 1650, high: 1850 }, 'pass'],
    // One limit: a reading nearer to it than its own last digit cannot tell.
    [12.4, 0.1, { low: 12.4, high: null }, 'unclear'],
    [12.3, 0.1, { low: 12.4, high: null }, 'low'],
    [12.5, 0.1, { low: 12.4, high: null }, 'pass'],
    [12.5, 0.1, { low: 12.45, high: null }, 'unclear'],
    [0.09, 0.01, { low: null, high: 0.08 }, 'high'],
    [0.07, 0.01, { low: null, high: 0.08 }, 'pass'],
  ])('%d to the nearest %d in %o: %s', (value, resolution, window, result) => {
    expect(judge({ value, resolution }, window, unknownMeter, simple).result).toBe(result);
  });

  test('a supply-scaled limit is printed as it decides, rounded inward', () => {
    const judged = judge(
      { value: 0.343, resolution: 0.001 },
      { low: 0.3429, high: 0.3529 },
      unknownMeter,
      simple,
    );
    expect(judged).toMatchObject({ result: 'pass', low: 0.343, high: 0.352 });
  });

  test('the chance that it conforms is of the content’s limits', () => {
    const judged = judge({ value: 0.35, resolution: 0.001 }, baseline, unknownMeter, simple);
    // ±5 mV about the middle with a = 5.8 mV: 2Φ(5√3/5.8) − 1, computed with Python's math.erfc.
    expect(judged.conformance).toBeCloseTo(0.8646014, 6);
  });
});

describe('a last digit that cannot tell', () => {
  test('is said before anything else, with one that would do', () => {
    const judged = judge({ value: 5, resolution: 0.01 }, baseline, unknownMeter, simple);
    expect(judged).toMatchObject({ result: 'unclear', why: 'digit', needed: 0.001, low: 0.35, high: 0.35 });
  });

  test('leaves the content’s limits where no step of it lies inside', () => {
    const judged = judge({ value: 0.4, resolution: 0.1 }, baseline, unknownMeter, simple);
    expect(judged).toMatchObject({ result: 'unclear', low: 0.345, high: 0.355 });
  });

  test.each<[number, Window]>([
    [0.001, { low: 0.345, high: 0.349 }],
    [0.0001, { low: 0.345, high: 0.3489 }],
    [0.01, { low: 0.69, high: 0.73 }],
    [0.1, { low: 12.2, high: 13.2 }],
    [10, { low: 1650, high: 1740 }],
  ])('a digit of %d is the coarsest that can tell for %o', (needed, window) => {
    const coarse = { value: 1, resolution: 1000 };
    expect(digitNeeded(coarse, window)).toBe(needed);
    expect(judge({ value: 1, resolution: needed }, window, unknownMeter, simple).result).not.toBe('unclear');
    expect(judge({ value: 1, resolution: needed * 10 }, window, unknownMeter, simple).result).toBe('unclear');
  });

  test('two decimals cannot decide ten millivolts either way: about a toss of a coin at dead centre', () => {
    // Domain facts, section 2: 20 V range of a 2,000-count meter at ±(0.5 % + 3), computed: 0.407.
    const judged = judge(
      { value: 0.48, resolution: 0.01 },
      { low: 0.47, high: 0.49 },
      { percent: 0.5, digits: 3 },
      simple,
    );
    expect(judged.result).toBe('unclear');
    expect(judged.conformance).toBeCloseTo(0.407, 3);
  });
});

describe('guarded acceptance', () => {
  const exact = (u: number, resolution: number) => ({ percent: 0, digits: (u * Math.sqrt(3)) / resolution });

  test('10 ± 1 with U = 0.2 is accepted from 9.2 to 10.8', () => {
    // w = U, ILAC-G8:09/2019; the setting from a calibration firm's account of its table.
    const meter = exact(0.1, 0.01);
    const window = { low: 9, high: 11 };
    expect(judge({ value: 10.8, resolution: 0.01 }, window, meter, guarded)).toMatchObject({
      result: 'pass',
      low: 9.2,
      high: 10.8,
    });
    expect(judge({ value: 10.81, resolution: 0.01 }, window, meter, guarded).result).toBe('high');
    expect(judge({ value: 10.81, resolution: 0.01 }, window, meter, simple).result).toBe('pass');
  });

  test.each([
    // A maker's account of ILAC-G8: greatest permitted error 0.003 mm, U 0.0010 mm.
    [0.0017, 'pass', 'pass'],
    [0.0025, 'pass', 'high'],
  ])('a deviation of %d', (value, whenSimple, whenGuarded) => {
    const window = { low: -0.003, high: 0.003 };
    const meter = exact(0.0005, 0.0001);
    expect(judge({ value, resolution: 0.0001 }, window, meter, simple).result).toBe(whenSimple);
    expect(judge({ value, resolution: 0.0001 }, window, meter, guarded).result).toBe(whenGuarded);
  });

  test('a meter too poor for the window is said to be so', () => {
    const judged = judge({ value: 0.35, resolution: 0.001 }, baseline, unknownMeter, guarded);
    expect(judged).toMatchObject({ result: 'unclear', why: 'meter', low: 0.345, high: 0.355 });
  });
});

const milli = fc.integer({ min: -6000, max: 6000 });
const resolutions = fc.constantFrom(0.001, 0.01, 0.1);

test('a reading passes exactly when it lies within the limits as printed', () => {
  const policies = fc.constantFrom(simple, guarded);
  fc.assert(
    fc.property(milli, milli, milli, resolutions, policies, (v, a, b, resolution, policy) => {
      const value = Number((Math.round((v * 0.001) / resolution) * resolution).toFixed(3));
      const window = { low: Math.min(a, b) / 1000, high: Math.max(a, b) / 1000 };
      const { result, low, high } = judge({ value, resolution }, window, unknownMeter, policy);
      expect(low).toBeLessThanOrEqual(high ?? 0);
      if (result !== 'unclear') {
        expect(result === 'pass').toBe((low ?? 0) <= value && value <= (high ?? 0));
        expect(result === 'low').toBe(value < (low ?? 0));
      }
    }),
  );
});

test('what passes guarded passes simple', () => {
  fc.assert(
    fc.property(milli, milli, milli, (v, a, b) => {
      const window = { low: Math.min(a, b) / 1000, high: Math.max(a, b) / 1000 };
      const reading = { value: v / 1000, resolution: 0.001 };
      if (judge(reading, window, unknownMeter, guarded).result === 'pass') {
        expect(judge(reading, window, unknownMeter, simple).result).toBe('pass');
      }
    }),
  );
});

describe('a reading that moves', () => {
  test.each([
    ['wholly inside and narrow enough', 0.348, 0.351, 'pass', 0.3495, 0.003],
    ['wholly inside but wide', 0.345, 0.355, 'wandering', 0.35, 0.01],
    ['over a limit', 0.353, 0.356, 'wandering', 0.3545, 0.003],
    ['a flicker below', 0.34, 0.341, 'low', 0.3405, 0.001],
    ['a flicker above', 0.36, 0.362, 'high', 0.361, 0.002],
    ['wide and above', 0.36, 0.42, 'wandering', 0.39, 0.06],
    ['from far below to far above', 0.1, 0.9, 'wandering', 0.5, 0.8],
  ])('%s', (_, low, high, result, value, spread) => {
    const range = { low, high, resolution: 0.001 };
    expect(judgeRange(range, 0.004, baseline, unknownMeter, simple)).toMatchObject({ result, value, spread });
  });

  test('a digit that cannot tell comes first here too', () => {
    const range = { low: 0.34, high: 0.36, resolution: 0.01 };
    expect(judgeRange(range, 0.004, baseline, unknownMeter, simple).result).toBe('unclear');
  });
});
