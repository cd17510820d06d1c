// The embedded database as a file: durability settings, one owner, and refusals that leave it untouched.
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openFile } from '../../src/store/sqlite/open-file.ts';
import { openSqliteStore } from '../../src/store/sqlite/open-sqlite-store.ts';
import { StoreTrouble } from '../../src/store/store.ts';
import { textFrom } from './arrivals.ts';
import { countingDecide } from './counting-conversation.ts';

let folder: string;
let file: string;
const clock = () => Date.UTC(2026, 0, 5);

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-file-'));
  file = join(folder, 'deep', 'a.db');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const open = (waitMs = 200) => openSqliteStore({ file, clock, waitMs });

async function trouble(work: () => Promise<unknown>): Promise<string> {
  try {
    await work();
  } catch (error) {
    expect(error).toBeInstanceOf(StoreTrouble);
    return (error as Error).message;
  }
  throw new Error('nothing was refused');
}

describe('the database file', () => {
  test('every commit is synced to the disk, in a write-ahead log that one process owns', async () => {
    const db = await openFile(file);
    // https://www.sqlite.org/pragma.html#pragma_synchronous: 2 is FULL, "syncs the WAL after each transaction commit"
    expect(db.prepare('PRAGMA synchronous').get()).toEqual({ synchronous: 2 });
    expect(db.prepare('PRAGMA journal_mode').get()).toEqual({ journal_mode: 'wal' });
    expect(db.prepare('PRAGMA locking_mode').get()).toEqual({ locking_mode: 'exclusive' });
    expect(db.prepare('PRAGMA secure_delete').get()).toEqual({ secure_delete: 1 });
    db.close();
  });

  test('a second process is told that another has it, and waits until then', async () => {
    const store = await open();
    expect(await trouble(() => open(50))).toMatch(/Another process has the database .* Stop it first/);
    await store.close();
    await (await open()).close();
  });

  test('a second process gets it as soon as the first is killed', async () => {
    await (await open()).close();
    const holder = spawn(process.execPath, ['-e', holding(file)], { stdio: ['ignore', 'pipe', 'inherit'] });
    await new Promise((resolve) => holder.stdout.once('data', resolve));
    setTimeout(() => holder.kill('SIGKILL'), 300);
    await (await open(10_000)).close();
    expect(holder.killed).toBe(true);
  });

  test('a layout that a newer program has written is refused, and the file stays as it was', async () => {
    await (await open()).close();
    const db = new DatabaseSync(file);
    db.exec('PRAGMA user_version = 999');
    db.close();
    const before = readFileSync(file);
    expect(await trouble(() => open())).toMatch(
      /newer version .* layout is number 999.* Start the newer program/s,
    );
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  test('a file of another program is refused, and stays as it was', async () => {
    await (await open()).close();
    const other = join(folder, 'other.db');
    const db = new DatabaseSync(other);
    db.exec('CREATE TABLE songs (title TEXT)');
    db.close();
    const before = readFileSync(other);
    expect(await trouble(() => openFile(other))).toMatch(/some other program/);
    expect(readFileSync(other).equals(before)).toBe(true);
  });

  test.each([
    ['no database at all', (bytes: Buffer) => bytes.fill('x', 0, 200)],
    ['a page overwritten in the middle', (bytes: Buffer) => bytes.fill(0xa5, 4096 * 3, 4096 * 5)],
    ['the end cut off', (bytes: Buffer) => bytes.subarray(0, 4096 * 4 + 100)],
  ])('a damaged file (%s) is refused, and stays as it was', async (_, harm) => {
    const store = await open();
    for (let index = 0; index < 50; index += 1)
      await store.turn(textFrom('o1', `text ${index}`), countingDecide);
    await store.close();
    writeFileSync(file, harm(readFileSync(file)));
    const before = readFileSync(file);
    expect(await trouble(() => open())).toMatch(/damaged.*Nothing was changed.*restore a copy/s);
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  test('a folder that cannot be written to is said in a sentence', async () => {
    const blocked = join(folder, 'blocked');
    writeFileSync(blocked, 'a file where a folder should be');
    expect(await trouble(() => openFile(join(blocked, 'deep', 'a.db')))).toMatch(
      /cannot be written to .* may write there/,
    );
  });
});

function holding(path: string): string {
  return `const { DatabaseSync } = require('node:sqlite');
    const db = new DatabaseSync(${JSON.stringify(path)});
    db.exec('PRAGMA locking_mode = EXCLUSIVE; BEGIN IMMEDIATE; PRAGMA user_version = 1; COMMIT');
    console.log('held'); setInterval(() => {}, 1000);`;
}
