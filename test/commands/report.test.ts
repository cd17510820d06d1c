// Holds `report` to what owners and the desk did on a real database, played through the real conversation.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Body, IncomingMessage } from '../../src/chat/incoming-message.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { report } from '../../src/commands/report.ts';
import { openStore } from '../../src/store/open-store.ts';
import type { Store } from '../../src/store/store.ts';
import { shippedDecide } from '../conversation/play.ts';
import { shippedFigures } from '../conversation/ready-owner.ts';
import { keepPrinted } from './keep-printed.ts';

let folder: string;
const minute = 60_000;

beforeEach(() => {
  // Whatever the surroundings or .env name: these tests have a database of their own.
  process.env.DATABASE_URL = '';
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-report-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const run = (...args: string[]) => keepPrinted((output) => report(['--data', folder, ...args], output));

/** A chat on the store of the folder: every message takes a minute, and what is said to each is kept. */
async function openChat() {
  let now = Date.parse('2026-01-05T09:00:00Z');
  let count = 0;
  const decide = await shippedDecide();
  const store: Store = await openStore({ folder, databaseUrl: null, alone: false, clock: () => now });
  const said: OutgoingMessage[] = [];

  async function take(person: string, body: Body, more: Partial<IncomingMessage> = {}): Promise<void> {
    now += minute;
    count += 1;
    const message = {
      platform: 'console',
      messageId: `m${count}`,
      person,
      name: null,
      chat: person,
      locale: null,
    };
    await store.turn(
      { kind: 'message', message: { ...message, role: 'owner', caseId: null, body, ...more } },
      decide,
    );
    for (;;) {
      const rows = await store.outbox.claim(now, 100);
      if (rows.length === 0) return;
      for (const { row, message } of rows) {
        said.push(message);
        await store.outbox.mark({ kind: 'sent', row, at: now, progress: {} });
      }
    }
  }

  const latest = (person: string) =>
    said.findLast(({ to, facts }) => to.kind === 'owner' && to.person === person && facts.ask);

  return {
    store,
    said,
    take,
    text: (person: string, text: string) => take(person, { kind: 'text', text }),
    choose: (person: string, choice: string) => take(person, { kind: 'choice', choice, of: null }),
    async giveUp(person: string): Promise<void> {
      await this.text(person, 'stop');
      for (let turns = 0; turns < 10; turns += 1) {
        if (said.findLast(({ to }) => to.kind === 'owner' && to.person === person)?.facts.record) return;
        await this.choose(person, latest(person)?.choices[0]?.id ?? '');
      }
      throw new Error(`${person} could not stop`);
    },
    staff: (caseId: string, text: string) =>
      take('s1', { kind: 'text', text }, { role: 'staff', caseId, name: 'Jo' }),
    /** Gives the healthy answer to everything until a stage asks. */
    async goTo(person: string, stage: string): Promise<void> {
      await take(person, { kind: 'start', procedure: 'throttle-sensor', machine: 'fenmoor-450' });
      for (let turns = 0; turns < 80; turns += 1) {
        const asked = latest(person);
        const { ask, stage: at } = asked?.facts ?? {};
        if (at === stage) return;
        if (ask?.kind === 'confirm') await this.choose(person, 'done');
        else if (ask?.kind === 'choice') await this.choose(person, asked?.choices[0]?.id ?? '');
        else if (ask && 'measure' in ask)
          await this.text(person, shippedFigures[at ?? ''] ?? shippedFigures[ask.measure] ?? '');
        else await this.text(person, '2');
      }
      throw new Error(`${person} never came to ${stage}`);
    },
  };
}

test('where owners stopped, how long it took them and which cause the desk found', async () => {
  const chat = await openChat();
  for (const [person, stage] of [
    ['o1', 'as-found-idle'],
    ['o2', 'as-found-idle'],
    ['o3', 'supply'],
  ] as const) {
    await chat.goTo(person, stage);
    await chat.giveUp(person);
  }
  await chat.goTo('o4', 'as-found-idle');
  await chat.text('o4', 'human');
  const caseId = chat.said.findLast(({ facts }) => facts.case)?.facts.case?.id ?? '';
  await chat.staff(caseId, '/take');
  await chat.staff(caseId, '/close tight-cable');
  await chat.store.close();

  const { status, printed } = await run('--pictures', join(folder, 'pictures'));
  expect(status).toBe(0);
  // Counted by hand: four came to the supply, one of them stopped there; from the battery's reading to the
  // supply's the three who went on sent seven messages, a minute each.
  expect(printed.split('Picture: ')[0]).toBe(`Set-ups ended: 4. Cases closed: 1.

Throttle sensor: where owners stop
  stage           came to it  stopped there
  Supply                   4              1
  As found: idle           3              3

Throttle sensor: time by stage
  stage    a quarter took at most  half  three quarters (min)
  Battery                     7.0   7.0                   7.0

Causes found, by month
  cause                     2026-01
  throttle cable too tight        1

`);
  const files = readdirSync(join(folder, 'pictures')).sort();
  expect(files).toEqual(['causes.png', 'throttle-sensor-stops.png', 'throttle-sensor-times.png']);
  // The signature of a PNG file: ISO/IEC 15948, 5.2.
  for (const file of files)
    expect([...readFileSync(join(folder, 'pictures', file)).subarray(0, 8)]).toEqual([
      137, 80, 78, 71, 13, 10, 26, 10,
    ]);
});

test('nothing was measured yet', async () => {
  const store = await openStore({ folder, databaseUrl: null, alone: false, clock: Date.now });
  await store.close();
  const { status, printed } = await run();
  expect({ status, printed }).toEqual({
    status: 0,
    printed: 'Set-ups ended: 0. Cases closed: 0.\n\nCauses found, by month\n  nothing yet\n',
  });
});

test('a folder without a database is said, and stays without one', async () => {
  await expect(run()).rejects.toThrow(/^There is no database in /);
  expect(readdirSync(folder)).toEqual([]);
});

test('a database that a running chat owns is said in a sentence', async () => {
  const store = await openStore({ folder, databaseUrl: null, alone: false, clock: Date.now });
  await expect(run()).rejects.toThrow(/^Another process has the database .+ open\. Stop it first/);
  await store.close();
});
