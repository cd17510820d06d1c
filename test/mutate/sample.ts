// Which mutants are tried when only a share is: drawn by a seed, so that the same ones are tried again; a plug-in for Stryker.
import { createHash } from 'node:crypto';

/** What is needed of a mutant to draw it: the same on each machine, and as long as the file stays as it is. */
interface Drawable {
  fileName: string;
  location: { start: { line: number; column: number }; end: { line: number; column: number } };
  mutatorName: string;
  replacement?: string | undefined;
}

/** @param share of all mutants, 0 to 1 */
function isDrawn(mutant: Drawable, share: number, seed: number): boolean {
  const { start, end } = mutant.location;
  const file = mutant.fileName.slice(mutant.fileName.lastIndexOf('src/'));
  const name = [seed, file, start.line, start.column, end.line, end.column, mutant.mutatorName];
  const lot = createHash('sha256')
    .update([...name, mutant.replacement].join('|'))
    .digest()
    .readUInt32BE();
  return lot < share * 2 ** 32;
}

interface Options {
  sample: { share: number; seed: number };
}

const createDrawing = ({ sample }: Options) => ({
  init: () => Promise.resolve(),
  group: (mutants: readonly { id: string }[]) => Promise.resolve([mutants.map((mutant) => mutant.id)]),
  // Stryker has no word for "not asked"; what does not compile is left out of its score, and so are these.
  check: (mutants: readonly (Drawable & { id: string })[]) =>
    Promise.resolve(
      Object.fromEntries(
        mutants.map((mutant) => [
          mutant.id,
          isDrawn(mutant, sample.share, sample.seed)
            ? { status: 'passed' }
            : { status: 'compileError', reason: 'not drawn' },
        ]),
      ),
    ),
});

export const strykerPlugins = [
  {
    kind: 'Checker',
    name: 'sample',
    factory: Object.assign(createDrawing, { inject: ['options'] as const }),
  },
];
