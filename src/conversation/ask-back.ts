// Asks once more for what was not understood, or whether it was understood right; for every answer.

import { awaitedOf } from './awaited.ts';
import { figure, unitOf, unitSaid } from './fill-in.ts';
import { carry, line, say, sayAgain } from './say.ts';
import { benchOf, type Turn } from './turn.ts';

/** So often in a row, and it is said what is wanted; once more, and a person is offered. */
const onceMore = 2;

/** What was no answer: one line says why, and the question is asked again. */
export function askBack(turn: Turn, why: string): void {
  carry(turn, [line(why)]);
  const { setUp } = turn.state;
  if (setUp) {
    setUp.lost += 1;
    if (setUp.lost > onceMore) carry(turn, [line('lost-person')]);
    else if (setUp.lost === onceMore && awaitedOf(benchOf(turn))) carry(turn, [line('lost-reading')]);
  }
  sayAgain(turn);
}

/** A figure that was repaired, hedged or bare is repeated before it counts. */
export function askHeard(turn: Turn, heard: { value: number; resolution: number }): void {
  const bench = benchOf(turn);
  const unit = unitOf(awaitedOf(bench)?.measure ?? '');
  say(turn, {
    lines: [line('heard-question', { value: figure(heard.value, heard.resolution), unit: unitSaid(unit) })],
    facts: { heard: { value: heard.value, unit }, ask: { kind: 'choice', question: 'heard' } },
    buttons: [
      { id: 'yes', label: line('button-yes') },
      { id: 'no', label: line('button-no') },
    ],
  });
}
