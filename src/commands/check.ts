// `npm run check`: reads a content folder, and says in a sentence each what is wrong, where, and what would be right.
import type { Writable } from 'node:stream';
import { parseArgs } from 'node:util';
import { loadContent } from '../library/load-content.ts';
import { formatProblem } from '../library/problem.ts';
import { contentFolder } from './content-folder.ts';

export async function check(args: string[], output: Writable): Promise<number> {
  const { values } = parseArgs({ args, options: { content: { type: 'string' } } });
  const { newest, problems } = await loadContent(contentFolder(values.content));
  for (const problem of problems) output.write(`${formatProblem(problem)}\n`);
  if (newest === null) {
    const errors = problems.filter((problem) => problem.level === 'error').length;
    // A single line needs no sum.
    if (problems.length === 1) return 1;
    output.write(
      `${errors === 1 ? 'One thing has' : `${errors} things have`} to be put right before the program starts on this content.\n`,
    );
    return 1;
  }
  const { machines, procedures, faults } = newest.edition.content;
  const counts = [
    count(Object.keys(machines).length, 'machine'),
    count(Object.keys(procedures).length, 'procedure'),
    count(faults.faults.length, 'fault'),
    count(Object.keys(newest.edition.words).length, 'language'),
  ];
  output.write(`The content is sound: ${counts.join(', ')}.\n`);
  return 0;
}

const count = (number: number, what: string) => `${number} ${what}${number === 1 ? '' : 's'}`;
