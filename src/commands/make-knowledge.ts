// Makes of loaded content what decisions are made by: contents, wordings and lexicons, each prepared once; for every command that chats.
import type { Knowledge } from '../inbox/decide.ts';
import { wordsFor } from '../library/edition.ts';
import { type Library, openLibrary, type Shelf } from '../library/library.ts';
import type { Newest } from '../library/load-content.ts';
import { type Lexicon, prepareLexicon } from '../measurement/lexicon.ts';
import { prepareWording, type Wording } from '../words/wording.ts';

export async function makeKnowledge(
  newest: Newest,
  shelf: Shelf,
): Promise<{ library: Library; knowledge: Knowledge }> {
  const library = await openLibrary(newest, shelf);
  const { current } = library;
  const knowledge: Knowledge = {
    current: current.content,
    languages: Object.keys(current.words),
    contentAt: (hash) => library.at(hash)?.content,
    wordingFor: makeWordings(library),
    lexicons: makeLexicons(newest),
  };
  return { library, knowledge };
}

function makeWordings(library: Library): Knowledge['wordingFor'] {
  const made = new Map<string, Wording>();
  return (language, hash) => {
    const key = `${hash} ${language}`;
    const known = made.get(key);
    if (known) return known;
    const wording = prepareWording(language, wordsFor(library.at(hash) ?? library.current, library.current));
    made.set(key, wording);
    return wording;
  };
}

/** A language is made ready for the first who speaks it: all of them would hold up every start. */
function makeLexicons({ lexicons }: Newest): Knowledge['lexicons'] {
  const prepared = new Map<string, Lexicon>();
  const lists = new Map<string, readonly Lexicon[]>();
  const prepare = (language: string): Lexicon[] => {
    const one = lexicons[language];
    if (one === undefined) return [];
    const lexicon = prepared.get(language) ?? prepareLexicon(one);
    prepared.set(language, lexicon);
    return [lexicon];
  };
  return (language) => {
    const list = lists.get(language) ?? [...new Set([language, 'en'])].flatMap(prepare);
    lists.set(language, list);
    return list;
  };
}
