// The program plays against machines of which the truth is known, three for each fault: what it declares set is set, and nobody is left alone.
import { afterAll, describe, expect, test } from 'vitest';
import { drive } from '../garage/drive.ts';
import { faults } from '../garage/faults.ts';
import { openInProcess } from '../garage/in-process.ts';
import { judgeStory } from '../garage/judge.ts';
import { drawScene, type Plan } from '../garage/scene.ts';
import { isFalsePass, type Run } from '../garage/table.ts';

const engine = await openInProcess();
afterAll(() => engine.close());

const all: Run[] = [];

/** An empty line parts two others; where one stands alone, words are missing. */
const wordsAreMissing = /^\n|^$|\n$|\n\n\n/;

async function play(plan: Plan, seeds: readonly string[]): Promise<Run[]> {
  const runs: Run[] = [];
  for (const seed of seeds) {
    const scene = drawScene(seed, plan);
    const story = await drive(engine, scene, `plays-${all.length + runs.length}`);
    const outcome = judgeStory(story);
    const outputs = story.steps.flatMap((step) => step.outputs);
    expect(outputs.filter(({ text }) => wordsAreMissing.test(text)).map(({ facts }) => facts)).toEqual([]);
    runs.push({ scene, outcome });
  }
  all.push(...runs);
  return runs;
}

const tell = ({ scene, outcome }: Run) =>
  `${scene.seed}: ${outcome.wrong.join('; ') || outcome.stuck || outcome.reason || `declared ${outcome.declared}`}`;
const seeds = (name: string, count: number) => Array.from({ length: count }, (_, i) => `${name}-${i}`);
const ended = (runs: readonly Run[]) => runs.filter(({ outcome }) => outcome.endedRight).length;

test('a machine that is right is found right, and no screw is touched', async () => {
  const runs = await play({ kind: 'right' }, seeds('right', 6));
  expect(runs.map(({ outcome }) => [outcome.declared, outcome.touched, outcome.withPerson])).toEqual(
    runs.map(() => ['right-as-found', false, false]),
  );
});

test('a machine that is only off is set, without a person, and seldom takes more than a few readings a screw', async () => {
  const runs = await play({ kind: 'mis-set' }, seeds('off', 12));
  expect(runs.filter(isFalsePass).map(tell)).toEqual([]);
  expect(runs.filter(({ outcome }) => outcome.trulySet && !outcome.withPerson).length).toBeGreaterThan(10);
  const loops = runs.flatMap(({ outcome }) => outcome.loops).sort((a, b) => a - b);
  expect(loops[Math.floor(loops.length / 2)]).toBeLessThanOrEqual(4);
});

describe('with a fault', () => {
  test.each(faults.map(({ id }) => id))(
    '%s: never declared set while it is not, and brought to its end',
    async (id) => {
      const runs = await play({ kind: 'faults', ids: [id] }, seeds(id, 3));
      expect(runs.filter(isFalsePass).map(tell)).toEqual([]);
      expect(runs.filter(({ outcome }) => outcome.stuck !== null).map(tell)).toEqual([]);
      // What an owner can mend ends set without a person, all else with one; two of three, as owners slip.
      expect(ended(runs), runs.map(tell).join('\n')).toBeGreaterThanOrEqual(2);
    },
  );
});

test('of all of them nineteen in twenty end as they should', () => {
  expect(all.length).toBeGreaterThan(100);
  expect(
    ended(all) / all.length,
    all
      .filter(({ outcome }) => !outcome.endedRight)
      .map(tell)
      .join('\n'),
  ).toBeGreaterThan(0.95);
});

test('the desk is told the true cause among its first three, where a fault can be told by what the meter shows', () => {
  const told = all.filter(
    ({ scene, outcome }) => outcome.first !== null && scene.faults.every(({ row }) => row !== null),
  );
  expect(told.length).toBeGreaterThan(20);
  const among = told.filter(({ outcome }) => (outcome.rank ?? 99) <= 3).length;
  expect(among / told.length).toBeGreaterThan(0.85);
});
