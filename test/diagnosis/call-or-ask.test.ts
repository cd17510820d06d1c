// What is asked next, or why a person is called, in a small world of our own whose best order can be reckoned by hand.
import { describe, expect, test } from 'vitest';
import { type Advice, nextCheck, type Situation } from '../../src/diagnosis/next-check.ts';
import { posterior } from '../../src/diagnosis/posterior.ts';
import { type FaultContent, faultFileSchema } from '../../src/procedure/fault.ts';

const prior = { complaint: 1, 'odd-reading': 1 };
const fault = (id: string, as: object[] = [], more: object = {}) => ({
  id,
  row: null,
  layer: 'meter',
  prior,
  shows: as.length === 0 ? [] : [{ on: ['supply-*'], as }],
  ...more,
});
const retake = { kind: 'retake' };

const world: FaultContent = faultFileSchema.parse({
  faults: [
    fault('unknown'),
    fault('crossed', [{ kind: 'negated' }]),
    fault('fused', [{ kind: 'constant', at: 0 }]),
    fault('buried'),
    fault('buried-too'),
    fault('mendable-by-desk', [{ kind: 'constant', at: 2 }]),
  ],
  questions: [{ id: 'colour', usual: { right: 0.9, wrong: 0.1 } }],
  checks: [
    { id: 'look-at-leads', ask: retake, minutes: 2, mends: { crossed: 0.9 } },
    { id: 'look-at-fuse', ask: retake, minutes: 5, tools: ['tester'], mends: { fused: 0.9 } },
    { id: 'open-it-up', ask: retake, minutes: 5, for: 'desk', mends: { 'mendable-by-desk': 0.9 } },
    { id: 'read-supply', ask: { kind: 'reading', measure: 'supply-voltage' }, minutes: 1 },
    { id: 'ask-colour', ask: { kind: 'choice', question: 'colour' }, minutes: 0.5 },
  ],
});

const situation: Situation = {
  done: [],
  lacking: [],
  bands: { 'supply-voltage': { low: 4.8, high: 5.2 } },
  supply: null,
  settable: false,
};
const ask = (chances: Record<string, number>, more: Partial<Situation> = {}): Advice =>
  nextCheck(world, posterior(world, chances, {}), { ...situation, ...more });
const told = (advice: Advice) => (advice.kind === 'check' ? advice.check : `call: ${advice.reason}`);

describe('what is asked next', () => {
  test.each<[string, Record<string, number>, Partial<Situation>, string]>([
    ['the likely fault is mended first', { crossed: 0.95, fused: 0.05 }, {}, 'look-at-leads'],
    ['the other one, where it is likely', { crossed: 0.02, fused: 0.98 }, {}, 'look-at-fuse'],
    ['not without its tool', { fused: 1 }, { lacking: ['tester'] }, 'call: nothing-left'],
    ['a tool of something else is not missed', { fused: 1 }, { lacking: ['tachometer'] }, 'look-at-fuse'],
    // People look without seeing: where hardly anything else fits, the same is asked once more, and no oftener.
    [
      'once more, where hardly anything else fits',
      { crossed: 1 },
      { done: ['look-at-leads'] },
      'look-at-leads',
    ],
    ['not a third time', { crossed: 1 }, { done: ['look-at-leads', 'look-at-leads'] }, 'call: nothing-left'],
    [
      'not once more, where something else is likelier',
      { crossed: 0.2, buried: 0.8 },
      { done: ['look-at-leads', 'read-supply', 'supply-voltage'] },
      'call: not-for-an-owner',
    ],
    ['what nobody can mend goes to a person', { buried: 1 }, {}, 'call: not-for-an-owner'],
    ['what only the desk can mend does too', { 'mendable-by-desk': 1 }, {}, 'call: not-for-an-owner'],
    ['what nobody knows does too', { unknown: 0.9, buried: 0.1 }, {}, 'call: unknown-cause'],
    ['two that look alike do too', { buried: 0.5, 'buried-too': 0.5 }, {}, 'call: look-alike'],
  ])('%s', (_, chances, more, expected) => {
    expect(told(ask(chances, more))).toBe(expected);
  });

  test('a reading that tells two causes apart is worth its minute before a long mend', () => {
    expect(told(ask({ crossed: 0.5, fused: 0.5 }))).toMatch(/^(read-supply|look-at-leads)$/);
    const even = { fused: 0.5, 'mendable-by-desk': 0.5 };
    expect(told(ask(even))).toBe('read-supply');
    // Read already, or with no limits to hold it against, it tells nothing.
    expect(told(ask(even, { done: ['supply-voltage'] }))).not.toBe('read-supply');
    expect(told(ask(even, { bands: {} }))).not.toBe('read-supply');
  });

  test('a question whose answer tells nothing of the causes in play is not asked', () => {
    for (const chances of [{ crossed: 0.5, fused: 0.5 }, { crossed: 1 }, { buried: 0.5, fused: 0.5 }])
      expect(told(ask(chances))).not.toBe('ask-colour');
  });
});

test('a person is told the likeliest cause, or all that look alike', () => {
  expect(
    ask({ buried: 0.9, crossed: 0.1 }, { done: ['look-at-leads', 'look-at-leads', 'supply-voltage'] }),
  ).toMatchObject({
    cause: 'buried',
    causes: ['buried'],
  });
  const alike = ask({ buried: 0.5, 'buried-too': 0.5 });
  expect(alike.kind === 'call' && [...alike.causes].sort()).toEqual(['buried', 'buried-too']);
});

test('a check names the cause that it would mend, what it takes and how long', () => {
  expect(ask({ crossed: 0.95, fused: 0.05 })).toMatchObject({
    kind: 'check',
    cause: 'crossed',
    minutes: 2,
    ask: { kind: 'retake' },
  });
});
