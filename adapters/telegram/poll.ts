// Fetches updates from Telegram by long polling; one is confirmed only once it and all before it are dealt with.
import type { Api } from 'grammy';
import type { Update } from 'grammy/types';
import type { Lanes } from '../wire/lanes.ts';
import { backoff, pause } from '../wire/pause.ts';
import type { Surroundings } from '../wire/surroundings.ts';
import { readTrouble, tokenRefused } from './trouble.ts';

export const allowedUpdates = ['message', 'edited_message', 'callback_query', 'my_chat_member'] as const;

const pollSeconds = 25;
const conflictPatienceMs = 20_000;
/** A poll that succeeded does not yet mean that the other poller is gone: the two take turns. */
const peaceMs = 30_000;

interface Conflict {
  first: number;
  last: number;
  tries: number;
}

export interface Polling {
  api: Api;
  take: (update: Update) => Promise<void>;
  /** Called after each poll that succeeded. */
  sign: () => void;
  lanes: Lanes;
  around: Surroundings;
  stopping: AbortSignal;
}

/** Runs until `stopping`; then what was dealt with is confirmed. */
export async function poll({ api, take, sign, lanes, around, stopping }: Polling): Promise<void> {
  let offset: number | undefined;
  let failures = 0;
  let conflict = null as Conflict | null;
  while (!stopping.aborted) {
    try {
      const updates = await fetchUpdates(pollSeconds, 100);
      failures = 0;
      sign();
      if (conflict && Date.now() - conflict.last > peaceMs) conflict = null;
      await Promise.all(
        updates
          .sort((one, other) => one.update_id - other.update_id)
          .map((update) => lanes.run(laneOf(update), () => take(update))),
      );
      const last = updates.at(-1);
      if (last) offset = last.update_id + 1;
    } catch (error) {
      if (stopping.aborted) break;
      await recover(error);
    }
  }
  // Best effort: unconfirmed updates come again and are known as repeats.
  if (offset !== undefined) {
    await api
      .getUpdates({ offset, limit: 1, timeout: 0 }, AbortSignal.timeout(2_000) as never)
      .catch(() => {});
  }

  async function fetchUpdates(timeout: number, limit: number): Promise<Update[]> {
    const options = {
      timeout,
      limit,
      allowed_updates: allowedUpdates,
      ...(offset === undefined ? {} : { offset }),
    };
    return await api.getUpdates(options, stopping as never);
  }

  async function recover(error: unknown): Promise<void> {
    const trouble = readTrouble(error);
    switch (trouble.kind) {
      case 'revoked':
        around.onFatal('revoked-token', tokenRefused);
        return await untilStopped();
      case 'conflict':
        return await recoverConflict(trouble.webhook);
      case 'wait':
        around.log.warn({ waitMs: trouble.ms }, 'Telegram asks to wait before the next poll');
        return await pause(trouble.ms, stopping);
      default: {
        failures += 1;
        const why = 'why' in trouble ? trouble.why : trouble.kind;
        around.log.warn({ why, failures }, 'updates could not be fetched from Telegram');
        return await pause(backoff(failures, 500, 15_000), stopping);
      }
    }
  }

  async function recoverConflict(webhook: boolean): Promise<void> {
    if (webhook) await api.deleteWebhook().catch(() => {});
    const now = Date.now();
    conflict ??= { first: now, last: now, tries: 0 };
    conflict.last = now;
    conflict.tries += 1;
    const left = conflict.first + conflictPatienceMs - now;
    if (left <= 0) {
      around.onFatal(
        'second-poller',
        'Another program is fetching this Telegram bot’s updates: stop it first.',
      );
      return await untilStopped();
    }
    around.log.warn({ tries: conflict.tries }, 'another program is fetching this Telegram bot’s updates');
    await pause(Math.min(left, 1_000 * 2 ** Math.min(conflict.tries - 1, 2)), stopping);
  }

  async function untilStopped(): Promise<void> {
    while (!stopping.aborted) await pause(60_000, stopping);
  }
}

/** What belongs to one chat is taken in order. */
export function laneOf(update: Update): string {
  const chat =
    update.message?.chat ??
    update.edited_message?.chat ??
    update.callback_query?.message?.chat ??
    update.my_chat_member?.chat;
  return chat ? String(chat.id) : 'none';
}
