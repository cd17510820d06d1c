// G4 to G6: turns on the embedded database, one at a time, with sent marks riding along, and from many chats at once.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openSqliteStore, type SqliteStore } from '../../src/store/sqlite/open-sqlite-store.ts';
import { openBareSqlite } from './bare-sqlite.ts';
import { alternate, type BenchOptions, type BenchResult, median, quantile, result } from './measure.ts';
import { benchArrival, decideBench } from './one-kilobyte.ts';

const chats = 1000;
const warmUp = 800;
const progress = { bench: { parts: ['1'], whole: true } };

/** Messages a second over `ms`, on a new file each time. */
async function rate(
  ms: number,
  open: (file: string) => Promise<(turn: number) => Promise<void> | void>,
  close: () => Promise<void> | void,
): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'gaugehand-bench-'));
  const take = await open(join(folder, 'a.db'));
  let turns = 0;
  // Long enough for the write-ahead log to have come round once: a log that still grows syncs more slowly than one written over.
  for (; turns < warmUp; turns += 1) await take(turns);
  const began = performance.now();
  while (performance.now() - began < ms) {
    await take(turns);
    turns += 1;
  }
  const perSecond = ((turns - warmUp) * 1000) / (performance.now() - began);
  await close();
  rmSync(folder, { recursive: true });
  return perSecond;
}

const place = (turn: number) => [turn % chats, Math.floor(turn / chats)] as const;

function bareTwoCommits(ms: number): Promise<number> {
  let close = () => {};
  const open = async (file: string) => {
    const bare = openBareSqlite(file);
    close = bare.close;
    return (turn: number) => bare.twoCommits(...place(turn));
  };
  return rate(ms, open, () => close());
}

/** The whole way: a turn, its replies taken from the queue, and marked as sent in a commit of their own. */
function oursTwoCommits(ms: number): Promise<number> {
  let store: SqliteStore;
  const open = async (file: string) => {
    store = await openSqliteStore({ file, clock: Date.now });
    return async (turn: number) => {
      await store.turn(benchArrival(...place(turn)), decideBench);
      await markAll(store);
    };
  };
  return rate(ms, open, () => store.close());
}

async function markAll({ outbox }: SqliteStore): Promise<number> {
  const rows = await outbox.claim(Date.now(), 1000);
  await Promise.all(rows.map(({ row }) => outbox.mark({ kind: 'sent', row, at: Date.now(), progress })));
  return rows.length;
}

/** As under load: what was sent is recorded with the next turn. */
async function oursRiding(ms: number, commitsPerMessage: number[]): Promise<number> {
  let store: SqliteStore;
  let turns = 0;
  const open = async (file: string) => {
    store = await openSqliteStore({ file, clock: Date.now });
    return async (turn: number) => {
      turns = turn + 1;
      const marked = markAll(store);
      await store.turn(benchArrival(...place(turn)), decideBench);
      await marked;
    };
  };
  return rate(ms, open, async () => {
    await markAll(store);
    commitsPerMessage.push(store.commits() / turns);
    await store.close();
  });
}

/** So many chats, each sending its next message as soon as the last is acknowledged. */
async function oursAtOnce(
  ms: number,
  atOnce: number,
  waits: { p50: number[]; p99: number[] },
): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'gaugehand-bench-'));
  const store = await openSqliteStore({ file: join(folder, 'a.db'), clock: Date.now });
  const took: number[] = [];
  const began = performance.now();
  const oneChat = async (chat: number) => {
    for (let count = 0; performance.now() - began < ms; count += 1) {
      const asked = performance.now();
      await store.turn(benchArrival(chat, count), decideBench);
      took.push(performance.now() - asked);
    }
  };
  const sending = async () => {
    while (performance.now() - began < ms) {
      if ((await markAll(store)) === 0) await new Promise((resolve) => setImmediate(resolve));
    }
  };
  await Promise.all([sending(), ...Array.from({ length: atOnce }, (_, chat) => oneChat(chat))]);
  const perSecond = (took.length * 1000) / (performance.now() - began);
  await store.close();
  rmSync(folder, { recursive: true });
  waits.p50.push(quantile(took, 0.5));
  waits.p99.push(quantile(took, 0.99));
  return perSecond;
}

export async function measureDurableTurn(options: BenchOptions = {}): Promise<BenchResult[]> {
  const rounds = options.quick ? 3 : 9;
  const ms = options.quick ? 250 : 600;
  const commits: number[] = [];
  const waits16 = { p50: [] as number[], p99: [] as number[] };
  const waits64 = { p50: [] as number[], p99: [] as number[] };
  const rates = await alternate(rounds, {
    bare: () => bareTwoCommits(ms),
    ours: () => oursTwoCommits(ms),
    riding: () => oursRiding(ms, commits),
    at16: () => oursAtOnce(ms, 16, waits16),
    at64: () => oursAtOnce(ms, 64, waits64),
  });
  const unit = 'messages/s';
  return [
    result({
      id: 'G4',
      what: 'full durable turn, one at a time, against bare node:sqlite',
      unit,
      ours: rates.ours,
      other: rates.bare,
      goal: '>= 0.8',
    }),
    result({
      id: 'G5',
      what: 'commits for each message, sent marks riding along',
      unit: 'commits',
      ours: [median(commits)],
      goal: '<= 1.01',
    }),
    result({
      id: 'G5',
      what: 'sent marks riding along, against the two-commit job',
      unit,
      ours: rates.riding,
      other: rates.bare,
      goal: '>= 1.3',
    }),
    ...[
      { atOnce: 16, ours: rates.at16, waits: waits16 },
      { atOnce: 64, ours: rates.at64, waits: waits64 },
    ].flatMap(({ atOnce, ours, waits }) => [
      result({
        id: 'G6',
        what: `${atOnce} chats at once, against the two-commit job one by one`,
        unit,
        ours,
        other: rates.bare,
        goal: '>= 5',
      }),
      result({
        id: 'G6',
        what: `${atOnce} chats at once: the slowest of a hundred against the usual wait`,
        unit: 'ms',
        ours: waits.p99,
        other: waits.p50,
        goal: '<= 10',
      }),
    ]),
  ];
}
