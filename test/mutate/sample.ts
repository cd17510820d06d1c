// What Stryker is given of ours: its runner of the tests, but for mutants that are not drawn by a seed, and a report of each that lives.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import type { Stryker } from '@stryker-mutator/core';
import { strykerPlugins as shipped, strykerValidationSchema } from '@stryker-mutator/vitest-runner';

export { strykerValidationSchema };

/** What a mutant is known by: the same on each machine, and as long as the file above it stays as it is. */
interface Drawable {
  fileName: string;
  location: { start: Place; end: Place };
  mutatorName: string;
  replacement?: string | undefined;
}

interface Place {
  line: number;
  column: number;
}

export interface Share {
  /** 0 to 1. */
  share: number;
  seed: number;
}

export function isDrawn(mutant: Drawable, { share, seed }: Share): boolean {
  const { start, end } = mutant.location;
  const file = mutant.fileName.slice(mutant.fileName.lastIndexOf('src/'));
  const place = [start.line, start.column, end.line, end.column];
  const name = [seed, file, ...place, mutant.mutatorName, mutant.replacement].join('|');
  return createHash('sha256').update(name).digest().readUInt32BE() < share * 2 ** 32;
}

const vitest = shipped[0]!;
type Injector = NonNullable<Parameters<typeof vitest.factory>[0]>;

function sampling(injector: Injector) {
  const runner = vitest.factory(injector);
  const run = runner.mutantRun.bind(runner);
  const { sample } = injector.resolve('options') as unknown as { sample: Share };
  runner.mutantRun = async (options) =>
    isDrawn(options.activeMutant, sample)
      ? run(options)
      : // Stryker has no word for "not asked"; what could not be run is left out of the score.
        { status: 'error' as never, errorMessage: 'not drawn' };
  return runner;
}
sampling.inject = ['$injector'] as const;

export type Mutant = Awaited<ReturnType<Stryker['runMutationTest']>>[number];

/** What no test comes to is never handed to the runner, and is drawn here; a report counts from one. */
export function wasTried(mutant: Mutant, sample: Share): boolean {
  if (mutant.status !== 'NoCoverage') return ['Killed', 'Timeout', 'Survived'].includes(mutant.status);
  const fromZero = ({ line, column }: Place) => ({ line: line - 1, column: column - 1 });
  const { start, end } = mutant.location;
  return isDrawn({ ...mutant, location: { start: fromZero(start), end: fromZero(end) } }, sample);
}

/** `src/desk/case.ts:12: a < b → a <= b` */
function tell({ fileName, location: { start, end }, replacement, status }: Mutant): string {
  const lines = readFileSync(fileName, 'utf8')
    .split('\n')
    .slice(start.line - 1, end.line);
  const last = lines.length - 1;
  lines[last] = lines[last]?.slice(0, end.column - 1) ?? '';
  lines[0] = lines[0]?.slice(start.column - 1) ?? '';
  const short = (text: string) => text.replace(/\s+/g, ' ').slice(0, 120);
  const unseen = status === 'NoCoverage' ? ' (no test comes here)' : '';
  const place = `${relative(process.cwd(), fileName)}:${start.line}`;
  return `${place}: ${short(lines.join('\n'))} → ${short(replacement ?? '')}${unseen}`;
}

function reporting({ sample }: { sample: Share }) {
  let tried = 0;
  return {
    onMutantTested(mutant: Mutant) {
      if (!wasTried(mutant, sample)) return;
      tried += 1;
      if (['Survived', 'NoCoverage'].includes(mutant.status)) console.log(`after ${tried}, ${tell(mutant)}`);
    },
  };
}
reporting.inject = ['options'] as const;

/** Stryker would write \V for \v, which is no regular expression under the flag u, and no file would load. */
const unbreakable = {
  shouldIgnore: ({ node }: { node: { type: string; pattern?: string } }) =>
    node.type === 'RegExpLiteral' && /\\v/.test(node.pattern ?? '')
      ? 'its opposite is no regular expression'
      : undefined,
};

export const strykerPlugins = [
  { kind: 'Ignore', name: 'unbreakable', value: unbreakable },
  { kind: vitest.kind, name: 'sampling', factory: sampling },
  { kind: 'Reporter', name: 'survivors', factory: reporting },
];
