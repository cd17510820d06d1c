// One turn inside the group's transaction: load the conversation, decide, and write all that follows.
import type { KeyObject } from 'node:crypto';
import type { DatabaseSync } from 'node:sqlite';
import { inboxKey, ownerKey } from '../keys.ts';
import { parse, type RecordColumns, toCase, toReading, toRecord } from '../rows.ts';
import type { Arrival, Decide, Decision, Loaded, ReadingRow, StoredCase, TurnResult } from '../store.ts';
import { archiveDepth, deskKey } from '../store.ts';
import type { QueuedRow } from './waiting-rows.ts';
import { makeWriteDecision } from './write-decision.ts';

interface ConversationRow {
  number: number;
  state: string | null;
  open_cases: number;
  due_at: number | null;
}

export interface TakenTurn {
  result: TurnResult;
  queued: QueuedRow[];
  /** Everything of this conversation is gone. */
  erased: boolean;
}

export type TakeTurn = (arrival: Arrival, decide: Decide, now: number) => TakenTurn;

export function makeTakeTurn(db: DatabaseSync, secret: KeyObject): TakeTurn {
  const arrive = db.prepare('INSERT INTO inbox (key, at) VALUES (?, ?) ON CONFLICT DO NOTHING');
  const find = db.prepare('SELECT number, state, open_cases, due_at FROM conversations WHERE key = ?');
  const create = db.prepare('INSERT INTO conversations (key, changed_at) VALUES (?, ?) RETURNING number');
  const keyOfCase = db.prepare(
    'SELECT v.key FROM cases c JOIN conversations v ON v.number = c.conversation WHERE c.id = ?',
  );
  const deskState = db.prepare('SELECT state FROM conversations WHERE key = ?');
  const readings = db.prepare('SELECT * FROM readings WHERE conversation = ? ORDER BY number');
  const openCases = db.prepare(
    `SELECT c.*, v.key FROM cases c JOIN conversations v ON v.number = c.conversation
     WHERE c.state <> 'closed' ORDER BY c.opened_at, c.id`,
  );
  const allCases = db.prepare(
    `SELECT c.*, v.key FROM cases c JOIN conversations v ON v.number = c.conversation
     ORDER BY c.opened_at DESC, c.id DESC LIMIT ${archiveDepth}`,
  );
  const allRecords = db.prepare(
    `SELECT r.code, r.at, r.procedure, r.machine, r.result, r.body, v.key FROM records r
     LEFT JOIN conversations v ON v.number = r.conversation ORDER BY r.at DESC, r.code DESC LIMIT ${archiveDepth}`,
  );
  const refuse = db.prepare(
    `UPDATE outbox SET state = 'refused', last_error = ?, done_at = ?, attempts = attempts + 1
     WHERE row = ? AND state = 'waiting'`,
  );
  const dropRefused = db.prepare('DELETE FROM outbox WHERE row = ? AND gone_once_sent = 1');
  const writeDecision = makeWriteDecision(db);

  /** Null where the arrival was taken before, or no longer applies. */
  function admit(arrival: Arrival, now: number): { key: string; row: ConversationRow | null } | null {
    if (arrival.kind === 'message') {
      const { message } = arrival;
      if (arrive.run(inboxKey(secret, message.platform, message.messageId), now).changes === 0) return null;
      const key = keyOf(message.role === 'staff' ? { caseId: message.caseId } : message);
      return { key, row: (find.get(key) as unknown as ConversationRow | undefined) ?? null };
    }
    const row = (find.get(arrival.key) as unknown as ConversationRow | undefined) ?? null;
    if (arrival.kind === 'refused') {
      if (arrival.partly) return { key: arrival.key, row };
      if (refuse.run(arrival.why, now, arrival.row).changes === 0) return null;
      dropRefused.run(arrival.row);
      return { key: arrival.key, row };
    }
    return row === null || row.due_at === null || row.due_at > now ? null : { key: arrival.key, row };
  }

  function keyOf(from: { caseId: string | null } | { platform: string; person: string }): string {
    if ('person' in from) return ownerKey(from.platform, from.person);
    const found =
      from.caseId === null ? undefined : (keyOfCase.get(from.caseId) as { key: string } | undefined);
    return found?.key ?? deskKey;
  }

  function load(key: string, row: ConversationRow, now: number): Loaded {
    const isDesk = key === deskKey;
    const desk = isDesk ? undefined : (deskState.get(deskKey) as { state: string | null } | undefined);
    const hasReadings = row.open_cases > 0;
    return {
      now,
      key,
      number: row.number,
      state: parse(row.state),
      desk: parse(desk?.state ?? null),
      openCases: isDesk ? (openCases.all() as unknown[]).map((found): StoredCase => toCase(found)) : [],
      readings: hasReadings ? allReadings(row.number) : [],
      hasReadings,
    };
  }

  function allReadings(conversation: number): ReadingRow[] {
    return (readings.all(conversation) as unknown[]).map(toReading);
  }

  function settle(decide: Decide, loaded: Loaded, arrival: Arrival): Decision {
    const first = decide(loaded, arrival);
    if (!('needs' in first)) return first;
    const more =
      first.needs === 'archive'
        ? { archive: archive() }
        : { readings: allReadings(loaded.number), hasReadings: true };
    const second = decide({ ...loaded, ...more }, arrival);
    if ('needs' in second) throw new Error(`a decision asked for the ${first.needs} that it was given`);
    return second;
  }

  function archive(): NonNullable<Loaded['archive']> {
    return {
      cases: (allCases.all() as unknown[]).map(toCase),
      records: (allRecords.all() as unknown as RecordColumns[]).map(toRecord),
    };
  }

  return (arrival, decide, now) => {
    const admitted = admit(arrival, now);
    if (admitted === null) return { result: { kind: 'repeat' }, queued: [], erased: false };
    const { key } = admitted;
    // The owner was erased while the platform refused their last message: there is nobody to decide for.
    if (admitted.row === null && arrival.kind === 'refused') {
      return { result: { kind: 'taken', key }, queued: [], erased: false };
    }
    const row = admitted.row ?? {
      ...(create.get(key, now) as { number: number }),
      state: null,
      open_cases: 0,
      due_at: null,
    };
    const decision = settle(decide, load(key, row, now), arrival);
    const queued = writeDecision(key, row.number, decision, now);
    return { result: { kind: 'taken', key }, queued, erased: decision.erase !== undefined };
  };
}
