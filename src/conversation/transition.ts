// The state machine: a conversation's state and one event in, the next state and what is said and written out; pure, called by the inbox.
import type { IncomingMessage } from '../chat/incoming-message.ts';
import { isOpen, keepWords } from '../desk/case.ts';
import { quoteWords } from '../desk/quote.ts';
import { fallDue } from './fall-due.ts';
import { finishTurn } from './finish-turn.ts';
import { hearOwner } from './hear-owner.ts';
import { hearStaff } from './hear-staff.ts';
import { offerPerson } from './offer-person.ts';
import { type PackedState, unpackState } from './pack-state.ts';
import { restate } from './restate.ts';
import { caseFact, line, tellDesk } from './say.ts';
import { type Conversation, newConversation, stateVersion } from './state.ts';
import { type Scene, startTurn, type Turn } from './turn.ts';

export type Event =
  /** `language` is null where the platform did not say: Discord tells it with a press, not with a text. */
  | { kind: 'message'; message: IncomingMessage; language: string | null }
  /** The instant came that was asked for. */
  | { kind: 'due' }
  /** A message of this conversation was refused for good. */
  | { kind: 'refused'; to: 'owner' | 'desk'; why: string };

/**
 * `state` is null before the first message; it belongs to the transition from here on and must not be used again.
 * The same state, event and scene give the same turn.
 */
export function transition(scene: Scene, state: Conversation | null, event: Event): Turn {
  const turn = startTurn(scene, state ?? begin(scene, event));
  switch (event.kind) {
    case 'message': {
      const { message } = event;
      if (message.role === 'staff') {
        hearStaff(turn, message);
        break;
      }
      const { owner } = turn.state;
      owner.chat = message.chat;
      owner.name = message.name ?? owner.name;
      turn.state.language = event.language ?? turn.state.language;
      const before = turn.state.case?.state;
      const { lost = 0 } = turn.state.setUp ?? {};
      hearOwner(turn, message);
      // Whatever was understood ends a row of what was not.
      if (turn.state.setUp?.lost === lost) turn.state.setUp.lost = 0;
      keepCallingWords(turn, message, before);
      break;
    }
    case 'due':
      fallDue(turn);
      break;
    case 'refused':
      hearRefusal(turn, event);
      break;
  }
  if (turn.again) restate(turn);
  if (event.kind === 'message' && event.message.role === 'owner') offerPerson(turn);
  finishTurn(turn);
  return turn;
}

/** When the clock should next wake this conversation; null for never. */
export function dueAt(state: Conversation, awakeMinutes: number | null): number | null {
  const instants: number[] = [];
  if (state.case?.remindAt != null) instants.push(state.case.remindAt);
  const rig = state.setUp?.rig;
  if (rig?.awakeSince != null && rig.engine === 'off' && awakeMinutes !== null) {
    instants.push(rig.awakeSince + awakeMinutes * 60_000);
  }
  return instants.length === 0 ? null : Math.min(...instants);
}

/** What was said when a person was called belongs to the case as well. */
function keepCallingWords({ state }: Turn, { body }: IncomingMessage, before: string | undefined): void {
  if (!isOpen(state.case) || before === 'waiting' || before === 'taken') return;
  if (body.kind === 'text') keepWords(state.case, quoteWords(body.text));
}

/** The desk hears of what does not arrive; what cannot reach the desk's own channel is the operator's to mend. */
function hearRefusal(turn: Turn, { to, why }: Extract<Event, { kind: 'refused' }>): void {
  const one = turn.state.case;
  if (to !== 'owner' || !isOpen(one)) return;
  tellDesk(turn, one.id, {
    lines: [line('desk-unreachable', { why })],
    facts: { case: caseFact(turn, one) },
  });
}

function begin({ current }: Scene, event: Event): Conversation {
  if (event.kind !== 'message') throw new Error('A conversation begins with a message.');
  const { message } = event;
  return newConversation(
    { platform: message.platform, person: message.person, chat: message.chat, name: message.name },
    event.language ?? current.workshop.language,
  );
}

/** The stored state, or an error that names a version this program does not know. */
export function readState(stored: unknown): Conversation | null {
  if (stored === null) return null;
  const { version } = stored as { version?: unknown };
  if (version !== stateVersion) {
    throw new Error(
      `This chat was kept by another version of the program (${String(version)}, here ${stateVersion}).`,
    );
  }
  return unpackState(stored as PackedState);
}
