// Starts the bot in this process on loopback platforms, with the echo in place of the conversation; for tests of the adapters.
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Log } from '../../adapters/wire/surroundings.ts';
import { makePlatformWords } from '../../src/commands/platform-words.ts';
import type { Settings } from '../../src/commands/read-environment.ts';
import { runBot } from '../../src/commands/run-bot.ts';
import { openStore } from '../../src/store/open-store.ts';
import type { Decide } from '../../src/store/store.ts';
import { echo } from './echo.ts';

export interface RunningBot {
  /** The exit code, once it has ended. */
  ended: Promise<number>;
  said: string[];
  log: string[];
  /** Stops it as a signal would; the folder stays. */
  stop(): Promise<number>;
}

export const makeFolder = () => mkdtemp(join(tmpdir(), 'gaugehand-bot-'));

export const removeFolder = (folder: string) => rm(folder, { recursive: true, force: true });

/** One folder for the bots that a test starts in it, one after the other. */
export async function makeHome() {
  const folder = await makeFolder();
  const bots: RunningBot[] = [];
  return {
    async start(settings: Partial<Settings>, decide?: Decide): Promise<RunningBot> {
      const bot = await startBot(folder, settings, decide);
      bots.push(bot);
      return bot;
    },
    logged: () => bots.flatMap(({ log }) => log).join('\n'),
    async leave(): Promise<void> {
      for (const bot of bots) await bot.stop();
      await removeFolder(folder);
    },
  };
}

async function startBot(
  folder: string,
  settings: Partial<Settings>,
  decide: Decide = echo,
): Promise<RunningBot> {
  const store = await openStore({ folder, databaseUrl: null, alone: true, clock: Date.now });
  const stopper = new AbortController();
  const said: string[] = [];
  const log: string[] = [];
  const ended = runBot({
    settings: {
      telegram: null,
      discord: null,
      databaseUrl: null,
      folder,
      deskCode: 'open-sesame-9',
      healthPort: null,
      logLevel: 'info',
      ...settings,
    },
    store,
    decide,
    paint: null,
    words: makePlatformWords(await readWords(), 'en'),
    log: keepLog(log),
    stopping: stopper.signal,
    say: (sentence) => said.push(sentence),
  }).finally(() => store.close());
  return {
    ended,
    said,
    log,
    stop() {
      stopper.abort();
      return ended;
    },
  };
}

function keepLog(lines: string[]): Log {
  const keep = (level: string) => (fields: Record<string, unknown>, what: string) => {
    lines.push(JSON.stringify({ level, ...fields, msg: what }));
  };
  return { info: keep('info'), warn: keep('warn'), error: keep('error') };
}

async function readWords(): Promise<Record<string, Record<string, string>>> {
  const folder = join(import.meta.dirname, '../../content/words');
  const languages = await readdir(folder);
  const files = await Promise.all(
    languages.map(async (language) => {
      const text = await readFile(join(folder, language, 'platforms.ftl'), 'utf8');
      return [language, { 'platforms.ftl': text }] as const;
    }),
  );
  return Object.fromEntries(files);
}
