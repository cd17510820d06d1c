// When a person is called since nothing known explains the readings: tails under one cause, and what is left when all are tried.
import { describe, expect, test } from 'vitest';
import type { Observation, Seen } from '../../src/diagnosis/evidence.ts';
import { hypothesesOf } from '../../src/diagnosis/hypothesis.ts';
import { addWeights, likelihoods } from '../../src/diagnosis/likelihoods.ts';
import { likelyCauses, normalise, posterior, priorsOf } from '../../src/diagnosis/posterior.ts';
import { tailOf, unexplained } from '../../src/diagnosis/unexplained.ts';
import { type FaultContent, faultFileSchema } from '../../src/procedure/fault.ts';

const prior = { complaint: 100, 'odd-reading': 100 };
const fault = (id: string, shows: object[], more: object = {}) => ({
  id,
  row: null,
  layer: 'meter',
  prior,
  shows,
  ...more,
});
const as = (...predictors: object[]) => [{ on: ['signal-*'], as: predictors }];

/** A world of few causes, each as content writes it. */
const world: FaultContent = faultFileSchema.parse({
  faults: [
    fault('well', []),
    fault('crossed', as({ kind: 'negated' })),
    fault('stuck', as({ kind: 'frozen' })),
    fault('worn', as({ kind: 'wandering', width: 0.2 })),
    fault('open', as({ kind: 'overload' })),
    fault('bent', [], { sweep: { rising: 0.5, 'not-back': 0.5 } }),
  ],
});
const of = (id: string) => hypothesesOf(world).find((one) => one.id === id)!;
const at = (seen: Seen, more: Partial<Observation> = {}): Observation => ({
  kind: 'observation',
  measure: 'signal-idle',
  situation: 'as-found',
  seen,
  expected: { low: 0.69, high: 0.73 },
  settable: false,
  supply: 5,
  ...more,
});
const volts = (value: number): Seen => ({ kind: 'value', value, resolution: 0.001 });
const sweep = (...values: (number | null)[]): Observation =>
  at(
    { kind: 'series', values, resolution: 0.01 },
    { measure: 'signal-sweep', expected: { low: 0.62, high: 4.4 } },
  );

describe('a reading at least as far out', () => {
  test.each<[string, string, Observation, boolean]>([
    ['well', 'inside', at(volts(0.71)), true],
    ['well', 'far outside', at(volts(1.4)), false],
    ['well', 'the other way round', at(volts(-0.71)), false],
    ['crossed', 'the other way round', at(volts(-0.71)), true],
    ['crossed', 'inside', at(volts(0.71)), false],
    ['open', 'an overload', at({ kind: 'overload' }), true],
    ['open', 'a figure', at(volts(0.71)), false],
    ['worn', 'a wide range', at({ kind: 'range', low: 0.65, high: 0.8, resolution: 0.001 }), true],
    ['well', 'a wide range', at({ kind: 'range', low: 0.65, high: 0.8, resolution: 0.001 }), false],
    ['well', 'a narrow range', at({ kind: 'range', low: 0.71, high: 0.712, resolution: 0.001 }), true],
    ['well', 'what nobody knows a limit for', at(volts(9), { expected: null }), true],
    ['well', 'a sweep that rises', sweep(0.62, 2, 4.4, 2, 0.62), true],
    ['well', 'a sweep that falls', sweep(4.4, 2, 0.62, 2, 4.4), false],
    ['well', 'a sweep that stands still', sweep(0.62, 0.62, 0.62), false],
    ['well', 'a sweep that does not come back', sweep(0.62, 2, 4.4, 2, 1.2), false],
    ['well', 'a sweep with a step back', sweep(0.62, 2, 1.2, 4.4, 2, 0.62), false],
    ['crossed', 'a sweep that falls', sweep(-0.62, -2, -4.4, -2, -0.62), true],
    ['crossed', 'a sweep that rises', sweep(0.62, 2, 4.4, 2, 0.62), false],
    ['stuck', 'a sweep that stands still', sweep(0.62, 0.62, 0.62), true],
    ['stuck', 'a sweep that rises', sweep(0.62, 2, 4.4, 2, 0.62), false],
    ['worn', 'a sweep with a step back', sweep(0.62, 2, 1.2, 4.4, 2, 0.62), true],
    // What content says of the sweep itself counts too.
    ['bent', 'a sweep that does not come back', sweep(0.62, 2, 4.4, 2, 1.2), true],
    ['bent', 'a sweep with a step back', sweep(0.62, 2, 1.2, 4.4, 2, 0.62), false],
  ])('under "%s", %s', (id, _, observation, likely) => {
    const tail = tailOf(of(id), observation);
    expect(tail).toBeGreaterThanOrEqual(0);
    expect(tail).toBeLessThanOrEqual(1);
    // One in twenty is the share that a table of significance usually stops at (Fisher 1925).
    expect(tail > 0.05).toBe(likely);
  });
});

test('a person is called when no cause in question would show it, and not before', () => {
  const belief = (observation: Observation) =>
    posterior(world, priorsOf(world, 'odd-reading'), addWeights(likelihoods(world, observation)));
  for (const [observation, expected] of [
    [at(volts(0.71)), false],
    [at(volts(-0.71)), false],
    [at({ kind: 'overload' }), false],
    [at(volts(3.3)), true],
  ] as const) {
    expect(unexplained(belief(observation), [observation])).toBe(expected);
  }
  // Each reading has a cause of its own, and no cause has both.
  const both = [at(volts(0.71)), at(volts(-0.71))];
  const weights = addWeights(...both.map((one) => likelihoods(world, one)));
  expect(unexplained(posterior(world, priorsOf(world, 'odd-reading'), weights), both)).toBe(true);
});

test('chances from logarithms add up to one, also of figures that no exponential could hold, and of none that is possible', () => {
  expect(normalise([0, Math.log(3)])).toEqual([expect.closeTo(0.25, 12), expect.closeTo(0.75, 12)]);
  expect(normalise([5_000, 5_000 + Math.log(3)])[1]).toBeCloseTo(0.75, 9);
  expect(normalise([Number.NEGATIVE_INFINITY, 0])).toEqual([0, 1]);
  const [a, b] = normalise([Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]);
  expect([a, b]).toEqual([0.5, 0.5]);
});

test('an owner is named three causes at most, and none that is hardly likely', () => {
  const belief = posterior(world, priorsOf(world, 'odd-reading'), { crossed: 3000, worn: 3000 });
  const named = likelyCauses(belief);
  expect(named.map(({ id }) => id)).toEqual(['crossed', 'worn']);
  for (const { probability } of named) expect(probability).toBeGreaterThanOrEqual(0.3);
  expect(likelyCauses(belief, 0)).toHaveLength(3);
});
