// What is said of fault content that cannot be right: where, what, and what would be.
import { describe, expect, it } from 'vitest';
import { checkFaults } from '../../src/procedure/check-faults.ts';
import type { FaultContent } from '../../src/procedure/fault.ts';
import { actions, measureIds } from '../../src/procedure/vocabulary.ts';
import { shippedFaults } from './shipped-faults.ts';

const vocabulary = { measures: measureIds, actions };
const broken = (change: (content: FaultContent) => void) => {
  const content = structuredClone(shippedFaults);
  change(content);
  return checkFaults(content, vocabulary);
};
const fault = (content: FaultContent, id: string) => content.faults.find((one) => one.id === id)!;
const check = (content: FaultContent, id: string) => content.checks.find((one) => one.id === id)!;

describe('fault content', () => {
  it('that ships is in order', () => {
    expect(checkFaults(shippedFaults, vocabulary)).toEqual([]);
  });

  it.each([
    [
      'an unknown measure',
      'faults.leads-swapped.shows.0.on.1',
      'supply-volts',
      (content) => {
        fault(content, 'leads-swapped').shows[0]!.on[1] = 'supply-volts';
      },
    ],
    [
      'an unknown action',
      'faults.tight-cable.changes.0.after.0',
      'back-off',
      (content) => {
        fault(content, 'tight-cable').changes[0]!.after = ['back-off'];
      },
    ],
    [
      'shares of a reading that do not add up',
      'faults.meter-on-ac.shows.0.as',
      'add up to 0.9',
      (content) => {
        fault(content, 'meter-on-ac').shows[0]!.as[0]!.share = 0.45;
      },
    ],
    [
      'shares of an answer that do not add up',
      'faults.dirty-bore.answers.bore',
      'add up to 1.1',
      (content) => {
        fault(content, 'dirty-bore').answers.bore = { clean: 0.3, dirty: 0.8 };
      },
    ],
    [
      'shares of a move that do not add up',
      'faults.tight-cable.changes.0',
      'add up to',
      (content) => {
        fault(content, 'tight-cable').changes[0]!.falls = 0.9;
      },
    ],
    [
      'priors that do not add up',
      'faults.*.prior.complaint',
      '1012 of 1000',
      (content) => {
        fault(content, 'air-leak').prior.complaint += 12;
      },
    ],
    [
      'a question that nobody asks',
      'faults.dirty-bore.answers.boar',
      '"boar"',
      (content) => {
        fault(content, 'dirty-bore').answers = { boar: { clean: 1 } };
      },
    ],
    [
      'an answer that the question lacks',
      'faults.dirty-bore.answers.bore.grubby',
      '"grubby"',
      (content) => {
        fault(content, 'dirty-bore').answers = { bore: { clean: 0.5, grubby: 0.5 } };
      },
    ],
    [
      'a check without a way back',
      'checks.measure-ground-drop.do.1',
      'probe-ground',
      (content) => {
        check(content, 'measure-ground-drop').back = ['wake'];
      },
    ],
    [
      'a check that sleeps and does not wake',
      'checks.look-at-leads.do.0',
      'sleep',
      (content) => {
        check(content, 'look-at-leads').do = ['sleep', 'check:leads'];
      },
    ],
    [
      'a check that mends a fault nobody knows',
      'checks.wake-again.mends.unit-sleepy',
      '"unit-sleepy"',
      (content) => {
        check(content, 'wake-again').mends['unit-sleepy'] = 0.9;
      },
    ],
    [
      'a check that mends nothing',
      'checks.wake-again.mends',
      'nothing is mended',
      (content) => {
        check(content, 'wake-again').mends = {};
      },
    ],
    [
      'a pair of one',
      'pairs.0.of',
      'paired with itself',
      (content) => {
        content.pairs[0]!.of = ['unit-asleep', 'unit-asleep'];
      },
    ],
    [
      'two faults of one name',
      'faults.air-leak',
      'twice',
      (content) => {
        fault(content, 'fuel-map').id = 'air-leak';
      },
    ],
    [
      'no cause for what nobody knows',
      'faults',
      '"unknown" is missing',
      (content) => {
        content.faults = content.faults.filter((one) => one.id !== 'unknown');
      },
    ],
  ] as [string, string, string, (content: FaultContent) => void][])(
    'with %s is told where',
    (_, path, part, change) => {
      const problems = broken(change);
      const found = problems.find((problem) => problem.path === path);
      expect(found, JSON.stringify(problems)).toBeDefined();
      expect(found?.message).toContain(part);
      expect(found?.mend.length).toBeGreaterThan(5);
    },
  );
});
