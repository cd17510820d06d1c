// When conversations want to be woken, and where the frozen clock stands, in the embedded database.
import type { KeyObject } from 'node:crypto';
import type { DatabaseSync } from 'node:sqlite';
import { inboxKey } from '../keys.ts';
import type { Calendar } from '../store.ts';
import type { GroupCommit } from './group-commit.ts';

export function makeCalendar(db: DatabaseSync, group: GroupCommit, secret: KeyObject): Calendar {
  const due = db.prepare('SELECT key FROM conversations WHERE due_at <= ? ORDER BY due_at, number');
  const next = db.prepare('SELECT min(due_at) AS at FROM conversations WHERE due_at IS NOT NULL');
  const wake = db.prepare('UPDATE conversations SET due_at = ?, revision = revision + 1 WHERE key = ?');
  const createAwake = db.prepare('INSERT INTO conversations (key, due_at, changed_at) VALUES (?, ?, ?)');
  const arrive = db.prepare('INSERT INTO inbox (key, at) VALUES (?, ?) ON CONFLICT DO NOTHING');
  const setting = db.prepare('SELECT value FROM settings WHERE name = ?');
  const set = db.prepare(
    'INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
  );

  function instantOf(name: string): number | null {
    const found = setting.get(name) as { value: string } | undefined;
    return found === undefined ? null : Number(found.value);
  }

  return {
    due: async (now) => (due.all(now) as { key: string }[]).map(({ key }) => key),
    nextDue: async () => (next.get() as { at: number | null }).at,
    wake: (key, at) =>
      group.write(() => {
        // Not in one upsert: that takes a number also where the conversation is there, and others' ids would shift.
        if (wake.run(at, key).changes === 0) createAwake.run(key, at, at);
      }),
    instant: async () => instantOf('instant'),
    setInstant: (at) =>
      group.write(() => {
        set.run('instant', String(at));
      }),
    target: async () => instantOf('target'),
    setTarget: (at, platform, messageId) =>
      group.write(() => {
        if (arrive.run(inboxKey(secret, platform, messageId), at).changes === 0) return false;
        set.run('target', String(at));
        return true;
      }),
  };
}
