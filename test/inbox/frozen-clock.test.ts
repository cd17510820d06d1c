// The frozen clock: what falls due on the way happens in due order, each at its own instant, once, also over a restart.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeFrozenClock } from '../../src/inbox/frozen-clock.ts';
import { openSqliteStore } from '../../src/store/sqlite/open-sqlite-store.ts';
import type { Arrival, Decide, Store } from '../../src/store/store.ts';
import { textFrom } from '../store/arrivals.ts';

const start = Date.UTC(2026, 0, 5, 9);
const hour = 3_600_000;
let folder: string;
let file: string;
let woken: string[];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-clock-'));
  file = join(folder, 'a.db');
  woken = [];
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Owners name the hours after which they want to be woken, one after the other: "2 5". */
const alarm: Decide = (loaded, arrival: Arrival) => {
  const left =
    arrival.kind === 'message' && arrival.message.body.kind === 'text'
      ? arrival.message.body.text.split(' ').map(Number)
      : (loaded.state as number[]);
  if (arrival.kind === 'due') woken.push(`${loaded.key} at ${(loaded.now - start) / hour}`);
  const [next, ...rest] = left;
  const dueAt = next === undefined ? null : loaded.now + next * hour;
  return { state: rest, messages: [], readings: [], caseRow: null, records: [], dueAt };
};

async function open(at = start, takeDue?: (store: Store) => (key: string) => Promise<void>) {
  const frozen = makeFrozenClock(at, 'console');
  const store = await openSqliteStore({ file, clock: frozen.clock });
  const usual = async (key: string) => {
    await store.turn({ kind: 'due', key }, alarm);
  };
  const { calendar, outbox } = store;
  const time = frozen.attach({
    calendar,
    outbox,
    takeDue: takeDue?.(store) ?? usual,
    settle: async () => {},
  });
  await time.resume();
  return { store, time };
}

describe('the frozen clock', () => {
  test('wakes in due order, standing at each instant', async () => {
    const { store, time } = await open();
    await store.turn(textFrom('a', '2 5'), alarm);
    await store.turn(textFrom('b', '3 3 3'), alarm);
    await time.advance(8 * hour, 'line 1');
    expect(woken).toEqual(['console:a at 2', 'console:b at 3', 'console:b at 6', 'console:a at 7']);
    expect(time.now()).toBe(start + 8 * hour);
    await time.advance(hour, 'line 2');
    expect(woken.at(-1)).toBe('console:b at 9');
    await store.close();
  });

  test('moves once for each line, and starts again at the later of its own memory and what it is told', async () => {
    const first = await open();
    await first.time.advance(2 * hour, 'line 1');
    await first.time.advance(2 * hour, 'line 1');
    expect(first.time.now()).toBe(start + 2 * hour);
    await first.store.close();
    const second = await open(start);
    expect(second.time.now()).toBe(start + 2 * hour);
    await second.time.advance(2 * hour, 'line 1');
    expect(second.time.now()).toBe(start + 2 * hour);
    await second.store.close();
    const third = await open(start + 5 * hour);
    expect(third.time.now()).toBe(start + 5 * hour);
    await third.store.close();
  });

  test('completes on a new start the move that it was stopped in', async () => {
    const dying = await open(start, (store) => async (key) => {
      if (woken.length === 1) throw new Error('the process dies here');
      await store.turn({ kind: 'due', key }, alarm);
    });
    await dying.store.turn(textFrom('a', '2 2'), alarm);
    await expect(dying.time.advance(10 * hour, 'line 1')).rejects.toThrow('dies');
    await dying.store.close();
    const again = await open();
    expect(woken).toEqual(['console:a at 2', 'console:a at 4']);
    expect(again.time.now()).toBe(start + 10 * hour);
    await again.store.close();
  });

  test('gives up on a conversation that asks to be woken in its own past, instead of turning for ever', async () => {
    const { store, time } = await open();
    await store.turn(textFrom('a', `1${' 0'.repeat(10_001)}`), alarm);
    await expect(time.advance(2 * hour, 'line 1')).rejects.toThrow(
      'cannot get past 2026-01-05T10:00:00.000Z',
    );
    await store.close();
  }, 60_000);
});
