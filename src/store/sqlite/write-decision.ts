// Writes what was decided for a conversation: state, readings, case, records, queued messages; or erases its owner.
import type { DatabaseSync } from 'node:sqlite';
import { destinationKey } from '../keys.ts';
import { nobody } from '../rows.ts';
import type { Decision } from '../store.ts';
import type { QueuedRow } from './waiting-rows.ts';

/** Returns the messages that were queued, for the queue in memory. */
export type WriteDecision = (
  key: string,
  conversation: number,
  decision: Decision,
  now: number,
) => QueuedRow[];

export function makeWriteDecision(db: DatabaseSync): WriteDecision {
  const move = db.prepare(
    `UPDATE conversations SET revision = revision + 1, state = ?, due_at = ?, changed_at = ?, pins = coalesce(?, pins)
     WHERE number = ?`,
  );
  const queue = db.prepare(
    `INSERT INTO outbox (id, edit, conversation, destination, message, due_at, gone_once_sent)
     VALUES (?, ?, ?, ?, ?, ?, ?)`,
  );
  const keepReading = db.prepare(
    `INSERT INTO readings (conversation, number, at, stage, measure, body) VALUES (?, ?, ?, ?, ?, ?)
     ON CONFLICT (conversation, number) DO UPDATE SET
       at = excluded.at, stage = excluded.stage, measure = excluded.measure, body = excluded.body`,
  );
  const keepCase = db.prepare(
    `INSERT INTO cases (id, conversation, state, reason, taken_by, opened_at, changed_at, words, body)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)
     ON CONFLICT (id) DO UPDATE SET state = excluded.state, reason = excluded.reason, taken_by = excluded.taken_by,
       changed_at = excluded.changed_at, words = excluded.words, body = excluded.body`,
  );
  const countOpenCases = db.prepare(
    `UPDATE conversations SET open_cases = (SELECT count(*) FROM cases WHERE conversation = ? AND state <> 'closed')
     WHERE number = ?`,
  );
  const keepRecord = db.prepare(
    `INSERT INTO records (code, conversation, at, procedure, machine, result, body) VALUES (?, ?, ?, ?, ?, ?, ?)
     ON CONFLICT (code) DO UPDATE SET at = excluded.at, result = excluded.result, body = excluded.body`,
  );
  const erase = makeErase(db);

  return (key, conversation, decision, now) => {
    const pins = decision.pins === undefined ? null : decision.pins.join(' ');
    const state = decision.state === null ? null : JSON.stringify(decision.state);
    move.run(state, decision.dueAt, now, pins, conversation);
    for (const { number, at, stage, measure, body } of decision.readings) {
      keepReading.run(conversation, number, at, stage, measure, JSON.stringify(body));
    }
    if (decision.caseRow !== null) {
      const { id, state, reason, takenBy, openedAt, changedAt, words, body } = decision.caseRow;
      keepCase.run(
        id,
        conversation,
        state,
        reason,
        takenBy,
        openedAt,
        changedAt,
        words,
        JSON.stringify(body),
      );
      countOpenCases.run(conversation, conversation);
    }
    for (const { code, at, procedure, machine, result, body } of decision.records) {
      keepRecord.run(code, conversation, at, procedure, machine, result, JSON.stringify(body));
    }
    if (decision.erase !== undefined) erase(key, conversation, decision.erase);
    const gone = decision.erase !== undefined;
    const passing = gone || decision.passing === true;
    return decision.messages.map((message) => {
      const { id, edit, to } = message;
      const destination = destinationKey(to);
      const from = gone ? null : conversation;
      const kept = queue.run(id, edit, from, destination, JSON.stringify(message), now, passing ? 1 : 0);
      const row = Number(kept.lastInsertRowid);
      return {
        row,
        key: gone ? nobody : key,
        destination,
        message,
        dueAt: now,
        attempts: 0,
        lastError: null,
        progress: {},
        perhapsSent: false,
      };
    });
  };
}

function makeErase(db: DatabaseSync) {
  const gone = ['readings', 'cases', 'outbox'].map((table) =>
    db.prepare(`DELETE FROM ${table} WHERE conversation = ?`),
  );
  const dropRecords = db.prepare('DELETE FROM records WHERE conversation = ?');
  const unlinkRecords = db.prepare('UPDATE records SET conversation = NULL WHERE conversation = ?');
  const dropLinks = db.prepare('DELETE FROM links WHERE about = ?');
  const dropConversation = db.prepare('DELETE FROM conversations WHERE number = ?');
  return (key: string, conversation: number, extent: 'all' | 'all-but-records') => {
    for (const statement of gone) statement.run(conversation);
    (extent === 'all' ? dropRecords : unlinkRecords).run(conversation);
    dropLinks.run(key);
    dropConversation.run(conversation);
  };
}
