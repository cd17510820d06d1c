// When conversations want to be woken, and where the frozen clock stands, on Postgres.
import type { KeyObject } from 'node:crypto';
import { inboxKey } from '../keys.ts';
import type { Calendar } from '../store.ts';
import { asking, type Database } from './connect.ts';

const set = `INSERT INTO settings (name, value) VALUES ($1, $2)
  ON CONFLICT (name) DO UPDATE SET value = excluded.value`;

export function makeCalendar(database: Database, secret: KeyObject): Calendar {
  const { ask, patiently, transaction } = database;

  async function instantOf(name: string): Promise<number | null> {
    const [found] = await ask('setting', 'SELECT value FROM settings WHERE name = $1', [name]);
    return found === undefined ? null : Number(found.value);
  }

  return {
    async due(now) {
      const rows = await ask(
        'due',
        'SELECT key FROM conversations WHERE due_at <= $1 ORDER BY due_at, number',
        [now],
      );
      return rows.map(({ key }) => key as string);
    },
    async nextDue() {
      const [found] = await ask(
        'next-wake',
        'SELECT min(due_at) AS at FROM conversations WHERE due_at IS NOT NULL',
        [],
      );
      return (found?.at as number | null | undefined) ?? null;
    },
    wake: (key, at) =>
      patiently(() =>
        transaction(async (client) => {
          const ask = asking(client);
          const put =
            'UPDATE conversations SET due_at = $2, revision = revision + 1 WHERE key = $1 RETURNING number';
          // The counter's lock keeps a second process from creating the same conversation meanwhile.
          const [counter] = await ask(
            'counter',
            "SELECT value FROM counters WHERE name = 'conversations' FOR UPDATE",
            [],
          );
          if ((await ask('put-wake', put, [key, at])).length > 0) return;
          const number = Number(counter?.value) + 1;
          await ask('count-to', "UPDATE counters SET value = $1 WHERE name = 'conversations'", [number]);
          await ask(
            'create-wake',
            'INSERT INTO conversations (number, key, due_at, changed_at) VALUES ($1, $2, $3, $3)',
            [number, key, at],
          );
        }),
      ),
    instant: () => instantOf('instant'),
    async setInstant(at) {
      await patiently(() => ask('set', set, ['instant', String(at)]));
    },
    target: () => instantOf('target'),
    setTarget: (at, platform, messageId) =>
      patiently(() =>
        transaction(async (client) => {
          const ask = asking(client);
          const arrived = await ask(
            'arrive',
            'INSERT INTO inbox (key, at) VALUES ($1, $2) ON CONFLICT DO NOTHING RETURNING key',
            [inboxKey(secret, platform, messageId), at],
          );
          if (arrived.length === 0) return false;
          await ask('set', set, ['target', String(at)]);
          return true;
        }),
      ),
  };
}
