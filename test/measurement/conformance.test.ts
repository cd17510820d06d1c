import cdf from '@stdlib/stats-base-dists-normal-cdf';
import quantile from '@stdlib/stats-base-dists-normal-quantile';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { conformanceProbability, normalCdf } from '../../src/measurement/conformance.ts';

test('the normal distribution function agrees with a reference library to 1e-14', () => {
  fc.assert(
    fc.property(fc.double({ min: -8, max: 8, noNaN: true }), (z) => {
      expect(Math.abs(normalCdf(z) - cdf(z, 0, 1))).toBeLessThan(1e-14);
    }),
    { numRuns: 3000 },
  );
});

test('its lower tail keeps its relative accuracy', () => {
  fc.assert(
    fc.property(fc.double({ min: -37, max: -1, noNaN: true }), (z) => {
      expect(normalCdf(z) / cdf(z, 0, 1)).toBeCloseTo(1, 11);
    }),
  );
});

test.each([
  // Coverage factors, NIST TN 1297, 6.2.
  ['k = 1', 1, 0.6827, 4],
  ['k = 1.645', 1.645, 0.9, 4],
  ['k = 2', 2, 0.9545, 4],
  ['k = 2.576', 2.576, 0.99, 4],
  ['k = 3', 3, 0.9973, 4],
])('%s covers what NIST TN 1297 says', (_, k, share, decimals) => {
  expect(normalCdf(k) - normalCdf(-k)).toBeCloseTo(share, decimals);
});

test('it undoes the reference library’s quantile', () => {
  for (const p of [1e-9, 0.001, 0.05, 0.5, 0.95, 0.999]) {
    expect(normalCdf(quantile(p, 0, 1))).toBeCloseTo(p, 13);
  }
});

test.each([
  // y, u, low, high, published, to so many decimals, exact by the formula
  [
    'JCGM 106 clause 7.4 (UKAS LAB 48 example 12), two limits; result from memory',
    13.6,
    1.8,
    12.5,
    16.3,
    0.66,
    2,
    0.6626298,
  ],
  [
    'JCGM 106 clause 7.3.3 example 1 (LAB 48 example 7), an upper limit; from memory',
    -5.47,
    0.05,
    null,
    -5.4,
    0.92,
    2,
    0.9192433,
  ],
  [
    'JCGM 106 clause 7.3.3 example 2 (LAB 48 example 6), a lower limit; from memory',
    509.7,
    8.6,
    490,
    null,
    0.99,
    2,
    0.9890095,
  ],
  [
    'suncal test_risk.py: N(10, 0.4) in 9 to 11, specific risk 0.01242',
    10,
    0.4,
    9,
    11,
    1 - 0.01242,
    5,
    0.9875807,
  ],
  // Computed in the domain facts, section 3.
  ['a sensor in the middle of its window', 0.487, 0.0026, 0.477, 0.497, 0.9999, 4, 0.99988],
  ['a sensor near its upper limit', 0.495, 0.0026, 0.477, 0.497, 0.7791, 4, 0.7791218],
  ['a sensor just above it', 0.499, 0.0026, 0.477, 0.497, 0.2209, 4, 0.2208782],
  ['a sensor below its window', 0.38, 0.0027, 0.39, 0.59, 0.0001, 4, 0.0001063],
])('%s', (_, y, u, low, high, published, decimals, exact) => {
  const p = conformanceProbability(y, u, { low, high });
  expect(p).toBeCloseTo(published, decimals);
  expect(p).toBeCloseTo(exact, 6);
});

test.each([
  // ILAC-G8:09/2019, table of guard bands w = r·U with U = 2u: the chance of a false acceptance at the acceptance limit.
  [0, 0.5, 0.5],
  [0.83, 0.05, 0.0484572],
  [1, 0.025, 0.0227501],
  [1.5, 0.0016, 0.0013499],
  [3, 1e-6, 9.866e-10],
])('a guard band of %d U keeps false acceptance below what ILAC-G8 says', (r, below, exact) => {
  const falseAcceptance = 1 - conformanceProbability(-2 * r, 1, { low: null, high: 0 });
  expect(falseAcceptance).toBeLessThanOrEqual(below);
  expect(falseAcceptance).toBeCloseTo(exact, 7);
});

test('a hopeless reading above the limits is as hopeless as one below', () => {
  for (const z of [2, 5, 9, 20]) {
    const above = conformanceProbability(z, 1, { low: -1, high: 0 });
    const below = conformanceProbability(-z, 1, { low: 0, high: 1 });
    expect(above).toBeGreaterThan(0);
    expect(below / above).toBeCloseTo(1, 12);
  }
});

test('a chance is a chance, and inside plus both outsides is one', () => {
  const finite = fc.double({ min: -100, max: 100, noNaN: true });
  fc.assert(
    fc.property(finite, finite, finite, fc.double({ min: 1e-3, max: 10, noNaN: true }), (y, a, b, u) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      const inside = conformanceProbability(y, u, { low, high });
      const below = conformanceProbability(y, u, { low: null, high: low });
      const above = conformanceProbability(y, u, { low: high, high: null });
      expect(inside).toBeGreaterThanOrEqual(0);
      expect(inside + below + above).toBeCloseTo(1, 12);
    }),
  );
});
