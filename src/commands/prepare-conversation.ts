// Loads the content and makes of it what takes a turn, for every command that chats.

import { openLibrary } from '../library/library.ts';
import { loadContent } from '../library/load-content.ts';
import { formatProblem } from '../library/problem.ts';
import { startPainter } from '../picture/painter.ts';
import type { Prepared, Surroundings } from './run-chat.ts';

export async function prepareConversation({
  store,
  content,
  pictures,
  report,
}: Surroundings): Promise<Prepared> {
  const { newest, problems } = await loadContent(content);
  if (newest === null) {
    throw new Error(
      problems
        .filter(({ level }) => level === 'error')
        .map(formatProblem)
        .join('\n'),
    );
  }
  await openLibrary(newest, store.snapshots);
  if (pictures) startPainter({ words: `${content}/words`, log: report });
  throw new Error('the conversation is not part of the program yet');
}
