// Says again what is awaited, whatever it is; for repeat, help, coming back, and everything that interrupts.

import { askAgainInLoop } from './adjust.ts';
import { askHeard } from './ask-back.ts';
import { askCheckAgain } from './ask-check.ts';
import { askStage } from './ask-stage.ts';
import { showCautions } from './enter-stage.ts';
import { askGiveUp, askWayBack } from './give-up.ts';
import { isHeld, sayHeld } from './held.ts';
import { askReplace, showMenu } from './menu.ts';
import { sayAsked } from './staff-ask.ts';
import type { Turn } from './turn.ts';

export function restate(turn: Turn): void {
  const { setUp } = turn.state;
  if (!setUp) return showMenu(turn);
  if (setUp.asked && !setUp.heard) return sayAsked(turn, setUp.asked);
  if (isHeld(setUp) && !setUp.heard) return sayHeld(turn);
  if (turn.state.offered) return askReplace(turn);
  if (setUp.heard) return askHeard(turn, setUp.heard);
  const { step } = setUp;
  switch (step.kind) {
    case 'cautions':
      return showCautions(turn, step.cautions, step.before);
    case 'stage':
      return askStage(turn);
    case 'turned':
    case 'fixed':
      return askAgainInLoop(turn);
    case 'check':
      return askCheckAgain(turn, step.check);
    case 'way-back':
      return askWayBack(turn);
    case 'give-up':
      return askGiveUp(turn);
  }
}
