// Reads every language's lexicon, how people there say yes, numbers and red flags, for the loader.
import { join } from 'node:path';
import type { LexiconEntries } from '../measurement/lexicon.ts';
import { lexiconSchema } from '../procedure/lexicon.ts';
import type { Problem } from './problem.ts';
import { readContentFile } from './read-content-file.ts';
import { namesIn, readText } from './read-folder.ts';

export type { LexiconEntries } from '../measurement/lexicon.ts';

export const lexiconFile = 'lexicon.yaml';

/** By language; a language without a lexicon is heard in English alone. */
export async function loadLexicons(
  folder: string,
): Promise<{ lexicons: Record<string, LexiconEntries>; problems: Problem[] }> {
  const problems: Problem[] = [];
  const lexicons: Record<string, LexiconEntries> = {};
  const words = join(folder, 'words');
  for (const language of await namesIn(words)) {
    const file = `content/words/${language}/${lexiconFile}`;
    if (!(await namesIn(join(words, language))).includes(lexiconFile)) continue;
    const { text } = await readText(join(words, language, lexiconFile));
    if (text === null) continue;
    const { read, problems: wrong } = readContentFile<LexiconEntries>(file, text, lexiconSchema);
    problems.push(...wrong);
    if (read) lexicons[language] = read.value;
  }
  return { lexicons, problems };
}
