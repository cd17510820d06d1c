// `npm run garage`: plays many simulated owners against the program and prints how it went, by kind of machine.
import { readOptions, refuse } from '../read-options.ts';
import { drive } from './drive.ts';
import { faults } from './faults.ts';
import { judgeStory } from './judge.ts';
import { openPipe } from './pipe.ts';
import type { Engine } from './pipe-line.ts';
import { drawPlan } from './plan.ts';
import { drawScene, type Plan } from './scene.ts';
import { figures, figureTable, isFalsePass, type Run, reliability, tableByKind } from './table.ts';
import { tellStory } from './tell.ts';

const usage = `npm run garage -- [--machines 500] [--seed 1] [--fault ID | --only mis-set|right] [--pipe] [--minutes 0] [--verbose SEED]
  faults: ${faults.map((fault) => fault.id).join(', ')}`;

/** In-process by default; its import waits until then, so that the pipe can be used while the program does not load here. */
async function openEngine(pipe: boolean): Promise<Engine> {
  if (pipe) return openPipe();
  const { openInProcess } = await import('./in-process.ts');
  return openInProcess();
}

async function main(): Promise<number> {
  const options = {
    machines: { type: 'string', default: '500' },
    seed: { type: 'string', default: '1' },
    fault: { type: 'string' },
    only: { type: 'string' },
    pipe: { type: 'boolean', default: false },
    minutes: { type: 'string', default: '0' },
    verbose: { type: 'string' },
    help: { type: 'boolean', default: false },
  } as const;
  const { values } = readOptions({ options }, usage);
  if (values.help) {
    console.log(usage);
    return 0;
  }
  for (const name of ['machines', 'minutes'] as const) {
    if (!/^\d+$/.test(values[name])) refuse(`--${name} takes a whole number, not "${values[name]}"`, usage);
  }
  const planned = plannedBy(values.fault, values.only);
  const seeds = values.verbose
    ? [values.verbose]
    : Array.from({ length: Number(values.machines) }, (_, i) => `${values.seed}-${i + 1}`);

  const engine = await openEngine(values.pipe);
  const runs: Run[] = [];
  try {
    for (const [i, seed] of seeds.entries()) {
      const scene = drawScene(seed, planned ?? drawPlan(seed));
      const story = await drive(engine, scene, `g${i}`, { minutes: Number(values.minutes) });
      const outcome = judgeStory(story);
      runs.push({ scene, outcome });
      if (values.verbose) console.log(`${tellStory(story, outcome)}\n`);
    }
  } finally {
    await engine.close();
  }
  if (values.verbose) return 0;
  console.log(`${tableByKind(runs)}\n\n${figureTable(figures(runs))}\n\n${reliability(runs)}\n`);
  for (const { scene, outcome } of runs
    .filter((run) => isFalsePass(run) || !run.outcome.endedRight)
    .sort((a, b) => Number(isFalsePass(b)) - Number(isFalsePass(a)))
    .slice(0, 40)) {
    const names = scene.faults.map((fault) => fault.id).join('+') || (scene.complaint ? 'mis-set' : 'right');
    const why = outcome.wrong.join('; ') || outcome.stuck || outcome.reason || `declared ${outcome.declared}`;
    console.log(
      `--verbose ${scene.seed}  ${names}: ${isFalsePass({ scene, outcome }) ? 'FALSE PASS ' : ''}${why}`,
    );
  }
  const odd = new Set(runs.flatMap(({ scene }) => [...scene.unknown]));
  if (odd.size) console.log(`Asked for, though no contract names it: ${[...odd].join(', ')}`);
  return runs.some(isFalsePass) ? 1 : 0;
}

function plannedBy(fault: string | undefined, only: string | undefined): Plan | null {
  const ids = fault?.split('+') ?? [];
  const strange = ids.find((id) => !faults.some((known) => known.id === id));
  if (strange !== undefined) refuse(`There is no fault "${strange}"`, usage);
  if (fault) return { kind: 'faults', ids };
  if (only === 'right' || only === 'mis-set') return { kind: only };
  if (only) refuse(`--only takes right or mis-set, not "${only}"`, usage);
  return null;
}

process.exitCode = await main();
