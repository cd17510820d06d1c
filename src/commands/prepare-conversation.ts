// Loads the content and makes of it what takes a turn, for every command that chats.
import { join } from 'node:path';
import type { DeskState } from '../conversation/hear-desk.ts';
import { tellTime } from '../desk/opening-hours.ts';
import { type Knowledge, makeDecide } from '../inbox/decide.ts';
import { keepHouse } from '../inbox/keep-house.ts';
import type { Library } from '../library/library.ts';
import { loadContent } from '../library/load-content.ts';
import { formatProblem } from '../library/problem.ts';
import { startPainter } from '../picture/painter.ts';
import { makeDecideTips } from '../tips/decide-tips.ts';
import { makeKnowledge } from './make-knowledge.ts';
import type { Prepared, Surroundings } from './run-chat.ts';
import { tipsKey } from './wake-tips.ts';

/** Far more than a hand in a glove types. */
const mostPerMinute = 120;

/** The content does not load: each mistake on a line, with where it stands. */
export class ContentTrouble extends Error {
  override name = 'ContentTrouble';
}

export async function prepareConversation({
  store,
  content,
  pictures,
  report,
  now,
  limited = true,
  hasChannel = true,
}: Surroundings): Promise<Prepared & { library: Library }> {
  const { newest, problems } = await loadContent(content);
  if (newest === null) {
    const errors = problems.filter(({ level }) => level === 'error');
    throw new ContentTrouble(errors.map(formatProblem).join('\n'));
  }
  const { library, knowledge } = await makeKnowledge(newest, store.snapshots);
  const { keepDays } = knowledge.current.workshop;
  const house = await keepHouse({ store, keepDays, now, report });
  const painter = pictures ? startPainter({ words: join(content, 'words'), log: report }) : null;
  return {
    library,
    decide: makeDecide({
      ...knowledge,
      ...(limited ? { mostPerMinute } : {}),
      others: { [tipsKey]: decideTips(knowledge, hasChannel) },
    }),
    hasTips: true,
    paint: painter && ((request) => painter.paint(request)),
    tidy: house.tidy,
    async stop() {
      await house.stop();
      await painter?.stop();
    },
  };
}

function decideTips({ current, wordingFor }: Knowledge, hasChannel: boolean) {
  const { workshop, hash } = current;
  return makeDecideTips({
    content: current,
    wording: wordingFor(workshop.language, hash),
    hasChannel,
    tellTime: (at, now) => tellTime(workshop, at, now),
    requestsOf: (desk) => (desk as DeskState | null)?.tips ?? [],
  });
}
