// The outbox in the embedded database: which row is next, and what became of it. Claims live in memory: one process owns the file.
import type { DatabaseSync } from 'node:sqlite';
import { type OutboxColumns, toOutboxRow } from '../rows.ts';
import type { Mark, Outbox, OutboxRow } from '../store.ts';
import type { GroupCommit } from './group-commit.ts';

// No LIMIT anywhere here: SQLite plans a statement anew each time that a bound limit changes, which costs more than the rows.
const heads = `(SELECT min(row) AS row FROM outbox WHERE state = 'waiting' GROUP BY destination)`;

export function makeQueue(
  db: DatabaseSync,
  group: GroupCommit,
  sweep: () => void,
): { outbox: Outbox; queued: (refused: number | null) => void } {
  const dueHeads = db.prepare(
    `SELECT o.row, o.destination, o.message, o.attempts, o.last_error, o.progress, v.key
     FROM ${heads} AS head JOIN outbox o ON o.row = head.row LEFT JOIN conversations v ON v.number = o.conversation
     WHERE o.due_at <= ? ORDER BY o.row`,
  );
  const allHeads = db.prepare(
    `SELECT o.row, o.due_at FROM ${heads} AS head JOIN outbox o ON o.row = head.row ORDER BY o.due_at`,
  );
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
  const newest = db.prepare('SELECT max(row) AS row FROM outbox').get() as { row: number | null };
  /** What an earlier process left: any of it may have been in hand when that process died. */
  const leftOver = newest.row ?? 0;
  const claimed = new Set<number>();
  const listeners = new Set<() => void>();

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
    async claim(now, limit) {
      const fresh: OutboxRow[] = [];
      for (const found of dueHeads.iterate(now) as Iterable<unknown> as Iterable<OutboxColumns>) {
        if (fresh.length === limit) break;
        if (claimed.has(found.row)) continue;
        claimed.add(found.row);
        fresh.push(toOutboxRow(found, found.row <= leftOver));
      }
      return fresh;
    },
    async mark(mark) {
      const removed = await group.write(() => write(mark));
      claimed.delete(mark.row);
      if (removed) sweep();
      for (const listener of listeners) listener();
    },
    async nextDue() {
      for (const head of allHeads.iterate() as Iterable<unknown> as Iterable<{
        row: number;
        due_at: number;
      }>) {
        if (!claimed.has(head.row)) return head.due_at;
      }
      return null;
    },
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
    queued: (refused) => {
      if (refused !== null) claimed.delete(refused);
      for (const listener of listeners) listener();
    },
  };
}
