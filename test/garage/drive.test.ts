// Whole stories against the stand-in, in-process and through a pipe: they end, they repeat, and both ways tell the same.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { drive } from './drive.ts';
import { faults } from './faults.ts';
import { judgeStory } from './judge.ts';
import { openPipe, overFunction } from './pipe.ts';
import { drawPlan, goTogether } from './plan.ts';
import { drawScene, type Plan } from './scene.ts';
import { createStandIn } from './stand-in.ts';
import { figures, isFalsePass, kindOf, type Run, tableByKind } from './table.ts';

const standInProgram = [process.execPath, join(import.meta.dirname, 'stand-in-program.ts')];

async function play(
  seeds: readonly string[],
  plan?: Plan,
  engine = overFunction(createStandIn()),
): Promise<Run[]> {
  const runs: Run[] = [];
  try {
    for (const [i, seed] of seeds.entries()) {
      const scene = drawScene(seed, plan ?? drawPlan(seed));
      const story = await drive(engine, scene, `o${i}`);
      runs.push({ scene, outcome: judgeStory(story) });
    }
  } finally {
    await engine.close();
  }
  return runs;
}

const seeds = Array.from({ length: 60 }, (_, i) => `drive-${i}`);

test('the same seeds tell the same stories, in-process and through the pipe', async () => {
  const first = await play(seeds);
  expect(await play(seeds)).toEqual(first);
  expect(await play(seeds.slice(0, 20), undefined, openPipe(standInProgram))).toEqual(first.slice(0, 20));
});

test('a plain program sets most plain machines, and the judge catches where it is careless', async () => {
  const runs = await play(seeds, { kind: 'mis-set' });
  expect(runs.filter(({ outcome }) => outcome.trulySet).length).toBeGreaterThan(30);
  // It never reads again after tightening, so some of its claims must be wrong.
  expect(runs.filter(isFalsePass).length).toBeGreaterThan(3);
});

test('a program that reads again after tightening sets nearly all of them: the garage asks for nothing impossible', async () => {
  const careful = overFunction(createStandIn(true));
  const many = Array.from({ length: 300 }, (_, i) => `careful-${i}`);
  const runs = await play(many, { kind: 'mis-set' }, careful);
  expect(runs.filter(({ outcome }) => outcome.trulySet).length).toBeGreaterThan(285);
  expect(runs.filter(isFalsePass).length).toBeLessThan(4);
});

test.each(faults.map((fault) => fault.id))('%s plays to an end', async (id) => {
  for (const { scene, outcome } of await play(['one', 'two', 'three'], { kind: 'faults', ids: [id] })) {
    expect(scene.unknown.size).toBe(0);
    expect(outcome.declared !== null || outcome.withPerson).toBe(true);
  }
});

test('an engine that never comes to an end is left, and one that asks nothing too', async () => {
  const confirm = {
    id: 'm',
    to: 'o',
    text: '',
    choices: [{ id: 'done', label: 'Done' }],
    facts: { ask: { kind: 'confirm' } },
  } as const;
  const endless = overFunction(() => [{ ...confirm, choices: [...confirm.choices] }]);
  const story = await drive(endless, drawScene('x', { kind: 'right' }), 'o', { most: 30 });
  expect(story.stuck).toBe('no end after 30 messages');
  expect(story.steps).toHaveLength(30);
  const silent = await drive(
    overFunction(() => []),
    drawScene('x', { kind: 'right' }),
    'o',
  );
  expect(silent.stuck).toBe('nothing was asked');
});

test('three in ten machines with a fault have two, never two of a group', () => {
  const plans = Array.from({ length: 4000 }, (_, i) => drawPlan(`plan-${i}`));
  const faulty = plans.flatMap((plan) => (plan.kind === 'faults' ? [plan.ids] : []));
  const two = faulty.filter((ids) => ids.length === 2).length / faulty.length;
  expect(two).toBeGreaterThan(0.26);
  expect(two).toBeLessThan(0.34);
  expect(new Set(faulty.flat()).size).toBe(faults.length);
  for (const fault of faults) expect(goTogether(fault, fault)).toBe(false);
});

test('the table has a line for each kind, and the figures say plainly where they are missed', async () => {
  const runs = await play(seeds);
  const table = tableByKind(runs);
  expect(table.split('\n')).toHaveLength(1 + new Set(runs.map(({ scene }) => kindOf(scene))).size);
  const falsePass = figures(runs)[0]!;
  expect(falsePass.holds).toBe(runs.filter(isFalsePass).length === 0);
});
