// Content snapshots and adapters' links on Postgres, and what is thrown away with age.
import { splitPins } from '../rows.ts';
import type { Links, Snapshots } from '../store.ts';
import { asking, type Database } from './connect.ts';

const pinned = 'SELECT DISTINCT pins FROM conversations WHERE pins IS NOT NULL';

export function makeSnapshots({ ask, patiently }: Database, clock: () => number): Snapshots {
  return {
    async put(hash, json) {
      await patiently(() =>
        ask(
          'put-snapshot',
          `INSERT INTO snapshots (hash, json, at) VALUES ($1, $2, $3)
           ON CONFLICT (hash) DO UPDATE SET at = excluded.at`,
          [hash, json, clock()],
        ),
      );
    },
    async get(hash) {
      const [found] = await patiently(() =>
        ask('snapshot', 'SELECT json FROM snapshots WHERE hash = $1', [hash]),
      );
      return found?.json as string | undefined;
    },
    async inUse() {
      return splitPins((await patiently(() => ask('pinned', pinned, []))) as { pins: string }[]);
    },
  };
}

export function makeLinks({ ask, patiently }: Database): Links {
  return {
    async get(link) {
      const [found] = await patiently(() => ask('link', 'SELECT value FROM links WHERE link = $1', [link]));
      return found?.value as string | undefined;
    },
    async set(link, value, about = null) {
      await patiently(() =>
        ask(
          'set-link',
          `INSERT INTO links (link, value, about) VALUES ($1, $2, $3)
           ON CONFLICT (link) DO UPDATE SET value = excluded.value, about = excluded.about`,
          [link, value, about],
        ),
      );
    },
    async delete(link) {
      await patiently(() => ask('drop-link', 'DELETE FROM links WHERE link = $1', [link]));
    },
    async list(prefix) {
      const rows = await patiently(() =>
        ask('links', 'SELECT link, value FROM links WHERE starts_with(link, $1) ORDER BY link COLLATE "C"', [
          prefix,
        ]),
      );
      return rows as { link: string; value: string }[];
    },
  };
}

export async function forget({ transaction }: Database, before: number): Promise<void> {
  await transaction(async (client) => {
    const ask = asking(client);
    // Only an owner's key has a colon; the desk's and the channel's conversations stay.
    const finished = `FROM conversations WHERE open_cases = 0 AND changed_at < $1 AND strpos(key, ':') > 0
      AND NOT EXISTS (SELECT 1 FROM outbox WHERE outbox.conversation = conversations.number AND state = 'waiting')`;
    for (const table of ['readings', 'cases', 'outbox']) {
      await ask(
        `forget-all-${table}`,
        `DELETE FROM ${table} WHERE conversation IN (SELECT number ${finished})`,
        [before],
      );
    }
    await ask('forget-links', `DELETE FROM links WHERE about IN (SELECT key ${finished})`, [before]);
    await ask(
      'forget-owners',
      `UPDATE records SET conversation = NULL WHERE conversation IN (SELECT number ${finished})`,
      [before],
    );
    await ask('forget-conversations', `DELETE ${finished}`, [before]);
    await ask('forget-outbox', "DELETE FROM outbox WHERE state <> 'waiting' AND done_at < $1", [before]);
    await ask('forget-inbox', 'DELETE FROM inbox WHERE at < $1', [before]);
    const kept = splitPins((await ask('pinned', pinned, [])) as { pins: string }[]);
    await ask('forget-snapshots', 'DELETE FROM snapshots WHERE at < $1 AND hash <> ALL ($2::text[])', [
      before,
      kept,
    ]);
  });
}
