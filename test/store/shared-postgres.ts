// One Postgres for the whole run of tests, with its fsync on as the workshop's: started for the first file that asks, stopped at the end.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { inject } from 'vitest';
import type { TestProject } from 'vitest/node';
import { type PostgresServer, startPostgres } from './postgres-server.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where to ask for a new database. */
    newDatabaseAt: string;
  }
}

/** The address of a new, empty database. */
export async function newDatabase(): Promise<string> {
  const answer = await fetch(inject('newDatabaseAt'));
  const said = await answer.text();
  if (!answer.ok) throw new Error(said);
  return said;
}

/** For vitest, before the first file. Most runs of a single file need no Postgres, so it waits to be asked. */
export default async function prepare(project: TestProject): Promise<() => Promise<void>> {
  let started: Promise<PostgresServer> | null = null;
  const door = createServer(async (_, response) => {
    try {
      started ??= startPostgres();
      response.end(await (await started).newDatabase());
    } catch (error) {
      response.writeHead(500).end(String(error));
    }
  });
  await new Promise<void>((resolve) => door.listen(0, '127.0.0.1', resolve));
  project.provide('newDatabaseAt', `http://127.0.0.1:${(door.address() as AddressInfo).port}`);
  return async () => {
    door.close();
    door.closeAllConnections();
    await (await started)?.stop();
  };
}
