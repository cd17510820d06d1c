// How the whole suite runs, for `npm test` and for CI.
import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** What takes longest begins first, or the run would end with waiting for it: the storm keeps to the platforms' real rates. */
const longest = [/loopback\/storm/, /kill\/kill/, /adapters\/\w+\/faults/, /conversation\/guards/];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => {
      const at = longest.findIndex((name) => name.test(moduleId));
      return at < 0 ? longest.length : at;
    };
    return (await super.sort(files)).sort((one, other) => rank(one) - rank(other));
  }
}

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    pool: 'forks',
    // Files of one worker share what they import: half the work of most is to load it. None leaves anything behind.
    isolate: false,
    // Many wait for sockets, processes and platforms' rates: so there are more of them than cores.
    maxWorkers: Math.max(4, availableParallelism()),
    // In one file, where it says that its tests may run side by side.
    maxConcurrency: 20,
    globalSetup: 'test/store/shared-postgres.ts',
    setupFiles: ['test/property-seed.ts'],
    sequence: { sequencer: LongestFirst },
  },
});
