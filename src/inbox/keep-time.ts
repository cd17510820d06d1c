// Wakes conversations when their instant comes, by the real clock; for every command that chats.
import { setTimeout as delay } from 'node:timers/promises';
import type { Calendar } from '../store/store.ts';
import type { Inbox } from './receive.ts';

export interface Timekeeper {
  stop(): Promise<void>;
}

/** Another process, or another turn, may set an earlier instant meanwhile. */
const lookEveryMs = 1_000;

export function startTimekeeper(options: {
  calendar: Calendar;
  clock: () => number;
  takeDue: Inbox['takeDue'];
  report: (trouble: string) => void;
}): Timekeeper {
  const { calendar, clock, takeDue, report } = options;
  const stopping = new AbortController();

  async function run(): Promise<void> {
    while (!stopping.signal.aborted) {
      try {
        for (const key of await calendar.due(clock())) {
          if (stopping.signal.aborted) return;
          await takeDue(key);
        }
      } catch (error) {
        report(`what fell due could not be done: ${error instanceof Error ? error.message : error}`);
      }
      await delay(lookEveryMs, undefined, { signal: stopping.signal }).catch(() => {});
    }
  }

  const running = run();
  return {
    async stop() {
      stopping.abort();
      await running;
    },
  };
}
