// Puts store, inbox, outbox and the console together and lets them run until the input ends.
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { makePersonFace } from '../../adapters/console/person-face.ts';
import { makePipeFace } from '../../adapters/console/pipe-face.ts';
import { makeFrozenClock } from '../inbox/frozen-clock.ts';
import { startTimekeeper } from '../inbox/keep-time.ts';
import { makeInbox } from '../inbox/receive.ts';
import type { Library } from '../library/library.ts';
import { makeOutbox } from '../outbox/run-outbox.ts';
import type { Paint } from '../outbox/send-row.ts';
import { openStore } from '../store/open-store.ts';
import { type Decide, type Store, StoreTrouble } from '../store/store.ts';
import { contentFolder } from './content-folder.ts';
import { systemLocale } from './system-locale.ts';
import { passOnToTips, wakeTips } from './wake-tips.ts';

/** What a conversation is prepared from. */
export interface Surroundings {
  store: Store;
  /** The content folder. */
  content: string;
  /** Whether pictures are wanted at all. */
  pictures: boolean;
  report: (trouble: string) => void;
  now: () => number;
  /** False where one person may send as much as they like, as in pipe mode. */
  limited?: boolean;
  /** False where tips have no channel to go to. */
  hasChannel?: boolean;
}

export interface Prepared {
  library: Pick<Library, 'bring'>;
  decide: Decide;
  paint: Paint | null;
  /** Whether it decides for the tips too. */
  hasTips?: boolean;
  /** Drops what is older than the workshop keeps it, for a clock that was moved. */
  tidy?(): Promise<void>;
  stop(): Promise<void>;
}

const root = join(import.meta.dirname, '..', '..');

export async function runChat(
  args: string[],
  prepare: (surroundings: Surroundings) => Promise<Prepared>,
): Promise<number> {
  const wanted = readArguments(args);
  const frozen = wanted.now === null ? null : makeFrozenClock(wanted.now, 'console');
  const clock = frozen?.clock ?? Date.now;
  const report = (trouble: string) => process.stderr.write(`${trouble}\n`);
  const databaseUrl = process.env.DATABASE_URL || null;
  const store = await openStore({ folder: wanted.folder, databaseUrl, alone: true, clock });
  try {
    const { content, pictures } = wanted;
    const wishes = { content, pictures: pictures !== null, limited: false };
    const prepared = await prepare({ store, ...wishes, report, now: clock });
    const { decide, paint, library } = prepared;
    const { receive, takeDue, takeRefusal } = makeInbox(store, decide, library);
    const outbox = makeOutbox({
      store,
      clock,
      route: (to) => (to.kind !== 'owner' || to.platform === face.name ? [face] : []),
      paint,
      pacing: null,
      refused: takeRefusal,
      report,
      atOnce: 1,
    });
    const settle = () => outbox.drain();
    const alone = oneAtATime();
    const time = frozen?.attach({ calendar: store.calendar, outbox: store.outbox, takeDue, settle }) ?? null;
    const seat = { pictures, settle, alone, failed: (error: unknown) => failed(error, report) };
    const face = wanted.pipe
      ? makePipeFace({
          ...seat,
          input: process.stdin,
          output: process.stdout,
          advance: time && ((ms, id) => time.advance(ms, id).then(() => prepared.tidy?.())),
        })
      : makePersonFace({
          ...seat,
          input: process.stdin,
          output: process.stdout,
          colour: Boolean(process.stdout.isTTY) && !process.env.NO_COLOR,
          locale: systemLocale(process.env),
        });
    // What an earlier process left unsent goes out before anything new is taken.
    await (time === null ? settle() : time.resume());
    const waking = { calendar: store.calendar, clock, takeDue };
    // Not earlier: only now does the clock stand where an earlier process left it.
    if (prepared.hasTips) await wakeTips(waking).then(settle);
    const due = (key: string) => alone(() => takeDue(key).then(settle));
    const timekeeper =
      time === null ? startTimekeeper({ calendar: store.calendar, clock, takeDue: due, report }) : null;
    process.once('SIGTERM', () => face.stop()).once('SIGINT', () => face.stop());
    try {
      await face.start(prepared.hasTips ? passOnToTips(receive, waking) : receive);
      await face.ended;
    } finally {
      // Also where the face failed: what goes by the clock must not outlive the store.
      await timekeeper?.stop();
      await prepared.stop();
    }
    return 0;
  } finally {
    await store.close();
  }
}

function readArguments(args: string[]) {
  const { values } = parseArgs({
    args,
    options: {
      pipe: { type: 'boolean', default: false },
      data: { type: 'string', default: process.env.DATA_DIR || join(root, 'data') },
      content: { type: 'string' },
      now: { type: 'string' },
      pictures: { type: 'string' },
    },
  });
  const now = values.now === undefined ? null : Date.parse(values.now);
  if (Number.isNaN(now))
    throw new Error(`--now "${values.now}" is no instant, as 2026-01-05T09:00:00Z is one`);
  return {
    pipe: values.pipe,
    folder: values.data,
    content: contentFolder(values.content),
    now,
    pictures: values.pictures ?? null,
  };
}

/** Only the surroundings stop the chat; one message that cannot be taken does not. */
function failed(error: unknown, report: (trouble: string) => void): string {
  if (error instanceof StoreTrouble) throw error;
  report(error instanceof Error ? (error.stack ?? error.message) : String(error));
  return 'this could not be taken; the log says why';
}

function oneAtATime(): (work: () => Promise<void>) => Promise<void> {
  let last: Promise<void> = Promise.resolve();
  return (work) => {
    const mine = last.then(work);
    last = mine.catch(() => {});
    return mine;
  };
}
