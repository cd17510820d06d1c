// Chances are chances: over all that may be seen they add up to one, and tails are what lies beyond.
import cdf from '@stdlib/stats-base-dists-normal-cdf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceInWay, tailInWay } from '../../src/diagnosis/chance.ts';
import type { Answer, Observation, Tried } from '../../src/diagnosis/evidence.ts';
import { healthyAt } from '../../src/diagnosis/healthy.ts';
import { hypothesesOf } from '../../src/diagnosis/hypothesis.ts';
import { chancesOf } from '../../src/diagnosis/likelihoods.ts';
import { healthyWay, type Way } from '../../src/diagnosis/way.ts';
import { shippedFaults as content } from './shipped-faults.ts';

const observation: Observation = {
  kind: 'observation',
  measure: 'signal-closed-stop',
  situation: 'closed',
  seen: { kind: 'none' },
  expected: { low: 0.61, high: 0.63 },
  settable: true,
  supply: 5,
};
const settable = healthyAt(observation, observation.expected!)!;
const fixed = healthyAt({ ...observation, settable: false }, observation.expected!)!;
const plain = healthyWay[0]!;
const way = (changes: Partial<Way>): Way => ({ ...plain, ...changes });

/** The area under a curve, by trapezia. */
function area(of: (x: number) => number, from: number, to: number, steps: number): number {
  const width = (to - from) / steps;
  let sum = (of(from) + of(to)) / 2;
  for (let step = 1; step < steps; step += 1) sum += of(from + step * width);
  return sum * width;
}

// The second axiom of probability (Kolmogorov 1933): something happens for certain.
describe('whatever the meter may show in one way adds up to one', () => {
  test.each<[string, Way, typeof settable]>([
    ['a machine in order that may be off', plain, settable],
    ['a machine in order', plain, fixed],
    ['set as it should be', way({ right: true }), settable],
    ['raised, give or take', way({ offset: 0.3, give: 0.1, spread: 0.05 }), fixed],
    ['scaled, give or take', way({ signal: 0.8, giveOfSignal: 0.1 }), fixed],
    ['the supply', way({ signal: 0, supply: 1, follows: 0 }), fixed],
    ['wandering', way({ wander: 0.2 }), fixed],
    ['with too few digits', way({ digit: 0.1 }), fixed],
  ])('%s', (_, one, healthy) => {
    const figures = (digit: number) =>
      area((value) => chanceInWay(one, { kind: 'value', value, resolution: digit }, healthy), -3, 9, 6000);
    // Fine digits or coarse ones.
    const values = figures(0.001) + figures(0.1);
    const ofWidth = (width: number) =>
      area(
        (middle) =>
          chanceInWay(
            one,
            { kind: 'range', low: middle - width / 2, high: middle + width / 2, resolution: 0.001 },
            healthy,
          ),
        -3,
        9,
        1500,
      );
    const ranges = area(ofWidth, 0, one.wander > 0 ? 3 : 0.08, 300);
    const others =
      chanceInWay(one, { kind: 'overload' }, healthy) + chanceInWay(one, { kind: 'none' }, healthy);
    expect(values + ranges + others).toBeCloseTo(1, 1);
    expect(Math.abs(values + ranges + others - 1)).toBeLessThan(0.015);
  });
});

describe('an overload', () => {
  const inRange = (signal: number) =>
    chanceInWay(way({ signal: 0, offset: signal, above: 2 }), { kind: 'overload' }, fixed);

  test('is nearly certain far above the range, an even chance at its end, and seldom below', () => {
    expect(inRange(3)).toBeGreaterThan(0.95);
    expect(inRange(2)).toBeGreaterThan(0.4);
    expect(inRange(2)).toBeLessThan(0.6);
    expect(inRange(1)).toBeLessThan(0.05);
    expect(inRange(1)).toBe(chanceInWay(plain, { kind: 'overload' }, fixed));
  });

  test('hides every figure above, and no other', () => {
    const over = way({ above: 0.5 });
    expect(chanceInWay(over, { kind: 'value', value: 0.62, resolution: 0.001 }, fixed)).toBe(0);
    expect(tailInWay(over, 0.62, 0.001, fixed)).toBe(0);
    expect(chanceInWay(way({ above: 2 }), { kind: 'value', value: 0.62, resolution: 0.001 }, fixed)).toBe(
      chanceInWay(plain, { kind: 'value', value: 0.62, resolution: 0.001 }, fixed),
    );
    expect(tailInWay(way({ above: 0.62 }), 0.62, 0.001, fixed)).toBe(1);
  });

  test('or a blank meter shows nothing else', () => {
    const forms = ['overload', 'blank'] as const;
    for (const form of forms) {
      const kinds = [
        { kind: 'overload' },
        { kind: 'none' },
        { kind: 'value', value: 0.62, resolution: 0.001 },
        { kind: 'range', low: 0.6, high: 0.63, resolution: 0.001 },
      ] as const;
      const chances = kinds.map((seen) => chanceInWay(way({ form }), seen, fixed));
      expect(chances.map((chance) => chance > 0.9)).toEqual([
        form === 'overload',
        form === 'blank',
        false,
        false,
      ]);
      expect(chances.filter((chance) => chance > 0)).toHaveLength(1);
    }
  });
});

describe('how far out a reading is', () => {
  test('inside it is not out at all; beyond, it is the normal tail on both sides (reference library)', () => {
    const near = healthyAt({ ...observation, settable: false }, { low: 0.6, high: 0.64 })!;
    expect(tailInWay(plain, 0.62, 0.001, near)).toBe(1);
    expect(tailInWay(plain, 0.64, 0.001, near)).toBe(1);
    // The spread of a constant 1 V ± 0.2 V with a standard deviation of 0.1 V; meter and digits add 5 mV and 2 mV at most.
    const constant = way({ signal: 0, offset: 1, give: 0.2, spread: 0.1 });
    for (const sigmas of [0.5, 1, 2, 3]) {
      const expected = 2 * cdf(-sigmas, 0, 1);
      expect(tailInWay(constant, 1.2 + 0.1 * sigmas, 0.001, near) / expected).toBeCloseTo(1, 1);
      expect(tailInWay(constant, 0.8 - 0.1 * sigmas, 0.001, near) / expected).toBeCloseTo(1, 1);
    }
  });

  test('it grows less likely the farther out it is, and a machine that may be off reaches farther', () => {
    const out = fc.double({ min: 0, max: 0.4, noNaN: true });
    fc.assert(
      fc.property(out, out, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const tail = (beyond: number) => tailInWay(plain, 0.62 + beyond, 0.001, settable);
        expect(tail(more)).toBeLessThanOrEqual(tail(less) + 1e-12);
        expect(tail(less)).toBeGreaterThanOrEqual(tailInWay(plain, 0.62 + less, 0.001, fixed) - 1e-12);
        expect(tailInWay(way({ right: true }), 0.62 + less, 0.001, settable)).toBeCloseTo(
          tailInWay(plain, 0.62 + less, 0.001, fixed),
          12,
        );
      }),
    );
  });
});

describe('under every cause that ships', () => {
  const hypotheses = hypothesesOf(content);
  const sums = (all: (number[] | null)[]) =>
    hypotheses.map((_, index) => all.reduce((sum, chances) => sum + (chances?.[index] ?? 0), 0));

  test('the answers to a question add up to one', () => {
    for (const question of content.questions) {
      const answers = Object.keys(question.usual).map(
        (answer): Answer => ({ kind: 'answer', question: question.id, answer }),
      );
      for (const sum of sums(answers.map((one) => chancesOf(content, one, hypotheses)))) {
        expect(sum, question.id).toBeCloseTo(1, 2);
      }
    }
  });

  test('what a tried check may have done adds up to one', () => {
    for (const { id } of content.checks) {
      const results = (['right', 'changed', 'as-before'] as const).map(
        (result): Tried => ({ kind: 'tried', check: id, result }),
      );
      for (const sum of sums(results.map((one) => chancesOf(content, one, hypotheses)))) {
        expect(sum, id).toBeCloseTo(1, 9);
      }
    }
  });

  test('sent again, with nothing done in between: rising, falling and standing still add up to one', () => {
    const before = { kind: 'value', value: 0.62, resolution: 0.001 } as const;
    const moves = [0.5, 0.62, 0.8].map((value) => ({
      ...observation,
      seen: { kind: 'value' as const, value, resolution: 0.001 },
      previous: { seen: before, after: null, expect: 'same' as const },
    }));
    for (const sum of sums(moves.map((one) => chancesOf(content, one, hypotheses)))) {
      expect(sum).toBeCloseTo(1, 2);
    }
  });
});
