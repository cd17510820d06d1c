// Says what of each language is still shown in English, for `check`: in few lines, so that a language that was begun does not bury the rest.
import { join } from 'node:path';
import type { Problem } from './problem.ts';
import type { FluentFile } from './read-fluent.ts';

type Files = ReadonlyMap<string, FluentFile>;

export interface LanguagesToCheck {
  /** Where the folders of languages are. */
  root: string;
  reference: Files;
  /** All but English, with no files where a folder has none. */
  languages: ReadonlyMap<string, Files>;
  drafts: ReadonlySet<string>;
}

const shownKeys = 8;

export function checkTranslated({ root, reference, languages, drafts }: LanguagesToCheck): Problem[] {
  const alike = new Map<string, string[]>();
  const problems: Problem[] = [];
  for (const [language, files] of languages) {
    const missing = [...reference.keys()].filter((name) => !files.has(name)).join(', ');
    if (missing !== '') alike.set(missing, [...(alike.get(missing) ?? []), language]);
    if (!drafts.has(language)) continue;
    for (const [name, { file }] of files) {
      const keys = keysLacking(reference.get(name), files);
      if (keys.length > 0) problems.push(warning(file, `A draft: ${inEnglish(keys)}.`, draftMend));
    }
  }
  for (const [names, lacking] of alike) {
    const mend = `Translate from ${join(root, 'en')}/, each to a file of the same name.`;
    const [only] = lacking;
    const where = lacking.length === 1 && only ? join(root, only) : root;
    const whose = lacking.length === 1 ? '' : ` (${lacking.join(', ')})`;
    problems.push(warning(where, `Not translated yet, so shown in English: ${names}${whose}.`, mend));
  }
  return problems;
}

const draftMend = 'Translate what is missing; once nothing is, take "draft: true" out of the lexicon.';

function keysLacking(english: FluentFile | undefined, files: Files): string[] {
  const own = new Set([...files.values()].flatMap(({ entries }) => entries.map(({ key }) => key)));
  const keys = (english?.entries ?? []).map(({ key }) => key);
  return keys.filter((key) => !key.startsWith('-') && !own.has(key));
}

function inEnglish(keys: readonly string[]): string {
  const rest = keys.length - shownKeys;
  const named = keys.slice(0, shownKeys).join(', ');
  return `${keys.length === 1 ? 'one text is' : `${keys.length} texts are`} shown in English: ${named}${rest > 0 ? ` and ${rest} more` : ''}`;
}

function warning(file: string, message: string, mend: string): Problem {
  return { level: 'warning', file, line: 0, column: 0, message, mend };
}
