// The unsent rows in memory, by destination: one process owns the file, so what it has written it need not read back for each sending.
import type { OutboxRow } from '../store.ts';

export interface QueuedRow extends OutboxRow {
  dueAt: number;
}

export interface WaitingRows {
  add(rows: readonly QueuedRow[]): void;
  /** The oldest row of each destination that is due and not in hand yet, oldest first; they are in hand from then on. */
  take(now: number, limit: number): QueuedRow[];
  nextDue(): number | null;
  /** It was sent, or refused, or erased while in hand. */
  drop(row: number): void;
  /** It goes back, as changed. */
  giveBack(row: number, change: Partial<QueuedRow>): void;
  /** All of a conversation that was erased. */
  dropAllOf(key: string): void;
}

export function makeWaitingRows(): WaitingRows {
  const byDestination = new Map<string, QueuedRow[]>();
  const destinations = new Map<number, string>();
  const inHand = new Set<number>();

  /** The rows that are next in their destination, and in nobody's hand. */
  function* heads(): Generator<QueuedRow> {
    for (const [head] of byDestination.values()) {
      if (head !== undefined && !inHand.has(head.row)) yield head;
    }
  }

  function keepOnly(destination: string, stays: (row: QueuedRow) => boolean): void {
    const rows = byDestination.get(destination) ?? [];
    const left = rows.filter(stays);
    for (const row of rows) if (!stays(row)) destinations.delete(row.row);
    if (left.length === 0) byDestination.delete(destination);
    else byDestination.set(destination, left);
  }

  return {
    add(rows) {
      for (const row of rows) {
        destinations.set(row.row, row.destination);
        const before = byDestination.get(row.destination);
        if (before === undefined) byDestination.set(row.destination, [row]);
        else before.push(row);
      }
    },
    take(now, limit) {
      const due = [...heads().filter(({ dueAt }) => dueAt <= now)];
      const taken = due.sort((a, b) => a.row - b.row).slice(0, limit);
      for (const { row } of taken) inHand.add(row);
      return taken;
    },
    nextDue() {
      let next: number | null = null;
      for (const { dueAt } of heads()) if (next === null || dueAt < next) next = dueAt;
      return next;
    },
    drop(row) {
      inHand.delete(row);
      const destination = destinations.get(row);
      if (destination !== undefined) keepOnly(destination, (other) => other.row !== row);
    },
    giveBack(row, change) {
      inHand.delete(row);
      const rows = byDestination.get(destinations.get(row) ?? '');
      const index = rows?.findIndex((other) => other.row === row) ?? -1;
      const before = rows?.[index];
      if (rows !== undefined && before !== undefined) rows[index] = { ...before, ...change };
    },
    dropAllOf(key) {
      for (const destination of [...byDestination.keys()]) keepOnly(destination, (row) => row.key !== key);
    },
  };
}
