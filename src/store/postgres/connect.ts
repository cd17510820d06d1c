// Connects to Postgres, brings its layout up to date, and keeps asking while the server is away for a moment.
import { setTimeout as delay } from 'node:timers/promises';
import pg from 'pg';
import { outstanding, readMigrations } from '../read-migrations.ts';
import { StoreTrouble } from '../store.ts';
import { explain, isPassing } from './explain.ts';

export type Client = pg.PoolClient;
export type Row = Record<string, unknown>;

/** One named, prepared statement, on the pool or inside a transaction. */
export type Ask = (name: string, text: string, values: readonly unknown[]) => Promise<Row[]>;

export interface Database {
  pool: pg.Pool;
  ask: Ask;
  /** All or nothing. */
  transaction<T>(work: (client: Client) => Promise<T>): Promise<T>;
  /** Repeats what a lost connection cut short; everything done through it may be done twice without harm. */
  patiently<T>(work: () => Promise<T>): Promise<T>;
  close(): Promise<void>;
}

const int8 = 20;
/** Any fixed numbers that no other program is likely to lock in the same database. */
const layoutLock = 726_180_401;
const ownerLock = 726_180_402;
const patienceMs = 10_000;

export async function connect(databaseUrl: string, alone: boolean, waitMs = patienceMs): Promise<Database> {
  const pool = new pg.Pool({
    connectionString: databaseUrl,
    application_name: 'gaugehand',
    // Alone, the lock and all work share one connection: when a killed owner's lock is free, its last statement has ended too.
    max: alone ? 1 : 8,
    idleTimeoutMillis: alone ? 0 : 30_000,
    types: {
      getTypeParser: (oid: number, format?: 'text' | 'binary') =>
        oid === int8 ? Number : pg.types.getTypeParser(oid, format as 'text'),
    } as pg.CustomTypesConfig,
  });
  // An idle connection that the server closes is replaced by the next question; unheard, it would end the process.
  pool.on('error', ignore);
  // For its whole life: one that breaks says so again after it was given up.
  pool.on('connect', (client) => client.on('error', ignore));

  async function transaction<T>(work: (client: Client) => Promise<T>): Promise<T> {
    const client = await pool.connect();
    let broken = false;
    try {
      await client.query('BEGIN');
      const result = await work(client);
      await client.query('COMMIT');
      return result;
    } catch (error) {
      await client.query('ROLLBACK').catch(() => {
        broken = true;
      });
      throw error;
    } finally {
      client.release(broken);
    }
  }

  async function patiently<T>(work: () => Promise<T>): Promise<T> {
    const giveUpAt = Date.now() + patienceMs;
    for (let tries = 0; ; tries += 1) {
      try {
        return await work();
      } catch (error) {
        if (!isPassing(error) || Date.now() > giveUpAt) throw explain(error);
        await delay(Math.min(20 * 2 ** tries, 1000));
        if (alone) await own(pool, patienceMs).catch(() => {});
      }
    }
  }

  try {
    if (alone) await own(pool, waitMs);
    await transaction(bringUpToDate);
  } catch (error) {
    await pool.end();
    throw explain(error);
  }
  return {
    pool,
    ask: asking(pool),
    transaction,
    patiently,
    close: () => pool.end(),
  };
}

export function asking(asked: pg.Pool | Client): Ask {
  return async (name, text, values) => (await asked.query({ name, text, values: [...values] })).rows;
}

function ignore(): void {}

/** Taking it twice on one connection is harmless. */
async function own(pool: pg.Pool, waitMs: number): Promise<void> {
  const giveUpAt = Date.now() + waitMs;
  for (;;) {
    const { rows } = await pool.query('SELECT pg_try_advisory_lock($1) AS mine', [ownerLock]);
    if (rows[0].mine) return;
    if (Date.now() > giveUpAt) {
      throw new StoreTrouble(
        'Another process owns this Postgres database. Stop it first: pipe mode has one at a time.',
      );
    }
    await delay(50);
  }
}

async function bringUpToDate(client: Client): Promise<void> {
  await client.query('SELECT pg_advisory_xact_lock($1)', [layoutLock]);
  const { rows } = await client.query("SELECT to_regclass('settings') IS NOT NULL AS there");
  const version = rows[0].there
    ? Number((await client.query("SELECT value FROM settings WHERE name = 'layout'")).rows[0]?.value ?? 0)
    : 0;
  for (const { number, sql } of outstanding(readMigrations('postgres'), version, 'on Postgres')) {
    await client.query(sql);
    await client.query(
      `INSERT INTO settings (name, value) VALUES ('layout', $1)
       ON CONFLICT (name) DO UPDATE SET value = excluded.value`,
      [String(number)],
    );
  }
}
