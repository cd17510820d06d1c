// Several processes on one Postgres database: no turn lost, no row sent twice, each woken by the others; and what is refused at the door.
import pg from 'pg';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openPostgresStore } from '../../src/store/postgres/open-postgres-store.ts';
import { type Decide, type Store, StoreTrouble } from '../../src/store/store.ts';
import { textFrom } from './arrivals.ts';
import { type Counting, countingDecide } from './counting-conversation.ts';
import { newDatabase } from './shared-postgres.ts';

let databaseUrl: string;
let stores: Store[] = [];
const clock = () => Date.UTC(2026, 0, 5);

beforeEach(async () => {
  databaseUrl = await newDatabase();
  stores = await Promise.all([1, 2, 3].map(() => openPostgresStore({ databaseUrl, alone: false, clock })));
});
afterEach(() => Promise.all(stores.map((store) => store.close())));

async function sql(text: string, values: unknown[] = []): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    return (await client.query(text, values)).rows;
  } finally {
    await client.end();
  }
}

describe('several processes on one database', () => {
  test('take turns of one conversation without losing or doubling any', async () => {
    const arrivals = Array.from({ length: 60 }, (_, index) => textFrom('o1', String(index)));
    // Each message reaches two of the three processes.
    const turns = arrivals.flatMap((arrival, index) =>
      [0, 1].map((more) => stores[(index + more) % 3]!.turn(arrival, countingDecide)),
    );
    const results = await Promise.all(turns);
    expect(results.filter(({ kind }) => kind === 'taken').length).toBe(60);
    let seen: unknown;
    const peek: Decide = (loaded) => {
      seen = loaded.state;
      return { state: loaded.state, messages: [], readings: [], caseRow: null, records: [], dueAt: null };
    };
    await stores[0]!.turn(textFrom('o1', 'peek'), peek);
    const { heard, count } = seen as Counting;
    expect(count).toBe(60);
    expect(heard.map(Number).sort((a, b) => a - b)).toEqual(Array.from({ length: 60 }, (_, index) => index));
  });

  test('number new conversations without gaps, also where a first message fails', async () => {
    const people = Array.from({ length: 30 }, (_, index) => `p${index}`);
    await Promise.all(
      people.flatMap((person, index) => [
        stores[index % 3]!.turn(textFrom(person, 'a'), countingDecide),
        stores[(index + 1) % 3]!.turn(textFrom(`bad ${person}`, 'throw'), countingDecide).catch(() => {}),
      ]),
    );
    const numbers = (await sql('SELECT number FROM conversations ORDER BY number')).map(({ number }) =>
      Number(number),
    );
    expect(numbers).toEqual(people.map((_, index) => index + 1));
  });

  test('share the queue: no row is in two hands, and each destination keeps its order', async () => {
    const people = Array.from({ length: 20 }, (_, index) => `p${index}`);
    for (const round of [1, 2, 3, 4]) {
      await Promise.all(
        people.map((person) => stores[round % 3]!.turn(textFrom(person, `t${round}`), countingDecide)),
      );
    }
    const sent: { row: number; destination: string }[] = [];
    const drain = async (store: Store) => {
      for (;;) {
        const rows = await store.outbox.claim(clock(), 4);
        for (const { row, destination } of rows) sent.push({ row, destination });
        await Promise.all(
          rows.map(({ row }) => store.outbox.mark({ kind: 'sent', row, at: clock(), progress: {} })),
        );
        const [{ left } = {}] = await sql("SELECT count(*) AS left FROM outbox WHERE state = 'waiting'");
        if (Number(left) === 0) return;
      }
    };
    await Promise.all(stores.map(drain));
    expect(new Set(sent.map(({ row }) => row)).size).toBe(sent.length);
    expect(sent.length).toBe(20 * 6);
    for (const { destination } of sent) {
      const rows = sent.filter((row) => row.destination === destination).map(({ row }) => row);
      expect(rows).toEqual(rows.toSorted((a, b) => a - b));
    }
  });

  test('tell one another that something was queued', async () => {
    const woken = new Promise<void>((resolve) => stores[1]!.outbox.onQueued(resolve));
    // Listening begins in the background: the first notification could come before it.
    const again = setInterval(() => void stores[0]!.turn(textFrom('o1', 'a'), countingDecide), 100);
    await woken;
    clearInterval(again);
  });

  test('outlive a server that drops every connection', async () => {
    await stores[0]!.turn(textFrom('o1', 'a'), countingDecide);
    const turns = Array.from({ length: 40 }, (_, index) =>
      stores[index % 3]!.turn(textFrom(`p${index % 8}`, 'x'), countingDecide),
    );
    await sql(
      "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name LIKE 'gaugehand%' AND datname = current_database()",
    );
    const results = await Promise.all(turns);
    // A turn whose answer was lost finds itself taken: that is a repeat.
    expect(results.length).toBe(40);
    const [{ count } = {}] = await sql('SELECT count(*) AS count FROM inbox');
    expect(Number(count)).toBe(41);
    const [{ readings } = {}] = await sql('SELECT count(*) AS readings FROM readings');
    expect(Number(readings)).toBe(41);
  });

  test('a row whose holder is gone comes free when its lease ends, and is said to be perhaps sent', async () => {
    await stores[0]!.turn(textFrom('o1', 'a'), countingDecide);
    expect((await stores[0]!.outbox.claim(clock(), 1)).length).toBe(1);
    expect((await stores[1]!.outbox.claim(clock(), 1)).length).toBe(0);
    await sql('UPDATE outbox SET lease_until = 1');
    expect(await stores[1]!.outbox.claim(clock(), 1)).toMatchObject([{ perhapsSent: true }]);
  });
});

describe('at the door of Postgres', () => {
  const refusal = async (alone: boolean, address = databaseUrl) => {
    const refused = await openPostgresStore({ databaseUrl: address, alone, clock, waitMs: 200 }).then(
      () => null,
      (error: unknown) => error,
    );
    expect(refused).toBeInstanceOf(StoreTrouble);
    return (refused as Error).message;
  };

  test('a layout that a newer program has written is refused, and stays as it was', async () => {
    await sql("UPDATE settings SET value = '999' WHERE name = 'layout'");
    expect(await refusal(false)).toMatch(/newer version.*999.*Nothing was changed/s);
    expect(await sql("SELECT value FROM settings WHERE name = 'layout'")).toEqual([{ value: '999' }]);
  });

  test('tables of another program are refused, and stay as they were', async () => {
    const other = await newDatabase();
    const client = new pg.Client({ connectionString: other });
    await client.connect();
    await client.query('CREATE TABLE cases (title text)');
    expect(await refusal(false, other)).toMatch(/some other program.*another database/s);
    const { rows } = await client.query(
      "SELECT table_name FROM information_schema.tables WHERE table_schema = 'public'",
    );
    expect(rows).toEqual([{ table_name: 'cases' }]);
    await client.end();
  });

  test.each([
    ['a database that is not there', { pathname: '/nowhere' }, /no database of that name/],
    ['a port where nothing listens', { port: '1' }, /No Postgres server answers/],
  ])('%s is said in a sentence without the password', async (_, change, sentence) => {
    const address = Object.assign(new URL(databaseUrl), change);
    const said = await refusal(false, address.href);
    expect(said).toMatch(sentence);
    expect(said).not.toContain(address.password || 'postgres://');
  });

  test('one process owns the database in pipe mode; a second is told so', async () => {
    const owner = await openPostgresStore({ databaseUrl, alone: true, clock });
    expect(await refusal(true)).toMatch(/Another process owns this Postgres database/);
    await owner.close();
    await (await openPostgresStore({ databaseUrl, alone: true, clock })).close();
  });
});
