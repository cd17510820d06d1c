// A member of the desk at a case, within one turn: what is answered to them, what they may press, and whether the case is theirs.
import type { Line } from '../chat/facts.ts';
import { type Case, isSame, isTaken, type Member } from '../desk/case.ts';
import { caseFact, line, type Message, tellDesk } from './say.ts';
import type { Button, Turn } from './turn.ts';

export interface Seat {
  turn: Turn;
  one: Case;
  member: Member;
}

/** Into the case's thread. */
export function tell({ turn, one }: Seat, message: Message): void {
  tellDesk(turn, one.id, { ...message, facts: { case: caseFact(turn, one), ...message.facts } });
}

export const answer = (seat: Seat, ...lines: Line[]): void => tell(seat, { lines });

const takeButton: Button = { id: 'take', label: line('desk-take') };

/** What the card offers, as it applies. */
export function seatButtons(one: Case): Button[] {
  const close: Button = { id: 'close', label: line('desk-close') };
  switch (one.state) {
    case 'waiting':
      return [takeButton, close];
    case 'taken':
      return [
        { id: 'give-back', label: line('desk-give-back') },
        { id: 'ask', label: line('desk-ask') },
        { id: 'check', label: line('desk-check') },
        close,
        { id: 'help', label: line('desk-help') },
      ];
    case 'returned':
      return [takeButton, close];
    case 'closed':
      return [takeButton];
  }
}

/** Whether this member has the case; if not, they are told who has. */
export function holds(seat: Seat): boolean {
  const { one, member } = seat;
  if (!isTaken(one)) {
    tell(seat, { lines: [line('desk-take-first')], buttons: [takeButton] });
    return false;
  }
  if (isSame(one.holder, member)) {
    // Whoever has it is at work: the owner is not left waiting.
    one.unansweredSince = null;
    one.remindAt = null;
    one.reminded = 0;
    return true;
  }
  tellHeldBy(seat, one.holder);
  return false;
}

export function tellHeldBy(seat: Seat, holder: Member): void {
  tell(seat, {
    lines: [line('desk-held-by', { name: holder.name })],
    buttons: [{ id: 'take-over', label: line('desk-take-over', { name: holder.name }) }],
  });
}

/** Whether a set-up is open; if not, that is said. */
export function hasSetUp(seat: Seat): boolean {
  if (seat.turn.state.setUp) return true;
  answer(seat, line('desk-no-set-up'));
  return false;
}

/** Whether no red flag is up; if one is, that is said. */
export function isClear(seat: Seat): boolean {
  const { flag } = seat.one;
  if (flag === null) return true;
  answer(seat, line('desk-flag-up', { flag: line(`reason-flag-${flag}`) }));
  return false;
}
