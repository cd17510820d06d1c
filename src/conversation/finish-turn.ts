// What every turn ends with: readings beside the path are kept for the desk, and an open case's card is brought up to date.
import { close, isOpen } from '../desk/case.ts';
import { aboutOf } from './call-person.ts';
import { showCard } from './desk-card.ts';
import { asideOf } from './desk-judge.ts';
import { readingKey } from './limits.ts';
import { type Aside, keepAsides } from './state.ts';
import type { Turn } from './turn.ts';

export function finishTurn(turn: Turn): void {
  if (turn.erase) return;
  const { state, scene } = turn;
  keepStruck(turn);
  const one = state.case;
  if (!one) return;
  if (isOpen(one)) one.about = aboutOf(turn) ?? one.about;
  // Given back, and the set-up came to its end: nobody needs the case any more.
  if (one.state === 'returned' && turn.ended.length > 0) close(one, null, null, scene.now);
  if (isOpen(one) || isCaseChanged(turn)) showCard(turn, one);
}

export const isCaseChanged = ({ state, caseWas }: Turn): boolean => JSON.stringify(state.case) !== caseWas;

function keepStruck({ state, taken }: Turn): void {
  const { setUp } = state;
  if (!setUp) return;
  const first = state.taken - taken.length + 1;
  const struck = taken.flatMap((reading, index): Aside[] => {
    const at = first + index;
    const kept = setUp.readings[readingKey(reading.measure, reading.situation)]?.at === at;
    if (reading.setUp !== setUp.code || kept || setUp.asides.some((aside) => aside.at === at)) return [];
    const why = (reading.struck as Aside['why'] | null) ?? 'doubted';
    const own = asideOf(reading.measure, reading.situation, reading.typed, null, { why, at });
    return [{ ...own, value: reading.value, low: reading.low, high: reading.high }];
  });
  keepAsides(setUp, struck);
}
