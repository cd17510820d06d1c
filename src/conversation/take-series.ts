// Takes a sweep, whose readings all come in one message: it passes when it rises all the way and comes back; for taking a reading.

import type { Seen } from '../diagnosis/evidence.ts';
import { askBack } from './ask-back.ts';
import type { Awaited } from './awaited.ts';
import { passStage } from './enter-stage.ts';
import { record } from './keep-reading.ts';
import { followOdd } from './odd-reading.ts';
import { pictureOfSweep } from './picture-subjects.ts';
import { afterActions } from './rig.ts';
import { carry, line } from './say.ts';
import { judgeSweep } from './sweep.ts';
import type { Bench, Turn } from './turn.ts';
import { clearOdd } from './weigh-evidence.ts';

export function takeSeries(turn: Turn, bench: Bench, awaited: Awaited, seen: Seen, typed: string): void {
  const { setUp } = bench;
  const fewest = Math.min(awaited.count, 5);
  if (seen.kind !== 'series' || seen.values.length < fewest) return askBack(turn, 'send-all-at-once');
  setUp.rig = afterActions(setUp.rig, setUp.doing, turn.scene.now);
  setUp.doing = [];
  if (setUp.step.kind === 'check' && setUp.oddity) setUp.step = setUp.oddity.under;
  const verdict = judgeSweep(bench, awaited.measure, seen);
  turn.carriedPicture = pictureOfSweep(turn, bench, verdict, seen.resolution);
  record(turn, awaited, seen, typed, verdict);
  if (verdict.result !== 'pass') return followOdd(turn, bench, awaited, seen, verdict);
  clearOdd(bench, awaited, seen);
  carry(turn, [line('verdict-sweep-pass')], { verdict });
  passStage(turn);
}
