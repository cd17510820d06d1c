// Reads from a failed call to Discord what is the matter, for sending and for taking in.
import { RESTJSONErrorCodes as Code, DiscordAPIError, HTTPError, RateLimitError } from 'discord.js';

export type Trouble =
  | { kind: 'wait'; ms: number; everywhere: boolean }
  | { kind: 'revoked' }
  /** The person takes no direct messages, or shares no server with us. */
  | { kind: 'closed-to-us' }
  | { kind: 'channel-gone' }
  | { kind: 'message-gone' }
  | { kind: 'archived' }
  | { kind: 'refused'; why: string }
  | { kind: 'passing'; why: string };

export const tokenRefused = 'Discord does not take the token: DISCORD_TOKEN is wrong or was reset.';

const noMutualServer = 50278;
const threadLocked = 160005;

const meanings: Record<number, Trouble['kind']> = {
  [Code.CannotSendMessagesToThisUser]: 'closed-to-us',
  [noMutualServer]: 'closed-to-us',
  [Code.UnknownChannel]: 'channel-gone',
  [threadLocked]: 'channel-gone',
  [Code.UnknownMessage]: 'message-gone',
  [Code.InvalidActionOnArchivedThread]: 'archived',
};

export function readTrouble(error: unknown): Trouble {
  if (error instanceof RateLimitError) {
    return { kind: 'wait', ms: Math.max(error.retryAfter, error.timeToReset), everywhere: error.global };
  }
  if (error instanceof DiscordAPIError) {
    if (error.status === 401) return { kind: 'revoked' };
    const meaning = meanings[Number(error.code)];
    if (meaning !== undefined) return { kind: meaning } as Trouble;
    return {
      kind: 'refused',
      why: `${error.code}: ${error.rawError && 'message' in error.rawError ? error.rawError.message : error.status}`,
    };
  }
  if (error instanceof HTTPError) return { kind: 'passing', why: `${error.status}` };
  const { code, name } = (error ?? {}) as { code?: unknown; name?: unknown };
  return { kind: 'passing', why: `no answer (${String(code ?? name ?? 'unknown')})` };
}
