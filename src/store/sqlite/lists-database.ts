// Lets Kysely ask the embedded database that is already open, for the cold lists.
import type { DatabaseSync, SQLInputValue } from 'node:sqlite';
import { Kysely, SqliteDialect } from 'kysely';
import type { Tables } from '../lists.ts';

export function listsDatabase(db: DatabaseSync): Kysely<Tables> {
  const database = {
    prepare(sql: string) {
      const statement = db.prepare(sql);
      return {
        reader: statement.columns().length > 0,
        all: (values: readonly unknown[]) => statement.all(...(values as SQLInputValue[])),
        run: (values: readonly unknown[]) => statement.run(...(values as SQLInputValue[])),
        iterate: (values: readonly unknown[]) =>
          statement.iterate(...(values as SQLInputValue[])) as IterableIterator<unknown>,
      };
    },
    // The store closes its database itself.
    close() {},
  };
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database }) });
}
