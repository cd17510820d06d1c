// Calls a person to a chat: opens the case, tells the owner what to do meanwhile, and puts everything in front of the desk.
import type { Line } from '../chat/facts.ts';
import { type Case, isOpen } from '../desk/case.ts';
import { showCard } from './desk-card.ts';
import { restate } from './restate.ts';
import { caseFact, line, say } from './say.ts';
import type { Turn } from './turn.ts';

export interface Call {
  /** The id of the reason; its words are `reason-<id>`. */
  reason: string;
  /** The red flag that was raised. */
  flag?: string;
  /** Whether the owner may safely go on meanwhile. */
  goOn: boolean;
  /** What the owner is told first. */
  first?: Line[];
}

export function callPerson(turn: Turn, call: Call): void {
  const { state, scene } = turn;
  const { setUp } = state;
  const one = openCase(turn, call);
  if (setUp && !call.goOn) {
    setUp.held = true;
    // Whoever waits lets the machine sleep: it is woken again, and read afresh, when it goes on.
    setUp.paused = true;
    setUp.rig = { ...setUp.rig, awake: false, awakeSince: null };
  }
  say(turn, {
    lines: [
      ...(call.first ?? []),
      line(scene.desk.open ? 'called' : 'called-closed'),
      ...(call.goOn ? (setUp ? [line('called-go-on')] : []) : [line('called-wait')]),
    ],
    facts: { case: caseFact(turn, one) },
  });
  showCard(turn, one, 'new');
  if (setUp && call.goOn && !setUp.held) restate(turn);
}

function openCase(turn: Turn, call: Call): Case {
  const { state, scene } = turn;
  const already = state.case;
  if (isOpen(already)) {
    already.flag = call.flag ?? already.flag;
    already.goOn = already.goOn && call.goOn;
    if (call.flag !== undefined) already.reason = call.reason;
    return already;
  }
  state.cases += 1;
  const one: Case = {
    id: `${scene.number}-${state.cases}`,
    state: 'waiting',
    reason: call.reason,
    flag: call.flag ?? null,
    goOn: call.goOn,
    openedAt: scene.now,
    closedAt: null,
    holder: null,
    history: [{ at: scene.now, by: null, what: 'opened', note: call.reason }],
    ownWords: [],
    remindAt: scene.now + scene.current.workshop.remindMinutes * 60_000,
    asking: null,
  };
  state.case = one;
  return one;
}
