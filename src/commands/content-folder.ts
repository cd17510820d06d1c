// Which folder of content a command takes: the one named on the command line, else by CONTENT_DIR, else the one that ships.
import { existsSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseEnv } from 'node:util';
import { settingsFile } from './load-settings-file.ts';

const shipped = join(import.meta.dirname, '..', '..', 'content');

/** The file of settings is asked for this one alone: a chat in the terminal must not land in the bot's database. */
export function contentFolder(
  named: string | undefined,
  environment: Record<string, string | undefined> = process.env,
  file = settingsFile,
): string {
  if (named !== undefined) return named;
  const set = environment.CONTENT_DIR?.trim();
  if (set) return set;
  const fromFile = existsSync(file) ? parseEnv(readFileSync(file, 'utf8')).CONTENT_DIR?.trim() : undefined;
  if (fromFile) return fromFile;
  // Short, as it is shown with each mistake, for whoever stands in the project's own folder.
  const near = relative(process.cwd(), shipped);
  return near.startsWith('..') ? shipped : near;
}
