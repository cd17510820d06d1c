// Erases everything about an owner when they ask for it and confirm; the store removes what the decision names.

import { isOpen } from '../desk/case.ts';
import { blankCard } from './desk-card.ts';
import { line, say, sayAgain } from './say.ts';
import type { Turn } from './turn.ts';

export function askErase(turn: Turn): void {
  turn.state.erasing = true;
  say(turn, {
    lines: [line('erase-question')],
    facts: { ask: { kind: 'choice', question: 'erase' } },
    buttons: [
      { id: 'yes', label: line('erase-yes') },
      { id: 'no', label: line('erase-no') },
    ],
  });
}

export function decideErase(turn: Turn, yes: boolean): void {
  turn.state.erasing = false;
  if (!yes) return sayAgain(turn);
  turn.erase = true;
  const { case: one } = turn.state;
  // Whoever is in the middle of it learns why it is gone; the card no longer says whose it was.
  if (one && (isOpen(one) || one.card)) blankCard(turn, one);
  turn.state.setUp = null;
  turn.state.case = null;
  say(turn, { lines: [line('erased')] });
}
