// Makes one arrived message one committed turn, for every adapter; also what falls due, and what a platform refused.
import type { Receive } from '../chat/adapter.ts';
import type { Decide, OutboxRow, Store } from '../store/store.ts';

/** Resolves once the message and all that follows from it is committed. A repeat resolves at once. */
export function makeReceive(store: Pick<Store, 'turn'>, decide: Decide): Receive {
  return async (message) => {
    await store.turn({ kind: 'message', message }, decide);
  };
}

/** A turn for a conversation whose instant has come. */
export type TakeDue = (key: string) => Promise<void>;

export function makeTakeDue(store: Pick<Store, 'turn'>, decide: Decide): TakeDue {
  return async (key) => {
    await store.turn({ kind: 'due', key }, decide);
  };
}

/** A turn by which a conversation hears that a platform will not take its message. */
export type TakeRefusal = (row: OutboxRow, why: string) => Promise<void>;

export function makeTakeRefusal(store: Pick<Store, 'turn'>, decide: Decide): TakeRefusal {
  return async ({ key, row, message }, why) => {
    await store.turn({ kind: 'refused', key, row, message, why }, decide);
  };
}
