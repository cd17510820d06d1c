// Gathers what is to be written in one moment into one transaction, so that many share one sync of the disk; one that fails is undone alone.
import type { DatabaseSync } from 'node:sqlite';
import { explain } from './explain.ts';

export interface GroupCommit {
  /** Runs `work` inside the next transaction, twice if another fails beside it; resolves with its result once that is committed. */
  write<T>(work: () => T): Promise<T>;
  /** How many transactions were committed so far. */
  commits(): number;
  /** Commits what is waiting, and takes nothing more. */
  close(): void;
}

interface Job {
  work: () => unknown;
  resolve: (result: never) => void;
  reject: (why: unknown) => void;
}

/** No more than this in one transaction, so that the first of a flood does not wait for the last. */
const groupSize = 256;

export function makeGroupCommit(db: DatabaseSync, file: string): GroupCommit {
  let jobs: Job[] = [];
  let scheduled = false;
  let closed = false;
  let commits = 0;
  const begin = db.prepare('BEGIN IMMEDIATE');
  const savepoint = db.prepare('SAVEPOINT job');
  const release = db.prepare('RELEASE job');
  const commit = db.prepare('COMMIT');

  function schedule(): void {
    if (scheduled) return;
    scheduled = true;
    setImmediate(commitGroup);
  }

  function commitGroup(): void {
    scheduled = false;
    const group = jobs.slice(0, groupSize);
    jobs = jobs.slice(groupSize);
    if (jobs.length > 0) schedule();
    if (group.length === 0) return;
    try {
      begin.run();
      const settled = runAll(group) ?? runEachInSavepoint(group);
      commit.run();
      commits += 1;
      for (const settle of settled) settle();
    } catch (error) {
      // An error such as a full disk may have ended the transaction already.
      if (db.isTransaction) db.exec('ROLLBACK');
      for (const job of group) job.reject(explain(error, file));
    }
  }

  /** How to tell those who wait, to be done after the commit; null where one of them failed. */
  function runAll(group: Job[]): (() => void)[] | null {
    try {
      return group.map((job) => {
        const result = job.work();
        return () => job.resolve(result as never);
      });
    } catch {
      return null;
    }
  }

  /** A savepoint has every page copied that is then written to, some 5 µs each: only a group in which one failed pays for it. */
  function runEachInSavepoint(group: Job[]): (() => void)[] {
    if (db.isTransaction) db.exec('ROLLBACK');
    begin.run();
    return group.map((job) => {
      savepoint.run();
      try {
        const result = job.work();
        release.run();
        return () => job.resolve(result as never);
      } catch (error) {
        if (!db.isTransaction) throw error;
        db.exec('ROLLBACK TO job; RELEASE job');
        return () => job.reject(explain(error, file));
      }
    });
  }

  return {
    write(work) {
      return new Promise((resolve, reject) => {
        if (closed) {
          reject(new Error('the store is closed'));
          return;
        }
        jobs.push({ work, resolve, reject });
        schedule();
      });
    },
    commits: () => commits,
    close() {
      closed = true;
      while (jobs.length > 0) commitGroup();
    },
  };
}
