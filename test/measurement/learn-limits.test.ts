// How sure the program is of a part, and how far it lets one move or one reading pull at what it thinks.
import * as statistics from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { isTooFar, learn, type Prior, type Trial } from '../../src/measurement/learn-part.ts';

const noise = 0.002;
const prior: Prior = { perUnit: 0.012, sense: 1 };

const trial = (amount: number, before: number, after: number, more: Partial<Trial> = {}): Trial => ({
  amount,
  before,
  after,
  slack: false,
  watched: false,
  ...more,
});
/** Single units up, each by so much. */
const steps = (...sizes: number[]): Trial[] => {
  let at = 0.5;
  return sizes.map((size) => {
    const before = at;
    at += size;
    return trial(1, before, at);
  });
};

describe('how far a unit may be off', () => {
  test('is half of it before anything was tried, or what content says', () => {
    expect(learn(prior, [], noise).spread).toBeCloseTo(0.006, 12);
    expect(learn({ ...prior, spread: 0.002 }, [], noise).spread).toBeCloseTo(0.002, 12);
  });

  test('shrinks with the first moves, and from the third on is what they show', () => {
    expect(learn(prior, steps(0.012), noise).spread).toBeCloseTo(0.003, 12);
    expect(learn(prior, steps(0.012, 0.012), noise).spread).toBeCloseTo(0.002, 12);
    const sizes = [0.006, 0.012, 0.018, 0.02];
    const shown = 1.4826 * statistics.medianAbsoluteDeviation(sizes);
    expect(shown).toBeGreaterThan(noise);
    expect(learn(prior, steps(...sizes), noise).spread).toBeCloseTo(shown, 12);
    // Never less than what the meter lets see.
    expect(learn(prior, steps(0.012, 0.012, 0.012), noise).spread).toBe(noise);
  });
});

describe('one move', () => {
  test('counts for no more than content’s figure and twice its spread, and for no less than a quarter', () => {
    const lively = { ...prior, spread: 0.004 };
    // 25 mV is within reach of one nudge, and counted as 12 + 2 · 4 = 20 mV: the middle of 12 and 20.
    expect(learn(lively, steps(0.025), noise).perUnit).toBeCloseTo(0.016, 12);
    // 2.4 mV is counted as 3 mV: the middle of 12 and 3.
    expect(learn(lively, steps(0.0024), noise).perUnit).toBeCloseTo(0.0075, 12);
  });

  test('of several units counts by the unit, whichever way it went', () => {
    expect(learn(prior, [trial(4, 0.5, 0.564)], noise).perUnit).toBeCloseTo(0.014, 12);
    expect(learn(prior, [trial(-4, 0.564, 0.5)], noise).perUnit).toBeCloseTo(0.014, 12);
  });

  test('that went against what is known of the part tells nothing of its size', () => {
    const learned = learn(prior, [...steps(0.014, 0.014, 0.014), trial(1, 0.542, 0.53)], noise);
    expect([learned.sense, learned.told]).toEqual([1, 3]);
  });

  test('within the noise is none: neither its sense nor its size is told', () => {
    const learned = learn({ ...prior, sense: 0 }, [trial(1, 0.5, 0.5015)], noise);
    expect([learned.sense, learned.told]).toEqual([0, 0]);
  });

  test('of nothing is none', () => {
    expect(learn({ ...prior, sense: 0 }, [trial(0, 0.5, 0.51)], noise).sense).toBe(0);
  });
});

describe('too far to be believed', () => {
  // 12 mV and twice 6 mV a nudge: half as much again is borne, and the noise; three times as much where the meter was watched.
  test.each<[string, Trial, boolean]>([
    ['one nudge, just within', trial(1, 0.5, 0.5375), false],
    ['one nudge, just beyond', trial(1, 0.5, 0.5385), true],
    ['down, just within', trial(1, 0.5, 0.4625), false],
    ['down, just beyond', trial(1, 0.5, 0.4615), true],
    ['two nudges reach twice as far', trial(2, 0.5, 0.573), false],
    ['two nudges, just beyond', trial(2, 0.5, 0.5745), true],
    ['two nudges back', trial(-2, 0.5, 0.4275), false],
    ['half a nudge reaches as far as one', trial(0.5, 0.5, 0.5375), false],
    ['by the meter, just within', trial(1, 0.5, 0.5735, { watched: true }), false],
    ['by the meter, just beyond', trial(1, 0.5, 0.5745, { watched: true }), true],
  ])('%s', (_, one, expected) => {
    expect(isTooFar(prior, one, noise)).toBe(expected);
  });

  test('goes by the spread that content gives', () => {
    expect(isTooFar({ ...prior, spread: 0.001 }, trial(1, 0.5, 0.53), noise)).toBe(true);
    expect(isTooFar({ ...prior, spread: 0.02 }, trial(1, 0.5, 0.57), noise)).toBe(false);
  });
});
