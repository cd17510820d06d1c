// Writes that share a transaction on the embedded database: each stands or falls alone, unless the disk takes none of them.
import { createSecretKey } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type GroupCommit, makeGroupCommit } from '../../src/store/sqlite/group-commit.ts';
import { openFile } from '../../src/store/sqlite/open-file.ts';
import { makeTakeTurn } from '../../src/store/sqlite/take-turn.ts';
import { StoreTrouble } from '../../src/store/store.ts';
import { textFrom } from './arrivals.ts';
import { countingDecide } from './counting-conversation.ts';

let folder: string;
let db: DatabaseSync;
let group: GroupCommit;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-group-'));
  db = await openFile(join(folder, 'a.db'));
  group = makeGroupCommit(db, 'a.db');
});
afterEach(() => {
  db.close();
  rmSync(folder, { recursive: true, force: true });
});

const put = (link: string, value = 'x') =>
  group.write(() => {
    db.prepare('INSERT INTO links (link, value) VALUES (?, ?)').run(link, value);
  });
const links = () =>
  db
    .prepare('SELECT link FROM links ORDER BY link')
    .all()
    .map(({ link }) => link);

describe('writes of one moment', () => {
  test('share one commit, however many come', async () => {
    await Promise.all(Array.from({ length: 100 }, (_, index) => put(`link ${index}`)));
    expect(group.commits()).toBe(1);
    expect(links().length).toBe(100);
  });

  test('more than a group of them is spread over several commits, and all are kept', async () => {
    await Promise.all(Array.from({ length: 600 }, (_, index) => put(`link ${index}`)));
    expect(group.commits()).toBe(3);
    expect(links().length).toBe(600);
  });

  test('one that fails is undone alone', async () => {
    const half = group.write(() => {
      db.prepare("INSERT INTO links (link, value) VALUES ('half', 'x')").run();
      throw new Error('it went wrong half way');
    });
    const settled = await Promise.allSettled([put('before'), half, put('before'), put('after')]);
    expect(settled.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'rejected', 'fulfilled']);
    expect(links()).toEqual(['after', 'before']);
  });

  test('are committed before anyone is told', async () => {
    let told = false;
    const written = put('a').then(() => {
      told = true;
      expect(db.isTransaction).toBe(false);
    });
    expect(told).toBe(false);
    await written;
  });
});

describe('a disk that takes no more', () => {
  // max_page_count makes SQLite answer SQLITE_FULL as a full disk does: https://www.sqlite.org/rescode.html#full
  const fill = () => {
    const { page_count: pages } = db.prepare('PRAGMA page_count').get() as { page_count: number };
    db.exec(`PRAGMA max_page_count = ${pages}`);
  };
  const makeRoom = () => db.exec('PRAGMA max_page_count = 1000000');

  test('when full, it is said in a sentence, and nothing half-written stays', async () => {
    const takeTurn = makeTakeTurn(db, createSecretKey('secret', 'utf8'));
    const arrival = textFrom('o1', 'long '.repeat(20_000));
    const take = () => group.write(() => takeTurn(arrival, countingDecide, 0));
    fill();
    await expect(take()).rejects.toThrow(
      /disk that holds a.db is full. Nothing of this step was kept; make room/,
    );
    for (const table of ['inbox', 'conversations', 'readings', 'outbox']) {
      expect(db.prepare(`SELECT count(*) AS count FROM ${table}`).get()).toEqual({ count: 0 });
    }
    makeRoom();
    expect((await take()).result).toEqual({ kind: 'taken', key: 'console:o1' });
  });

  test('when full, a small write beside a large one is not said to be kept unless it is', async () => {
    fill();
    const settled = await Promise.allSettled([put('small'), put('large', 'x'.repeat(1e6)), put('tiny')]);
    const kept = links();
    const names = ['small', 'large', 'tiny'];
    expect(kept).toEqual(names.filter((_, index) => settled[index]?.status === 'fulfilled').sort());
    expect(kept).not.toContain('large');
  });

  test('when read-only, it is said in a sentence', async () => {
    db.exec('PRAGMA query_only = ON');
    const refused = await put('a').catch((error: unknown) => error);
    expect(refused).toBeInstanceOf(StoreTrouble);
    expect((refused as Error).message).toMatch(/cannot be written to/);
    db.exec('PRAGMA query_only = OFF');
    await put('a');
    expect(links()).toEqual(['a']);
  });
});
