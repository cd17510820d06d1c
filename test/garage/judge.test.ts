// The judge can tell: a right set-up from a wrong one, a machine left alone from one touched, and a true cause from another.
import { expect, test } from 'vitest';
import type { Facts, VerdictFact } from '../../src/chat/facts.ts';
import type { Step, Story } from './drive.ts';
import { faultById } from './faults.ts';
import { judgeStory } from './judge.ts';
import { drawScene, type Plan } from './scene.ts';
import { trueValue } from './truth.ts';

function step(facts: Facts, to = 'o'): Step {
  const output = { id: 'm', to, text: '', choices: [], facts };
  return { line: { from: 'o', text: '' }, sent: null, slips: [], outputs: [output] };
}

function passOn(measure: string, low: number, high: number): Step {
  const verdict: VerdictFact = { result: 'pass', measure, unit: 'V', value: (low + high) / 2, low, high };
  return step({ verdict });
}

/** A story that claims a machine set, with limits around what is true of it, shifted by so much. */
function claimsSet(plan: Plan, shifted = 0): Story {
  const scene = drawScene('judge', plan);
  const steps = ['signal-closed-stop', 'signal-idle', 'signal-fast-idle'].map((measure) => {
    const truth = trueValue(scene.machine, measure, false)! + shifted;
    return passOn(measure, truth - 0.01, truth + 0.01);
  });
  return { scene, steps: [...steps, step({ record: { result: 'set', values: {} } })], stuck: null };
}

test('declared set with every true value in its limits is truly set', () => {
  const outcome = judgeStory(claimsSet({ kind: 'mis-set' }));
  expect(outcome.wrong).toEqual([]);
  expect(outcome).toMatchObject({ trulySet: true, endedRight: true, declared: 'set' });
});

test('declared set with the truth outside by more than the meter may err is a false pass', () => {
  const outcome = judgeStory(claimsSet({ kind: 'mis-set' }, 0.05));
  expect(outcome.trulySet).toBe(false);
  expect(outcome.wrong).toHaveLength(3);
});

test('a hair outside, within what the meter may err, is none', () => {
  expect(judgeStory(claimsSet({ kind: 'mis-set' }, 0.011)).wrong).toEqual([]);
});

test('a set-up without a verdict on its baseline is wrong whatever else was read', () => {
  const story = claimsSet({ kind: 'mis-set' });
  story.steps.shift();
  expect(judgeStory(story).wrong).toEqual(['declared set without a verdict on signal-closed-stop']);
});

test.each([
  'worn-elsewhere',
  'carbon-in-bore',
  'shaft-slack',
  'plug-corroded',
  'cable-tight',
  'fast-idle-on',
])('with %s still there, nothing is set', (id) => {
  const story = claimsSet({ kind: 'faults', ids: [id] });
  const ruined = judgeStory(story).wrong.filter((why) => why.startsWith('still there'));
  expect(ruined).toEqual([`still there: ${id}`]);
});

test('a sensor left loose is wrong, however well it reads', () => {
  const story = claimsSet({ kind: 'faults', ids: ['screws-loose'] });
  expect(judgeStory(story).wrong).toContain('the sensor was left loose');
});

test('a machine that was right is left alone only where no screw was touched', () => {
  const scene = drawScene('alone', { kind: 'right' });
  const steps = [step({ record: { result: 'right-as-found', values: {}, baseline: 'not-checked' } })];
  expect(judgeStory({ scene, steps, stuck: null }).endedRight).toBe(true);
  scene.touched.add('idle-stop');
  expect(judgeStory({ scene, steps, stuck: null }).endedRight).toBe(false);
});

test('a fault beyond an owner ends right with a person, one that an owner can mend does not', () => {
  const opened = step({ case: { id: 'c', owner: 'o', state: 'waiting', reason: 'r' } }, 'desk');
  const ends = (id: string) =>
    judgeStory({ scene: drawScene('p', { kind: 'faults', ids: [id] }), steps: [opened], stuck: null })
      .endedRight;
  expect(ends('ground-open')).toBe(true);
  expect(ends('leads-swapped')).toBe(false);
});

test('the true cause is found by its row in what the desk saw last', () => {
  const scene = drawScene('rank', { kind: 'faults', ids: ['ground-resistive'] });
  const causes = [
    { id: 'supply-weak', row: '17', probability: 0.5 },
    { id: 'bad-earth', row: faultById('ground-resistive').row, probability: 0.4 },
  ];
  const outcome = judgeStory({ scene, steps: [step({ causes }, 'desk')], stuck: null });
  expect(outcome.rank).toBe(2);
  expect(outcome.first).toEqual({ probability: 0.5, right: false });
});
