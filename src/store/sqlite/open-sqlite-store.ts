// The store on the embedded database, in one file that one process owns: the default of every command.
import { createSecretKey, type KeyObject, randomBytes } from 'node:crypto';
import type { DatabaseSync } from 'node:sqlite';
import { makeLists } from '../lists.ts';
import { nobody } from '../rows.ts';
import type { Store } from '../store.ts';
import { makeCalendar } from './calendar.ts';
import { makeGroupCommit } from './group-commit.ts';
import { openFile } from './open-file.ts';
import { makeQueue } from './queue.ts';
import { makeForget, makeLinks, makeSnapshots } from './shelves.ts';
import { makeTakeTurn } from './take-turn.ts';

export interface SqliteStore extends Store {
  /** How many transactions were committed, for the bench. */
  commits(): number;
}

export async function openSqliteStore(options: {
  file: string;
  clock: () => number;
  waitMs?: number;
}): Promise<SqliteStore> {
  const { file, clock } = options;
  const db = await openFile(file, options.waitMs);
  const secret = readSecret(db);
  const group = makeGroupCommit(db, file);
  const takeTurn = makeTakeTurn(db, secret);
  const { outbox, turned } = makeQueue(db, group, sweep);
  const forget = makeForget(db);

  /** After an erasure nothing of it may stay behind in the write-ahead log either. */
  function sweep(): void {
    db.exec('PRAGMA wal_checkpoint(TRUNCATE)');
  }

  return {
    engine: 'sqlite',
    async turn(arrival, decide) {
      const turn = await group.write(() => takeTurn(arrival, decide, clock()));
      const refused = arrival.kind === 'refused' ? arrival.row : null;
      turned(turn, refused);
      const farewellRefused = refused !== null && turn.result.kind === 'taken' && turn.result.key === nobody;
      if (turn.erased || farewellRefused) sweep();
      return turn.result;
    },
    outbox,
    calendar: makeCalendar(db, group, secret),
    snapshots: makeSnapshots(db, group, clock),
    links: makeLinks(db, group),
    ...makeLists(async () => (await import('./lists-database.ts')).listsDatabase(db)),
    async forget(before) {
      await group.write(() => forget(before));
      sweep();
    },
    async close() {
      group.close();
      db.close();
    },
    commits: group.commits,
  };
}

function readSecret(db: DatabaseSync): KeyObject {
  db.prepare('INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT DO NOTHING').run(
    'secret',
    randomBytes(32).toString('base64'),
  );
  const { value } = db.prepare('SELECT value FROM settings WHERE name = ?').get('secret') as {
    value: string;
  };
  return createSecretKey(value, 'base64');
}
