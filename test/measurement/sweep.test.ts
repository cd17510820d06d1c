import fc from 'fast-check';
import { expect, test } from 'vitest';
import { examineSweep, type SweepValue } from '../../src/measurement/sweep.ts';

const limits = { wideOpen: { low: 4, high: 4.6 }, returnTolerance: 0.01, noise: 0.002 };
const n: SweepValue = null;

// What a sound and a worn track show: a smooth rise, a step back at one angle, drop-outs (domain facts 1.2, rows 0, 5 and 6; common practice).
test.each<[string, SweepValue[], string, number | undefined]>([
  ['up and back', [0.62, 1.3, 2.2, 3.4, 4.3, 3.1, 2, 1.1, 0.62], 'progressive', undefined],
  ['a hand’s positions do not repeat', [0.62, 0.9, 3.4, 4.3, 4.1, 1.1, 0.8, 0.62], 'progressive', undefined],
  [
    'full throttle held twice, wavering',
    [0.62, 2.2, 4.29, 4.3, 4.27, 4.3, 2, 0.62],
    'progressive',
    undefined,
  ],
  ['a hand resting closed', [0.62, 0.621, 2.2, 4.3, 2, 0.62, 0.62], 'progressive', undefined],
  ['over the 2 V range at wide open', [0.62, 1.1, 1.7, n, n, n, 1.6, 0.9, 0.62], 'progressive', undefined],
  ['a drop-out half way', [0.62, 1.6, 0.03, 3.4, 4.3, 2, 0.62], 'drop-out', 0.51],
  ['a drop-out near idle', [0.62, 0.05, 1, 2.2, 4.3, 2, 0.62], 'drop-out', 0.05],
  ['two drop-outs side by side', [0.62, 1.4, 0, 0.01, 2.4, 4.3, 2, 0.62], 'drop-out', 0.35],
  ['a drop-out on the way back', [0.62, 2, 4.3, 3, 0.4, 1.4, 0.62], 'drop-out', 0.43],
  ['a step back on the way up', [0.62, 1.6, 1.4, 3.4, 4.3, 2, 0.62], 'reversal', 0.51],
  ['a spike', [0.62, 1.6, 4.9, 2.4, 4.3, 2, 0.62], 'reversal', 0.32],
  ['a dip between two overloads', [0.62, 1.6, n, 1.5, n, 1.2, 0.62], 'reversal', 0.75],
  ['a spot where nothing changes', [0.62, 1.6, 1.6, 3.4, 4.3, 2, 0.62], 'dead-spot', 0.13],
  ['not back where it began', [0.62, 1.6, 3.4, 4.3, 2, 0.66], 'no-return', 0],
  ['wide open not reached', [0.62, 1.6, 2.8, 3.2, 2, 0.62], 'not-wide-open', 1],
  ['a reading that never moves', [5, 5, 5.001, 5, 5], 'flat', undefined],
  ['all over range', [n, n, n, n], 'flat', undefined],
  ['leads that make it fall', [4.3, 3, 2, 0.6, 2, 3, 4.3], 'falling', undefined],
  ['only the way up', [0.46, 1.3, 2.2, 3.4, 4.3], 'incomplete', undefined],
  ['only two', [0.46, 4.3], 'incomplete', undefined],
])('%s', (_, values, kind, where) => {
  const sweep = examineSweep(values, 0.001, limits);
  expect(sweep.kind).toBe(kind);
  if (where !== undefined) expect((sweep as { where: number }).where).toBe(where);
});

test('two decimals make steps of a digit no step back', () => {
  expect(examineSweep([0.62, 1.61, 1.6, 3.4, 4.3, 2, 0.62], 0.01, limits).kind).toBe('dead-spot');
  expect(examineSweep([0.62, 1.61, 1.58, 3.4, 4.3, 2, 0.62], 0.01, limits).kind).toBe('reversal');
});

/** Distinct places of a hand between closed and full, in order. */
const leg = fc
  .uniqueArray(fc.integer({ min: 3, max: 93 }), { minLength: 2, maxLength: 6 })
  .map((places) =>
    places.toSorted((a, b) => a - b).map((place) => Number((0.62 + place * 0.036).toFixed(3))),
  );

test('every sound sweep is progressive, whatever places the hand took', () => {
  fc.assert(
    fc.property(leg, leg, (up, down) => {
      const values = [0.62, ...up, 4.3, ...down.toReversed(), 0.622];
      expect(examineSweep(values, 0.001, limits)).toEqual({ kind: 'progressive' });
      const inTwoVolts = values.map((value) => (value > 1.999 ? null : value));
      expect(examineSweep(inTwoVolts, 0.001, limits)).toEqual({ kind: 'progressive' });
    }),
  );
});

test('a drop-out anywhere is found', () => {
  fc.assert(
    fc.property(leg, leg, fc.nat(), fc.integer({ min: 0, max: 300 }), (up, down, at, millivolts) => {
      const values = [0.62, ...up, 4.3, ...down.toReversed(), 0.62];
      const inner = 1 + (at % (values.length - 2));
      if (values[inner] === 4.3) return;
      expect(examineSweep(values.with(inner, millivolts / 1000), 0.001, limits).kind).toBe('drop-out');
    }),
  );
});
