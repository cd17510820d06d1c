// A clock that stands still until it is told to move, and then lets everything fall due on the way; for pipe mode.
import type { Calendar, Outbox } from '../store/store.ts';
import type { Inbox } from './receive.ts';

export interface FrozenClock {
  now(): number;
  /** Moves on by so much, once for each message id; what falls due happens in due order, the clock standing at each instant. */
  advance(ms: number, messageId: string): Promise<void>;
  /** Sets the clock, and completes a move that an earlier process was killed in. */
  resume(): Promise<void>;
}

/** More turns than this at one instant mean that a conversation asks to be woken in its own past. */
const mostAtOneInstant = 10_000;

export function makeFrozenClock(startAt: number, platform: string) {
  let instant = startAt;

  function attach(options: {
    calendar: Calendar;
    outbox: Outbox;
    takeDue: Inbox['takeDue'];
    settle: () => Promise<void>;
  }): FrozenClock {
    const { calendar, outbox, takeDue, settle } = options;

    async function moveTo(target: number): Promise<void> {
      let atThisInstant = 0;
      for (;;) {
        const next = earliest(await calendar.nextDue(), await outbox.nextDue());
        if (next === null || next > target) break;
        if (next > instant) {
          instant = next;
          atThisInstant = 0;
          await calendar.setInstant(instant);
        }
        atThisInstant += 1;
        if (atThisInstant > mostAtOneInstant)
          throw new Error(`the clock cannot get past ${new Date(instant).toISOString()}`);
        const [key] = await calendar.due(instant);
        if (key !== undefined) await takeDue(key);
        await settle();
      }
      instant = target;
      await calendar.setInstant(target);
    }

    async function completeMove(): Promise<void> {
      const target = await calendar.target();
      if (target !== null && target > instant) await moveTo(target);
    }

    return {
      now: () => instant,
      async advance(ms, messageId) {
        await calendar.setTarget(instant + ms, platform, messageId);
        await completeMove();
      },
      async resume() {
        instant = Math.max(instant, (await calendar.instant()) ?? instant);
        await calendar.setInstant(instant);
        await settle();
        await completeMove();
      },
    };
  }

  return { clock: () => instant, attach };
}

function earliest(a: number | null, b: number | null): number | null {
  return a === null || b === null ? (a ?? b) : Math.min(a, b);
}
