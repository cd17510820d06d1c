// Content snapshots and adapters' links in the embedded database, and what is thrown away with age.
import type { DatabaseSync } from 'node:sqlite';
import { splitPins } from '../rows.ts';
import type { Links, Snapshots } from '../store.ts';
import type { GroupCommit } from './group-commit.ts';

export function makeSnapshots(db: DatabaseSync, group: GroupCommit, clock: () => number): Snapshots {
  const put = db.prepare(
    'INSERT INTO snapshots (hash, json, at) VALUES (?, ?, ?) ON CONFLICT (hash) DO UPDATE SET at = excluded.at',
  );
  const get = db.prepare('SELECT json FROM snapshots WHERE hash = ?');
  const pinned = db.prepare('SELECT DISTINCT pins FROM conversations WHERE pins IS NOT NULL');
  return {
    put: (hash, json) =>
      group.write(() => {
        put.run(hash, json, clock());
      }),
    get: async (hash) => (get.get(hash) as { json: string } | undefined)?.json,
    inUse: async () => splitPins(pinned.all() as { pins: string }[]),
  };
}

export function makeLinks(db: DatabaseSync, group: GroupCommit): Links {
  const get = db.prepare('SELECT value FROM links WHERE link = ?');
  const set = db.prepare(
    `INSERT INTO links (link, value, about) VALUES (?, ?, ?)
     ON CONFLICT (link) DO UPDATE SET value = excluded.value, about = excluded.about`,
  );
  const drop = db.prepare('DELETE FROM links WHERE link = ?');
  const list = db.prepare(
    'SELECT link, value FROM links WHERE substr(link, 1, length(?1)) = ?1 ORDER BY link',
  );
  return {
    get: async (link) => (get.get(link) as { value: string } | undefined)?.value,
    set: (link, value, about = null) =>
      group.write(() => {
        set.run(link, value, about);
      }),
    delete: (link) =>
      group.write(() => {
        drop.run(link);
      }),
    list: async (prefix) => list.all(prefix) as { link: string; value: string }[],
  };
}

/** Run inside a transaction. */
export function makeForget(db: DatabaseSync): (before: number) => void {
  // Only an owner's key has a colon; the desk's and the channel's conversations stay.
  const finished = `FROM conversations WHERE open_cases = 0 AND changed_at < ? AND instr(key, ':') > 0
    AND NOT EXISTS (SELECT 1 FROM outbox WHERE outbox.conversation = conversations.number AND state = 'waiting')`;
  const statements = [
    `DELETE FROM readings WHERE conversation IN (SELECT number ${finished})`,
    `DELETE FROM cases WHERE conversation IN (SELECT number ${finished})`,
    `DELETE FROM outbox WHERE conversation IN (SELECT number ${finished})`,
    `DELETE FROM links WHERE about IN (SELECT key ${finished})`,
    `UPDATE records SET conversation = NULL WHERE conversation IN (SELECT number ${finished})`,
    `DELETE ${finished}`,
    "DELETE FROM outbox WHERE state <> 'waiting' AND done_at < ?",
    'DELETE FROM inbox WHERE at < ?',
  ].map((sql) => db.prepare(sql));
  const pinned = db.prepare('SELECT DISTINCT pins FROM conversations WHERE pins IS NOT NULL');
  const old = db.prepare('SELECT hash FROM snapshots WHERE at < ?');
  const drop = db.prepare('DELETE FROM snapshots WHERE hash = ?');
  return (before) => {
    for (const statement of statements) statement.run(before);
    const kept = new Set(splitPins(pinned.all() as { pins: string }[]));
    for (const { hash } of old.all(before) as { hash: string }[]) if (!kept.has(hash)) drop.run(hash);
  };
}
