// Loads the content and makes of it what takes a turn, for every command that chats.
import { join } from 'node:path';
import { makeDecide } from '../inbox/decide.ts';
import { openLibrary } from '../library/library.ts';
import { loadContent } from '../library/load-content.ts';
import { formatProblem } from '../library/problem.ts';
import type { LexiconEntries } from '../measurement/lexicon.ts';
import { type Lexicon, prepareLexicon } from '../measurement/lexicon.ts';
import { startPainter } from '../picture/painter.ts';
import type { Prepared, Surroundings } from './run-chat.ts';

export async function prepareConversation(surroundings: Surroundings): Promise<Prepared> {
  const { store, content, pictures, report } = surroundings;
  const { newest, problems } = await loadContent(content);
  if (newest === null) {
    const errors = problems.filter(({ level }) => level === 'error');
    throw new Error(errors.map(formatProblem).join('\n'));
  }
  const library = await openLibrary(newest, store.snapshots);
  const painter = pictures ? startPainter({ words: join(content, 'words'), log: report }) : null;
  return {
    library,
    decide: makeDecide({ library, lexicons: makeLexicons(newest.lexicons) }),
    paint: painter && ((request) => painter.paint(request)),
    stop: async () => painter?.stop(),
  };
}

/** The person's own language first, English second; each prepared once. */
function makeLexicons(
  entries: Readonly<Record<string, LexiconEntries>>,
): (language: string) => readonly Lexicon[] {
  const prepared = new Map(Object.entries(entries).map(([language, one]) => [language, prepareLexicon(one)]));
  const lists = new Map<string, readonly Lexicon[]>();
  return (language) => {
    const list =
      lists.get(language) ?? [...new Set([language, 'en'])].flatMap((one) => prepared.get(one) ?? []);
    lists.set(language, list);
    return list;
  };
}
