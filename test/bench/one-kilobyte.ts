// The turn that the store's goals are measured with: a state of about a kilobyte, one reply to the owner, one line to the desk.
import type { IncomingMessage } from '../../src/chat/incoming-message.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import type { Arrival, Decide } from '../../src/store/store.ts';

export interface BenchState {
  count: number;
  kept: number[];
  filling: string;
}

export const freshState: BenchState = { count: 0, kept: [], filling: 'x'.repeat(950) };

export function nextState(state: BenchState | null): BenchState {
  const before = state ?? freshState;
  return { ...before, count: before.count + 1, kept: [...before.kept.slice(-7), before.count] };
}

export function repliesTo(number: number, count: number, person: string): OutgoingMessage[] {
  const facts = { stage: 'bench', heard: { value: 0.348, unit: 'V' } };
  const common = { edit: 0, choices: [{ id: 'done', label: 'Done' }], picture: null, facts };
  return [
    {
      ...common,
      id: `c${number}-${count}a`,
      to: { kind: 'owner', platform: 'bench', person, chat: person },
      text: '0.348 V. A hair back.',
    },
    {
      ...common,
      id: `c${number}-${count}b`,
      to: { kind: 'desk', caseId: `${number}` },
      text: `${person}: 0.348 V`,
    },
  ];
}

export const decideBench: Decide = (loaded, arrival) => {
  const state = nextState(loaded.state as BenchState | null);
  const person = arrival.kind === 'message' ? arrival.message.person : '';
  return {
    state,
    messages: repliesTo(loaded.number, state.count, person),
    readings: [],
    caseRow: null,
    records: [],
    dueAt: null,
  };
};

export function benchMessage(chat: number, count: number): IncomingMessage {
  return {
    platform: 'bench',
    messageId: `${chat}:${count}`,
    person: `p${chat}`,
    name: 'A',
    role: 'owner',
    chat: `p${chat}`,
    caseId: null,
    locale: 'en',
    body: { kind: 'text', text: '0.348' },
  };
}

export function benchArrival(chat: number, count: number): Arrival {
  return { kind: 'message', message: benchMessage(chat, count) };
}
