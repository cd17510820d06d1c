// What an owner says while a person has the chat: the program is silent, but for what that person had it ask.

import type { Heard } from '../measurement/heard.ts';
import { confirmHeard, hearReading } from './hear-reading.ts';
import { sayHeld } from './held.ts';
import { sayAgain, sayCarried } from './say.ts';
import { answerAsked } from './staff-ask.ts';
import type { Turn } from './turn.ts';

/** It went to the desk already; `pressed` is the button whose words it is. */
export function hearBesideStaff(turn: Turn, heard: Heard, text: string, pressed: string | null): void {
  const { setUp } = turn.state;
  const asked = setUp?.asked;
  if (!setUp || !asked) return;
  if (heard.kind === 'word') {
    const { word } = heard;
    if (word === 'repeat' || word === 'help') return sayAgain(turn);
    if (setUp.heard) return word === 'yes' || word === 'no' ? confirmHeard(turn, word === 'yes') : undefined;
    if (asked.cautions.length > 0 && (word === 'yes' || word === 'done')) {
      return answerAsked(turn, asked, 'done');
    }
  }
  if (asked.cautions.length > 0) return pressed === null ? undefined : answerAsked(turn, asked, pressed);
  if (asked.kind === 'question') {
    return pressed === null ? undefined : answerAsked(turn, asked, pressed);
  }
  // What holds no number is meant for the person.
  const isNumber = heard.kind !== 'word' && heard.kind !== 'red-flag';
  if (isNumber && (heard.kind !== 'unclear' || heard.meant)) {
    setUp.heard = null;
    hearReading(turn, heard, text);
  }
}

/** A button that is current. */
export function pressBesideStaff(turn: Turn, choice: string): void {
  const { setUp } = turn.state;
  if (setUp?.heard) return confirmHeard(turn, choice === 'yes');
  if (setUp?.asked) return answerAsked(turn, setUp.asked, choice);
  if (turn.carried.length > 0) return sayCarried(turn);
  sayHeld(turn);
}
