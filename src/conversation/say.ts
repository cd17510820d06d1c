// Makes the messages of a turn: to the owner, with what was carried in front, and to the desk; for every part of the conversation.
import type { CaseFact, Facts, Line } from '../chat/facts.ts';
import type { PictureRequest } from '../chat/outgoing-message.ts';
import { type Case, isOpen } from '../desk/case.ts';
import type { Button, Turn } from './turn.ts';

export interface Message {
  lines: Line[];
  facts?: Facts;
  buttons?: Button[];
  picture?: PictureRequest | null;
}

export const line = (key: string, fillIn?: Line['with']): Line => (fillIn ? { key, with: fillIn } : { key });

/** Lines that are put in front of the owner's next message of this turn, with the facts they speak of. */
export function carry(turn: Turn, lines: Line[], facts: Facts = {}): void {
  turn.carried.push(...lines);
  Object.assign(turn.carriedFacts, facts);
}

/** A message to the owner. */
export function say(turn: Turn, message: Message): void {
  const { state } = turn;
  const lines = [...turn.carried, ...message.lines];
  const facts: Facts = { ...turn.carriedFacts, ...message.facts };
  turn.carried = [];
  turn.carriedFacts = {};
  const picture = message.picture ?? turn.carriedPicture;
  turn.carriedPicture = null;
  if (state.setUp && facts.procedure === undefined && facts.record === undefined) {
    facts.procedure = state.setUp.procedure;
    facts.stage = state.setUp.stage;
  }
  if (isOpen(state.case)) facts.case ??= caseFact(turn, state.case);
  const id = nextId(turn);
  const buttons = message.buttons ?? [];
  // A message that asks makes every earlier button stale, also where it offers none itself.
  if (buttons.length > 0) state.latest = { id, ...offered(turn, buttons) };
  else if (facts.ask) state.latest = null;
  turn.said.push({
    id,
    edit: 0,
    to: { kind: 'owner', platform: state.owner.platform, person: state.owner.person, chat: state.owner.chat },
    language: state.language,
    lines,
    buttons,
    picture,
    facts: { ...facts, lines },
  });
}

/** The choices, and what is on their buttons. */
function offered({ state, scene }: Turn, buttons: readonly Button[]) {
  const hash = state.setUp?.content ?? scene.current.hash;
  return {
    choices: buttons.map(({ id }) => id),
    labels: buttons.map(({ label }) => scene.label(label, state.language, hash)),
  };
}

/** What is awaited is said again, last of all: `restate` does it, once, when the message is dealt with. */
export function sayAgain(turn: Turn): void {
  turn.again = true;
}

/** What is carried and has found no message is said by itself. */
export function sayCarried(turn: Turn): void {
  if (turn.carried.length > 0) say(turn, { lines: [] });
}

/** A message to the desk: into the case's thread, or to the desk as a whole. */
export function tellDesk(
  turn: Turn,
  caseId: string | null,
  message: Message,
  edited?: { id: string; edit: number },
): string {
  const id = edited?.id ?? nextId(turn);
  turn.said.push({
    id,
    edit: edited?.edit ?? 0,
    to: { kind: 'desk', caseId },
    language: turn.scene.current.workshop.language,
    lines: message.lines,
    buttons: message.buttons ?? [],
    picture: message.picture ?? null,
    facts: { ...message.facts, lines: message.lines },
  });
  return id;
}

export function caseFact(turn: Turn, one: Case): CaseFact {
  return { id: one.id, owner: turn.state.owner.person, state: one.state, reason: one.reason };
}

function nextId(turn: Turn): string {
  turn.state.said += 1;
  return `c${turn.scene.number}-${turn.state.said}`;
}
