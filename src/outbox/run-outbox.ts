// Takes what is queued, oldest first in each chat, has it sent, and records what became of it; for every command that chats.
import { setTimeout as delay } from 'node:timers/promises';
import type { Mark, OutboxRow, Store } from '../store/store.ts';
import { makeSendRow, type SendOptions } from './send-row.ts';

export interface OutboxOptions extends Omit<SendOptions, 'sleep'> {
  store: Pick<Store, 'outbox'>;
  /** Takes the turn by which the conversation, and the desk, hear of a refusal; `partly`: another platform took it. */
  refused: (row: OutboxRow, why: string, partly: boolean) => Promise<void>;
  /** Something for the log. */
  report: (trouble: string, row: OutboxRow | null) => void;
  /** How many chats are sent to at once; 1 keeps the order of the queue as a whole. */
  atOnce: number;
}

export interface RunningOutbox {
  /** Sends all that is due, and returns once it is recorded. */
  drain(): Promise<void>;
  /** Goes on sending until `stop`. */
  start(): void;
  /** Waits for what is in hand; what was not sent yet stays queued. */
  stop(): Promise<void>;
}

/** How often the queue is looked at without being told: rows of a dead process come free by themselves. */
const lookEveryMs = 5_000;
const troubleWaitMs = 1_000;

export function makeOutbox(options: OutboxOptions): RunningOutbox {
  const { store, clock, refused, report, atOnce } = options;
  const stopping = new AbortController();
  const sendRow = makeSendRow({
    ...options,
    sleep: async (ms) => {
      await delay(ms, undefined, { signal: stopping.signal });
    },
  });
  const inHand = new Set<Promise<void>>();
  let wake: () => void = () => {};
  let running: Promise<void> | null = null;
  let failure: unknown = null;

  async function handle(row: OutboxRow): Promise<void> {
    try {
      const outcome = await sendRow(row);
      if (outcome.kind === 'refused') {
        await refused(row, outcome.why, false);
        report(`refused: ${outcome.why}`, row);
        return;
      }
      if (outcome.kind === 'sent') {
        for (const refusal of outcome.refusals) report(`refused: ${refusal}`, row);
        await record({ kind: 'sent', row: row.row, at: clock(), progress: outcome.progress });
        // What the desk misses on one platform it has on the other; a tip was meant for every channel.
        if (outcome.refusals.length > 0 && row.message.to.kind === 'tips') {
          await refused(row, outcome.refusals.join('; '), true);
        }
        return;
      }
      if (outcome.tried || outcome.why !== row.lastError) report(`to be tried again: ${outcome.why}`, row);
      const attempts = row.attempts + (outcome.tried ? 1 : 0);
      const { why: error, progress } = outcome;
      await record({
        kind: 'retry',
        row: row.row,
        dueAt: clock() + outcome.waitMs,
        attempts,
        error,
        progress,
      });
    } catch (error) {
      const { attempts, progress } = row;
      const stopped = stopping.signal.aborted;
      const why = error instanceof Error ? error.message : String(error);
      if (!stopped) report(why, row);
      const dueAt = clock() + (stopped ? 0 : troubleWaitMs);
      await record({
        kind: 'retry',
        row: row.row,
        dueAt,
        attempts,
        error: stopped ? row.lastError : why,
        progress,
      });
    }
  }

  /** A message that is out must not go out again because the record failed once: while running, it is tried until it holds. */
  async function record(mark: Mark): Promise<void> {
    for (;;) {
      try {
        await store.outbox.mark(mark);
        return;
      } catch (error) {
        report(`not recorded yet: ${error instanceof Error ? error.message : error}`, null);
        if (running === null || stopping.signal.aborted) throw error;
        await pause(troubleWaitMs);
      }
    }
  }

  async function take(): Promise<number> {
    const free = atOnce - inHand.size;
    const rows = free > 0 ? await store.outbox.claim(clock(), free) : [];
    for (const row of rows) {
      const handled: Promise<void> = handle(row)
        .catch((error) => {
          failure = error;
        })
        .finally(() => {
          inHand.delete(handled);
          wake();
        });
      inHand.add(handled);
    }
    return rows.length;
  }

  async function run(): Promise<void> {
    while (!stopping.signal.aborted) {
      const woken = new Promise<void>((resolve) => {
        wake = resolve;
      });
      try {
        if ((await take()) > 0) continue;
        const next = inHand.size < atOnce ? await store.outbox.nextDue() : null;
        const waitMs = Math.min(lookEveryMs, Math.max(1, (next ?? Number.POSITIVE_INFINITY) - clock()));
        await Promise.race([woken, pause(waitMs)]);
      } catch (error) {
        report(error instanceof Error ? error.message : String(error), null);
        await pause(troubleWaitMs);
      }
    }
  }

  function pause(ms: number): Promise<void> {
    return delay(ms, undefined, { signal: stopping.signal }).catch(() => {});
  }

  return {
    async drain() {
      while ((await take()) > 0 || inHand.size > 0) await Promise.all(inHand);
      if (failure !== null) throw failure;
    },
    start() {
      const hush = store.outbox.onQueued(() => wake());
      running = run().finally(hush);
    },
    async stop() {
      stopping.abort();
      wake();
      await running;
      await Promise.all(inHand);
    },
  };
}
