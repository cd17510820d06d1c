// Opens the embedded database for this process alone: checks it before anything is written, then brings it up to date.
import { accessSync, constants, mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { setTimeout as delay } from 'node:timers/promises';
import { outstanding, readMigrations } from '../read-migrations.ts';
import { StoreTrouble } from '../store.ts';
import { explain, isBusy } from './explain.ts';

/** How long a second process waits for the first to let go of the file. */
const patienceMs = 10_000;

/** SQLite's own waiting would hold up the whole process, its signals too. */
const lookAgainMs = 50;

export async function openFile(file: string, waitMs = patienceMs): Promise<DatabaseSync> {
  const giveUpAt = Date.now() + waitMs;
  for (;;) {
    try {
      return openAtOnce(file);
    } catch (error) {
      if (!isBusy(error) || Date.now() > giveUpAt) throw explainOpening(error, file);
      await delay(lookAgainMs);
    }
  }
}

function openAtOnce(file: string): DatabaseSync {
  let db: DatabaseSync | null = null;
  try {
    mkdirSync(dirname(file), { recursive: true });
    db = new DatabaseSync(file, { timeout: lookAgainMs });
    db.exec('PRAGMA locking_mode = EXCLUSIVE');
    const version = checkUntouched(db, file);
    const todo = outstanding(readMigrations('sqlite'), version, file);
    // secure_delete: what an owner had erased is overwritten, not only unlinked.
    // wal_autocheckpoint: the log grows to some 16 MB; what is written often is then copied to the file less often.
    db.exec(
      'PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA secure_delete = ON; PRAGMA wal_autocheckpoint = 4000',
    );
    // The lock is taken with the first write; until then a second process could slip in.
    db.exec('BEGIN IMMEDIATE');
    for (const migration of todo) db.exec(migration.sql);
    db.exec(`PRAGMA user_version = ${todo.at(-1)?.number ?? version}`);
    db.exec('COMMIT');
    return db;
  } catch (error) {
    db?.close();
    throw error;
  }
}

/** Its layout's number; 0 for an empty database. */
function checkUntouched(db: DatabaseSync, file: string): number {
  const { user_version: version } = db.prepare('PRAGMA user_version').get() as { user_version: number };
  const tables = db.prepare('SELECT count(*) AS count FROM sqlite_schema').get() as { count: number };
  if (version === 0 && tables.count > 0) {
    throw new StoreTrouble(
      `The file ${file} is a database of some other program. Nothing was changed; name another folder for this one.`,
    );
  }
  const [finding] = db.prepare('PRAGMA quick_check(1)').all() as { quick_check: string }[];
  if (finding?.quick_check !== 'ok') {
    throw new StoreTrouble(
      `The database ${file} is damaged (${finding?.quick_check}). Nothing was changed; put it aside and restore a copy, or start with an empty folder.`,
    );
  }
  return version;
}

function explainOpening(error: unknown, file: string): unknown {
  // SQLite tells a file system that takes no writing as a failing disk.
  const written = error instanceof StoreTrouble ? null : whyNotWritable(dirname(file));
  if (written === null) return explain(error, file);
  return new StoreTrouble(
    `The folder ${dirname(file)} cannot be written to (${written}). See that it exists and that this user may write there.`,
    { cause: error },
  );
}

function whyNotWritable(folder: string): string | null {
  try {
    accessSync(folder, constants.W_OK);
    return null;
  } catch (error) {
    return error instanceof Error && 'code' in error ? String(error.code) : 'no access';
  }
}
