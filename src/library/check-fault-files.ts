// Runs the checks of the joined fault content and puts what they find back to its file and line, for the loader.
import { basename } from 'node:path';
import { checkFaults } from '../procedure/check-faults.ts';
import { type FaultContent, joinFaultFiles, priorSets, unknownCause } from '../procedure/fault.ts';
import { actions, measureIds } from '../procedure/vocabulary.ts';
import type { Place, Problem } from './problem.ts';
import type { ContentFile } from './read-content-file.ts';

export function checkFaultFiles(folder: string, files: readonly ContentFile<FaultContent>[]): Problem[] {
  const joined = joinFaultFiles(files.map(({ value }) => value));
  return checkFaults(joined, { measures: measureIds, actions }).map(({ fault, path, message, mend }) => {
    const whose = fault === '' ? `${message}${sharesOf(files, path)}` : `"${fault}": ${message}`;
    const said = `${whose.charAt(0).toUpperCase()}${whose.slice(1)}.`;
    return { level: 'error', ...find(folder, files, path), message: said, mend };
  });
}

/** Which file was changed cannot be told: so each is named with what it brings to the sum. */
function sharesOf(files: readonly ContentFile<FaultContent>[], path: string): string {
  const set = priorSets.find((one) => path === `faults.*.prior.${one}`);
  if (set === undefined || files.length < 2) return '';
  const shares = files.map(({ file, value }) => {
    const sum = [...value.faults, ...value.pairs].reduce((total, { prior }) => total + prior[set], 0);
    return { name: basename(file), sum: Number(sum.toFixed(6)) };
  });
  return `: ${shares.flatMap(({ name, sum }) => (sum > 0 ? `${name} ${sum}` : [])).join(', ')}`;
}

/** `path` walks the joined lists, by id or by index: `checks.look-at-leads.do.0`. */
function find(
  folder: string,
  files: readonly ContentFile<FaultContent>[],
  path: string,
): Place & { file: string } {
  const [list, said = '', ...rest] = path.split('.') as [keyof FaultContent, ...string[]];
  // What is about all faults is mended at the unknown cause, which takes up the rest.
  const name = said === '*' ? unknownCause : said;
  let before = 0;
  let found: (Place & { file: string }) | null = null;
  for (const file of files) {
    const entries = file.value[list];
    const index = entries.findIndex((entry, at) =>
      'id' in entry ? entry.id === name : String(before + at) === name,
    );
    // Where an id is taken twice, the later one is at fault.
    if (index >= 0) {
      const last = entries.findLastIndex((entry) => 'id' in entry && entry.id === name);
      found = { file: file.file, ...file.placeOf([list, Math.max(index, last), ...rest]) };
    }
    before += entries.length;
  }
  return (
    found ?? { file: files.find((file) => file.value[list].length > 0)?.file ?? folder, line: 1, column: 1 }
  );
}
