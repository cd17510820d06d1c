import fc from 'fast-check';
import { expect, test } from 'vitest';
import { change, differ, noiseSeen } from '../../src/measurement/difference.ts';
import { returned } from '../../src/measurement/repeatability.ts';

test.each([
  ['the last digit may tumble by one', 0.348, 0.001, 0.349, 0.001, 0, 0],
  ['two digits are a change', 0.348, 0.001, 0.35, 0.001, 0, 1],
  ['down is a change too', 0.35, 0.001, 0.348, 0.001, 0, -1],
  ['noise that was seen is none', 0.348, 0.001, 0.351, 0.001, 0.002, 0],
  ['beyond the noise is one', 0.348, 0.001, 0.352, 0.001, 0.002, 1],
  ['the coarser reading sets the digit', 0.352, 0.001, 0.36, 0.01, 0, 0],
  ['a gain error is in both: 4.30 and 4.33 differ', 4.3, 0.01, 4.33, 0.01, 0, 1],
])('%s', (_, a, qa, b, qb, noise, expected) => {
  const [from, to] = [
    { value: a, resolution: qa },
    { value: b, resolution: qb },
  ];
  expect(change(from, to, noise)).toBe(expected);
  expect(differ(from, to, noise)).toBe(expected !== 0);
});

test('a change looked at backwards is the opposite change', () => {
  const reading = fc.record({
    value: fc.integer({ min: 0, max: 5000 }).map((n) => n / 1000),
    resolution: fc.constantFrom(0.001, 0.01),
  });
  fc.assert(
    fc.property(reading, reading, fc.constantFrom(0, 0.003), (a, b, noise) => {
      expect(change(a, b, noise)).toBe(-change(b, a, noise) + 0);
    }),
  );
});

test('noise is how far repeats lie apart', () => {
  expect(noiseSeen([0.348, 0.35, 0.347])).toBeCloseTo(0.003, 12);
  expect(noiseSeen([0.348])).toBe(0);
});

test.each([
  [0.712, 0.71, 0.01, true],
  [0.72, 0.71, 0.01, true],
  [0.7, 0.71, 0.01, true],
  [0.721, 0.71, 0.01, false],
  [0.699, 0.71, 0.01, false],
])('a throttle that snaps back to %d from %d, within %d: %s', (value, reference, tolerance, expected) => {
  expect(returned({ value, resolution: 0.001 }, { value: reference, resolution: 0.001 }, tolerance)).toBe(
    expected,
  );
});
