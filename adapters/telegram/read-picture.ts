// Fetches a picture that an owner sent on Telegram, for a desk that is on another platform.
import type { Api } from 'grammy';

const largest = 20 * 1024 * 1024;

/** Null where it cannot be had, or is too large for Telegram to hand out. */
export async function readPicture(
  api: Api,
  root: string,
  token: string,
  picture: string,
): Promise<Uint8Array | null> {
  try {
    const file = await api.getFile(picture.replace(/^document:/, ''));
    if (!file.file_path || (file.file_size ?? 0) > largest) return null;
    const answer = await fetch(`${root}/file/bot${token}/${file.file_path}`, {
      signal: AbortSignal.timeout(20_000),
    });
    if (!answer.ok || Number(answer.headers.get('content-length') ?? 0) > largest) return null;
    return new Uint8Array(await answer.arrayBuffer());
  } catch {
    return null;
  }
}
