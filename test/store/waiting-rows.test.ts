// The unsent rows in memory against a plain model: oldest first in each destination, one in hand at a time, nothing lost.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeWaitingRows, type QueuedRow } from '../../src/store/sqlite/waiting-rows.ts';

function row(number: number, destination: string, dueAt = 0, key = destination): QueuedRow {
  const message = { id: `m${number}` } as unknown as QueuedRow['message'];
  const nothingYet = { attempts: 0, lastError: null, progress: {}, perhapsSent: false };
  return { row: number, key, destination, message, dueAt, ...nothingYet };
}

const numbers = (rows: QueuedRow[]) => rows.map((taken) => taken.row);

describe('the waiting rows', () => {
  test('give the oldest of each destination, and the next only when that is gone', () => {
    const waiting = makeWaitingRows();
    waiting.add([row(1, 'a'), row(2, 'b'), row(3, 'a')]);
    expect(numbers(waiting.take(0, 10))).toEqual([1, 2]);
    expect(numbers(waiting.take(0, 10))).toEqual([]);
    waiting.drop(1);
    expect(numbers(waiting.take(0, 10))).toEqual([3]);
  });

  test('hold a whole destination back while its oldest waits', () => {
    const waiting = makeWaitingRows();
    waiting.add([row(1, 'a'), row(2, 'a'), row(3, 'b')]);
    waiting.take(0, 1);
    waiting.giveBack(1, { dueAt: 50, attempts: 1 });
    expect(waiting.nextDue()).toBe(0);
    expect(numbers(waiting.take(10, 10))).toEqual([3]);
    expect(waiting.nextDue()).toBe(50);
    expect(waiting.take(50, 10)).toMatchObject([{ row: 1, attempts: 1 }]);
  });

  test('lose all of an erased conversation, and nothing of others in the same destination', () => {
    const waiting = makeWaitingRows();
    waiting.add([row(1, 'desk', 0, 'o1'), row(2, 'desk', 0, 'o2'), row(3, 'o1', 0, 'o1')]);
    waiting.dropAllOf('o1');
    expect(numbers(waiting.take(0, 10))).toEqual([2]);
    // A mark of a row that was erased while in hand changes nothing.
    waiting.drop(1);
    waiting.giveBack(3, { dueAt: 9 });
    expect(waiting.nextDue()).toBeNull();
  });

  test('let every row out exactly once and in the order of its destination, whatever comes between', () => {
    const steps = fc.array(
      fc.oneof(
        fc.record({ kind: fc.constant('add' as const), destination: fc.constantFrom('a', 'b', 'c') }),
        fc.record({ kind: fc.constant('take' as const), limit: fc.integer({ min: 1, max: 3 }) }),
        fc.record({ kind: fc.constant('done' as const), sent: fc.boolean() }),
      ),
    );
    fc.assert(
      fc.property(steps, (wanted) => {
        const waiting = makeWaitingRows();
        const added: QueuedRow[] = [];
        const inHand: QueuedRow[] = [];
        const out: QueuedRow[] = [];
        const finish = (sent: boolean) => {
          const done = inHand.shift();
          if (done === undefined) return;
          if (sent) waiting.drop(done.row);
          else waiting.giveBack(done.row, {});
          if (sent) out.push(done);
        };
        for (const step of wanted) {
          if (step.kind === 'add') {
            const fresh = row(added.length + 1, step.destination);
            added.push(fresh);
            waiting.add([fresh]);
          } else if (step.kind === 'take') {
            inHand.push(...waiting.take(0, step.limit));
          } else {
            finish(step.sent);
          }
        }
        for (;;) {
          inHand.push(...waiting.take(0, 10));
          if (inHand.length === 0) break;
          finish(true);
        }
        for (const destination of ['a', 'b', 'c']) {
          const of = (rows: QueuedRow[]) => numbers(rows.filter((some) => some.destination === destination));
          expect(of(out)).toEqual(of(added));
        }
      }),
    );
  });
});
