// Reads the numbered migrations of an engine, and says which are still to run; for opening either database.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { StoreTrouble } from './store.ts';

export interface Migration {
  number: number;
  sql: string;
}

export function readMigrations(engine: 'sqlite' | 'postgres'): Migration[] {
  const folder = join(import.meta.dirname, 'migrations', engine);
  return readdirSync(folder)
    .filter((file) => file.endsWith('.sql'))
    .map((file) => ({ number: Number.parseInt(file, 10), sql: readFileSync(join(folder, file), 'utf8') }))
    .sort((a, b) => a.number - b.number);
}

/** What is to run on a database that stands at `version`; refuses one that a newer program has written. */
export function outstanding(migrations: Migration[], version: number, where: string): Migration[] {
  const newest = migrations.at(-1)?.number ?? 0;
  if (version > newest) {
    throw new StoreTrouble(
      `The database ${where} was written by a newer version of this program (its layout is number ${version}, this program knows ${newest}). ` +
        'Nothing was changed. Start the newer program, or restore a copy from before the update.',
    );
  }
  return migrations.filter((migration) => migration.number > version);
}
