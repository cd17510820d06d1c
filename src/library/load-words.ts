// Loads and checks the words of every language, for the loader.
import { join } from 'node:path';
import type { ContentFiles, locate } from './check-across.ts';
import { checkTranslated } from './check-translated.ts';
import { checkWords, type Need } from './check-words.ts';
import type { WordFiles } from './edition.ts';
import { lexiconFile } from './load-lexicons.ts';
import type { Problem } from './problem.ts';
import { type FluentFile, readFluent } from './read-fluent.ts';
import { languagesIn, readFolder } from './read-folder.ts';
import { findSpoken, type Source } from './spoken-keys.ts';
import {
  type ContentNeed,
  wordsAlwaysNeeded,
  wordsOfFaultFile,
  wordsOfMachine,
  wordsOfProcedure,
  wordsOfTip,
} from './words-needed.ts';

/** The painter's own words: drawn, not said, so they are kept and checked apart. */
const pictures = 'pictures.ftl';

/** `files` is null where content did not load: what it needs is then not known, nor is what nothing needs unless it is `sound`. */
export async function loadWords(
  folder: string,
  files: ContentFiles | null,
  sound: boolean,
  sources: readonly Source[],
  drafts: ReadonlySet<string>,
): Promise<{ texts: WordFiles; problems: Problem[] }> {
  const root = join(folder, 'words');
  const problems: Problem[] = [];
  const texts: Record<string, Record<string, string>> = {};
  const said = new Map<string, Map<string, FluentFile>>();
  const drawn = new Map<string, Map<string, FluentFile>>();
  const all = new Map<string, Map<string, FluentFile>>();
  for (const language of await languagesIn(root)) {
    all.set(language, new Map());
    const { files: read, problems: unread } = await readFolder(join(root, language), '.ftl', [lexiconFile]);
    problems.push(...unread);
    for (const { file, name, text } of read) {
      const { fluent, problems: wrong } = readFluent(file, text);
      problems.push(...wrong);
      all.get(language)?.set(name, fluent);
      const into = name === pictures ? drawn : said;
      into.set(language, (into.get(language) ?? new Map()).set(name, fluent));
      if (name !== pictures) texts[language] = { ...texts[language], [name]: text };
    }
  }
  const byPainter = ({ file }: Source) => file.startsWith('src/picture/');
  const program = findSpoken(sources.filter((source) => !byPainter(source)));
  const painter = findSpoken(sources.filter(byPainter));
  problems.push(
    ...checkWords({
      folder: root,
      languages: said,
      drafts,
      needs: [...program.needs, ...(files ? needsOf(files, root) : [])],
      spoken: (key) => !sound || program.says(key),
    }),
  );
  if (drawn.size > 0) {
    problems.push(
      ...checkWords({ folder: root, languages: drawn, drafts, needs: painter.needs, spoken: painter.says }),
    );
  }
  const { en: reference = new Map(), ...others } = Object.fromEntries(all);
  const languages = new Map(Object.entries(others));
  problems.push(...checkTranslated({ root, reference, languages, drafts }));
  return { texts, problems };
}

function needsOf({ machines, procedures, faults, tips }: ContentFiles, root: string): Need[] {
  const questions = faults.flatMap((file) => file.value.questions);
  const english = { file: join(root, 'en'), line: 1, column: 1 };
  return [
    ...procedures.flatMap((file) => placed(file, wordsOfProcedure(file.value))),
    ...machines.flatMap((file) => placed(file, wordsOfMachine(file.value))),
    ...faults.flatMap((file) => placed(file, wordsOfFaultFile(file.value, questions))),
    ...tips.flatMap((file) => placed(file, wordsOfTip(file.value))),
    ...wordsAlwaysNeeded.map((key) => ({ ...english, key, who: 'a red flag or a call for a person' })),
  ];
}

function placed(file: Parameters<typeof locate>[0], needs: readonly ContentNeed[]): Need[] {
  return needs.map(({ key, path, who, given }) => {
    return { key, file: file.file, ...file.placeOf(path), who, ...(given ? { given } : {}) };
  });
}
