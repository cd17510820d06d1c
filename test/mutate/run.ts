// `npm run mutate -- src/desk`: breaks the code in many small ways and tells which of them no test notices.
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { parseArgs } from 'node:util';
import { Stryker } from '@stryker-mutator/core';
import { isDrawn, type Share } from './sample.ts';

const usage = 'npm run mutate -- FOLDER|FILE… [--share 0.1] [--seed 1]';

type Mutant = Awaited<ReturnType<Stryker['runMutationTest']>>[number];

const killed = ['Killed', 'Timeout'];
const survived = ['Survived', 'NoCoverage'];

/** What no test comes to is never handed to the runner, and is drawn here; a report counts from one. */
function wasTried(mutant: Mutant, sample: Share): boolean {
  if (mutant.status !== 'NoCoverage') return [...killed, ...survived].includes(mutant.status);
  const fromZero = ({ line, column }: { line: number; column: number }) => ({
    line: line - 1,
    column: column - 1,
  });
  const { start, end } = mutant.location;
  return isDrawn({ ...mutant, location: { start: fromZero(start), end: fromZero(end) } }, sample);
}

/** `src/desk/case.ts:12: a < b → a <= b` */
function tell(mutant: Mutant): string {
  const { start, end } = mutant.location;
  const lines = readFileSync(mutant.fileName, 'utf8')
    .split('\n')
    .slice(start.line - 1, end.line);
  const last = lines.length - 1;
  lines[last] = lines[last]?.slice(0, end.column - 1) ?? '';
  lines[0] = lines[0]?.slice(start.column - 1) ?? '';
  const short = (text: string) => text.replace(/\s+/g, ' ').slice(0, 120);
  const place = `${relative(process.cwd(), mutant.fileName)}:${start.line}`;
  const unseen = mutant.status === 'NoCoverage' ? ' (no test comes here)' : '';
  return `${place}: ${short(lines.join('\n'))} → ${short(mutant.replacement ?? '')}${unseen}`;
}

function score(name: string, mutants: readonly Mutant[]): string {
  const of = (...statuses: string[]) => mutants.filter(({ status }) => statuses.includes(status)).length;
  const tried = of(...killed, ...survived);
  const percent = tried === 0 ? '-' : ((100 * of(...killed)) / tried).toFixed(1);
  const parts = [of('Killed'), of('Timeout'), of('Survived'), of('NoCoverage')];
  return `${name.padEnd(40)} ${percent.padStart(6)} % of ${String(tried).padStart(4)}: ${parts.join(' / ')}`;
}

async function main(): Promise<number> {
  const { values, positionals } = parseArgs({
    options: { share: { type: 'string', default: '1' }, seed: { type: 'string', default: '1' } },
    allowPositionals: true,
  });
  const sample = { share: Number(values.share), seed: Number(values.seed) };
  if (
    positionals.length === 0 ||
    !(sample.share > 0 && sample.share <= 1) ||
    !Number.isInteger(sample.seed)
  ) {
    console.error(usage);
    return 2;
  }
  const stryker = new Stryker({
    mutate: positionals.map((path) => (path.endsWith('.ts') ? path : `${path.replace(/\/$/, '')}/**/*.ts`)),
    testRunner: 'sampling',
    vitest: { configFile: 'test/mutate/vitest.config.ts', related: true },
    plugins: ['./test/mutate/sample.ts'],
    sample,
    coverageAnalysis: 'perTest',
    concurrency: 1,
    reporters: ['progress-append-only'],
    // Node strips types by itself; and TypeScript 7 has no longer what Stryker would rewrite this with.
    tsconfigFile: 'none',
    disableTypeChecks: false,
    warnings: false,
  });
  const tried = (await stryker.runMutationTest()).filter((mutant) => wasTried(mutant, sample));
  const files = Map.groupBy(tried, (mutant) => relative(process.cwd(), mutant.fileName));
  for (const mutant of tried) if (survived.includes(mutant.status)) console.log(tell(mutant));
  console.log('\nkilled / out of time / survived / no test comes here');
  for (const [file, mutants] of files) console.log(score(file, mutants));
  console.log(score('all', tried));
  return 0;
}

process.exitCode = await main();
