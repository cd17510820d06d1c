import { expect, test } from 'vitest';
import { greatestError, standardUncertainty, unknownMeter } from '../../src/measurement/uncertainty.ts';

// Accuracy examples published by meter makers and a seller, read in the domain facts, section 2.
test.each([
  ["a maker's page: 2.000 V at ±(0.5 % + 3)", 2, 0.001, 0.5, 3, 0.013, 3],
  ["a maker's page: 100.0 V at ±(1 % + 2)", 100, 0.1, 1, 2, 1.2, 1],
  ['an article: 1.755 V at ±(0.5 % + 1)', 1.755, 0.001, 0.5, 1, 0.0098, 4],
  ["a maker's support page: 120.0 V at ±(1 % + 3)", 120, 0.1, 1, 3, 1.5, 1],
])('%s', (_, value, resolution, percent, digits, published, decimals) => {
  expect(greatestError({ value, resolution }, { percent, digits })).toBeCloseTo(published, decimals);
});

// Computed from the stated formula in the domain facts, section 2.
test.each([
  [0.487, 0.001, 0.5, 2, 0.004435, 0.002561],
  [0.487, 0.001, 0.5, 3, 0.005435, 0.003138],
  [0.487, 0.001, 0.8, 1, 0.004896, 0.002827],
  [0.48, 0.01, 0.5, 3, 0.0324, 0.018706],
  [4.31, 0.01, 0.5, 2, 0.04155, 0.023989],
  [12.65, 0.01, 0.5, 2, 0.08325, 0.048064],
])('%d V to the nearest %d at ±(%d %% + %d)', (value, resolution, percent, digits, a, u) => {
  expect(greatestError({ value, resolution }, { percent, digits })).toBeCloseTo(a, 9);
  expect(standardUncertainty({ value, resolution }, { percent, digits })).toBeCloseTo(u, 6);
});

test('a voltmeter of known bounds has u = a/√3', () => {
  // GUM (JCGM 100) 4.3.7, example 2: 0.928571 V, 14e-6 of the reading + 2e-6 of the range of 1 V; from memory.
  const reading = { value: 0.928571, resolution: 1e-6 };
  const meter = { percent: 14e-4, digits: 2 };
  expect(greatestError(reading, meter)).toBeCloseTo(15e-6, 9);
  expect(standardUncertainty(reading, meter)).toBeCloseTo(8.7e-6, 7);
});

test('a negative reading is no better than a positive one', () => {
  expect(greatestError({ value: -2, resolution: 0.001 }, unknownMeter)).toBe(
    greatestError({ value: 2, resolution: 0.001 }, unknownMeter),
  );
});

test('a meter of unknown class is taken for ±(0.8 % + 3 digits)', () => {
  // Common practice, no source.
  expect(greatestError({ value: 0.35, resolution: 0.001 }, unknownMeter)).toBeCloseTo(0.0058, 10);
});
