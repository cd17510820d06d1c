// Opens the store that the surroundings ask for: the embedded database in a folder, or Postgres.
import { join } from 'node:path';
import type { Store } from './store.ts';

export interface StorePlace {
  /** The folder of the embedded database. */
  folder: string;
  /** A Postgres address; null for the embedded database. */
  databaseUrl: string | null;
  /** One process owns the database, also on Postgres: pipe mode. */
  alone: boolean;
  clock: () => number;
  /** How long to wait for a process that owns the database; whoever only looks does not wait. */
  waitMs?: number;
}

/** Loads only the engine that is used. */
export async function openStore(place: StorePlace): Promise<Store> {
  const { folder, databaseUrl, ...rest } = place;
  if (databaseUrl !== null) {
    const { openPostgresStore } = await import('./postgres/open-postgres-store.ts');
    return openPostgresStore({ databaseUrl, ...rest });
  }
  const { openSqliteStore } = await import('./sqlite/open-sqlite-store.ts');
  return openSqliteStore({ file: join(folder, 'gaugehand.db'), ...rest });
}
