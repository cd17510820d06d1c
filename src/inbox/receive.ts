// Makes one arrived message one committed turn, for every adapter; also what falls due, and what a platform refused.
import type { Receive } from '../chat/adapter.ts';
import type { Arrival, Decide, OutboxRow, Store } from '../store/store.ts';
import { MissingEdition } from './decide.ts';

/** Brings content from where it is kept; undefined where it is not there either. */
export interface Shelf {
  bring(hash: string): Promise<unknown>;
}

/** Takes turns; brings content that another process pinned a set-up to, where a turn finds it missing. */
type Take = (arrival: Arrival) => Promise<void>;

function makeTake(store: Pick<Store, 'turn'>, decide: Decide, library?: Shelf): Take {
  return async (arrival) => {
    try {
      await store.turn(arrival, decide);
    } catch (error) {
      if (!(error instanceof MissingEdition) || !(await library?.bring(error.hash))) throw error;
      await store.turn(arrival, decide);
    }
  };
}

/** Resolves once the message and all that follows from it is committed. A repeat resolves at once. */
export function makeReceive(store: Pick<Store, 'turn'>, decide: Decide, library?: Shelf): Receive {
  const take = makeTake(store, decide, library);
  return (message) => take({ kind: 'message', message });
}

/** A turn for a conversation whose instant has come. */
export type TakeDue = (key: string) => Promise<void>;

export function makeTakeDue(store: Pick<Store, 'turn'>, decide: Decide, library?: Shelf): TakeDue {
  const take = makeTake(store, decide, library);
  return (key) => take({ kind: 'due', key });
}

/** A turn by which a conversation hears that a platform will not take its message. */
export type TakeRefusal = (row: OutboxRow, why: string) => Promise<void>;

export function makeTakeRefusal(store: Pick<Store, 'turn'>, decide: Decide, library?: Shelf): TakeRefusal {
  const take = makeTake(store, decide, library);
  return ({ key, row, message }, why) => take({ kind: 'refused', key, row, message, why });
}
