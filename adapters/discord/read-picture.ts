// Fetches a picture that somebody sent on Discord, to show it at the desk or to pass it on to another platform.
import { type APIMessage, type REST, Routes } from 'discord.js';

const largest = 10 * 1024 * 1024;

/** `picture` says where it stands: channel, message, attachment. Null where it cannot be had. */
export async function readPicture(rest: REST, picture: string): Promise<Uint8Array | null> {
  const [channel, message, attachment] = picture.split('/');
  if (!channel || !message || !attachment) return null;
  try {
    const seen = (await rest.get(Routes.channelMessage(channel, message))) as APIMessage;
    const found = seen.attachments.find(({ id }) => id === attachment);
    if (!found || found.size > largest) return null;
    const answer = await fetch(found.url, { signal: AbortSignal.timeout(20_000) });
    return answer.ok ? new Uint8Array(await answer.arrayBuffer()) : null;
  } catch {
    return null;
  }
}
