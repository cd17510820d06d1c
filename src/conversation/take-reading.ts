// Takes what the owner says the meter shows, and sees where it belongs: with staff who asked, the sweep, the waking, the detour, or the verdict.

import type { Seen } from '../diagnosis/evidence.ts';
import { askBack, askHeard } from './ask-back.ts';
import { isAsleep, wakeAgain } from './asleep.ts';
import { type Awaited, awaitedOf } from './awaited.ts';
import { checkById } from './checks.ts';
import { judgeReading, noteReading } from './judge-reading.ts';
import { record } from './keep-reading.ts';
import { noteTrial } from './learn-loop.ts';
import { limitsFor } from './limits.ts';
import { followOdd, takeCheckReading } from './odd-reading.ts';
import { afterActions } from './rig.ts';
import { sayAgain } from './say.ts';
import { isSlipAway } from './slip-of-fingers.ts';
import { takeAsked } from './staff-ask.ts';
import { takeSeries } from './take-series.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';
import { implausible } from './verdict.ts';
import { clearOdd, isOdd } from './weigh-evidence.ts';

/** `sure`: the owner has confirmed this very figure. */
export function takeSeen(turn: Turn, seen: Seen, typed: string, sure = false): void {
  const bench = benchOf(turn);
  const { setUp } = bench;
  const awaited = awaitedOf(bench);
  if (!awaited) return sayAgain(turn);
  if (setUp.asked?.kind === 'reading') return takeAsked(turn, bench, setUp.asked, seen, typed);
  if (awaited.count > 1) return takeSeries(turn, bench, awaited, seen, typed);
  setUp.rig = afterActions(setUp.rig, setUp.doing, turn.scene.now);
  setUp.doing = [];
  if (isAsleep(bench, awaited, seen)) return wakeAgain(turn, awaited, typed);
  if (setUp.step.kind === 'check' && setUp.oddity) {
    if (checkById(bench, setUp.step.check)?.ask.kind === 'reading') {
      return takeForCheck(turn, bench, awaited, seen, typed);
    }
    setUp.step = setUp.oddity.under;
  }
  const limits = limitsFor(bench, awaited.measure, awaited.situation);
  if (isOdd(bench, awaited, seen)) {
    const verdict = implausible(awaited, seen, limits?.window ?? null);
    record(turn, awaited, seen, typed, verdict);
    return followOdd(turn, bench, awaited, seen, verdict);
  }
  if (seen.kind !== 'value' && seen.kind !== 'range') return askBack(turn, 'unclear-nothing-understood');
  if (!sure && seen.kind === 'value' && isSlipAway(bench, limits, seen)) {
    setUp.heard = { value: seen.value, resolution: seen.resolution, bare: false };
    return askHeard(turn, setUp.heard);
  }
  if (noteTrial(bench, seen) === 'doubtful') return askBack(turn, 'read-again');
  endDetour(bench, awaited, seen);
  if (limits) return judgeReading(turn, { bench, awaited, limits, seen }, typed);
  if (seen.kind === 'range') return askBack(turn, 'unclear-one-number');
  noteReading(turn, awaited, seen, typed);
}

/** A reading that a check asked for. */
function takeForCheck(turn: Turn, bench: Bench, awaited: Awaited, seen: Seen, typed: string): void {
  // Over the range says something of the dial, nothing of what is measured: once, the next range is asked for.
  if (seen.kind === 'overload' && bench.setUp.unclear === 0) {
    bench.setUp.unclear += 1;
    return askBack(turn, 'next-range');
  }
  record(turn, awaited, seen, typed, implausible(awaited, seen, null));
  takeCheckReading(turn, bench, awaited, seen);
}

/** The reading makes sense: whatever it was that did not is over. */
function endDetour(bench: Bench, awaited: Awaited, seen: Seen): void {
  const { setUp } = bench;
  const odd = setUp.oddity;
  // Nothing was mended in between: the two figures are of one state, or it wanders.
  if (odd?.done.at(-1) === 'read-again' && odd.seen.kind === 'value') setUp.reread ??= odd.seen.value;
  clearOdd(bench, awaited, seen);
}
