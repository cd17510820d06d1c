// Which tests are held against a mutant, and in which order: the quick ones first, since the first that fails ends it.

import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Long walks: they come last, and the longest not at all; so the score is a lower bound. */
const slow = [
  'conversation/guards',
  'diagnosis/garage-walk',
  'conversation/any-input',
  'conversation/pack-state',
];
const tooSlow = ['conversation/desk-mixing', 'conversation/start-list'];

const rank = (file: string) =>
  slow.findIndex((name) => file.includes(name)) + (/conversations?\//.test(file) ? 0.5 : 0);

class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files.toSorted((a, b) => rank(a.moduleId) - rank(b.moduleId));
  }
}

export default defineConfig({
  // Not in node_modules, which the copies that are mutated share with the sources.
  cacheDir: 'reports/vitest',
  test: {
    include: ['measurement', 'diagnosis', 'desk', 'conversation', 'conversations', 'garage'].map(
      (folder) => `test/${folder}/**/*.test.ts`,
    ),
    exclude: tooSlow.map((name) => `test/${name}.test.ts`),
    testTimeout: 60_000,
    sequence: { sequencer: QuickFirst },
  },
});
