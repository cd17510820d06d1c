// A conversation for tests of the adapters alone: it says back what it heard, offers buttons, opens cases and relays.
import type { Facts } from '../../src/chat/facts.ts';
import type { IncomingMessage } from '../../src/chat/incoming-message.ts';
import type { Choice, OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import type { Decide, Decision } from '../../src/store/store.ts';

interface Echo {
  said: number;
  owner: { platform: string; person: string; chat: string } | null;
  caseId: string | null;
  card: { id: string; edit: number } | null;
}

const yesNo: Choice[] = [
  { id: 'yes', label: 'Yes' },
  { id: 'no', label: 'No' },
];

const takeCard: Choice[] = [
  { id: 'take', label: 'Take' },
  { id: 'close', label: 'Close' },
];

const manyMachines: Choice[] = Array.from({ length: 30 }, (_, index) => ({
  id: `machine-${index}`,
  label: `Machine ${index}`,
}));

/** Texts with a meaning: `case`, `long`, `menu`, `reading`, `tip`; the rest is said back. */
export const echo: Decide = (loaded, arrival) => {
  const state: Echo = structuredClone(
    (loaded.state as Echo | null) ?? { said: 0, owner: null, caseId: null, card: null },
  );
  const messages: OutgoingMessage[] = [];
  const decision: Decision = { state, messages, readings: [], caseRow: null, records: [], dueAt: null };
  const say = (to: OutgoingMessage['to'], text: string, rest: Partial<OutgoingMessage> = {}) => {
    const id = rest.id ?? `c${loaded.number}-${++state.said}`;
    messages.push({ edit: 0, to, text, choices: [], picture: null, facts: {}, ...rest, id });
    return id;
  };
  if (arrival.kind === 'due') return decision;
  if (arrival.kind === 'refused') {
    if (arrival.message.to.kind !== 'desk') say({ kind: 'desk', caseId: null }, `refused: ${arrival.why}`);
    return decision;
  }
  const { message } = arrival;
  if (message.role === 'staff') hearStaff(message);
  else hearOwner(message);
  return decision;

  function hearOwner(heard: IncomingMessage): void {
    const { platform, person, chat, body } = heard;
    state.owner = { platform, person, chat };
    const to = { kind: 'owner' as const, platform, person, chat };
    const text = textOf(heard);
    if (state.caseId !== null) {
      const relayed =
        body.kind === 'picture' ? { kind: 'relayed' as const, platform, picture: body.picture } : null;
      say({ kind: 'desk', caseId: state.caseId }, `${heard.name}: ${text}`, { picture: relayed });
      return;
    }
    if (text === 'case') {
      state.caseId = `k${loaded.number}`;
      const card = { choices: takeCard, facts: caseFacts() };
      state.card = { id: say({ kind: 'desk', caseId: state.caseId }, 'Card: waiting', card), edit: 0 };
      decision.caseRow = row('waiting');
      say(to, 'A person is called.');
    } else if (text === 'long') {
      say(to, 'This sentence is said again and again. '.repeat(150), { choices: yesNo });
    } else if (text === 'menu') say(to, 'Which machine?', { choices: manyMachines });
    else if (text === 'reading') {
      const facts: Facts = { ask: { kind: 'reading', measure: 'supply-voltage', unit: 'V' } };
      say(to, 'Send the reading.', { facts, choices: [{ id: 'jumping', label: 'Jumping' }] });
    } else if (text === 'tip') {
      say({ kind: 'tips' }, 'A tip.', { choices: [{ id: 'throttle-sensor/any-single', label: 'Start' }] });
    } else say(to, `echo: ${text}`, { choices: yesNo });
  }

  function hearStaff(heard: IncomingMessage): void {
    const text = textOf(heard);
    if (state.owner === null || state.caseId === null || state.card === null) {
      say({ kind: 'desk', caseId: null }, `desk: ${text}`);
      return;
    }
    if (text === '[take]') {
      state.card.edit += 1;
      const changed = { ...state.card, choices: [takeCard[1] as Choice], facts: caseFacts() };
      say({ kind: 'desk', caseId: state.caseId }, `Card: taken by ${heard.name}`, changed);
      decision.caseRow = row('taken');
      return;
    }
    decision.caseRow = row('taken');
    say({ kind: 'owner', ...state.owner }, `${heard.name}: ${text}`);
  }

  function row(caseState: 'waiting' | 'taken') {
    const id = state.caseId ?? '';
    return {
      id,
      state: caseState,
      reason: 'asked',
      takenBy: null,
      openedAt: loaded.now,
      changedAt: loaded.now,
      words: '',
      body: null,
    };
  }

  function caseFacts(): Facts {
    const id = state.caseId ?? '';
    return { case: { id, owner: state.owner?.person ?? '', state: 'waiting', reason: 'asked' } };
  }
};

function textOf({ body }: IncomingMessage): string {
  switch (body.kind) {
    case 'text':
      return body.text;
    case 'choice':
      return body.choice === 'type' ? '[stale form]' : `[${body.choice}]`;
    case 'picture':
      return `picture ${body.caption}`.trim();
    case 'start':
      return `start ${body.procedure} ${body.machine}`;
    case 'edited':
      return `edited to ${body.text}`;
  }
}
