// Plays a chat in memory, without store or platform: lines as in pipe mode in, messages as in pipe mode out; for tests of conversations.
import { join } from 'node:path';
import type { IncomingMessage } from '../../src/chat/incoming-message.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { makeKnowledge } from '../../src/commands/make-knowledge.ts';
import type { Conversation } from '../../src/conversation/state.ts';
import { readState } from '../../src/conversation/transition.ts';
import { makeDecide } from '../../src/inbox/decide.ts';
import { loadContent } from '../../src/library/load-content.ts';
import type { Content } from '../../src/procedure/content.ts';
import type { Arrival, Decide, Loaded, ReadingRow, RecordRow, StoredCase } from '../../src/store/store.ts';

const shipped = join(import.meta.dirname, '..', '..', 'content');

let ready: Promise<Decide> | undefined;

/** The shipped content's decision, made once for all tests of a file; `change` makes of it what `check` would refuse. */
export function shippedDecide(content = shipped, change?: (content: Content) => void): Promise<Decide> {
  if (content === shipped && !change && ready) return ready;
  const made = (async () => {
    const { newest, problems } = await loadContent(content);
    if (!newest) throw new Error(JSON.stringify(problems, null, 1));
    const shelf = new Map<string, string>();
    change?.(newest.edition.content);
    const { knowledge } = await makeKnowledge(newest, {
      put: async (hash, json) => void shelf.set(hash, json),
      get: async (hash) => shelf.get(hash),
      inUse: async () => [],
    });
    return makeDecide(knowledge);
  })();
  if (content === shipped && !change) ready = made;
  return made;
}

export interface Said {
  id: string;
  to: string;
  text: string;
  choices: { id: string; label: string }[];
  facts: OutgoingMessage['facts'];
  case?: string;
  edit?: number;
}

/** One garage with one desk. Everything survives from line to line as JSON, as in a store. */
export class Play {
  now = Date.parse('2026-01-05T09:00:00Z');
  readonly said: Said[] = [];
  readonly records: RecordRow[] = [];
  private readonly states = new Map<string, string>();
  private readonly numbers = new Map<string, number>();
  private readonly readings = new Map<string, ReadingRow[]>();
  private readonly dueAt = new Map<string, number | null>();
  private readonly cases = new Map<string, StoredCase>();
  private decide: Decide;
  private count = 0;
  private conversations = 0;

  constructor(decide: Decide) {
    this.decide = decide;
  }

  /** A new start on other content. */
  startOn(decide: Decide): void {
    this.decide = decide;
  }

  text(from: string, text: string, more: Partial<IncomingMessage> = {}): Said[] {
    return this.take({ ...this.blank(from), body: { kind: 'text', text }, ...more });
  }

  choose(
    from: string,
    choice: string,
    of: string | null = null,
    more: Partial<IncomingMessage> = {},
  ): Said[] {
    return this.take({ ...this.blank(from), body: { kind: 'choice', choice, of }, ...more });
  }

  start(from: string, procedure: string, machine: string): Said[] {
    return this.take({ ...this.blank(from), body: { kind: 'start', procedure, machine } });
  }

  /** Moves the clock, taking what falls due on the way in its order. */
  advance(ms: number): Said[] {
    const until = this.now + ms;
    const said: Said[] = [];
    for (;;) {
      const next = [...this.dueAt].filter(
        (one): one is [string, number] => one[1] !== null && one[1] <= until,
      );
      const [first] = next.sort((a, b) => a[1] - b[1]);
      if (!first) break;
      this.now = Math.max(this.now, first[1]);
      said.push(...this.turn(first[0], { kind: 'due', key: first[0] }));
    }
    this.now = until;
    return said;
  }

  /** The state as the conversation sees it; and how many bytes the store would hold. */
  stateOf(from: string): Conversation | null {
    return readState(JSON.parse(this.states.get(`console:${from}`) ?? 'null'));
  }

  bytesOf(from: string): number {
    return Buffer.byteLength(this.states.get(`console:${from}`) ?? '');
  }

  private blank(from: string): IncomingMessage {
    this.count += 1;
    return {
      platform: 'console',
      messageId: `t${this.count}`,
      person: from,
      name: null,
      role: 'owner',
      chat: from,
      caseId: null,
      locale: null,
      body: { kind: 'text', text: '' },
    };
  }

  private take(message: IncomingMessage): Said[] {
    const owned = message.caseId === null ? undefined : this.cases.get(message.caseId)?.key;
    const key = message.role === 'staff' ? (owned ?? 'desk') : `${message.platform}:${message.person}`;
    return this.turn(key, { kind: 'message', message });
  }

  private forget(key: string): void {
    for (const kept of [this.states, this.numbers, this.readings, this.dueAt]) kept.delete(key);
    for (const [id, one] of this.cases) if (one.key === key) this.cases.delete(id);
  }

  private turn(key: string, arrival: Arrival): Said[] {
    if (!this.numbers.has(key)) this.numbers.set(key, ++this.conversations);
    const stored = this.states.get(key);
    const loaded: Loaded = {
      now: this.now,
      key,
      number: this.numbers.get(key) ?? 0,
      state: stored === undefined ? null : JSON.parse(stored),
      desk: key === 'desk' ? null : JSON.parse(this.states.get('desk') ?? 'null'),
      openCases: key === 'desk' ? [...this.cases.values()].filter(({ state }) => state !== 'closed') : [],
      readings: this.readings.get(key) ?? [],
      hasReadings: true,
    };
    let decision = this.decide(loaded, arrival);
    if ('needs' in decision && decision.needs === 'archive') {
      const records = this.records.map((record) => ({ ...record, key: null }));
      decision = this.decide({ ...loaded, archive: { cases: [...this.cases.values()], records } }, arrival);
    }
    if ('needs' in decision) throw new Error('the readings were given');
    if (decision.state === null) this.states.delete(key);
    else this.states.set(key, JSON.stringify(decision.state));
    this.readings.set(key, [...(this.readings.get(key) ?? []), ...decision.readings]);
    this.dueAt.set(key, decision.dueAt);
    this.records.push(...decision.records);
    if (decision.caseRow) this.cases.set(decision.caseRow.id, { ...decision.caseRow, key });
    if (decision.erase) this.forget(key);
    const said = decision.messages.map(toSaid);
    this.said.push(...said);
    return said;
  }
}

function toSaid(message: OutgoingMessage): Said {
  const { to } = message;
  return {
    id: message.id,
    to: to.kind === 'owner' ? to.person : to.kind,
    text: message.text,
    choices: message.choices,
    facts: JSON.parse(JSON.stringify(message.facts)),
    ...(to.kind === 'desk' && to.caseId !== null ? { case: to.caseId } : {}),
    ...(message.edit > 0 ? { edit: message.edit } : {}),
  };
}
