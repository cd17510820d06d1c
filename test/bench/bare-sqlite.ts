// The peer of G4 to G6: node:sqlite by hand, the same rows in the same tables and the same two commits, one message at a time.
import { hash } from 'node:crypto';
import { DatabaseSync } from 'node:sqlite';
import { readMigrations } from '../../src/store/read-migrations.ts';
import { type BenchState, benchMessage, nextState, repliesTo } from './one-kilobyte.ts';

export interface BareSqlite {
  /** One message in one commit, its two replies marked as sent in another. */
  twoCommits(chat: number, count: number): void;
  close(): void;
}

export function openBareSqlite(file: string): BareSqlite {
  const db = new DatabaseSync(file);
  db.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA locking_mode = EXCLUSIVE');
  for (const { sql } of readMigrations('sqlite')) db.exec(sql);
  const begin = db.prepare('BEGIN IMMEDIATE');
  const commit = db.prepare('COMMIT');
  const arrive = db.prepare('INSERT INTO inbox (key, at) VALUES (?, ?)');
  const find = db.prepare('SELECT number, state FROM conversations WHERE key = ?');
  const keep = db.prepare(
    `INSERT INTO conversations (key, state, changed_at) VALUES (?, ?, ?)
     ON CONFLICT (key) DO UPDATE SET state = excluded.state, changed_at = excluded.changed_at, revision = revision + 1`,
  );
  const queue = db.prepare(
    'INSERT INTO outbox (id, edit, conversation, destination, message, due_at) VALUES (?, 0, ?, ?, ?, ?)',
  );
  const sent = db.prepare("UPDATE outbox SET state = 'sent', done_at = ?, progress = ? WHERE row = ?");

  return {
    twoCommits(chat, count) {
      const now = Date.now();
      const { messageId, person } = benchMessage(chat, count);
      begin.run();
      // The same kind of row: a key in order would fall on the same page each time.
      arrive.run(hash('sha256', `bench\n${messageId}`, 'base64url'), now);
      const found = find.get(person) as { number: number; state: string } | undefined;
      const state = nextState(found === undefined ? null : (JSON.parse(found.state) as BenchState));
      keep.run(person, JSON.stringify(state), now);
      const number = found?.number ?? chat;
      const rows = repliesTo(number, count, person).map((message) => {
        const json = JSON.stringify(message);
        return queue.run(message.id, number, message.to.kind + person, json, now).lastInsertRowid;
      });
      commit.run();
      begin.run();
      for (const row of rows) sent.run(now, '{"bench":{"parts":["1"],"whole":true}}', row);
      commit.run();
    },
    close: () => db.close(),
  };
}
