// Which tests are held against a mutant, and in which order: the first that fails ends it.

import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { onlyTests } from './only-tests.ts';

/** From the inside out: what a mutant of the innermost folder breaks, its own tests notice soonest. */
const folders = ['desk', 'measurement', 'diagnosis', 'conversations', 'garage', 'conversation'];

/** Left out, since each takes longer than all others together; so the score is a lower bound. */
const longWalks = ['any-input', 'desk-mixing', 'guards', 'pack-state', 'start-list'];

/** Long too, but they alone hold the program against many machines: they come last. */
const last = /garage-(walk|plays)/;

const rank = (file: string) =>
  last.test(file) ? folders.length : folders.findIndex((folder) => file.includes(`/test/${folder}/`));

const only = process.env[onlyTests];

class InnermostFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files.toSorted((a, b) => rank(a.moduleId) - rank(b.moduleId));
  }
}

export default defineConfig({
  // Not in node_modules, which the copies that are mutated share with the sources.
  cacheDir: 'reports/vitest',
  test: {
    include:
      only === undefined ? folders.map((folder) => `test/${folder}/**/*.test.ts`) : [`${only}/**/*.test.ts`],
    exclude: longWalks.map((name) => `test/conversation/${name}.test.ts`),
    testTimeout: 60_000,
    sequence: { sequencer: InnermostFirst },
  },
});
