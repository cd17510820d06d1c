import fc from 'fast-check';
import * as statistics from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { isTooFar, learn, type Prior, remember, type Trial } from '../../src/measurement/learn-part.ts';
import { median, robustSpread } from '../../src/measurement/median.ts';

const noise = 0.002;
const body: Prior = { perUnit: 0.012, sense: 0 };
const stop: Prior = { perUnit: 0.06, sense: 1, deadBand: 2 };

function trial(amount: number, before: number, after: number, more: Partial<Trial> = {}): Trial {
  return { amount, before, after, slack: false, watched: false, ...more };
}

describe('the middle of a few figures', () => {
  const figures = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 1, maxLength: 9 });

  test('is the reference library’s, and so is the spread about it', () => {
    fc.assert(
      fc.property(figures, (values) => {
        expect(median(values)).toBeCloseTo(statistics.median(values), 12);
        expect(robustSpread(values)).toBeCloseTo(1.4826 * statistics.medianAbsoluteDeviation(values), 9);
      }),
    );
  });

  test.each([
    // Theil–Sen slopes are medians of the slopes between points.
    ['SciPy test_theilslopes', [1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78], 4],
    ['readme of ml-regression-theil-sen', [1, 2, 3, 4, 5, 6, 7, 8, 9], [2, 3, 4, 20, 6, 7, 8, 9, 10], 1],
  ])('over the slopes between points it is the Theil–Sen slope: %s', (_, x, y, slope) => {
    const slopes = x.flatMap((xi, i) => x.slice(0, i).map((xj, j) => (y[i]! - y[j]!) / (xi - xj)));
    expect(median(slopes)).toBeCloseTo(slope, 12);
  });

  test('nothing has no middle', () => {
    expect(median([])).toBeNaN();
  });
});

describe('the sense of a part', () => {
  test.each<[string, Prior, Trial[], number]>([
    ['nothing tried, nothing known', body, [], 0],
    ['nothing tried, content knows', stop, [], 1],
    ['one nudge tells', body, [trial(1, 0.5, 0.512)], 1],
    ['one nudge the other way tells too', body, [trial(1, 0.5, 0.488)], -1],
    ['a nudge that did nothing tells nothing', body, [trial(1, 0.5, 0.501)], 0],
    ['swapped digits tell nothing', body, [trial(1, 0.534, 0.354)], 0],
    [
      'first turn the wrong way, put right by the second',
      body,
      [trial(1, 0.5, 0.488), trial(-1, 0.488, 0.475)],
      1,
    ],
    [
      'one odd reading after many good ones',
      body,
      [trial(1, 0.5, 0.512), trial(1, 0.512, 0.524), trial(1, 0.524, 0.516)],
      1,
    ],
    ['what content knows outlives one wrong turn', stop, [trial(0.5, 0.65, 0.62)], 1],
    ['but not three', stop, [trial(0.5, 0.74, 0.71), trial(0.5, 0.71, 0.68), trial(0.5, 0.68, 0.65)], -1],
    [
      'a first turn the wrong way shows when the meter then runs away',
      body,
      [trial(1, 0.5, 0.488), trial(-3, 0.488, 0.45, { watched: true })],
      1,
    ],
  ])('%s', (_, prior, trials, sense) => {
    expect(learn(prior, trials, noise).sense).toBe(sense);
  });
});

describe('volts for each unit', () => {
  test('start from what content says and go to what the machine shows', () => {
    const clicks: Prior = { perUnit: 0.011, sense: 1 };
    const seen = [trial(4, 0.7, 0.756), trial(2, 0.756, 0.784), trial(-1, 0.784, 0.77)];
    const sizes = [0, 1, 2, 3].map((n) => learn(clicks, seen.slice(0, n), noise).perUnit);
    expect(sizes[0]).toBe(0.011);
    expect(sizes[1]).toBeCloseTo(0.0125, 10);
    expect(sizes[2]).toBeCloseTo(0.014, 10);
    expect(sizes[3]).toBeCloseTo(0.014, 10);
  });

  test('are not told from a move made by the meter, nor by a move with slack where others are', () => {
    expect(learn(body, [trial(3, 0.5, 0.59, { watched: true })], noise).told).toBe(0);
    const learned = learn(stop, [trial(1, 0.62, 0.63, { slack: true }), trial(0.5, 0.63, 0.67)], noise);
    expect(learned.told).toBe(1);
    expect(learned.perUnit).toBeCloseTo(0.07, 10);
  });

  test('one bad reading among the last eight moves them little', () => {
    const perUnit = fc.double({ min: 0.006, max: 0.02, noNaN: true });
    fc.assert(
      fc.property(perUnit, fc.nat(6), fc.double({ min: 0, max: 5, noNaN: true }), (true_, at, bad) => {
        const places = Array.from({ length: 9 }, (_, i) => 0.5 + i * true_).with(at + 1, bad);
        const trials = places.slice(1).map((after, i) => trial(1, places[i]!, after));
        const learned = learn({ perUnit: 0.012, sense: 1 }, trials, noise);
        expect(learned.sense).toBe(1);
        expect(learned.perUnit).toBeGreaterThan(true_ * 0.75 - 1e-9);
        expect(learned.perUnit).toBeLessThan(true_ * 1.25 + 1e-9);
      }),
    );
  });
});

describe('the dead band', () => {
  const free = (amount: number) => trial(amount, 0.62, 0.62, { slack: true });

  test.each<[string, Trial[], number, number, boolean]>([
    ['all of it is ahead at first', [], 2, 0, false],
    ['what was turned freely is behind', [free(0.5), free(1)], 0.5, 1.5, false],
    ['more may be turned than was thought', [free(1), free(2)], 0, 3, false],
    ['a change ends it', [free(1), trial(1, 0.62, 0.65, { slack: true })], 0, 0, true],
    [
      'a move that nobody made does not bring it back',
      [trial(1, 0.62, 0.65, { slack: true }), trial(1, 0.65, 0.65)],
      0,
      0,
      true,
    ],
    [
      'backed off until nothing bears, it is there again',
      [free(1), trial(1, 0.62, 0.75, { slack: true }), trial(-2, 0.75, 0.62)],
      2,
      0,
      false,
    ],
  ])('%s', (_, trials, left, consumed, touching) => {
    const learned = learn(stop, trials, noise);
    expect([learned.deadBand, learned.consumed, learned.touching]).toEqual([left, consumed, touching]);
  });
});

test.each([
  ['a nudge of 20 mV', trial(1, 0.5, 0.52), false],
  ['the wrong way', trial(1, 0.5, 0.485), false],
  ['0.438 for 0.348', trial(1, 0.345, 0.438), true],
  ['a long turn by the meter', trial(4, 0.5, 0.62, { watched: true }), false],
  ['asleep', trial(1, 0.5, 0), true],
])('out of proportion to the move: %s', (_, move, expected) => {
  expect(isTooFar(body, move, noise)).toBe(expected);
});

test('what is kept is small, plain and the latest', () => {
  let trials: Trial[] = [];
  for (let i = 0; i < 20; i += 1) trials = remember(trials, trial(i, 0, 1));
  expect(trials.map(({ amount }) => amount)).toEqual([12, 13, 14, 15, 16, 17, 18, 19]);
  expect(JSON.parse(JSON.stringify(trials))).toEqual(trials);
});
