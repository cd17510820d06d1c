// `npm run doctor`: looks whether everything that the bot needs is there, and says in a line each what to do where it is not.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { examineDiscord } from '../../adapters/discord/examine.ts';
import { examineTelegram } from '../../adapters/telegram/examine.ts';
import type { Finding } from '../../adapters/wire/finding.ts';
import { loadContent } from '../library/load-content.ts';
import { openStore } from '../store/open-store.ts';
import type { Store } from '../store/store.ts';
import { contentFolder } from './content-folder.ts';
import { exitCodes } from './exit-codes.ts';
import { loadSettingsFile } from './load-settings-file.ts';
import { readEnvironment, type Settings } from './read-environment.ts';

export async function doctor(
  args: string[],
  output: { write(text: string): unknown } = process.stdout,
): Promise<number> {
  const { values } = parseArgs({ args, options: { content: { type: 'string' } } });
  loadSettingsFile();
  const content = contentFolder(values.content);
  let wrong = 0;
  const tell = (findings: readonly Finding[]) => {
    for (const { right, what, mend } of findings) {
      if (right === false) wrong += 1;
      const mark = right === null ? 'note ' : right ? 'right' : 'WRONG';
      output.write(`${mark}  ${what}${right !== true && mend ? `. ${mend}` : ''}\n`);
    }
  };
  const read = readEnvironment(process.env);
  tell(await examineContent(content));
  tell([await examineFonts(content)]);
  if ('mistakes' in read) {
    tell(read.mistakes.map((mistake) => ({ right: false, what: `settings: ${mistake}` })));
    return exitCodes.configuration;
  }
  tell([{ right: true, what: 'settings: sound' }]);
  const { settings } = read;
  const { store, finding } = await examineDatabase(settings);
  tell([finding]);
  try {
    const { telegram, discord } = settings;
    const links = store?.links ?? null;
    if (telegram) tell(await examineTelegram(telegram, links));
    if (discord) tell(await examineDiscord(discord, links));
    if (store) tell([await examineDesk(store, settings)]);
  } finally {
    await store?.close();
  }
  return wrong === 0 ? 0 : exitCodes.configuration;
}

async function examineContent(folder: string): Promise<Finding[]> {
  const { newest, problems } = await loadContent(folder);
  if (newest) return [{ right: true, what: `content: sound (${folder})` }];
  const errors = problems.filter(({ level }) => level === 'error').length;
  return [{ right: false, what: `content: ${errors} mistakes`, mend: 'Run "npm run check": it says where.' }];
}

async function examineFonts(folder: string): Promise<Finding> {
  try {
    for (const font of ['DejaVuSans.ttf', 'DejaVuSans-Bold.ttf']) await readFile(join(folder, 'fonts', font));
    return { right: true, what: 'fonts: there' };
  } catch {
    const mend = 'Copy content/fonts from the project again; without it, pictures are left out.';
    return { right: false, what: 'fonts: missing', mend };
  }
}

async function examineDatabase({
  databaseUrl,
  folder,
}: Settings): Promise<{ store: Store | null; finding: Finding }> {
  const where = databaseUrl === null ? `in ${folder}` : 'on Postgres';
  try {
    const store = await openStore({ folder, databaseUrl, alone: false, clock: Date.now, waitMs: 0 });
    return { store, finding: { right: true, what: `database: opens (${where})` } };
  } catch (error) {
    const what = `database: ${error instanceof Error ? error.message : error}`;
    return { store: null, finding: { right: false, what } };
  }
}

async function examineDesk({ links }: Store, { deskCode }: Settings): Promise<Finding> {
  const claimed = (await links.get('telegram:desk')) ?? (await links.get('discord:desk'));
  if (claimed !== undefined) return { right: true, what: 'desk: claimed' };
  const mend =
    deskCode === null
      ? 'Set DESK_CODE, start the bot, and write "/desk CODE" in the workshop’s group or channel.'
      : 'Start the bot, and write "/desk" with the DESK_CODE in the workshop’s group or channel.';
  return { right: null, what: 'desk: not claimed yet', mend };
}
