// The one statement that writes a turn on Postgres: it checks the revision, and writes everything or nothing.
import { destinationKey } from '../keys.ts';
import type { Decision } from '../store.ts';

export interface Statement {
  name: string;
  text: string;
  values: unknown[];
}

/** Adds one part of the statement; `next` takes a value and gives its placeholder. */
type Part = (next: (value: unknown) => string) => string;

export function turnStatement(turn: {
  conversation: number;
  revision: number;
  now: number;
  inboxKey: string | null;
  decision: Decision;
}): Statement {
  const { conversation, revision, now, inboxKey, decision } = turn;
  const parts: [string, Part][] = [];
  const values: unknown[] = [];
  const next = (value: unknown) => `$${values.push(value)}`;
  const { caseRow, messages, readings, records } = decision;

  const number = next(conversation);
  const at = next(now);
  const openCases =
    caseRow === null
      ? ''
      : `, open_cases = ${next(caseRow.state === 'closed' ? 0 : 1)}::bigint + (SELECT count(*) FROM cases
           WHERE conversation = ${number} AND state <> 'closed' AND id <> ${next(caseRow.id)})`;
  const state = decision.state === null ? null : JSON.stringify(decision.state);
  const moved = `UPDATE conversations SET revision = revision + 1, changed_at = ${at}::bigint, state = ${next(state)},
    due_at = ${next(decision.dueAt)}::bigint, pins = coalesce(${next(decision.pins?.join(' ') ?? null)}, pins)${openCases}
    WHERE number = ${number}::bigint AND revision = ${next(revision)}::bigint RETURNING number`;

  if (inboxKey !== null) {
    parts.push([
      'arrived',
      (next) => `INSERT INTO inbox (key, at) SELECT ${next(inboxKey)}, ${at}::bigint FROM moved`,
    ]);
  }
  if (messages.length > 0) parts.push(['queued', queue(decision, at)]);
  if (readings.length > 0) parts.push(['read', keepReadings(decision)]);
  if (caseRow !== null) parts.push(['called', keepCase(decision)]);
  if (records.length > 0) parts.push(['recorded', keepRecords(decision)]);
  const others = parts.map(([name, part]) => `, ${name} AS (${part(next)})`).join('\n');
  return {
    // One name, one text: the parts and whether the rows belong to nobody are all that varies.
    name: [
      'turn',
      ...parts.map(([name]) => name),
      ...(decision.erase === undefined ? [] : ['erasing']),
      ...(decision.passing === undefined ? [] : ['passing']),
    ].join('-'),
    text: `WITH moved AS (${moved})\n${others}\nSELECT number FROM moved`,
    values,
  };
}

function queue({ messages, erase, passing }: Decision, at: string): Part {
  // After an erasure the row belongs to nobody, and goes as soon as it is sent.
  const from = erase === undefined ? 'moved.number' : 'NULL';
  const gone = erase === undefined && passing === undefined ? 0 : 1;
  return (next) => `INSERT INTO outbox (id, edit, conversation, destination, message, due_at, gone_once_sent)
    SELECT m.id, m.edit, ${from}, m.destination, m.message, ${at}::bigint, ${gone}
    FROM moved, unnest(${next(messages.map(({ id }) => id))}::text[], ${next(messages.map(({ edit }) => edit))}::bigint[],
      ${next(messages.map(({ to }) => destinationKey(to)))}::text[],
      ${next(messages.map((message) => JSON.stringify(message)))}::text[])
      WITH ORDINALITY AS m (id, edit, destination, message, place) ORDER BY m.place`;
}

function keepReadings({ readings }: Decision): Part {
  const column = <K extends keyof (typeof readings)[number]>(name: K) => readings.map((row) => row[name]);
  return (next) => `INSERT INTO readings (conversation, number, at, stage, measure, body)
    SELECT moved.number, r.number, r.at, r.stage, r.measure, r.body
    FROM moved, unnest(${next(column('number'))}::bigint[], ${next(column('at'))}::bigint[], ${next(column('stage'))}::text[],
      ${next(column('measure'))}::text[], ${next(readings.map(({ body }) => JSON.stringify(body)))}::text[])
      AS r (number, at, stage, measure, body)
    ON CONFLICT (conversation, number) DO UPDATE SET
      at = excluded.at, stage = excluded.stage, measure = excluded.measure, body = excluded.body`;
}

function keepCase({ caseRow }: Decision): Part {
  if (caseRow === null) throw new Error('there is no case to keep');
  const { id, state, reason, takenBy, openedAt, changedAt, words, body } = caseRow;
  return (
    next,
  ) => `INSERT INTO cases (id, conversation, state, reason, taken_by, opened_at, changed_at, words, body)
    SELECT ${next(id)}, moved.number, ${next(state)}, ${next(reason)}, ${next(takenBy)}, ${next(openedAt)}::bigint,
      ${next(changedAt)}::bigint, ${next(words)}, ${next(JSON.stringify(body))} FROM moved
    ON CONFLICT (id) DO UPDATE SET state = excluded.state, reason = excluded.reason, taken_by = excluded.taken_by,
      changed_at = excluded.changed_at, words = excluded.words, body = excluded.body`;
}

function keepRecords({ records }: Decision): Part {
  const column = <K extends keyof (typeof records)[number]>(name: K) => records.map((row) => row[name]);
  return (next) => `INSERT INTO records (code, conversation, at, procedure, machine, result, body)
    SELECT r.code, moved.number, r.at, r.procedure, r.machine, r.result, r.body
    FROM moved, unnest(${next(column('code'))}::text[], ${next(column('at'))}::bigint[], ${next(column('procedure'))}::text[],
      ${next(column('machine'))}::text[], ${next(column('result'))}::text[],
      ${next(records.map(({ body }) => JSON.stringify(body)))}::text[])
      AS r (code, at, procedure, machine, result, body)
    ON CONFLICT (code) DO UPDATE SET at = excluded.at, result = excluded.result, body = excluded.body`;
}
