// One message of an owner, understood and answered: safety first, then the desk, then the steering words, then what is awaited.

import type { IncomingMessage } from '../chat/incoming-message.ts';
import { isOpen, isTaken } from '../desk/case.ts';
import { hear } from '../measurement/hear.ts';
import type { Heard } from '../measurement/heard.ts';
import type { Unit } from '../measurement/unit.ts';
import { answerNumber, choose } from './answer.ts';
import { askBack } from './ask-back.ts';
import { awaitedOf } from './awaited.ts';
import { asksToErase } from './command-words.ts';
import { relayPress, relayToDesk } from './desk-relay.ts';
import { askErase, decideErase } from './erase.ts';
import { unitOf } from './fill-in.ts';
import { giveUp } from './give-up.ts';
import { hearBesideStaff, pressBesideStaff } from './hear-beside-staff.ts';
import { hearReading } from './hear-reading.ts';
import { isHandsOff, isHeld, sayHeld } from './held.ts';
import { leaveWithdrawn } from './leave-withdrawn.ts';
import { chooseInMenu, decideLink, followLink, showMenu } from './menu.ts';
import { countWork } from './offer-person.ts';
import { raiseFlag } from './raise-flag.ts';
import { carry, line, say, sayAgain, sayCarried } from './say.ts';
import { steer } from './steer.ts';
import { isTooMuch } from './too-much.ts';
import { benchOf, type Turn } from './turn.ts';
import { typedButton } from './typed-button.ts';

/** Silence this long (ms) while it is awake: power, probes and a fresh reading come first. */
const longSilence = 45 * 60_000;

export function hearOwner(turn: Turn, message: IncomingMessage): void {
  const { state, scene } = turn;
  const { body } = message;
  if (isTooMuch(turn, message)) return;
  const silent = state.setUp ? scene.now - state.setUp.touchedAt : 0;
  countWork(turn);
  switch (body.kind) {
    case 'start':
      if (isTaken(state.case) || (state.setUp && isHeld(state.setUp))) return sayHeld(turn);
      return followLink(turn, body.procedure, body.machine);
    case 'choice':
      return hearChoice(turn, body.choice, body.of);
    case 'picture':
      if (body.caption.trim() !== '') return hearText(turn, message, body.caption, silent);
      relayToDesk(turn, message);
      if (isTaken(state.case)) return;
      carry(turn, [line(isOpen(state.case) ? 'picture-passed-on' : 'picture-kept')]);
      return state.setUp && !isHeld(state.setUp) ? sayAgain(turn) : sayCarried(turn);
    case 'edited':
      relayToDesk(turn, message);
      if (isTaken(state.case)) return;
      carry(turn, [line('edited')]);
      return state.setUp ? sayAgain(turn) : showMenu(turn);
    case 'text':
      return hearText(turn, message, body.text, silent);
  }
}

function hearText(turn: Turn, message: IncomingMessage, text: string, silent: number): void {
  const { state, scene } = turn;
  const lexicons = scene.lexicons(state.language);
  const heard = hear(text, awaitedUnit(turn), lexicons);
  if (heard.kind === 'red-flag') {
    relayToDesk(turn, message);
    return raiseFlag(turn, heard.flag);
  }
  const pressed = typedButton(turn, text, heard);
  if (state.erasing) {
    return decideErase(turn, pressed === 'yes' || (heard.kind === 'word' && heard.word === 'yes'));
  }
  if (asksToErase(text, lexicons)) return askErase(turn);
  if (isOpen(state.case)) {
    relayToDesk(turn, message);
    if (isTaken(state.case)) return hearBesideStaff(turn, heard, text, pressed);
  }
  const isBack = silent > longSilence && state.setUp?.rig.awake === true;
  const goesOut = heard.kind === 'word' && (heard.word === 'stop' || heard.word === 'human');
  if (!isBack && !state.setUp?.paused && !goesOut && leaveWithdrawn(turn)) return;
  if (pressed !== null && !isBack) return press(turn, pressed);
  if (heard.kind === 'word') {
    if (state.setUp && isHeld(state.setUp) && heard.word !== 'human') {
      if (heard.word === 'stop' && !isHandsOff(state.case)) return giveUp(turn);
      return sayHeld(turn);
    }
    if (state.setUp?.paused && heard.word !== 'stop' && heard.word !== 'human') return comeBack(turn);
    return steer(turn, heard.word);
  }
  if (!state.setUp) {
    if (state.menu !== null) carry(turn, [line('choose-one')]);
    return showMenu(turn);
  }
  if (isHeld(state.setUp)) return sayHeld(turn);
  if (state.offered) return askBack(turn, 'choose-one');
  if (state.setUp.paused || isBack) return comeBack(turn);
  // Words that are no answer are for the person who was called, and went there.
  const forDesk = heard.kind === 'unclear' && heard.why === 'nothing-understood' && isOpen(state.case);
  if (forDesk) return say(turn, { lines: [line('passed-to-desk')] });
  hearAnswer(turn, heard, text);
}

function awaitedUnit(turn: Turn): Unit | null {
  if (!turn.state.setUp) return null;
  const bench = benchOf(turn);
  const awaited = awaitedOf(bench);
  if (awaited) return unitOf(awaited.measure) as Unit;
  const { ask } = bench.stage;
  if (ask && 'target' in ask && bench.setUp.step.kind === 'stage') return unitOf(ask.target) as Unit;
  return null;
}

function hearAnswer(turn: Turn, heard: Heard, text: string): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  if (setUp.heard) {
    // A number instead of yes or no is the correction.
    if (heard.kind === 'reading' || (heard.kind === 'unclear' && heard.meant)) {
      setUp.heard = null;
      return hearReading(turn, heard, text);
    }
    return askBack(turn, 'choose-one');
  }
  if (awaitedOf(bench)) return hearReading(turn, heard, text);
  const { ask } = stage;
  if (ask && setUp.step.kind === 'stage' && ('count' in ask || 'target' in ask)) {
    return answerNumber(
      turn,
      'count' in ask && heard.kind !== 'reading' ? { kind: 'unclear', why: 'bare-figure' } : heard,
      text,
    );
  }
  const confirms = setUp.step.kind === 'stage' ? ask && 'confirm' in ask : setUp.step.kind !== 'give-up';
  askBack(turn, confirms ? 'confirm-wanted' : 'choose-one');
}

/** A button acts only while it is the latest one; an older press is answered kindly and changes nothing. */
function hearChoice(turn: Turn, choice: string, of: string | null): void {
  const { state } = turn;
  relayPress(turn, choice);
  const current = state.latest;
  const isCurrent =
    current !== null && (of === null || of === current.id) && current.choices.includes(choice);
  if (!isCurrent) {
    carry(turn, [line(state.setUp || state.menu ? 'button-stale' : 'button-over')]);
    if (isTaken(state.case)) return sayHeld(turn);
    return state.setUp && isHeld(state.setUp) ? sayCarried(turn) : sayAgain(turn);
  }
  if (state.erasing) return decideErase(turn, choice === 'yes');
  if (isTaken(state.case)) return pressBesideStaff(turn, choice);
  if (!state.setUp?.paused && leaveWithdrawn(turn)) return;
  press(turn, choice);
}

/** A button that is current, pressed or typed. */
function press(turn: Turn, choice: string): void {
  const { state } = turn;
  if (state.offered) return decideLink(turn, choice);
  if (!state.setUp) return state.menu === null ? showMenu(turn) : chooseInMenu(turn, choice);
  if (isHeld(state.setUp)) {
    return choice === 'put-back' && !isHandsOff(state.case) ? giveUp(turn) : sayHeld(turn);
  }
  if (state.setUp.paused) return comeBack(turn);
  choose(turn, choice);
}

/** After a pause: power, probes and a fresh reading first. */
function comeBack(turn: Turn): void {
  const { setUp } = benchOf(turn);
  setUp.paused = false;
  setUp.heard = null;
  setUp.rig = { ...setUp.rig, awake: false, awakeSince: null, engine: 'off' };
  carry(turn, [line('come-back'), ...(setUp.rig.probes === 'none' ? [] : [line('come-back-pins')])]);
  if (!leaveWithdrawn(turn)) sayAgain(turn);
}
