// What an owner had erased is nowhere any more: looked for in every column of every table, and in the bytes of the embedded file.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openPostgresStore } from '../../src/store/postgres/open-postgres-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open-sqlite-store.ts';
import type { Store } from '../../src/store/store.ts';
import { textFrom } from './arrivals.ts';
import { countingDecide } from './counting-conversation.ts';
import { newDatabase } from './shared-postgres.ts';

const person = 'zebrafish-4711';
const said = 'quixotic-wording';
const clock = () => Date.UTC(2026, 0, 5);

async function liveThrough(store: Store): Promise<void> {
  await store.turn(textFrom(person, `${said} one`), countingDecide);
  await sendAll(store);
  await store.turn(textFrom(person, 'case'), countingDecide);
  await store.turn(textFrom(person, 'close'), countingDecide);
  await store.turn(textFrom(person, 'case'), countingDecide);
  await store.turn(textFrom(person, `${said} two`), countingDecide);
  await store.links.set('discord:chat:9', '123', `console:${person}`);
  await store.turn(textFrom('other', 'stays'), countingDecide);
}

async function sendAll(store: Store): Promise<string[]> {
  const texts: string[] = [];
  for (;;) {
    const rows = await store.outbox.claim(clock(), 10);
    if (rows.length === 0) return texts;
    for (const { row, message } of rows) {
      texts.push(message.text);
      await store.outbox.mark({ kind: 'sent', row, at: clock(), progress: {} });
    }
  }
}

function searches(find: (text: string) => Promise<number>, open: () => Store) {
  test('everything about an owner goes, the farewell is still sent and then goes too', async () => {
    const store = open();
    await liveThrough(store);
    expect(await find(person)).toBeGreaterThan(0);
    expect(await find(said)).toBeGreaterThan(0);
    await store.turn(textFrom(person, 'forget me'), countingDecide);
    expect(await find(said)).toBe(0);
    expect((await sendAll(store)).filter((text) => text.includes('forget'))).toHaveLength(2);
    expect(await find(person)).toBe(0);
    expect(await store.records()).toEqual([]);
    expect(await store.listCases()).toEqual([]);
    expect(await store.links.get('discord:chat:9')).toBeUndefined();
    expect(await find('stays')).toBeGreaterThan(0);
  });

  test('a record may stay, and leads to nobody', async () => {
    const store = open();
    await liveThrough(store);
    await store.turn(textFrom(person, 'forget me, keep the record'), countingDecide);
    await sendAll(store);
    expect(await find(person)).toBe(0);
    const kept = await store.records();
    expect(kept.map(({ key, machine }) => ({ key, machine }))).toEqual([{ key: null, machine: 'abacus' }]);
  });

  test('a farewell that the platform refuses goes as well, and whoever comes back starts anew', async () => {
    const store = open();
    await liveThrough(store);
    await sendAll(store);
    await store.turn(textFrom(person, 'forget me'), countingDecide);
    for (
      let rows = await store.outbox.claim(clock(), 10);
      rows.length > 0;
      rows = await store.outbox.claim(clock(), 10)
    ) {
      for (const { key, row, message } of rows) {
        await store.turn({ kind: 'refused', key, row, message, why: 'blocked' }, countingDecide);
      }
    }
    expect(await find(person)).toBe(0);
    await store.turn(textFrom(person, 'hello'), countingDecide);
    expect(await sendAll(store)).toEqual(['1: hello']);
  });
}

describe('an erasure in the embedded file', () => {
  let folder: string;
  let store: Store;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'gaugehand-erase-'));
    store = await openSqliteStore({ file: join(folder, 'a.db'), clock });
  });
  afterEach(async () => {
    await store.close();
    rmSync(folder, { recursive: true });
  });
  const find = async (text: string) =>
    readdirSync(folder)
      .map((file) => readFileSync(join(folder, file)).toString('latin1').split(text).length - 1)
      .reduce((sum, count) => sum + count, 0);
  searches(find, () => store);
});

describe('an erasure on Postgres', () => {
  let databaseUrl: string;
  let store: Store;
  beforeEach(async () => {
    databaseUrl = await newDatabase();
    store = await openPostgresStore({ databaseUrl, alone: false, clock });
  });
  afterEach(() => store.close());
  const find = async (text: string) => {
    const client = new pg.Client({ connectionString: databaseUrl });
    await client.connect();
    const { rows: tables } = await client.query(
      "SELECT table_name AS name FROM information_schema.tables WHERE table_schema = 'public'",
    );
    expect(tables.length).toBeGreaterThan(8);
    let found = 0;
    for (const { name } of tables) {
      const { rows } = await client.query(`SELECT count(*) AS count FROM ${name} t WHERE t::text LIKE $1`, [
        `%${text}%`,
      ]);
      found += Number(rows[0].count);
    }
    await client.end();
    return found;
  };
  searches(find, () => store);
});
