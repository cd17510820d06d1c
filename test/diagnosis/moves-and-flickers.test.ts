// How a reading moves under each cause, what flickers, and which causes look alike; in a small world of our own.
import { describe, expect, test } from 'vitest';
import type { Observation, Seen } from '../../src/diagnosis/evidence.ts';
import { hypothesesOf } from '../../src/diagnosis/hypothesis.ts';
import { chancesOf, weightsOfPast } from '../../src/diagnosis/likelihoods.ts';
import { lookAlike, showTheSame } from '../../src/diagnosis/look-alike.ts';
import { posterior, priorsOf } from '../../src/diagnosis/posterior.ts';
import { type FaultContent, faultFileSchema } from '../../src/procedure/fault.ts';

const prior = { complaint: 100, 'odd-reading': 100 };
const fault = (id: string, as: object[] | null, more: object = {}) => ({
  id,
  row: null,
  layer: 'meter',
  prior,
  shows: as === null ? [] : [{ on: ['signal-*'], as }],
  ...more,
});

const world: FaultContent = faultFileSchema.parse({
  faults: [
    fault('well', null),
    fault('crossed', [{ kind: 'negated' }]),
    fault('stuck', [{ kind: 'frozen', give: 0.2 }]),
    fault('worn', [{ kind: 'wandering', width: 0.2 }]),
    fault('broken', [
      { kind: 'drop-out', to: 0, share: 0.3 },
      { kind: 'same', share: 0.7 },
    ]),
    fault('seldom-worn', [
      { kind: 'wandering', width: 0.2, share: 0.05 },
      { kind: 'same', share: 0.95 },
    ]),
    fault('rests-elsewhere', null, { changes: [{ after: ['snap'], falls: 0.35, same: 0.3, rises: 0.35 }] }),
    fault('comes-back', null, { changes: [{ after: ['snap'], falls: 0.05, same: 0.9, rises: 0.05 }] }),
    fault('bends-some', null, { sweep: { rising: 0.4, broken: 0.6 } }),
    fault('bends-all', null, { sweep: { rising: 0.05, broken: 0.95 } }),
    fault('bends-few', null, { sweep: { rising: 0.9, broken: 0.1 } }),
    fault('crossed-too', [{ kind: 'negated' }]),
    fault('slipped', [{ kind: 'constant', at: 0 }], { passing: true }),
  ],
});
const hypotheses = hypothesesOf(world);
const chances = (observation: Observation): Record<string, number> => {
  const all = chancesOf(world, observation, hypotheses) ?? [];
  return Object.fromEntries(hypotheses.map(({ id }, index) => [id, all[index] ?? 0]));
};
const volts = (value: number): Seen => ({ kind: 'value', value, resolution: 0.001 });
const at = (seen: Seen, more: Partial<Observation> = {}): Observation => ({
  kind: 'observation',
  measure: 'signal-idle',
  situation: 'as-found',
  seen,
  expected: { low: 0.69, high: 0.73 },
  settable: true,
  supply: 5,
  ...more,
});

describe('backed off, a plate closes and its signal falls', () => {
  const moved = (to: number) =>
    chances(
      at(volts(to), {
        previous: { seen: volts(0.7), after: 'back-off:idle-stop', expect: 'falls', alone: true },
      }),
    );
  const [fell, stood, rose] = [moved(0.6), moved(0.7), moved(0.8)] as const;

  test.each([
    ['well', 'falls'],
    ['crossed', 'rises'],
    ['stuck', 'stands'],
  ])('under "%s" it %s', (id, most) => {
    const likeliest = { falls: fell[id]!, stands: stood[id]!, rises: rose[id]! };
    for (const [way, chance] of Object.entries(likeliest)) {
      if (way === most) expect(chance).toBeGreaterThan(0.8);
      else expect(chance).toBeLessThan(0.1);
    }
  });

  test('under one that wanders it may do anything', () => {
    for (const chance of [fell.worn!, stood.worn!, rose.worn!]) expect(chance).toBeGreaterThan(0.2);
  });
});

describe('a sweep', () => {
  const sweep = (...values: number[]) =>
    chances(
      at(
        { kind: 'series', values, resolution: 0.01 },
        { measure: 'signal-sweep', situation: 'sweep', expected: { low: 0.62, high: 4.4 } },
      ),
    );

  test('that rises speaks for a sound track; with a step back for a worn one', () => {
    const sound = sweep(0.62, 2, 4.4, 2, 0.62);
    const bent = sweep(0.62, 2, 1.2, 4.4, 2, 0.62);
    expect(sound.well!).toBeGreaterThan(2 * sound.worn!);
    expect(bent.worn!).toBeGreaterThan(1.5 * bent.well!);
    expect(sound['bends-some']!).toBeGreaterThan(sound['bends-all']!);
    expect(bent['bends-all']!).toBeGreaterThan(bent['bends-few']!);
  });

  test('that falls speaks for crossed leads, one that stands still for a figure that is frozen', () => {
    const falling = sweep(-0.62, -2, -4.4, -2, -0.62);
    expect(falling.crossed!).toBeGreaterThan(5 * falling.well!);
    const still = sweep(0.62, 0.62, 0.62, 0.62);
    expect(still.stuck!).toBeGreaterThan(5 * still.well!);
  });
});

// An odd reading that is gone again accuses what shows now and then, and nothing that would still show it.
test.each([
  ['worn', true],
  ['broken', true],
  ['rests-elsewhere', true],
  ['bends-some', true],
  ['seldom-worn', false],
  ['comes-back', false],
  ['bends-all', false],
  ['bends-few', false],
  ['crossed', false],
  ['well', false],
  ['slipped', false],
])('"%s" is accused by what was odd once and is gone: %s', (id, accused) => {
  const past = weightsOfPast(world, { [id]: 3000 });
  expect((past[id] ?? 0) > 0).toBe(accused);
});

describe('causes that no measure tells apart', () => {
  test.each<[string, string, boolean]>([
    ['crossed', 'crossed-too', true],
    ['well', 'crossed', false],
    ['well', 'stuck', false],
    ['well', 'worn', false],
    ['well', 'slipped', false],
    ['crossed', 'nobody-knows', false],
    ['nobody-knows', 'crossed', false],
  ])('%s and %s: %s', (a, b, expected) => {
    expect(showTheSame(world, a, b)).toBe(expected);
    expect(showTheSame(world, b, a)).toBe(expected);
  });

  test('the desk is told of both where both are likely, and of none where one is far ahead', () => {
    const belief = (weights: Record<string, number>) =>
      posterior(world, priorsOf(world, 'complaint'), weights);
    expect(lookAlike(world, belief({ crossed: 9000, 'crossed-too': 9000 })).sort()).toEqual([
      'crossed',
      'crossed-too',
    ]);
    expect(lookAlike(world, belief({ crossed: 9000, 'crossed-too': 6000 }))).toEqual([]);
    expect(lookAlike(world, belief({ crossed: 9000, stuck: 9000 }))).toEqual([]);
  });
});
