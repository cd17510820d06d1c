// Tells this process and the others on the same database that something was queued, and hears it from them.
import pg from 'pg';
import type { Database } from './connect.ts';

export interface Wake {
  onQueued(callback: () => void): () => void;
  /** To be called after a commit that may have queued something. */
  queued(): void;
  close(): Promise<void>;
}

const channel = 'gaugehand_queued';
/** A notification takes a lock of the whole server at commit: many turns share one. */
const gatherMs = 20;
const listenAgainMs = 1_000;

export function makeWake(database: Database, databaseUrl: string, alone: boolean): Wake {
  const listeners = new Set<() => void>();
  let listening: pg.Client | null = null;
  let gathering: NodeJS.Timeout | null = null;
  let closed = false;

  function tell(): void {
    for (const listener of listeners) listener();
  }

  async function listen(): Promise<void> {
    const client = new pg.Client({ connectionString: databaseUrl, application_name: 'gaugehand listening' });
    listening = client;
    client.on('notification', tell);
    client.on('error', () => {});
    client.on('end', () => {
      if (!closed) setTimeout(() => void listen().catch(() => {}), listenAgainMs).unref();
    });
    await client.connect();
    await client.query(`LISTEN ${channel}`);
    tell();
  }

  if (!alone) void listen().catch(() => {});

  return {
    onQueued(callback) {
      listeners.add(callback);
      return () => listeners.delete(callback);
    },
    queued() {
      tell();
      if (alone || gathering !== null || closed) return;
      gathering = setTimeout(() => {
        gathering = null;
        // Unheard notifications cost nothing but time: the queue is looked at every few seconds anyway.
        database.ask('notify', `SELECT pg_notify('${channel}', '')`, []).catch(() => {});
      }, gatherMs);
    },
    async close() {
      closed = true;
      if (gathering !== null) clearTimeout(gathering);
      await listening?.end().catch(() => {});
    },
  };
}
