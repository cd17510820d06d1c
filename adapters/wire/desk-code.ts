// Checks the operator's one-time code by which a group or channel becomes the desk, for both platforms.
import { createHash, timingSafeEqual } from 'node:crypto';
import type { Links } from './surroundings.ts';

const digest = (text: string) => createHash('sha256').update(text).digest();

/** True once for each code and platform: what was used is kept as a hash. */
export async function useDeskCode(
  platform: string,
  typed: string,
  code: string | null,
  links: Links,
): Promise<boolean> {
  if (code === null || !timingSafeEqual(digest(typed.trim()), digest(code))) return false;
  const link = `${platform}:desk-code-used`;
  const used = digest(code).toString('hex');
  if ((await links.get(link)) === used) return false;
  await links.set(link, used);
  return true;
}

/** Whether the operator's code still waits for a group or channel. */
export async function isCodeUnused(platform: string, code: string | null, links: Links): Promise<boolean> {
  if (code === null) return false;
  return (await links.get(`${platform}:desk-code-used`)) !== digest(code).toString('hex');
}
