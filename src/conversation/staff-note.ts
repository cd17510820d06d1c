// What members of the desk note in a case for each other; nothing of it reaches the owner.
import { enter } from '../desk/case.ts';
import { quoteName } from '../desk/quote.ts';
import { line } from './say.ts';
import { answer, holds, type Seat } from './seat.ts';

/** A private remark stays at the desk. */
export function keepNote(seat: Seat, rest: string): void {
  if (rest.trim() === '') return answer(seat, line('desk-note-empty'));
  enter(seat.one, seat.turn.scene.now, seat.member.name, 'remark', rest.trim());
  answer(seat, line('desk-noted'));
}

/** The workshop's own job or customer number. */
export function noteJob(seat: Seat, rest: string): void {
  seat.one.job = rest.trim() === '' ? null : quoteName(rest, '?');
  const { job } = seat.one;
  answer(seat, job === null ? line('desk-job-none') : line('desk-job-noted', { job }));
}

/** Whoever declares a red flag over says how they made sure of it, and answers for it by name. */
export function clearFlag(seat: Seat, rest: string): void {
  if (!holds(seat)) return;
  const { one, member, turn } = seat;
  if (one.flag === null) return answer(seat, line('desk-no-flag'));
  if (rest.trim() === '') return answer(seat, line('desk-clear-reason'));
  enter(one, turn.scene.now, member.name, 'cleared', `${one.flag}: ${rest.trim()}`);
  one.flag = null;
  answer(seat, line('desk-cleared', { name: member.name }));
}

/** The card once more, at the end of the thread; it is the one that is kept current from here on. */
export function showAgain({ one }: Seat): void {
  one.card = null;
}
