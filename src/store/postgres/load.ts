// Loads what a turn on Postgres decides on, and asks for the decision.
import { parse, type RecordColumns, toCase, toReading, toRecord } from '../rows.ts';
import type { Arrival, Decide, Decision, Loaded, ReadingRow } from '../store.ts';
import { archiveDepth, deskKey } from '../store.ts';
import type { Ask, Row } from './connect.ts';

export interface Found {
  number: number | null;
  revision: number;
  state: string | null;
  open_cases: number;
  due_at: number | null;
  desk: string | null;
  taken: boolean;
}

export async function find(ask: Ask, key: string, arrivalKey: string | null): Promise<Found> {
  const [found] = await ask(
    'find',
    `SELECT c.number, coalesce(c.revision, 0) AS revision, c.state, coalesce(c.open_cases, 0) AS open_cases, c.due_at,
       (SELECT state FROM conversations WHERE key = '${deskKey}') AS desk,
       EXISTS (SELECT 1 FROM inbox WHERE key = $2) AS taken
     FROM (SELECT 1) AS one LEFT JOIN conversations c ON c.key = $1`,
    [key, arrivalKey],
  );
  return found as unknown as Found;
}

export async function load(
  ask: Ask,
  key: string,
  found: Found & { number: number },
  now: number,
): Promise<Loaded> {
  const isDesk = key === deskKey;
  const hasReadings = found.open_cases > 0;
  return {
    now,
    key,
    number: found.number,
    state: parse(found.state),
    desk: isDesk ? null : parse(found.desk),
    openCases: isDesk ? (await openCases(ask)).map(toCase) : [],
    readings: hasReadings ? await allReadings(ask, found.number) : [],
    hasReadings,
  };
}

function openCases(ask: Ask): Promise<Row[]> {
  return ask(
    'open-cases',
    `SELECT c.*, v.key FROM cases c JOIN conversations v ON v.number = c.conversation
     WHERE c.state <> 'closed' ORDER BY c.opened_at, c.id`,
    [],
  );
}

async function allReadings(ask: Ask, conversation: number): Promise<ReadingRow[]> {
  const rows = await ask('readings', 'SELECT * FROM readings WHERE conversation = $1 ORDER BY number', [
    conversation,
  ]);
  return rows.map(toReading);
}

export async function settle(ask: Ask, decide: Decide, arrival: Arrival, loaded: Loaded): Promise<Decision> {
  const first = decide(loaded, arrival);
  if (!('needs' in first)) return first;
  const more =
    first.needs === 'archive'
      ? { archive: await archive(ask) }
      : { readings: await allReadings(ask, loaded.number), hasReadings: true };
  const second = decide({ ...loaded, ...more }, arrival);
  if ('needs' in second) throw new Error(`a decision asked for the ${first.needs} that it was given`);
  return second;
}

async function archive(ask: Ask): Promise<NonNullable<Loaded['archive']>> {
  const cases = await ask(
    'all-cases',
    `SELECT c.*, v.key FROM cases c JOIN conversations v ON v.number = c.conversation
     ORDER BY c.opened_at DESC, c.id DESC LIMIT ${archiveDepth}`,
    [],
  );
  const records = await ask(
    'all-records',
    `SELECT r.code, r.at, r.procedure, r.machine, r.result, r.body, v.key FROM records r
     LEFT JOIN conversations v ON v.number = r.conversation ORDER BY r.at DESC, r.code DESC LIMIT ${archiveDepth}`,
    [],
  );
  return { cases: cases.map(toCase), records: (records as unknown as RecordColumns[]).map(toRecord) };
}
