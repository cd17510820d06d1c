// Stryker's runner of the tests, but for mutants that are not drawn: where only a share is tried, a seed draws it.
import { createHash } from 'node:crypto';
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

export const strykerPlugins = [{ kind: vitest.kind, name: 'sampling', factory: sampling }];
