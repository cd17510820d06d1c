// Puts a message's picture where the person at the console can open it, and says where that is.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Sendable } from '../../src/chat/adapter.ts';

/** Null where there is none to show, or no folder to keep pictures in. */
export async function keepPicture(folder: string | null, sendable: Sendable): Promise<string | null> {
  const { message, picture } = sendable;
  if (folder === null) return null;
  if (message.picture?.kind === 'relayed') return message.picture.picture;
  if (picture === null) return null;
  const name = `${message.id}${message.edit > 0 ? `.${message.edit}` : ''}`.replace(/[^\w.-]/g, '_');
  const file = join(folder, `${name}.png`);
  await mkdir(folder, { recursive: true });
  await writeFile(file, picture.png);
  return file;
}
