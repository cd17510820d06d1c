// Closes a case with the cause that was found; an open set-up ends with its record.

import { close, isTaken } from '../desk/case.ts';
import { quoteName } from '../desk/quote.ts';
import { endUnset } from './end-set-up.ts';
import { isRideable } from './rig.ts';
import { carry, caseFact, line, say } from './say.ts';
import { answer, holds, type Seat, tell } from './seat.ts';
import { type Button, benchOf, type Turn } from './turn.ts';
import { beliefOf } from './weigh-evidence.ts';

/** So many likely causes are offered as buttons. */
const offered = 6;

export function closeCase(seat: Seat, rest: string): void {
  const { turn, one, member } = seat;
  if (one.state === 'closed') return answer(seat, line('desk-closed-already'));
  if (isTaken(one) && !holds(seat)) return;
  const cause = causeOf(turn, rest);
  const buttons = cause === null ? causeButtons(turn) : [];
  close(one, member.name, cause, turn.scene.now);
  const fact = caseFact(turn, one);
  const { setUp } = turn.state;
  if (setUp) {
    const quiet = isRideable(setUp.rig);
    carry(turn, [line('closed-by', { name: member.name }), ...(quiet ? [] : [line('closed-not-rideable')])], {
      case: fact,
    });
    setUp.asked = null;
    setUp.held = false;
    endUnset(turn);
  } else {
    say(turn, { lines: [line('closed-by', { name: member.name })], facts: { case: fact } });
  }
  tell(seat, {
    lines: [
      cause === null
        ? line('desk-closed', { name: member.name })
        : line('desk-closed-cause', { name: member.name, cause: causeLine(turn, cause) }),
      ...(buttons.length > 0 ? [line('desk-which-cause')] : []),
    ],
    buttons,
  });
}

/** The cause named afterwards, by a button. */
export function nameCause(seat: Seat, rest: string): void {
  const { turn, one, member } = seat;
  const cause = causeOf(turn, rest);
  if (one.state !== 'closed' || cause === null) return answer(seat, line('desk-choice-unknown'));
  one.cause = cause;
  answer(seat, line('desk-closed-cause', { name: member.name, cause: causeLine(turn, cause) }));
}

/** The id of a known cause, or what was written instead. */
function causeOf({ scene }: Turn, rest: string): string | null {
  const words = rest.trim();
  if (words === '') return null;
  const id = words.toLowerCase().replaceAll(/\s+/gu, '-');
  return scene.current.faults.faults.some((fault) => fault.id === id) ? id : quoteName(words, '?');
}

function causeLine({ scene }: Turn, cause: string) {
  return scene.current.faults.faults.some((fault) => fault.id === cause) ? line(`fault-${cause}`) : cause;
}

function causeButtons(turn: Turn): Button[] {
  if (!turn.state.setUp) return [];
  const known = turn.scene.current.faults.faults;
  const likely = beliefOf(benchOf(turn)).causes.filter(({ id }) => known.some((fault) => fault.id === id));
  return likely.slice(0, offered).map(({ id }) => ({ id: `cause:${id}`, label: line(`fault-${id}`) }));
}
