// The way of a queued message to its platform: order, tries, refusals, several platforms at one desk, pictures, and stopping.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Adapter, SendOutcome } from '../../src/chat/adapter.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import type { Pacing } from '../../src/outbox/pace.ts';
import { makeOutbox, type OutboxOptions, type RunningOutbox } from '../../src/outbox/run-outbox.ts';
import { openSqliteStore } from '../../src/store/sqlite/open-sqlite-store.ts';
import type { Decide, Store } from '../../src/store/store.ts';
import { textFrom } from '../store/arrivals.ts';
import { countingDecide } from '../store/counting-conversation.ts';
import { aPlatform, type FakePlatform } from './a-platform.ts';

let folder: string;
let store: Store;
let now: number;
let platform: FakePlatform;
let reports: string[];

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-outbox-'));
  now = Date.UTC(2026, 0, 5);
  store = await openSqliteStore({ file: join(folder, 'a.db'), clock: () => now });
  platform = aPlatform();
  reports = [];
});
afterEach(async () => {
  await store.close();
  rmSync(folder, { recursive: true });
});

function outboxWith(more: Partial<OutboxOptions> = {}): RunningOutbox {
  return makeOutbox({
    store,
    clock: () => now,
    route: () => [platform],
    paint: null,
    pacing: null,
    refused: async ({ key, row, message }, why, partly) => {
      await store.turn({ kind: 'refused', key, row, message, why, partly }, countingDecide);
    },
    report: (trouble) => void reports.push(trouble),
    atOnce: 8,
    ...more,
  });
}

const say = (person: string, text: string) => store.turn(textFrom(person, text), countingDecide);
const later = (waitMs: number | null, scope: 'chat' | 'platform', sentParts: string[] = []): SendOutcome => ({
  kind: 'retry',
  waitMs,
  scope,
  sentParts,
  why: 'slow down',
});

/** A turn that queues one message, as given. */
const queueing =
  (message: Partial<OutgoingMessage>): Decide =>
  (loaded) => ({
    state: loaded.state,
    messages: [
      {
        id: 'm',
        edit: 0,
        to: { kind: 'tips' },
        text: 'm',
        choices: [],
        picture: null,
        facts: {},
        ...message,
      },
    ],
    readings: [],
    caseRow: null,
    records: [],
    dueAt: null,
  });

describe('what is queued', () => {
  test('leaves in order, and is sent once', async () => {
    await say('o1', 'a');
    await say('o1', 'b');
    await outboxWith().drain();
    await outboxWith().drain();
    expect(platform.texts()).toEqual(['1: a', '2: b', '2 is even']);
    expect(await store.outbox.nextDue()).toBeNull();
  });

  test('waits as long as the platform says, with the younger ones behind it, and goes on where it was', async () => {
    await say('o1', 'a');
    await say('o1', 'b');
    await say('o2', 'c');
    platform.answers.push(later(7000, 'chat', ['part 1']));
    const outbox = outboxWith();
    await outbox.drain();
    expect(platform.texts()).toEqual(['1: a', '1: c']);
    now += 6999;
    await outbox.drain();
    expect(platform.sent.length).toBe(2);
    now += 1;
    await outbox.drain();
    expect(platform.texts().slice(2)).toEqual(['1: a', '2: b', '2 is even']);
    expect(platform.sent[2]).toMatchObject({ sentParts: ['part 1'], perhapsSent: false });
    expect(platform.sent[3]).toMatchObject({ sentParts: [], perhapsSent: false });
  });

  test('is not given up, however often a busy platform says when to come again', async () => {
    await say('o1', 'a');
    const outbox = outboxWith();
    for (let time = 0; time < 150; time += 1) {
      platform.answers.push(later(1000, 'chat'));
      await outbox.drain();
      now += 1000;
    }
    expect(await store.outbox.nextDue()).not.toBeNull();
    await outbox.drain();
    expect(platform.texts()).toHaveLength(151);
    expect(await store.outbox.nextDue()).toBeNull();
    expect(reports.filter((report) => report.startsWith('refused'))).toEqual([]);
  });

  test('is held back for every chat where the whole platform wants a pause', async () => {
    platform.answers.push(later(5000, 'platform'));
    const outbox = outboxWith({ atOnce: 1 });
    await say('o1', 'a');
    await outbox.drain();
    await say('o2', 'b');
    const draining = outbox.drain();
    now += 5000;
    await draining;
    await outbox.drain();
    expect(platform.texts()[0]).toBe('1: a');
    expect(platform.texts().slice(1).sort()).toEqual(['1: a', '1: b']);
  });

  test('is tried again after an error, ever later but at least each quarter of an hour', async () => {
    await say('o1', 'a');
    const outbox = outboxWith();
    const waits: number[] = [];
    for (let tries = 0; tries < 14; tries += 1) {
      platform.answers.push(new Error('the line is down'));
      await outbox.drain();
      const next = await store.outbox.nextDue();
      waits.push((next ?? 0) - now);
      now = next ?? now;
    }
    expect(waits.slice(0, 4)).toEqual([1000, 2000, 4000, 8000]);
    expect(waits.slice(-2)).toEqual([900_000, 900_000]);
    await outbox.drain();
    expect(await store.outbox.nextDue()).toBeNull();
  });

  test('counts as refused after a day of tries, so that it does not hold its chat up for ever', async () => {
    await say('o1', 'a');
    const outbox = outboxWith();
    for (let tries = 0; tries < 100; tries += 1) platform.answers.push(new Error('never'));
    for (let next = await store.outbox.nextDue(); next !== null; next = await store.outbox.nextDue()) {
      now = Math.max(now, next);
      await outbox.drain();
    }
    expect(platform.texts().at(-1)).toBe('not taken by the platform: c1-1');
  });

  test('and refused is a turn of its conversation, by which the desk hears of it', async () => {
    await say('o1', 'a');
    await say('o1', 'b');
    platform.answers.push({ kind: 'refused', why: 'blocked' });
    await outboxWith().drain();
    expect(platform.texts()).toEqual(['1: a', '2: b', 'not taken by the platform: c1-1', '2 is even']);
    expect(reports).toEqual(['refused: console: blocked']);
  });

  test('goes to every platform that the desk sits at, each once', async () => {
    const other = aPlatform('other');
    other.answers.push(later(1000, 'chat'));
    const outbox = outboxWith({ route: (): Adapter[] => [platform, other] });
    await store.turn(textFrom('o1', 'x'), queueing({ id: 'card', to: { kind: 'desk', caseId: null } }));
    await outbox.drain();
    now += 1000;
    await outbox.drain();
    expect([platform.sent.length, other.sent.length]).toEqual([1, 2]);
    expect(await store.outbox.sentParts('card', 'console')).toEqual(['console 1']);
    expect(await store.outbox.sentParts('card', 'other')).toEqual(['other 2']);
  });

  test('is no trouble where one of two platforms refuses it', async () => {
    const other = aPlatform('other');
    other.answers.push({ kind: 'refused', why: 'no right' });
    const outbox = outboxWith({ route: (): Adapter[] => [platform, other] });
    await store.turn(textFrom('o1', 'x'), queueing({ to: { kind: 'desk', caseId: null } }));
    await outbox.drain();
    expect(reports).toEqual(['refused: other: no right']);
    expect(await store.outbox.nextDue()).toBeNull();
  });

  test('is told where one of two platforms refuses what was meant for both channels', async () => {
    const other = aPlatform('other');
    other.answers.push({ kind: 'refused', why: 'no right' });
    const route = (): Adapter[] => [platform, other];
    await store.turn(textFrom('o1', 'x'), queueing({ to: { kind: 'tips' } }));
    await outboxWith({ route }).drain();
    expect(reports).toEqual(['refused: other: no right']);
    expect(platform.texts().slice(0, 2)).toEqual(['m', 'not taken by the platform: m']);
    expect(await store.outbox.nextDue()).toBeNull();
  });

  test('waits where its platform is not running, and is dropped where no channel is set up', async () => {
    const outbox = outboxWith({ route: (to) => (to.kind === 'owner' ? [] : []) });
    await say('o1', 'a');
    await store.turn(textFrom('o2', 'x'), queueing({ to: { kind: 'tips' } }));
    await outbox.drain();
    expect(await store.outbox.nextDue()).toBe(now + 60_000);
    now += 60_000;
    await outboxWith().drain();
    expect(platform.texts()).toEqual(['1: a']);
    expect(platform.sent[0]?.perhapsSent).toBe(false);
  });

  test('has its picture drawn, and goes without where drawing fails', async () => {
    const picture = {
      kind: 'drawn',
      drawing: 'gauge',
      contentHash: 'h',
      language: 'en',
      subject: { a: 1 },
    } as const;
    const painted = { png: new Uint8Array([1]), alternative: 'a gauge' };
    const paint = async ({ drawing }: { drawing: string }) => {
      if (drawing === 'broken') throw new Error('no');
      return drawing === 'gauge' ? painted : null;
    };
    await store.turn(textFrom('o1', 'x'), queueing({ id: '1', picture }));
    await store.turn(textFrom('o1', 'y'), queueing({ id: '2', picture: { ...picture, drawing: 'broken' } }));
    await store.turn(textFrom('o1', 'z'), queueing({ id: '3', picture: { ...picture, drawing: 'unknown' } }));
    await outboxWith({ paint }).drain();
    expect(platform.sent.map((sent) => sent.picture)).toEqual([painted, null, null]);
  });

  test('is sent to many chats side by side, to one chat never', async () => {
    let most = 0;
    const inHand = new Map<string, number>();
    const slow: Adapter = {
      ...platform,
      async send({ message: { to } }) {
        const chat = to.kind === 'owner' ? to.chat : to.kind;
        inHand.set(chat, (inHand.get(chat) ?? 0) + 1);
        expect(inHand.get(chat)).toBe(1);
        most = Math.max(
          most,
          [...inHand.values()].reduce((sum, count) => sum + count),
        );
        await new Promise((resolve) => setTimeout(resolve, 2));
        inHand.set(chat, 0);
        return { kind: 'sent', platformIds: [] };
      },
    };
    await Promise.all(
      ['a', 'b', 'c'].flatMap((text) => ['o1', 'o2', 'o3', 'o4'].map((person) => say(person, text))),
    );
    await outboxWith({ route: () => [slow] }).drain();
    expect(most).toBe(4);
  });
});

describe('a running outbox', () => {
  test('sends what is queued later, and what it had no time for stays queued', async () => {
    const outbox = outboxWith();
    outbox.start();
    await say('o1', 'a');
    while (platform.sent.length === 0) await new Promise((resolve) => setTimeout(resolve, 1));
    await outbox.stop();
    await say('o1', 'b');
    expect(platform.texts()).toEqual(['1: a']);
    expect(await store.outbox.nextDue()).toBe(now);
  });

  test('gives a message back that waits for its place when it is stopped', async () => {
    const pacing: Pacing = { wait: () => 10_000, take: () => {} };
    const outbox = outboxWith({ pacing });
    await say('o1', 'a');
    outbox.start();
    await new Promise((resolve) => setTimeout(resolve, 20));
    await outbox.stop();
    expect(platform.sent).toEqual([]);
    await outboxWith().drain();
    expect(platform.texts()).toEqual(['1: a']);
    expect(platform.sent[0]).toMatchObject({ perhapsSent: false });
  });

  test('says what it waits longer for than it can hold a place', async () => {
    const pacing: Pacing = { wait: () => 60_000, take: () => {} };
    await say('o1', 'a');
    await outboxWith({ pacing }).drain();
    expect(await store.outbox.nextDue()).toBe(now + 60_000);
  });

  test('records a message as sent until the record holds, and never sends it twice', async () => {
    let failures = 2;
    const shaky: Pick<Store, 'outbox'> = {
      outbox: {
        ...store.outbox,
        async mark(mark) {
          if (failures > 0) {
            failures -= 1;
            throw new Error('the disk is full');
          }
          await store.outbox.mark(mark);
        },
      },
    };
    const outbox = outboxWith({ store: shaky });
    outbox.start();
    await say('o1', 'a');
    while ((await store.outbox.sentParts('c1-1', 'console')).length === 0) {
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    await outbox.stop();
    expect(platform.texts()).toEqual(['1: a']);
    expect(reports).toEqual(['not recorded yet: the disk is full', 'not recorded yet: the disk is full']);
  });
});
