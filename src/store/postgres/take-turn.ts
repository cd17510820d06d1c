// One turn on Postgres: select, decide, one statement that checks the revision; a clash decides anew.
import type { KeyObject } from 'node:crypto';
import { inboxKey, lane, ownerKey } from '../keys.ts';
import type { Arrival, Decide, TurnResult } from '../store.ts';
import { deskKey } from '../store.ts';
import { type Ask, asking, type Database } from './connect.ts';
import { isTaken } from './explain.ts';
import { makeLanes } from './lanes.ts';
import { type Found, find, load, settle } from './load.ts';
import { turnStatement } from './turn-statement.ts';

const clash = Symbol('clash');
const mostClashes = 100;

export function makeTakeTurn(database: Database, secret: KeyObject, clock: () => number) {
  const inLane = makeLanes();

  return (arrival: Arrival, decide: Decide): Promise<TurnResult> =>
    inLane(arrival.kind === 'message' ? lane(arrival.message) : arrival.key, () =>
      database.patiently(async () => {
        for (let clashes = 0; clashes < mostClashes; clashes += 1) {
          const result = await attempt(arrival, decide);
          if (result !== clash) return result;
        }
        throw new Error('a conversation was changed by others each time that a turn was to be written');
      }),
    );

  async function attempt(arrival: Arrival, decide: Decide): Promise<TurnResult | typeof clash> {
    const arrivalKey =
      arrival.kind === 'message'
        ? inboxKey(secret, arrival.message.platform, arrival.message.messageId)
        : null;
    const key = await keyOf(arrival);
    const found = await find(database.ask, key, arrivalKey);
    if (found.taken || (arrival.kind === 'due' && !isDue(found))) return { kind: 'repeat' };
    if (found.number !== null && arrival.kind !== 'refused') {
      const number = found.number;
      const now = clock();
      const decision = await settle(
        database.ask,
        decide,
        arrival,
        await load(database.ask, key, { ...found, number }, now),
      );
      if (decision.erase === undefined) {
        return finish(
          key,
          await write(database.ask, {
            conversation: number,
            revision: found.revision,
            now,
            inboxKey: arrivalKey,
            decision,
          }),
        );
      }
    }
    return inTransaction(arrival, arrivalKey, key, decide);
  }

  /** Rarer turns take several statements: a new conversation, a refusal, an erasure. */
  async function inTransaction(
    arrival: Arrival,
    arrivalKey: string | null,
    key: string,
    decide: Decide,
  ): Promise<TurnResult | typeof clash> {
    try {
      return await database.transaction(async (client) => {
        const ask = asking(client);
        const now = clock();
        if (arrival.kind === 'refused' && !arrival.partly && !(await refuse(ask, arrival, now))) {
          return { kind: 'repeat' };
        }
        const found = await find(ask, key, arrivalKey);
        if (found.taken) return { kind: 'repeat' };
        if (found.number === null && arrival.kind === 'refused') return { kind: 'taken', key };
        const number = found.number ?? (await create(ask, key, now));
        if (number === null) throw new Clash();
        const decision = await settle(ask, decide, arrival, await load(ask, key, { ...found, number }, now));
        const turn = { conversation: number, revision: found.revision, now, inboxKey: arrivalKey, decision };
        if (!(await write(ask, turn))) throw new Clash();
        if (decision.erase !== undefined) await erase(ask, key, number, decision.erase);
        return { kind: 'taken', key };
      });
    } catch (error) {
      if (error instanceof Clash) return clash;
      throw error;
    }
  }

  function isDue({ number, due_at }: Found): boolean {
    return number !== null && due_at !== null && due_at <= clock();
  }

  async function keyOf(arrival: Arrival): Promise<string> {
    if (arrival.kind !== 'message') return arrival.key;
    const { role, caseId, platform, person } = arrival.message;
    if (role === 'owner') return ownerKey(platform, person);
    if (caseId === null) return deskKey;
    const [found] = await database.ask(
      'key-of-case',
      'SELECT v.key FROM cases c JOIN conversations v ON v.number = c.conversation WHERE c.id = $1',
      [caseId],
    );
    return (found?.key as string | undefined) ?? deskKey;
  }
}

class Clash extends Error {}

function finish(key: string, written: boolean): TurnResult | typeof clash {
  return written ? { kind: 'taken', key } : clash;
}

/** False where the conversation was changed meanwhile. */
async function write(ask: Ask, turn: Parameters<typeof turnStatement>[0]): Promise<boolean> {
  const { name, text, values } = turnStatement(turn);
  try {
    return (await ask(name, text, values)).length > 0;
  } catch (error) {
    // The same message was taken by another process in this very moment: the next look finds it.
    if (isTaken(error, 'inbox_pkey')) return false;
    throw error;
  }
}

async function create(ask: Ask, key: string, now: number): Promise<number | null> {
  const [counted] = await ask(
    'count',
    "UPDATE counters SET value = value + 1 WHERE name = 'conversations' RETURNING value",
    [],
  );
  const [created] = await ask(
    'create',
    'INSERT INTO conversations (number, key, changed_at) VALUES ($1, $2, $3) ON CONFLICT (key) DO NOTHING RETURNING number',
    [counted?.value, key, now],
  );
  return (created?.number as number | undefined) ?? null;
}

async function refuse(
  ask: Ask,
  { row, why }: Extract<Arrival, { kind: 'refused' }>,
  now: number,
): Promise<boolean> {
  const refused = await ask(
    'refuse',
    `UPDATE outbox SET state = 'refused', last_error = $2, done_at = $3, attempts = attempts + 1, claimed_by = NULL
     WHERE row = $1 AND state = 'waiting' RETURNING row`,
    [row, why, now],
  );
  await ask('drop-refused', 'DELETE FROM outbox WHERE row = $1 AND gone_once_sent = 1', [row]);
  return refused.length > 0;
}

async function erase(
  ask: Ask,
  key: string,
  conversation: number,
  extent: 'all' | 'all-but-records',
): Promise<void> {
  for (const table of ['readings', 'cases', 'outbox']) {
    await ask(`erase-${table}`, `DELETE FROM ${table} WHERE conversation = $1`, [conversation]);
  }
  await ask('erase-links', 'DELETE FROM links WHERE about = $1', [key]);
  if (extent === 'all')
    await ask('erase-records', 'DELETE FROM records WHERE conversation = $1', [conversation]);
  else
    await ask('unlink-records', 'UPDATE records SET conversation = NULL WHERE conversation = $1', [
      conversation,
    ]);
  await ask('erase-conversation', 'DELETE FROM conversations WHERE number = $1', [conversation]);
}
