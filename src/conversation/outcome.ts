// Follows an outcome that content names: to another stage, to a person, to a red flag, to looking only, or to the diagnosis.

import type { Outcome } from '../procedure/procedure.ts';
import { callPerson } from './call-person.ts';
import { enterNext, jumpTo } from './enter-stage.ts';
import { followAnswer } from './odd-reading.ts';
import { raiseFlag } from './raise-flag.ts';
import { carry, line } from './say.ts';
import { benchOf, type Turn } from './turn.ts';

export function follow(turn: Turn, outcome: Outcome): void {
  if ('go' in outcome) return jumpTo(turn, outcome.go);
  if ('call' in outcome) {
    return callPerson(turn, {
      reason: outcome.call,
      goOn: false,
      first: [line(`reason-${outcome.call}-owner`)],
    });
  }
  if ('flag' in outcome) return raiseFlag(turn, outcome.flag);
  if ('checkOnly' in outcome) {
    const { setUp } = benchOf(turn);
    setUp.checkOnly ??= outcome.checkOnly;
    carry(turn, [line(`check-only-${outcome.checkOnly}`)]);
    return enterNext(turn);
  }
  followAnswer(turn);
}
