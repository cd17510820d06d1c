// What a check found in one file, by its path within the file; for the loader, which knows the lines.
import type { Path } from './read-yaml.ts';

export interface Finding {
  /** Left out for an error. */
  level?: 'warning';
  path: Path;
  /** The name of the entry is at fault, not what stands in it. */
  atKey?: true;
  message: string;
  mend: string;
}

/** Says twice-given ids; `path` leads to the list, whose entries have an `id`. */
export function checkDuplicates(path: Path, entries: readonly { id: string }[], what: string): Finding[] {
  const seen = new Set<string>();
  return entries.flatMap(({ id }, index) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    const message = `There is another ${what} "${id}" above.`;
    return [{ path: [...path, index, 'id'], message, mend: 'Give this one an id of its own.' }];
  });
}
