// G8: turns on Postgres over four connections against the same job by hand in one statement, and how fast rows are leased.
import pg from 'pg';
import { openPostgresStore } from '../../src/store/postgres/open-postgres-store.ts';
import type { Store } from '../../src/store/store.ts';
import { startPostgres } from '../store/postgres-server.ts';
import { alternate, type BenchOptions, type BenchResult, result } from './measure.ts';
import {
  type BenchState,
  benchArrival,
  benchMessage,
  decideBench,
  nextState,
  repliesTo,
} from './one-kilobyte.ts';

const connections = 4;
const chats = 100;
const progress = { bench: { parts: ['1'], whole: true } };

let counted = 0;

/** Four workers, each with chats of its own, for `ms`; how many they did, and how long it took. */
async function work(ms: number, take: (chat: number, count: number) => Promise<void>) {
  const began = performance.now();
  let turns = 0;
  const worker = async (lane: number) => {
    for (let turn = 0; performance.now() < began + ms; turn += 1) {
      counted += 1;
      await take(lane * chats + (turn % chats), counted);
      turns += 1;
    }
  };
  await Promise.all(Array.from({ length: connections }, (_, lane) => worker(lane)));
  return { turns, took: performance.now() - began };
}

/** Turns, then the marks of their replies, four at a time; the leasing between has a goal of its own, and is not counted. */
async function rateOfStore(ms: number, store: Store): Promise<number> {
  const { turns, took } = await work(ms, async (chat, count) => {
    await store.turn(benchArrival(chat, count), decideBench);
  });
  return (turns * 1000) / (took + (await sendAll(store)));
}

/** How long the marks took. */
async function sendAll(store: Store): Promise<number> {
  let marking = 0;
  for (;;) {
    const rows = (await store.outbox.claim(Date.now(), 2 * connections)).map(({ row }) => row);
    if (rows.length === 0) return marking;
    const began = performance.now();
    await Promise.all(rows.map((row) => store.outbox.mark({ kind: 'sent', row, at: Date.now(), progress })));
    marking += performance.now() - began;
  }
}

const byHand = `WITH moved AS (
    INSERT INTO conversations (number, key, state, changed_at) VALUES ($1::bigint, $2, $3, $4::bigint)
    ON CONFLICT (key) DO UPDATE SET state = excluded.state, changed_at = excluded.changed_at, revision = conversations.revision + 1
    WHERE conversations.revision = $5::bigint RETURNING number
  ), arrived AS (INSERT INTO inbox (key, at) SELECT $6, $4::bigint FROM moved)
  INSERT INTO outbox (id, edit, conversation, destination, message, due_at)
    SELECT m.id, 0, moved.number, m.destination, m.message, $4::bigint
    FROM moved, unnest($7::text[], $8::text[], $9::text[]) AS m (id, destination, message) RETURNING row`;

/** Select, one statement, one statement that marks both replies as sent. */
function takeByHand(pool: pg.Pool) {
  return async (chat: number, count: number) => {
    const now = Date.now();
    const { messageId, person } = benchMessage(chat, count);
    const found = await pool.query({
      name: 'hand-find',
      text: 'SELECT number, revision, state FROM conversations WHERE key = $1',
      values: [person],
    });
    const [before] = found.rows as { revision: string; state: string }[];
    const state = nextState(before === undefined ? null : (JSON.parse(before.state) as BenchState));
    const replies = repliesTo(chat, count, person);
    const queued = await pool.query({
      name: 'hand-turn',
      text: byHand,
      values: [
        chat,
        person,
        JSON.stringify(state),
        now,
        before?.revision ?? 0,
        `hand ${messageId}`,
        replies.map(({ id }) => `${id} ${count}`),
        replies.map(({ to }) => to.kind + person),
        replies.map((message) => JSON.stringify(message)),
      ],
    });
    await pool.query({
      name: 'hand-sent',
      text: "UPDATE outbox SET state = 'sent', done_at = $2, progress = $3 WHERE row = ANY ($1::bigint[])",
      values: [queued.rows.map(({ row }) => row), now, JSON.stringify(progress)],
    });
  };
}

async function rateByHand(ms: number, take: ReturnType<typeof takeByHand>): Promise<number> {
  const { turns, took } = await work(ms, take);
  return (turns * 1000) / took;
}

/** Rows a second that four takers lease and mark, each row once; throws if one is leased twice. */
async function leaseRate(store: Store, databaseUrl: string, rows: number): Promise<number> {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  await client.query('TRUNCATE outbox');
  await client.query(
    `INSERT INTO outbox (id, edit, destination, message, due_at)
     SELECT 'lease' || n, 0, 'chat' || n, '{"id":"lease","text":"0.348 V. A hair back."}', 0 FROM generate_series(1, $1::bigint) n`,
    [rows],
  );
  await client.query('ANALYZE outbox');
  const leased = new Set<number>();
  const began = performance.now();
  const taker = async () => {
    for (;;) {
      const batch = await store.outbox.claim(Date.now(), 50);
      if (batch.length === 0) return;
      for (const { row } of batch) {
        if (leased.has(row)) throw new Error(`row ${row} was leased twice`);
        leased.add(row);
      }
      await Promise.all(
        batch.map(({ row }) => store.outbox.mark({ kind: 'sent', row, at: Date.now(), progress })),
      );
    }
  };
  await Promise.all(Array.from({ length: connections }, taker));
  const perSecond = (rows * 1000) / (performance.now() - began);
  await client.end();
  if (leased.size !== rows) throw new Error(`${rows - leased.size} rows were never leased`);
  return perSecond;
}

export async function measurePostgresTurn(options: BenchOptions = {}): Promise<BenchResult[]> {
  const rounds = options.quick ? 3 : 5;
  const ms = options.quick ? 400 : 1200;
  const server = await startPostgres();
  const stores: Store[] = [];
  const pools: pg.Pool[] = [];
  try {
    const oursAt = await server.newDatabase();
    const handAt = await server.newDatabase();
    const store = await openPostgresStore({ databaseUrl: oursAt, alone: false, clock: Date.now });
    // The same tables for both.
    const second = await openPostgresStore({ databaseUrl: handAt, alone: false, clock: Date.now });
    const pool = new pg.Pool({ connectionString: handAt, max: connections });
    // The server may end idle connections before the pool has.
    pool.on('error', () => {});
    stores.push(store, second);
    pools.push(pool);
    const hand = takeByHand(pool);
    // Every chat has its conversation before the clock runs: a new one is rare, and takes a transaction of several statements.
    for (let chat = 0; chat < connections * chats; chat += 1) {
      counted += 1;
      await store.turn(benchArrival(chat, counted), decideBench);
      await hand(chat, counted);
    }
    await sendAll(store);
    const rates = await alternate(rounds, {
      hand: () => rateByHand(ms, hand),
      ours: () => rateOfStore(ms, store),
    });
    const leases: number[] = [];
    for (let round = 0; round < 3; round += 1)
      leases.push(await leaseRate(store, oursAt, options.quick ? 4000 : 20_000));
    return [
      result({
        id: 'G8',
        what: 'Postgres, four connections: a durable turn and its replies marked, against one statement by hand',
        unit: 'messages/s',
        ours: rates.ours,
        other: rates.hand,
        goal: '>= 0.7',
      }),
      result({
        id: 'G8',
        what: 'rows leased and marked by four takers, none twice',
        unit: 'rows/s',
        ours: leases,
        goal: '>= 10000',
      }),
    ];
  } finally {
    for (const store of stores) await store.close();
    for (const pool of pools) await pool.end();
    await server.stop();
  }
}
