// The program behind the pipe contract without process, database or clock, for many machines in little time.
// The one file of the garage that knows the program; the simulation itself knows the contract only.
import { join } from 'node:path';
import { decodeLine } from '../../adapters/console/decode-line.ts';
import { encodeMessage } from '../../adapters/console/encode-message.ts';
import { prepareConversation } from '../../src/commands/prepare-conversation.ts';
import type { Arrival, Decide, Decision, ReadingRow, Snapshots, Store } from '../../src/store/store.ts';
import type { Engine, OutputLine } from './pipe-line.ts';

const begin = Date.parse('2026-01-05T09:00:00Z');
const content = join(import.meta.dirname, '..', '..', 'content');

/** Turns kept in memory: what the store does for one person after another, without its promises. */
function keepTurns(decide: Decide) {
  const kept = new Map<
    string,
    { number: number; state: unknown; readings: ReadingRow[]; dueAt: number | null }
  >();
  let now = begin;

  function take(key: string, arrival: Arrival): OutputLine[] {
    let own = kept.get(key);
    if (!own) {
      own = { number: kept.size + 1, state: null, readings: [], dueAt: null };
      kept.set(key, own);
    }
    const { number, state, readings } = own;
    const desk = key === 'desk' ? null : (kept.get('desk')?.state ?? null);
    const loaded = { now, key, number, state, desk, openCases: [] };
    let decided = decide({ ...loaded, readings: [], hasReadings: false }, arrival);
    if ('needs' in decided) decided = decide({ ...loaded, readings, hasReadings: true }, arrival);
    if ('needs' in decided) throw new Error('readings were asked for twice');
    write(own, decided);
    return decided.messages.map((message) => JSON.parse(encodeMessage(message, null)));
  }

  function write(
    own: { state: unknown; readings: ReadingRow[]; dueAt: number | null },
    decided: Decision,
  ): void {
    // As text, since that is what a database would give back.
    own.state = decided.state === null ? null : JSON.parse(JSON.stringify(decided.state));
    for (const row of decided.readings) {
      own.readings = [...own.readings.filter((one) => one.number !== row.number), row];
    }
    own.dueAt = decided.dueAt;
  }

  function advance(ms: number): OutputLine[] {
    const until = now + ms;
    const outputs: OutputLine[] = [];
    for (;;) {
      const next = [...kept]
        .filter(([, one]) => one.dueAt !== null && one.dueAt <= until)
        .sort(([, a], [, b]) => a.dueAt! - b.dueAt!)[0];
      if (!next) break;
      const [key, own] = next;
      now = Math.max(now, own.dueAt!);
      own.dueAt = null;
      outputs.push(...take(key, { kind: 'due', key }));
    }
    now = until;
    return outputs;
  }

  return { take, advance, now: () => now };
}

export async function openInProcess(): Promise<Engine> {
  const snapshots = new Map<string, string>();
  const memory: Snapshots = {
    put: async (hash, json) => void snapshots.set(hash, json),
    get: async (hash) => snapshots.get(hash),
    inUse: async () => [],
  };
  const report = (trouble: string) => process.stderr.write(`${trouble}\n`);
  let now = () => begin;
  const prepared = await prepareConversation({
    // Of the store, only what is needed to prepare.
    store: {
      snapshots: memory,
      calendar: { wake: async () => {}, due: async () => [] },
      forget: async () => {},
    } as unknown as Store,
    content,
    pictures: false,
    limited: false,
    report,
    now: () => now(),
  });
  const turns = keepTurns(prepared.decide);
  now = turns.now;
  return {
    async send(line) {
      const decoded = decodeLine(JSON.stringify(line));
      if (decoded.kind === 'advance') return turns.advance(decoded.ms);
      if (decoded.kind !== 'message') throw new Error(`not a line of the contract: ${JSON.stringify(line)}`);
      const { message } = decoded;
      return turns.take(`${message.platform}:${message.person}`, { kind: 'message', message });
    },
    close: () => prepared.stop(),
  };
}
