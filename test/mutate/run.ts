// `npm run mutate -- src/desk`: breaks the code in many small ways and tells which of them no test notices.
import { relative } from 'node:path';
import { Stryker } from '@stryker-mutator/core';
import { readOptions } from '../read-options.ts';
import { onlyTests } from './only-tests.ts';
import { type Mutant, wasTried } from './sample.ts';

const usage = 'npm run mutate -- FOLDER|FILE… [--share 0.1] [--seed 1] [--tests test/desk]';

function score(name: string, mutants: readonly Mutant[]): string {
  const of = (...statuses: string[]) => mutants.filter(({ status }) => statuses.includes(status)).length;
  const tried = mutants.length;
  const percent = tried === 0 ? '-' : ((100 * of('Killed', 'Timeout')) / tried).toFixed(1);
  const parts = [of('Killed'), of('Timeout'), of('Survived'), of('NoCoverage')];
  return `${name.padEnd(40)} ${percent.padStart(6)} % of ${String(tried).padStart(4)}: ${parts.join(' / ')}`;
}

async function main(): Promise<number> {
  const options = {
    share: { type: 'string', default: '1' },
    seed: { type: 'string', default: '1' },
    tests: { type: 'string' },
  } as const;
  const { values, positionals } = readOptions({ options, allowPositionals: true }, usage);
  const sample = { share: Number(values.share), seed: Number(values.seed) };
  if (
    positionals.length === 0 ||
    !(sample.share > 0 && sample.share <= 1) ||
    !Number.isInteger(sample.seed)
  ) {
    console.error(usage);
    return 2;
  }
  // Stryker starts the tests in a process of its own.
  if (values.tests !== undefined) process.env[onlyTests] = values.tests;
  const stryker = new Stryker({
    mutate: positionals.map((path) => (path.endsWith('.ts') ? path : `${path.replace(/\/$/, '')}/**/*.ts`)),
    testRunner: 'sampling',
    vitest: { configFile: 'test/mutate/vitest.config.ts', related: true },
    plugins: ['./test/mutate/sample.ts'],
    sample,
    coverageAnalysis: 'perTest',
    concurrency: 1,
    reporters: ['survivors'],
    ignorers: ['unbreakable'],
    // Node strips types by itself; and TypeScript 7 has no longer what Stryker would rewrite this with.
    tsconfigFile: 'none',
    disableTypeChecks: false,
    warnings: false,
  });
  const tried = (await stryker.runMutationTest()).filter((mutant) => wasTried(mutant, sample));
  const files = Map.groupBy(tried, (mutant) => relative(process.cwd(), mutant.fileName));
  console.log('\nkilled / out of time / survived / no test comes here');
  for (const [file, mutants] of files) console.log(score(file, mutants));
  console.log(score('all', tried));
  return 0;
}

process.exitCode = await main();
