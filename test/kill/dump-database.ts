// What a database holds in the end, without what differs from run to run (secret, tries, leases), so that two runs can be compared.
import { DatabaseSync } from 'node:sqlite';
import pg from 'pg';

const questions = {
  conversations: 'SELECT number, key, state, due_at, open_cases FROM conversations ORDER BY number',
  readings: 'SELECT * FROM readings ORDER BY conversation, number',
  cases: 'SELECT * FROM cases ORDER BY id',
  records: 'SELECT * FROM records ORDER BY code',
  outbox: 'SELECT id, edit, conversation, destination, message, state FROM outbox ORDER BY row',
  inbox: 'SELECT count(*) AS count FROM inbox',
};

export type Dump = Record<keyof typeof questions, Record<string, unknown>[]>;

export function dumpFile(file: string): Dump {
  const db = new DatabaseSync(file, { readOnly: true });
  const entries = Object.entries(questions).map(([name, sql]) => [
    name,
    db
      .prepare(sql)
      .all()
      .map((row) => ({ ...row })),
  ]);
  db.close();
  return Object.fromEntries(entries);
}

export async function dumpPostgres(connectionString: string): Promise<Dump> {
  const client = new pg.Client({ connectionString });
  await client.connect();
  const entries: [string, unknown][] = [];
  for (const [name, sql] of Object.entries(questions)) entries.push([name, (await client.query(sql)).rows]);
  await client.end();
  return Object.fromEntries(entries) as Dump;
}
