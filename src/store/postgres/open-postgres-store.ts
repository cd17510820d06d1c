// The store on Postgres, for workshops that run more than one process, and wherever DATABASE_URL says so.
import { createSecretKey, type KeyObject, randomBytes } from 'node:crypto';
import { makeLists, type Tables } from '../lists.ts';
import type { Store } from '../store.ts';
import { makeCalendar } from './calendar.ts';
import { connect, type Database } from './connect.ts';
import { freeClaims, makeQueue } from './queue.ts';
import { forget, makeLinks, makeSnapshots } from './shelves.ts';
import { makeTakeTurn } from './take-turn.ts';
import { makeWake } from './wake.ts';

export async function openPostgresStore(options: {
  databaseUrl: string;
  /** This process owns the database: no lease of another can be alive. */
  alone: boolean;
  clock: () => number;
  waitMs?: number;
}): Promise<Store> {
  const { databaseUrl, alone, clock } = options;
  const database = await connect(databaseUrl, alone, options.waitMs);
  const secret = await readSecret(database);
  if (alone) await freeClaims(database);
  const wake = makeWake(database, databaseUrl, alone);
  const takeTurn = makeTakeTurn(database, secret, clock);
  return {
    engine: 'postgres',
    async turn(arrival, decide) {
      const result = await takeTurn(arrival, decide);
      wake.queued();
      return result;
    },
    outbox: makeQueue(database, wake.onQueued, wake.queued),
    calendar: makeCalendar(database, secret),
    snapshots: makeSnapshots(database, clock),
    links: makeLinks(database),
    ...makeLists(async () => {
      const { Kysely, PostgresDialect } = await import('kysely');
      return new Kysely<Tables>({ dialect: new PostgresDialect({ pool: database.pool }) });
    }),
    forget: (before) => database.patiently(() => forget(database, before)),
    async close() {
      await wake.close();
      await database.close();
    },
  };
}

async function readSecret({ ask }: Database): Promise<KeyObject> {
  await ask(
    'make-secret',
    "INSERT INTO settings (name, value) VALUES ('secret', $1) ON CONFLICT DO NOTHING",
    [randomBytes(32).toString('base64')],
  );
  const [found] = await ask('secret', "SELECT value FROM settings WHERE name = 'secret'", []);
  return createSecretKey(found?.value as string, 'base64');
}
