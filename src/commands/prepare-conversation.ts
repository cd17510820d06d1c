// Loads the content and makes of it what takes a turn, for every command that chats.
import { join } from 'node:path';
import { makeDecide } from '../inbox/decide.ts';
import { loadContent } from '../library/load-content.ts';
import { formatProblem } from '../library/problem.ts';
import { startPainter } from '../picture/painter.ts';
import { makeKnowledge } from './make-knowledge.ts';
import type { Prepared, Surroundings } from './run-chat.ts';

/** Far more than a hand in a glove types. */
const mostPerMinute = 40;

export async function prepareConversation({
  store,
  content,
  pictures,
  report,
  limited = true,
}: Surroundings): Promise<Prepared> {
  const { newest, problems } = await loadContent(content);
  if (newest === null) {
    const errors = problems.filter(({ level }) => level === 'error');
    throw new Error(errors.map(formatProblem).join('\n'));
  }
  const { library, knowledge } = await makeKnowledge(newest, store.snapshots);
  const painter = pictures ? startPainter({ words: join(content, 'words'), log: report }) : null;
  return {
    library,
    decide: makeDecide(limited ? { ...knowledge, mostPerMinute } : knowledge),
    paint: painter && ((request) => painter.paint(request)),
    stop: async () => painter?.stop(),
  };
}
