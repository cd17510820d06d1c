// Calls a person to a chat: opens the case or takes it up again, and tells the owner what to do meanwhile; the card follows at the turn's end.
import type { Line } from '../chat/facts.ts';
import { type Case, canReopen, enter, isOpen, isTaken, newCase, reopen } from '../desk/case.ts';
import { remindNext } from '../desk/remind.ts';
import { canPutBack } from './give-up.ts';
import { holdSetUp, isHandsOff } from './held.ts';
import { caseFact, line, say, sayAgain } from './say.ts';
import { tellWhen } from './tell-when.ts';
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
  const { state } = turn;
  const { setUp } = state;
  const wasOpen = isOpen(state.case);
  const ran = setUp?.rig.engine === 'running';
  const one = openCase(turn, call);
  const goesOn = call.goOn && !isTaken(one) && !setUp?.held;
  if (!goesOn) holdSetUp(turn);
  const wayBack = setUp !== null && !goesOn && !isTaken(one) && !isHandsOff(one) && canPutBack(turn);
  say(turn, {
    lines: [
      ...(call.first ?? []),
      ...(wasOpen ? openAlready(turn, one) : called(turn)),
      ...(setUp && goesOn ? [line('called-go-on')] : []),
      ...(goesOn || (!setUp && call.flag === undefined)
        ? []
        : [...(ran ? [line('pause-engine')] : []), line('leave-it')]),
      ...(wayBack ? [line('called-way-back')] : []),
    ],
    facts: { case: caseFact(turn, one) },
    buttons: wayBack ? [{ id: 'put-back', label: line('called-put-back') }] : [],
  });
  if (setUp && goesOn) sayAgain(turn);
}

function called(turn: Turn): Line[] {
  const { desk } = turn.scene;
  if (desk.open) return [line('called')];
  const when = desk.opensAt === null ? null : tellWhen(turn, desk.opensAt);
  return [when === null ? line('called-closed') : line('called-closed-until', { when })];
}

function openAlready(turn: Turn, one: Case): Line[] {
  if (isTaken(one)) return [line('called-taken', { name: one.holder.name })];
  const { opensAt, open } = turn.scene.desk;
  return [
    open || opensAt === null
      ? line('called-already')
      : line('called-closed-until', { when: tellWhen(turn, opensAt) }),
  ];
}

function openCase(turn: Turn, call: Call): Case {
  const { state, scene } = turn;
  const already = state.case;
  if (isOpen(already)) {
    // The graver call names the case.
    if (call.flag !== undefined || (already.goOn && !call.goOn)) already.reason = call.reason;
    if (call.flag !== undefined) {
      already.flag = call.flag;
      enter(already, scene.now, null, 'flagged', call.flag);
    }
    already.goOn = already.goOn && call.goOn;
    return already;
  }
  const about = aboutOf(turn);
  const flag = call.flag ?? null;
  if (already && canReopen(already, scene.now)) {
    reopen(already, scene.now, null, call.reason);
    Object.assign(already, { reason: call.reason, flag, goOn: call.goOn, about: about ?? already.about });
    return wait(turn, already);
  }
  state.cases += 1;
  const id = `${scene.number}-${state.cases}`;
  state.case = newCase(id, { reason: call.reason, flag, goOn: call.goOn, about }, scene.now);
  return wait(turn, state.case);
}

/** The clock looks after a case that waits. */
export function wait({ scene }: Turn, one: Case): Case {
  const { workshop } = scene.current;
  one.remindAt = remindNext(workshop, scene.now, one.reminded, scene.desk.closedOn);
  return one;
}

export function aboutOf({ state }: Turn): Case['about'] {
  const { setUp } = state;
  return setUp && { code: setUp.code, procedure: setUp.procedure, machine: setUp.machine };
}
