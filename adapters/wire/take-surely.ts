// Hands a message to the inbox until it is committed, for every adapter; one that can never be taken does not hold up the others.
import type { Receive } from '../../src/chat/adapter.ts';
import type { IncomingMessage } from '../../src/chat/incoming-message.ts';
import { pause } from './pause.ts';
import type { Log } from './surroundings.ts';

const triesOfAPoisonedMessage = 4;
const longestWaitMs = 5_000;

/** False where it was given up: the fault lies in the message or in us, not in the surroundings. */
export async function takeSurely(
  receive: Receive,
  message: IncomingMessage,
  log: Log,
  stopping: AbortSignal,
): Promise<boolean> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      await receive(message);
      return true;
    } catch (error) {
      const fields = {
        platform: message.platform,
        messageId: message.messageId,
        attempt,
        trouble: nameOf(error),
      };
      if (!isOfTheSurroundings(error) && attempt >= triesOfAPoisonedMessage) {
        log.error(fields, 'a message could not be taken and was left out');
        return false;
      }
      log.warn(fields, 'a message could not be taken yet');
      await pause(Math.min(100 * 2 ** attempt, longestWaitMs), stopping);
      if (stopping.aborted) throw error;
    }
  }
}

/** A full disk or a database that is away passes; Node, SQLite and Postgres give such errors a code. */
function isOfTheSurroundings(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  return error.name === 'StoreTrouble' || 'code' in error;
}

/** Never the text of an error: it may quote what a person wrote. */
function nameOf(error: unknown): string {
  if (!(error instanceof Error)) return typeof error;
  const place = error.stack?.split('\n').find((line) => line.trimStart().startsWith('at ')) ?? '';
  return `${error.name} ${place.trim()}`.trim();
}
