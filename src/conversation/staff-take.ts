// Who has a case: the first who takes it, whoever takes over from them, and a colleague it is passed to; the owner always knows who is talking.
import { canReopen, isOpen, isSame, isTaken, passOn, take } from '../desk/case.ts';
import { quoteName } from '../desk/quote.ts';
import { wait } from './call-person.ts';
import { holdSetUp } from './held.ts';
import { caseFact, line, say, tellDesk } from './say.ts';
import { answer, holds, type Seat, tellHeldBy } from './seat.ts';

export function takeCase(seat: Seat): void {
  const { one, member, turn } = seat;
  if (isTaken(one)) {
    return isSame(one.holder, member) ? answer(seat, line('desk-yours')) : tellHeldBy(seat, one.holder);
  }
  if (!isOpen(one) && !canReopen(one, turn.scene.now)) return answer(seat, line('desk-too-old'));
  begin(seat);
}

/** Also the way out where somebody left while they had it. */
export function takeOver(seat: Seat): void {
  const { one, member } = seat;
  if (!isTaken(one) || isSame(one.holder, member)) return takeCase(seat);
  begin(seat);
}

function begin(seat: Seat): void {
  const { turn, one, member } = seat;
  const { state, scene } = turn;
  const { from } = take(one, member, scene.now);
  const { setUp } = state;
  const ran = setUp?.rig.engine === 'running';
  const wasHeld = setUp?.held === true;
  holdSetUp(turn);
  state.latest = null;
  state.offered = null;
  state.menu = null;
  say(turn, {
    lines: [
      line('taken-by', { name: member.name }),
      ...(setUp && !wasHeld ? [...(ran ? [line('pause-engine')] : []), line('leave-it')] : []),
    ],
    facts: { case: caseFact(turn, one) },
  });
  answer(
    seat,
    from && !isSame(from, member)
      ? line('desk-taken-from', { name: member.name, from: from.name })
      : line('desk-taken', { name: member.name }),
  );
}

/** Passed to a colleague by name, or to whoever comes; it waits for them as it did at first. */
export function passCase(seat: Seat, rest: string): void {
  if (!holds(seat)) return;
  const { turn, one, member } = seat;
  const to = rest.trim() === '' ? null : quoteName(rest, '?');
  passOn(one, member, to, turn.scene.now);
  wait(turn, one);
  if (turn.state.setUp) turn.state.setUp.asked = null;
  say(turn, {
    lines: [line('passed-on', { name: member.name })],
    facts: { case: caseFact(turn, one) },
  });
  const lines = [
    to === null
      ? line('desk-passed', { id: one.id, name: member.name })
      : line('desk-passed-to', { id: one.id, name: member.name, to }),
  ];
  answer(seat, ...lines);
  tellDesk(turn, null, { lines, facts: { case: caseFact(turn, one) } });
}
