// Erases everything about an owner when they ask for it and confirm; the store removes what the decision names.

import { restate } from './restate.ts';
import { line, say } from './say.ts';
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
  if (!yes) return restate(turn);
  turn.erase = true;
  turn.state.setUp = null;
  say(turn, { lines: [line('erased')] });
}
