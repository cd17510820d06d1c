// Makes one arrived message one committed turn, for every adapter; also what falls due, and what a platform refused.
import type { Receive } from '../chat/adapter.ts';
import type { Arrival, Decide, OutboxRow, Store } from '../store/store.ts';
import { MissingEdition } from './decide.ts';

/** Brings content from where it is kept; undefined where it is not there either. */
export interface Shelf {
  bring(hash: string): Promise<unknown>;
}

/** Each resolves once the turn and all that follows from it is committed; a repeated message resolves at once. */
export interface Inbox {
  receive: Receive;
  /** A turn for a conversation whose instant has come. */
  takeDue: (key: string) => Promise<void>;
  /** A turn by which a conversation hears that a platform will not take its message; `partly`: another took it. */
  takeRefusal: (row: OutboxRow, why: string, partly: boolean) => Promise<void>;
}

export function makeInbox(store: Pick<Store, 'turn'>, decide: Decide, library?: Shelf): Inbox {
  /** Brings content that another process pinned a set-up to, where a turn finds it missing. */
  async function take(arrival: Arrival): Promise<void> {
    try {
      await store.turn(arrival, decide);
    } catch (error) {
      if (!(error instanceof MissingEdition) || !(await library?.bring(error.hash))) throw error;
      await store.turn(arrival, decide);
    }
  }
  return {
    receive: (message) => take({ kind: 'message', message }),
    takeDue: (key) => take({ kind: 'due', key }),
    takeRefusal: ({ key, row, message }, why, partly) =>
      take({ kind: 'refused', key, row, message, why, ...(partly ? { partly } : {}) }),
  };
}
