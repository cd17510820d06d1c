// A conversation for tests of store, inbox and outbox alone: it counts what it is told, and everything that a decision can hold comes out of it.
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import type { Arrival, CaseRow, Decide, Decision } from '../../src/store/store.ts';
import { deskKey } from '../../src/store/store.ts';

export interface Counting {
  /** Messages taken. */
  count: number;
  /** Every text taken, in order: shows whether one was lost, doubled or overtaken. */
  heard: string[];
  /** Messages sent so far. */
  sent: number;
  openCase: string | null;
  reminded: number;
  refusals: string[];
}

const fresh: Counting = { count: 0, heard: [], sent: 0, openCase: null, reminded: 0, refusals: [] };

/** Texts with a meaning: `case`, `close`, `remind`, `throw`, `check readings`, `forget me`, `forget me, keep the record`. */
export const countingDecide: Decide = (loaded, arrival) => {
  const state: Counting = structuredClone((loaded.state as Counting | null) ?? fresh);
  const decision: Decision = {
    state,
    messages: [],
    readings: [],
    caseRow: null,
    records: [],
    dueAt: null,
  };
  const say = (to: OutgoingMessage['to'], text: string) => {
    state.sent += 1;
    const choices = [{ id: 'done', label: 'Done' }];
    const id = `c${loaded.number}-${state.sent}`;
    decision.messages.push({ id, edit: 0, to, text, choices, picture: null, facts: {} });
  };
  if (arrival.kind === 'due') {
    state.reminded += 1;
    say({ kind: 'tips' }, `reminder ${state.reminded} for ${loaded.key}`);
    return decision;
  }
  if (arrival.kind === 'refused') {
    state.refusals.push(arrival.message.id);
    say({ kind: 'desk', caseId: null }, `not taken by the platform: ${arrival.message.id}`);
    return decision;
  }
  const text = said(arrival);
  if (text === 'throw') throw new Error('this message cannot be decided');
  if (text === 'check readings' && !loaded.hasReadings) return { needs: 'readings' };
  state.count += 1;
  state.heard.push(text);
  const { message } = arrival;
  const owner = {
    kind: 'owner',
    platform: message.platform,
    person: message.person,
    chat: message.chat,
  } as const;
  if (loaded.key === deskKey) {
    say(
      { kind: 'desk', caseId: null },
      `desk heard ${text}; open: ${loaded.openCases.map(({ id }) => id).join(' ')}`,
    );
    return decision;
  }
  if (message.role === 'staff') {
    const [platform = '', person = ''] = loaded.key.split(':');
    say({ kind: 'owner', platform, person, chat: person }, `the desk says: ${text}`);
    return decision;
  }
  decision.readings.push({
    number: state.count,
    at: loaded.now,
    stage: 'count',
    measure: 'text',
    body: { text },
  });
  const known = loaded.hasReadings ? `, ${loaded.readings.length} readings before` : '';
  say(owner, `${state.count}: ${text}${known}`);
  if (state.count % 2 === 0) say(owner, `${state.count} is even`);
  if (text === 'case') {
    state.openCase ??= `${loaded.number}.${state.count}`;
    decision.caseRow = caseRow(state.openCase, 'waiting', loaded.now, message.person);
  }
  if (text === 'close' && state.openCase !== null) {
    decision.caseRow = caseRow(state.openCase, 'closed', loaded.now, message.person);
    state.openCase = null;
    decision.records.push({
      code: `r${loaded.number}-${state.count}`,
      at: loaded.now,
      procedure: 'counting',
      machine: 'abacus',
      result: 'set',
      body: { count: state.count },
    });
  }
  if (state.openCase !== null) say({ kind: 'desk', caseId: state.openCase }, `${message.person}: ${text}`);
  if (text === 'remind') decision.dueAt = loaded.now + 3_600_000;
  if (text.startsWith('forget me')) {
    return { ...decision, state: null, erase: text.includes('keep') ? 'all-but-records' : 'all' };
  }
  return decision;
};

function said(arrival: Extract<Arrival, { kind: 'message' }>): string {
  const { body } = arrival.message;
  if (body.kind === 'text' || body.kind === 'edited') return body.text;
  if (body.kind === 'choice') return `chose ${body.choice}`;
  return body.kind;
}

function caseRow(id: string, state: CaseRow['state'], now: number, person: string): CaseRow {
  return {
    id,
    state,
    reason: 'asked-for',
    takenBy: null,
    openedAt: now,
    changedAt: now,
    words: `Größe of ${person}`,
    body: {},
  };
}
