// The outbox in the embedded database: what is next comes from memory, what became of it is written.
import type { DatabaseSync } from 'node:sqlite';
import { type OutboxColumns, toOutboxRow } from '../rows.ts';
import type { Mark, Outbox } from '../store.ts';
import type { GroupCommit } from './group-commit.ts';
import type { TakenTurn } from './take-turn.ts';
import { makeWaitingRows } from './waiting-rows.ts';

export interface Queue {
  outbox: Outbox;
  /** To be told of each turn once it is committed, in the order of the commits. */
  turned(turn: TakenTurn, refused: number | null): void;
}

export function makeQueue(db: DatabaseSync, group: GroupCommit, sweep: () => void): Queue {
  const sent = db.prepare(
    `UPDATE outbox SET state = 'sent', done_at = ?, progress = ?, attempts = attempts + 1
     WHERE row = ? AND state = 'waiting' AND gone_once_sent = 0`,
  );
  const goneOnceSent = db.prepare('DELETE FROM outbox WHERE row = ? AND gone_once_sent = 1');
  const retry = db.prepare(
    `UPDATE outbox SET due_at = ?, last_error = ?, progress = ?, attempts = ?
     WHERE row = ? AND state = 'waiting'`,
  );
  const partsOf = db.prepare(
    'SELECT progress FROM outbox WHERE id = ? AND progress IS NOT NULL ORDER BY edit',
  );
  const waiting = makeWaitingRows();
  const listeners = new Set<() => void>();

  // Any row that an earlier process left may have been in its hand when it died.
  const left = db
    .prepare(
      `SELECT o.row, o.destination, o.message, o.attempts, o.last_error, o.progress, o.due_at, v.key
       FROM outbox o LEFT JOIN conversations v ON v.number = o.conversation
       WHERE o.state = 'waiting' ORDER BY o.row`,
    )
    .all() as unknown as (OutboxColumns & { due_at: number })[];
  waiting.add(left.map((row) => ({ ...toOutboxRow(row, true), dueAt: row.due_at })));

  function tell(): void {
    for (const listener of listeners) listener();
  }

  /** True where the row itself was removed. */
  function write(mark: Mark): boolean {
    const progress = JSON.stringify(mark.progress);
    if (mark.kind === 'retry') {
      retry.run(mark.dueAt, mark.error, progress, mark.attempts, mark.row);
      return false;
    }
    if (sent.run(mark.at, progress, mark.row).changes > 0) return false;
    return goneOnceSent.run(mark.row).changes > 0;
  }

  const outbox: Outbox = {
    claim: async (now, limit) => waiting.take(now, limit).map(({ dueAt, ...row }) => row),
    async mark(mark) {
      const removed = await group.write(() => write(mark));
      if (mark.kind === 'sent') {
        waiting.drop(mark.row);
      } else {
        const { dueAt, attempts, error: lastError, progress } = mark;
        waiting.giveBack(mark.row, { dueAt, attempts, lastError, progress });
      }
      if (removed) sweep();
      tell();
    },
    nextDue: async () => waiting.nextDue(),
    onQueued(callback) {
      listeners.add(callback);
      return () => listeners.delete(callback);
    },
    async sentParts(messageId, adapter) {
      const rows = partsOf.all(messageId) as { progress: string }[];
      const parts = rows.map(({ progress }) => JSON.parse(progress)[adapter]?.parts as string[] | undefined);
      return parts.find((some) => some !== undefined && some.length > 0) ?? [];
    },
  };
  return {
    outbox,
    turned({ result, queued, erased }, refused) {
      if (erased && result.kind === 'taken') waiting.dropAllOf(result.key);
      if (refused !== null) waiting.drop(refused);
      waiting.add(queued);
      tell();
    },
  };
}
