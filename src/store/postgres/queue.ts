// The outbox on Postgres: rows are leased, so that several processes send from one queue, and none sends what another has in hand.
import { randomUUID } from 'node:crypto';
import { type OutboxColumns, toOutboxRow } from '../rows.ts';
import type { Mark, Outbox } from '../store.ts';
import type { Database } from './connect.ts';

/** Longer than any one sending takes; after it another process may take the row. */
const leaseMs = 120_000;
// Leases go by the server's clock: processes on several machines need not agree on theirs.
const serverNow = '(extract(epoch FROM clock_timestamp()) * 1000)::bigint';
const isFree = `o.state = 'waiting' AND o.lease_until <= ${serverNow}
  AND NOT EXISTS (SELECT 1 FROM outbox p
    WHERE p.state = 'waiting' AND p.destination = o.destination AND p.row < o.row)`;

const claim = `WITH head AS (
    SELECT o.row, o.claimed_by FROM outbox o WHERE o.due_at <= $1 AND ${isFree}
    ORDER BY o.row LIMIT $2 FOR UPDATE SKIP LOCKED
  )
  UPDATE outbox SET claimed_by = $3, lease_until = ${serverNow} + ${leaseMs}
  FROM head WHERE outbox.row = head.row
  RETURNING outbox.row, destination, message, attempts, last_error, progress, head.claimed_by AS before,
    (SELECT key FROM conversations v WHERE v.number = outbox.conversation) AS key`;

const sent = `UPDATE outbox o SET state = 'sent', done_at = m.at, progress = m.progress, attempts = o.attempts + 1,
    claimed_by = NULL
  FROM unnest($1::bigint[], $2::bigint[], $3::text[]) AS m (row, at, progress)
  WHERE o.row = m.row AND o.state = 'waiting' RETURNING o.row, o.gone_once_sent`;

const retry = `UPDATE outbox SET due_at = $2, last_error = $3, progress = $4, attempts = $5, claimed_by = NULL, lease_until = 0
  WHERE row = $1 AND state = 'waiting'`;

type SentMark = Extract<Mark, { kind: 'sent' }>;

export function makeQueue(database: Database, onQueued: Outbox['onQueued'], sentOff: () => void): Outbox {
  const me = randomUUID();
  let waiting: { mark: SentMark; settled: PromiseWithResolvers<void> }[] = [];
  let writing = false;

  /** Marks that come while others are being written go together in the next statement. */
  async function writeSent(): Promise<void> {
    if (writing) return;
    writing = true;
    while (waiting.length > 0) {
      const group = waiting;
      waiting = [];
      try {
        await database.patiently(() => recordSent(group.map(({ mark }) => mark)));
        for (const { settled } of group) settled.resolve();
      } catch (error) {
        for (const { settled } of group) settled.reject(error);
      }
    }
    writing = false;
    sentOff();
  }

  async function recordSent(marks: SentMark[]): Promise<void> {
    const recorded = await database.ask('sent', sent, [
      marks.map(({ row }) => row),
      marks.map(({ at }) => at),
      marks.map(({ progress }) => JSON.stringify(progress)),
    ]);
    const gone = recorded.filter(({ gone_once_sent }) => gone_once_sent === 1).map(({ row }) => row);
    if (gone.length > 0)
      await database.ask('gone', 'DELETE FROM outbox WHERE row = ANY ($1::bigint[])', [gone]);
  }

  return {
    async claim(now, limit) {
      const rows = await database.patiently(() => database.ask('claim', claim, [now, limit, me]));
      return (rows as unknown as (OutboxColumns & { before: string | null })[])
        .sort((a, b) => a.row - b.row)
        .map((row) => toOutboxRow(row, row.before !== null));
    },
    async mark(mark) {
      if (mark.kind === 'sent') {
        const settled = Promise.withResolvers<void>();
        waiting.push({ mark, settled });
        void writeSent();
        await settled.promise;
        return;
      }
      const { row, dueAt, error, progress, attempts } = mark;
      const values = [row, dueAt, error, JSON.stringify(progress), attempts];
      await database.patiently(() => database.ask('retry', retry, values));
    },
    async nextDue() {
      const [found] = await database.ask(
        'next-due',
        `SELECT min(o.due_at) AS at FROM outbox o WHERE ${isFree}`,
        [],
      );
      return (found?.at as number | null | undefined) ?? null;
    },
    onQueued,
    async sentParts(messageId, adapter) {
      const rows = await database.ask(
        'parts',
        'SELECT progress FROM outbox WHERE id = $1 AND progress IS NOT NULL ORDER BY edit',
        [messageId],
      );
      const parts = rows.map(
        ({ progress }) => JSON.parse(progress as string)[adapter]?.parts as string[] | undefined,
      );
      return parts.find((some) => some !== undefined && some.length > 0) ?? [];
    },
  };
}

/** What a dead process had in hand; only where no other can be alive. */
export async function freeClaims(database: Database): Promise<void> {
  await database.ask(
    'free',
    "UPDATE outbox SET lease_until = 0 WHERE state = 'waiting' AND lease_until > 0",
    [],
  );
}
