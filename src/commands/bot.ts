// `npm run bot`: starts Telegram, Discord or both, as the environment says, and ends with a code that tells why.
import { parseArgs } from 'node:util';
import { openStore } from '../store/open-store.ts';
import { StoreTrouble } from '../store/store.ts';
import { contentFolder } from './content-folder.ts';
import { exitCodes } from './exit-codes.ts';
import { loadSettingsFile } from './load-settings-file.ts';
import { makeLog } from './make-log.ts';
import { makePlatformWords } from './platform-words.ts';
import { ContentTrouble, prepareConversation } from './prepare-conversation.ts';
import { readEnvironment, type Settings } from './read-environment.ts';
import { runBot } from './run-bot.ts';

const say = (sentence: string) => void process.stderr.write(`${sentence}\n`);

export async function bot(args: string[]): Promise<number> {
  const { values } = parseArgs({ args, options: { content: { type: 'string' } } });
  loadSettingsFile();
  const read = readEnvironment(process.env);
  if ('mistakes' in read) {
    for (const mistake of read.mistakes) say(mistake);
    return exitCodes.configuration;
  }
  const stopper = new AbortController();
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => stopper.abort());
  const code = await start(read.settings, contentFolder(values.content), stopper.signal);
  // A connection that lingers must not keep a stopped program alive.
  setTimeout(() => process.exit(code), 1_000).unref();
  return code;
}

async function start(settings: Settings, folder: string, stopping: AbortSignal): Promise<number> {
  const { telegram, discord, databaseUrl } = settings;
  const log = makeLog(
    settings.logLevel,
    [telegram, discord].flatMap((platform) => platform?.token ?? []),
  );
  try {
    const store = await openStore({ folder: settings.folder, databaseUrl, alone: false, clock: Date.now });
    try {
      const report = (trouble: string) => log.warn({}, trouble);
      const hasChannel = Boolean(telegram?.tipsChannel || discord?.tipsChannel);
      const surroundings = { store, content: folder, pictures: true, report, now: Date.now, hasChannel };
      const prepared = await prepareConversation(surroundings);
      const { words: files, content } = prepared.library.current;
      const words = makePlatformWords(files, content.workshop.language);
      const code = await runBot({ ...prepared, settings, store, words, log, stopping, say });
      await prepared.stop();
      return code;
    } finally {
      await store.close();
    }
  } catch (error) {
    const sentence = error instanceof Error ? error.message : String(error);
    if (error instanceof ContentTrouble) {
      say(sentence);
      return exitCodes.configuration;
    }
    log.error({}, sentence.split('\n', 1)[0] ?? '');
    say(sentence);
    return error instanceof StoreTrouble ? exitCodes.database : exitCodes.failed;
  }
}
