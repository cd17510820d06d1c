// Holds the expected costs against worked examples, brute force and an information-gain table.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  entropy,
  expectedCostOfObserving,
  expectedCostOfRepair,
  repairOrder,
  type Step,
} from '../../src/diagnosis/expected-cost.ts';

// Heckerman, Breese and Rommelse 1995 (formula from memory); the figures are computed from it, not published.
const a = { probability: 0.5, check: 10 };
const b = { probability: 0.3, check: 2 };
const c = { probability: 0.2, check: 4 };

function permutations<T>(things: readonly T[]): T[][] {
  if (things.length === 0) return [[]];
  return things.flatMap((thing, index) =>
    permutations(things.filter((_, other) => other !== index)).map((rest) => [thing, ...rest]),
  );
}

describe('expected cost of repair', () => {
  it.each([
    ['abc', [a, b, c], 11.8],
    ['acb', [a, c, b], 12.6],
    ['bac', [b, a, c], 9.8],
    ['bca', [b, c, a], 9.8],
    ['cab', [c, a, b], 12.6],
    ['cba', [c, b, a], 10.6],
  ] as [string, Step[], number][])('order %s', (_, steps, cost) => {
    expect(expectedCostOfRepair(steps)).toBeCloseTo(cost, 12);
  });

  it('falling p/c is the cheapest of all orders (Kadane and Simon, arXiv 1203.3502)', () => {
    const step = fc.record({
      weight: fc.integer({ min: 1, max: 100 }),
      check: fc.integer({ min: 1, max: 60 }),
      repair: fc.integer({ min: 0, max: 60 }),
    });
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 5 }), (raw) => {
        const total = raw.reduce((sum, one) => sum + one.weight, 0);
        const steps = raw.map(({ weight, check, repair }) => ({
          probability: weight / total,
          check,
          repair,
        }));
        const cheapest = Math.min(...permutations(steps).map((order) => expectedCostOfRepair(order)));
        expect(expectedCostOfRepair(repairOrder(steps))).toBeCloseTo(cheapest, 9);
      }),
    );
  });

  it('of two causes the first is checked first exactly when (1 − p)·C1 ≤ p·C2 (textbook exercise)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.integer({ min: 1, max: 50 }),
        (p, c1) => {
          const c2 = 20;
          const first = { probability: p, check: c1 };
          const second = { probability: 1 - p, check: c2 };
          const firstFirst =
            expectedCostOfRepair([first, second]) <= expectedCostOfRepair([second, first]) + 1e-9;
          const rule = (1 - p) * c1 - p * c2;
          if (Math.abs(rule) > 1e-6) expect(firstFirst).toBe(rule <= 0);
        },
      ),
    );
  });

  it('what nobody finds goes to a person', () => {
    expect(expectedCostOfRepair([{ probability: 0.25, check: 4 }], 40)).toBe(34);
  });
});

describe('asking first', () => {
  it('costs the look and what is expected after each outcome; a question that says nothing only costs', () => {
    const without = expectedCostOfRepair([b, a, c]);
    // The outcome names the cause: only that one is then checked.
    const outcomes = [a, b, c].map(({ probability, check }) => ({ probability, cost: check }));
    expect(expectedCostOfObserving(1, outcomes)).toBeCloseTo(1 + 5 + 0.6 + 0.8, 12);
    expect(expectedCostOfObserving(1, outcomes)).toBeLessThan(without);
    expect(expectedCostOfObserving(1, [{ probability: 1, cost: without }])).toBeGreaterThan(without);
  });
});

describe('information gain (tennis table: skoservice-algovisualize.pages.dev, uvm.edu/~cbcafier)', () => {
  const bits = (yes: number, no: number) => entropy([yes / (yes + no), no / (yes + no)]);
  const gain = (splits: [number, number][]) =>
    splits.reduce((sum, [yes, no]) => sum - ((yes + no) / 14) * bits(yes, no), bits(9, 5));
  it.each([
    [
      'outlook',
      [
        [2, 3],
        [4, 0],
        [3, 2],
      ],
      0.2467498,
    ],
    [
      'humidity',
      [
        [3, 4],
        [6, 1],
      ],
      0.1518355,
    ],
    [
      'wind',
      [
        [6, 2],
        [3, 3],
      ],
      0.048127,
    ],
    [
      'temperature',
      [
        [2, 2],
        [4, 2],
        [3, 1],
      ],
      0.0292226,
    ],
  ] as [string, [number, number][], number][])('%s', (_, splits, expected) => {
    expect(gain(splits)).toBeCloseTo(expected, 6);
  });
  it('nine yes and five no are 0.940 bits', () => {
    expect(bits(9, 5)).toBeCloseTo(0.940286, 6);
  });
});
