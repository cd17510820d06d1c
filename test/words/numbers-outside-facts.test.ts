import { expect, test } from 'vitest';
import type { Facts } from '../../src/chat/facts.ts';
import { numbersOutsideFacts } from './numbers-outside-facts.ts';

const verdict: Facts = {
  verdict: { result: 'pass', measure: 'signal-idle', unit: 'V', value: 0.348, low: 0.345, high: 0.355 },
};
const line = (fillIn: Record<string, number | string>): Facts => ({ lines: [{ key: 'any', with: fillIn }] });

test.each<[string, Facts, string[]]>([
  ['0.348 V. Right: 0.345 to 0.355 V.', verdict, []],
  ['0.348 V, within 0.345–0.355.', verdict, []],
  ['0.345-0.355 is right.', verdict, []],
  ['0,348 V ist recht.', verdict, []],
  ['0.35 V is not what was read.', verdict, ['0.35']],
  ['Wait 10 seconds.', {}, ['10']],
  ['Wait 10 seconds.', line({ seconds: 10 }), []],
  ['Wait 10s.', {}, ['10']],
  ['Idle at 1750 1/min.', line({ value: 1750 }), []],
  ['Idle at 1,750 1/min.', line({ value: 1750 }), ['1,750']],
  ["Idle at 1'750 1/min.", line({ value: 1750 }), ["1'750"]],
  ['About ¼ turn in.', { move: { part: 'idle-stop', direction: 'in', amount: 0.25, unit: 'turn' } }, []],
  ['About 1½ turns in.', line({ amount: 1.5 }), []],
  ['About ¾ turn in.', line({ amount: 0.25 }), ['¾']],
  ['−0.348 V: the leads are swapped.', line({ value: -0.348 }), []],
  ['-0.348 V: the leads are swapped.', line({ value: 0.348 }), ['-0.348']],
  ['A T25 bit, pin B2, code P0122.', {}, []],
  ['The Fenmoor 450 it is.', line({ machine: 'Fenmoor 450' }), []],
  ['You typed “348 or so”.', line({ typed: '348 or so' }), []],
  ['On 2026-01-05 at 09:30.', {}, []],
  ['Step 3 of 12.', line({ step: 3, steps: 12 }), []],
  ['Pin 1 shows 1.5 V.', line({ pin: '1', value: 2 }), ['1.5']],
  ['83 % likely.', { causes: [{ id: 'x', row: null, probability: 0.83 }] }, ['83']],
])('in %j, the numbers outside the facts are found', (text, facts, outside) => {
  expect(numbersOutsideFacts(text, facts)).toEqual(outside);
});
