// What both engines of the store keep to, word for word the same: one suite that runs on each.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openPostgresStore } from '../../src/store/postgres/open-postgres-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open-sqlite-store.ts';
import type { Decide, OutboxRow, Store } from '../../src/store/store.ts';
import { staffSay, textFrom } from './arrivals.ts';
import { type Counting, countingDecide } from './counting-conversation.ts';
import { newDatabase } from './shared-postgres.ts';

let now = 0;
const clock = () => now;
let place: string;
let store: Store;

const engines = {
  sqlite: {
    place: async () => join(mkdtempSync(join(tmpdir(), 'gaugehand-store-')), 'a.db'),
    open: async (file: string) => openSqliteStore({ file, clock }),
    drop: (file: string) => rmSync(join(file, '..'), { recursive: true }),
  },
  postgres: {
    place: newDatabase,
    open: (databaseUrl: string) => openPostgresStore({ databaseUrl, alone: true, clock }),
    drop: () => {},
  },
};

describe.each(Object.entries(engines))('the store on %s', (_, engine) => {
  beforeEach(async () => {
    now = Date.UTC(2026, 0, 5, 9);
    place = await engine.place();
    store = await engine.open(place);
  });
  afterEach(async () => {
    await store.close();
    engine.drop(place);
  });

  async function reopen(): Promise<void> {
    await store.close();
    store = await engine.open(place);
  }

  const take = (person: string, text: string) => store.turn(textFrom(person, text), countingDecide);

  /** The state as the next turn finds it. */
  async function stateOf(person: string): Promise<Counting | null> {
    let seen: unknown = null;
    const peek: Decide = (loaded) => {
      seen = loaded.state;
      return { state: loaded.state, messages: [], readings: [], caseRow: null, records: [], dueAt: null };
    };
    await store.turn(textFrom(person, 'peek'), peek);
    return seen as Counting | null;
  }

  async function sendAll(): Promise<OutboxRow[]> {
    const sent: OutboxRow[] = [];
    for (;;) {
      const rows = await store.outbox.claim(now, 10);
      if (rows.length === 0) return sent;
      for (const row of rows) {
        const progress = { console: { parts: [`p${row.row}`], whole: true } };
        await store.outbox.mark({ kind: 'sent', row: row.row, at: now, progress });
        sent.push(row);
      }
    }
  }

  const textsOf = (rows: OutboxRow[]) => rows.map(({ message }) => message.text);

  test('a turn is kept over a restart, and numbers go by order of creation', async () => {
    await take('o1', 'a');
    await take('o2', 'b');
    await reopen();
    await take('o1', 'c');
    expect(await stateOf('o1')).toMatchObject({ count: 2, heard: ['a', 'c'] });
    const ids = (await sendAll()).map(({ message }) => message.id);
    expect(ids).toEqual(['c1-1', 'c2-1', 'c1-2', 'c1-3']);
  });

  test('the same platform message is taken once, also after a restart', async () => {
    const arrival = textFrom('o1', 'a');
    expect(await store.turn(arrival, countingDecide)).toEqual({ kind: 'taken', key: 'console:o1' });
    expect(await store.turn(arrival, countingDecide)).toEqual({ kind: 'repeat' });
    await reopen();
    expect(await store.turn(arrival, countingDecide)).toEqual({ kind: 'repeat' });
    expect(await stateOf('o1')).toMatchObject({ heard: ['a'] });
  });

  test('messages that arrive together are each taken once and in their order', async () => {
    const arrivals = Array.from({ length: 60 }, (_, index) => textFrom(`o${index % 4}`, String(index)));
    await Promise.all(
      arrivals.flatMap((arrival) => [arrival, arrival]).map((arrival) => store.turn(arrival, countingDecide)),
    );
    for (const owner of [0, 1, 2, 3]) {
      const expected = arrivals.map((_, index) => index).filter((index) => index % 4 === owner);
      expect((await stateOf(`o${owner}`))?.heard).toEqual(expected.map(String));
    }
  });

  test('a turn that cannot be decided leaves nothing, and does not harm those beside it', async () => {
    const failing = textFrom('o1', 'throw');
    const [a, b, c] = await Promise.allSettled([
      take('o1', 'a'),
      store.turn(failing, countingDecide),
      take('o2', 'c'),
    ]);
    expect([a.status, b.status, c.status]).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    expect(await stateOf('o1')).toMatchObject({ heard: ['a'] });
    // It was never taken, so it is no repeat when it comes again.
    await expect(store.turn(failing, countingDecide)).rejects.toThrow('cannot be decided');
    // An owner whose very first message failed has no number yet.
    await expect(take('o3', 'throw')).rejects.toThrow();
    await take('o4', 'd');
    expect((await sendAll()).map(({ message }) => message.id)).toEqual(['c1-1', 'c2-1', 'c3-1']);
  });

  test('messages leave oldest first in each chat, and never a younger one past an older', async () => {
    await take('o1', 'a');
    await take('o2', 'b');
    await take('o1', 'c');
    const first = await store.outbox.claim(now, 10);
    expect(textsOf(first)).toEqual(['1: a', '1: b']);
    expect(await store.outbox.claim(now, 10)).toEqual([]);
    const row = first[0]!.row;
    const progress = { console: { parts: ['part one'], whole: false } };
    await store.outbox.mark({
      kind: 'retry',
      row,
      dueAt: now + 5000,
      attempts: 1,
      error: 'slow down',
      progress,
    });
    expect(await store.outbox.claim(now, 10)).toEqual([]);
    expect(await store.outbox.nextDue()).toBe(now + 5000);
    now += 5000;
    const [again] = await store.outbox.claim(now, 10);
    expect(again).toMatchObject({ row, attempts: 1, lastError: 'slow down', progress, key: 'console:o1' });
    await store.outbox.mark({
      kind: 'sent',
      row,
      at: now,
      progress: { console: { parts: ['part one', 'part two'], whole: true } },
    });
    expect(textsOf(await store.outbox.claim(now, 10))).toEqual(['2: c']);
    expect(await store.outbox.sentParts('c1-1', 'console')).toEqual(['part one', 'part two']);
    expect(await store.outbox.sentParts('c1-1', 'telegram')).toEqual([]);
  });

  test('what a dead process had in hand is free at once, and said to be perhaps sent', async () => {
    await take('o1', 'a');
    expect((await store.outbox.claim(now, 10)).map(({ perhapsSent }) => perhapsSent)).toEqual([false]);
    await reopen();
    const again = await store.outbox.claim(now, 10);
    expect(again.map(({ perhapsSent }) => perhapsSent)).toEqual([true]);
    await take('o2', 'b');
    expect((await store.outbox.claim(now, 10)).map(({ perhapsSent }) => perhapsSent)).toEqual([false]);
  });

  test('staff inside a case reach its owner; without a case, or with one unknown, they are at the desk', async () => {
    await take('o1', 'case');
    const [open] = await store.listCases();
    expect(open).toMatchObject({ key: 'console:o1', state: 'waiting' });
    expect(await store.turn(staffSay('hello', open!.id), countingDecide)).toEqual({
      kind: 'taken',
      key: 'console:o1',
    });
    expect(await store.turn(staffSay('list', null), countingDecide)).toEqual({ kind: 'taken', key: 'desk' });
    expect(await store.turn(staffSay('list', 'no-such'), countingDecide)).toEqual({
      kind: 'taken',
      key: 'desk',
    });
    expect(textsOf(await sendAll())).toContain(`desk heard list; open: ${open!.id}`);
  });

  test("the desk's state can be read in an owner's turn", async () => {
    await store.turn(staffSay('closed until Monday', null), countingDecide);
    let seen: unknown;
    await store.turn(textFrom('o1', 'a'), (loaded, arrival) => {
      seen = loaded.desk;
      return countingDecide(loaded, arrival);
    });
    expect(seen).toMatchObject({ heard: ['closed until Monday'] });
  });

  test('readings are loaded while a case is open, or when they are asked for, and one can be struck', async () => {
    await take('o1', 'a');
    await take('o1', 'b');
    await take('o1', 'check readings');
    await take('o1', 'case');
    await take('o1', 'd');
    await take('o1', 'close');
    await take('o1', 'f');
    const texts = textsOf(await sendAll()).filter((text) => /^\d+: /.test(text) && !text.includes('even'));
    expect(texts).toEqual([
      '1: a',
      '2: b',
      '3: check readings, 2 readings before',
      '4: case',
      '5: d, 4 readings before',
      '6: close, 5 readings before',
      '7: f',
    ]);
    const struck: Decide = (loaded) => ({
      state: loaded.state,
      messages: [],
      readings: [{ number: 2, at: now, stage: 'count', measure: 'text', body: { text: 'b', struck: true } }],
      caseRow: null,
      records: [],
      dueAt: null,
    });
    await store.turn(textFrom('o1', 'strike'), struck);
    const kept = await store.readings('console:o1');
    expect(kept.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(kept[1]!.body).toEqual({ text: 'b', struck: true });
  });

  test('a conversation is woken when its instant comes, once', async () => {
    await take('o1', 'remind');
    expect(await store.calendar.due(now)).toEqual([]);
    expect(await store.calendar.nextDue()).toBe(now + 3_600_000);
    expect(await store.turn({ kind: 'due', key: 'console:o1' }, countingDecide)).toEqual({ kind: 'repeat' });
    now += 3_600_000;
    expect(await store.calendar.due(now)).toEqual(['console:o1']);
    const wake = () => store.turn({ kind: 'due', key: 'console:o1' }, countingDecide);
    expect(await Promise.all([wake(), wake()])).toEqual([
      { kind: 'taken', key: 'console:o1' },
      { kind: 'repeat' },
    ]);
    expect(await store.calendar.nextDue()).toBeNull();
    await store.calendar.wake('tips', now);
    await store.calendar.wake('tips', now + 1);
    expect(await store.calendar.nextDue()).toBe(now + 1);
  });

  test('the frozen clock remembers where it is and where it was going', async () => {
    expect(await store.calendar.instant()).toBeNull();
    await store.calendar.setInstant(now);
    expect(await store.calendar.setTarget(now + 10, 'console', 'line 1')).toBe(true);
    expect(await store.calendar.setTarget(now + 20, 'console', 'line 1')).toBe(false);
    await reopen();
    expect([await store.calendar.instant(), await store.calendar.target()]).toEqual([now, now + 10]);
  });

  test('a refusal closes the row and is a turn of its conversation, once', async () => {
    await take('o1', 'a');
    const [row] = await store.outbox.claim(now, 1);
    const refusal = {
      kind: 'refused',
      key: row!.key,
      row: row!.row,
      message: row!.message,
      why: 'blocked',
    } as const;
    expect(await store.turn(refusal, countingDecide)).toEqual({ kind: 'taken', key: 'console:o1' });
    expect(await store.turn(refusal, countingDecide)).toEqual({ kind: 'repeat' });
    expect(textsOf(await sendAll())).toEqual(['not taken by the platform: c1-1']);
  });

  test('snapshots are kept while a conversation pins them', async () => {
    await store.snapshots.put('hash-1', '{"a":1}');
    await store.snapshots.put('hash-2', '{"a":2}');
    await store.snapshots.put('hash-3', '{"a":3}');
    now += 1000;
    const pinning: Decide = (loaded) => ({
      state: {},
      messages: [],
      readings: [],
      caseRow: null,
      records: [],
      dueAt: null,
      ...(loaded.state === null ? { pins: ['hash-2', 'hash-3'] } : {}),
    });
    await store.turn(textFrom('o1', 'a'), pinning);
    await store.turn(textFrom('o1', 'b'), pinning);
    expect(await store.snapshots.inUse()).toEqual(['hash-2', 'hash-3']);
    await store.forget(now);
    expect(await store.snapshots.get('hash-1')).toBeUndefined();
    expect(await store.snapshots.get('hash-2')).toBe('{"a":2}');
  });

  test("an adapter's links are set, changed, listed by how they begin, and dropped", async () => {
    const { links } = store;
    await links.set('telegram:topic:1', '77');
    await links.set('telegram:topic:2', '78');
    await links.set('telegram:topic:2', '79');
    await links.set('telegram_topic:3', '80');
    expect(await links.list('telegram:')).toEqual([
      { link: 'telegram:topic:1', value: '77' },
      { link: 'telegram:topic:2', value: '79' },
    ]);
    await links.delete('telegram:topic:1');
    expect([await links.get('telegram:topic:1'), await links.get('telegram:topic:2')]).toEqual([
      undefined,
      '79',
    ]);
  });

  test('cases and records are listed newest first, and found by their words whatever the letter case', async () => {
    for (const owner of ['anna', 'berta', 'carl']) {
      now += 1000;
      await take(owner, 'case');
    }
    await take('berta', 'close');
    expect((await store.listCases()).map(({ key }) => key)).toEqual([
      'console:carl',
      'console:berta',
      'console:anna',
    ]);
    const open = await store.listCases({ states: ['waiting', 'taken'], limit: 1 });
    expect(open.map(({ key }) => key)).toEqual(['console:carl']);
    expect((await store.findCases('GRÖSSE')).length).toBe(0);
    expect((await store.findCases('GRÖßE anna')).map(({ key }) => key)).toEqual(['console:anna']);
    expect(await store.findCases('%')).toEqual([]);
    const [record] = await store.records({ key: 'console:berta' });
    expect(record).toMatchObject({ code: 'r2-2', result: 'set', body: { count: 2 } });
    expect(await store.records({ since: now + 1 })).toEqual([]);
    expect(await store.records({ code: 'r2-2' })).toEqual([record]);
  });

  test('age takes what was sent and taken and all of the finished, unlinks their records, and leaves the rest', async () => {
    await take('o1', 'a');
    await take('o2', 'case');
    await sendAll();
    await take('o3', 'c');
    await store.links.set('telegram:chat:1', 'console:o1', 'console:o1');
    const old = textFrom('o1', 'late');
    now += 1000;
    await store.forget(now);
    expect(await store.readings('console:o1')).toEqual([]);
    expect((await store.readings('console:o2')).length).toBe(1);
    expect(await store.outbox.sentParts('c1-1', 'console')).toEqual([]);
    expect(textsOf(await sendAll())).toEqual(['1: c']);
    expect(await store.turn(old, countingDecide)).toMatchObject({ kind: 'taken' });
    expect(await stateOf('o1')).toMatchObject({ heard: ['late'] });
    expect(await store.links.get('telegram:chat:1')).toBeUndefined();
    // A case that is open keeps its owner, and so does what is not sent yet.
    expect(await stateOf('o2')).toMatchObject({ heard: ['case'] });
    expect(await stateOf('o3')).toMatchObject({ heard: ['c'] });
  });

  test('the archive is given on request: cases and records of every state, newest first', async () => {
    for (const owner of ['anna', 'berta']) {
      now += 1000;
      await take(owner, 'case');
    }
    await take('anna', 'close');
    const asked: string[][] = [];
    const asking: Decide = (loaded) => {
      if (!loaded.archive) return { needs: 'archive' };
      const { cases, records } = loaded.archive;
      asked.push([
        ...cases.map(({ key, state }) => `${key} ${state}`),
        ...records.map(({ key }) => `${key}`),
      ]);
      return { state: null, messages: [], readings: [], caseRow: null, records: [], dueAt: null };
    };
    await store.turn(staffSay('look', null), asking);
    expect(asked).toEqual([['console:berta waiting', 'console:anna closed', 'console:anna']]);
  });

  test('what is said in passing is sent like all else, and leaves no copy', async () => {
    const passing: Decide = (loaded, arrival) => {
      const decided = countingDecide(loaded, arrival);
      return 'needs' in decided ? decided : { ...decided, passing: true };
    };
    await store.turn(textFrom('o1', 'hush'), passing);
    await reopen();
    const [row] = await sendAll();
    expect(row?.message.text).toBe('1: hush');
    await store.turn(textFrom('o1', 'still here'), countingDecide);
    expect(await stateOf('o1')).toMatchObject({ heard: ['hush', 'still here'] });
    expect(await store.outbox.sentParts(row?.message.id ?? '', 'console')).toEqual([]);
  });

  test('text that a database could stumble over comes back as it was', async () => {
    const odd = `quote ' double " back \\ brace {a,b} percent % null NULL emoji 🔧 line\nbreak tab\t`;
    await take('o1', odd);
    expect((await sendAll())[0]!.message.text).toBe(`1: ${odd}`);
    expect((await stateOf('o1'))!.heard).toEqual([odd]);
    expect((await store.readings('console:o1'))[0]!.body).toEqual({ text: odd });
  });
});
