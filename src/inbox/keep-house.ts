// What has to be done whether or not anybody writes: the desk's day is begun, and what is older than the workshop keeps it goes; for every command that chats.
import { setTimeout as delay } from 'node:timers/promises';
import { deskKey, type Store } from '../store/store.ts';

export interface Housekeeping {
  /** Drops what is too old now; for a clock that is moved by hand, whose days are not ours. */
  tidy(): Promise<void>;
  stop(): Promise<void>;
}

const day = 24 * 3_600_000;

/** Resolves once the house is in order; then looks again once a day. */
export async function keepHouse(options: {
  store: Pick<Store, 'calendar' | 'forget'>;
  keepDays: number;
  now: () => number;
  report: (trouble: string) => void;
}): Promise<Housekeeping> {
  const { store, keepDays, now, report } = options;
  const stopping = new AbortController();
  const tidy = () => store.forget(now() - keepDays * day);

  async function goOn(): Promise<void> {
    while (!stopping.signal.aborted) {
      await delay(day, undefined, { signal: stopping.signal, ref: false }).catch(() => {});
      if (stopping.signal.aborted) return;
      await tidy().catch((error) => report(`what is too old could not be dropped: ${error}`));
    }
  }

  // A desk that waits for an instant already is left to it: woken again, its row would tell of the restart.
  const waiting = await store.calendar.due(Number.MAX_SAFE_INTEGER);
  if (!waiting.includes(deskKey)) await store.calendar.wake(deskKey, now());
  await tidy();
  const going = goOn();
  return {
    tidy,
    async stop() {
      stopping.abort();
      await going;
    },
  };
}
