// Fetches what was said on Discord while nobody listened, before those chats are answered again.
import { type APIMessage, type REST, Routes } from 'discord.js';
import type { Lanes } from '../wire/lanes.ts';
import { backoff, pause } from '../wire/pause.ts';
import type { Log } from '../wire/surroundings.ts';
import { isNewer, type Seen } from './seen.ts';
import type { TakeEvent } from './take-event.ts';
import { readTrouble } from './trouble.ts';

export interface CatchUp {
  /** Puts the missed messages of every active chat in front of whatever comes live. */
  begin(): void;
  /** Resolves once the channel is caught up. */
  done(channel: string): Promise<void>;
}

const page = 100;
const mostPages = 10;
const tries = 5;

export function makeCatchUp(
  rest: REST,
  seen: Seen,
  lanes: Lanes,
  take: TakeEvent,
  log: Log,
  stopping: AbortSignal,
): CatchUp {
  const running = new Map<string, Promise<void>>();

  async function fetchMissed(channel: string, after: string): Promise<void> {
    let last = after;
    for (let round = 0; round < mostPages && !stopping.aborted; round += 1) {
      const query = new URLSearchParams({ after: last, limit: String(page) });
      const missed = (await rest.get(Routes.channelMessages(channel), { query })) as APIMessage[];
      const inOrder = missed
        .filter((message) => isNewer(message.id, last))
        .sort((one, other) => (isNewer(one.id, other.id) ? 1 : -1));
      for (const message of inOrder) await take.takeMessage(message);
      last = inOrder.at(-1)?.id ?? last;
      if (missed.length < page) return;
    }
  }

  async function catchUp(channel: string, after: string): Promise<void> {
    for (let attempt = 1; !stopping.aborted; attempt += 1) {
      try {
        return await fetchMissed(channel, after);
      } catch (error) {
        const trouble = readTrouble(error);
        if (trouble.kind === 'channel-gone' || trouble.kind === 'refused') return await seen.forget(channel);
        if (attempt >= tries && trouble.kind !== 'wait') {
          log.error({ channel, why: trouble.kind }, 'what was said in a chat meanwhile could not be fetched');
          return;
        }
        await pause(trouble.kind === 'wait' ? trouble.ms : backoff(attempt, 300, 5_000), stopping);
      }
    }
  }

  return {
    begin() {
      for (const [channel, { taken }] of seen.active()) {
        const done = lanes.run(channel, () => catchUp(channel, taken)).catch(() => {});
        running.set(channel, done);
        done.then(() => {
          if (running.get(channel) === done) running.delete(channel);
        });
      }
    },
    done: async (channel) => await running.get(channel),
  };
}
