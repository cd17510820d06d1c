// What the clock brings: a control unit awake too long, a case that nobody has taken or answered, one long given back; nothing else moves a chat by itself.
import { close, isOpen, isTaken } from '../desk/case.ts';
import { remindNext } from '../desk/remind.ts';
import { caseFact, line, say, tellDesk } from './say.ts';
import { benchOf, type Turn } from './turn.ts';

export function fallDue(turn: Turn): void {
  letSleep(turn);
  lookAfterCase(turn);
}

/** The battery is spared, also while the desk has the machine woken. */
function letSleep(turn: Turn): void {
  const { setUp } = turn.state;
  if (!setUp || setUp.rig.awakeSince === null || setUp.rig.engine !== 'off') return;
  const { machine } = benchOf(turn);
  if (turn.scene.now < setUp.rig.awakeSince + machine.awakeMinutes * 60_000) return;
  setUp.paused = true;
  setUp.rig = { ...setUp.rig, awake: false, awakeSince: null };
  say(turn, {
    lines: [line('awake-too-long', { minutes: machine.awakeMinutes }), line('leave-it'), line('paused')],
  });
}

function lookAfterCase(turn: Turn): void {
  const { state, scene } = turn;
  const one = state.case;
  if (one?.remindAt == null || scene.now < one.remindAt) return;
  const { workshop } = scene.current;
  if (!isOpen(one)) {
    if (one.state === 'returned') close(one, null, null, scene.now);
    one.remindAt = null;
    return;
  }
  const since = isTaken(one) ? one.unansweredSince : one.openedAt;
  one.reminded += 1;
  one.remindAt = since === null ? null : remindNext(workshop, scene.now, one.reminded, scene.desk.closedOn);
  // Called off after all: the next opening is soon enough.
  if (since === null || !scene.desk.open) return;
  const minutes = Math.round((scene.now - since) / 60_000);
  const facts = { case: caseFact(turn, one) };
  if (isTaken(one)) {
    return void tellDesk(turn, one.id, {
      lines: [line('desk-unanswered', { name: one.holder.name, minutes })],
      facts,
      buttons: [{ id: 'take-over', label: line('desk-take-over', { name: one.holder.name }) }],
    });
  }
  tellDesk(turn, null, {
    lines: [line('desk-reminder', { id: one.id, minutes, reason: line(`reason-${one.reason}`) })],
    facts,
  });
}
