// Loads and checks how the people of each language say yes, numbers and red flags, for the loader.
import { join } from 'node:path';
import type { z } from 'zod';
import { lexiconSchema } from '../procedure/lexicon.ts';
import { locate } from './check-across.ts';
import type { Problem } from './problem.ts';
import { readContentFile } from './read-content-file.ts';
import { languagesIn, readText } from './read-folder.ts';

export type LexiconEntries = z.infer<typeof lexiconSchema>;

export const lexiconFile = 'lexicon.yaml';

/** English is understood beside every language, so it alone cannot be left out. */
export async function loadLexicons(
  folder: string,
): Promise<{ lexicons: Record<string, LexiconEntries>; drafts: Set<string>; problems: Problem[] }> {
  const root = join(folder, 'words');
  const problems: Problem[] = [];
  const lexicons: Record<string, LexiconEntries> = {};
  /** Languages that are not whole yet: those that say so, and those with words alone. */
  const drafts = new Set<string>();
  for (const language of new Set(['en', ...(await languagesIn(root))])) {
    const file = join(root, language, lexiconFile);
    const { text, problem } = await readText(file);
    if (text === null) {
      const message = 'There is no lexicon: whoever writes in this language is understood in English alone.';
      problems.push(language === 'en' ? problem : { ...problem, level: 'warning', message });
      drafts.add(language);
      continue;
    }
    const { read, problems: wrong } = readContentFile<LexiconEntries>(file, text, lexiconSchema);
    problems.push(...wrong);
    if (read === null) continue;
    lexicons[language] = read.value;
    if (read.value.draft) drafts.add(language);
    const said = read.value.language;
    if (said === language) continue;
    const message = `This lexicon says that it is of "${said}", but it stands with "${language}".`;
    problems.push(...locate(read, [{ path: ['language'], message, mend: `Write "language: ${language}".` }]));
  }
  return { lexicons, drafts, problems };
}
