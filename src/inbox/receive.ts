// Makes one arrived message one committed turn, for every adapter; the outbox is told once it is committed.
import type { Receive } from '../chat/adapter.ts';
import type { Decide, Store } from '../store/store.ts';

/** Resolves once the message and all that follows from it is committed. A repeat resolves at once. */
export function makeReceive(store: Store, decide: Decide): Receive {
  return async (message) => {
    await store.turn({ kind: 'message', message }, decide);
  };
}
