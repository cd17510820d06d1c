// The shipped content with English alone, for tests that start the whole program again and again: it reads the less each time.
import { cpSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

/** Returns the folder of the copy, which is `content` in the one given. */
export function copyEnglishContent(folder: string): string {
  const copy = join(folder, 'content');
  cpSync(join(import.meta.dirname, '..', '..', 'content'), copy, { recursive: true });
  for (const language of readdirSync(join(copy, 'words'))) {
    if (language !== 'en') rmSync(join(copy, 'words', language), { recursive: true });
  }
  return copy;
}
