// Rows of the database to what the program works with; the same for both engines.
import type { CaseState, OutboxRow, ReadingRow, StoredCase, StoredRecord } from './store.ts';

export function parse(json: string | null): unknown | null {
  return json === null ? null : JSON.parse(json);
}

export function toReading(row: unknown): ReadingRow {
  const { number, at, stage, measure, body } = row as ReadingRow & { body: string };
  return { number, at, stage, measure, body: JSON.parse(body) };
}

export interface CaseColumns {
  id: string;
  key: string;
  state: string;
  reason: string;
  taken_by: string | null;
  opened_at: number;
  changed_at: number;
  words: string;
  body: string;
}

export function toCase(row: unknown): StoredCase {
  const found = row as CaseColumns;
  return {
    id: found.id,
    key: found.key,
    state: found.state as CaseState,
    reason: found.reason,
    takenBy: found.taken_by,
    openedAt: found.opened_at,
    changedAt: found.changed_at,
    words: found.words,
    body: JSON.parse(found.body),
  };
}

export interface RecordColumns {
  code: string;
  key: string | null;
  at: number;
  procedure: string;
  machine: string;
  result: string;
  body: string;
}

export function toRecord(row: RecordColumns): StoredRecord {
  return { ...row, body: JSON.parse(row.body) };
}

export interface OutboxColumns {
  row: number;
  key: string | null;
  destination: string;
  message: string;
  attempts: number;
  last_error: string | null;
  progress: string | null;
}

/** The key of what is left to send once its conversation was erased. */
export const nobody = '';

export function toOutboxRow(found: OutboxColumns, perhapsSent: boolean): OutboxRow {
  return {
    row: found.row,
    key: found.key ?? nobody,
    destination: found.destination,
    message: JSON.parse(found.message),
    attempts: found.attempts,
    lastError: found.last_error,
    progress: found.progress === null ? {} : JSON.parse(found.progress),
    perhapsSent,
  };
}

/** Each conversation names the snapshots that it pins with blanks between. */
export function splitPins(rows: { pins: string }[]): string[] {
  return [...new Set(rows.flatMap(({ pins }) => pins.split(' ').filter((hash) => hash !== '')))].sort();
}
