// Has a part that was backed off turned in before its stage's first reading, by what was counted or by what is needed; for asking a stage.

import { hands } from '../measurement/hand-amount.ts';
import { aimOf } from '../measurement/window.ts';
import { parts } from '../procedure/vocabulary.ts';
import { learnedOf, newLoop, unitHere } from './learn-loop.ts';
import { stageLimits } from './limits.ts';
import { line } from './say.ts';
import { sayMove } from './say-move.ts';
import { benchOf, type Turn } from './turn.ts';

/** A part that is known to be off is turned before the first reading; by the count it came out by, else by what is needed. */
export function turnFirst(turn: Turn): boolean {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  const part = stage.adjust?.part;
  const off =
    part === 'idle-stop'
      ? setUp.rig.idleStop === 'off'
      : part === 'fast-idle'
        ? setUp.rig.fastIdle === 'off'
        : false;
  if (!stage.adjust?.turnFirst || !off || !part) return false;
  const limits = stageLimits(bench);
  if (!limits) return false;
  const learned = learnedOf(bench, part);
  const closed = setUp.readings['signal-closed-stop@closed']?.value ?? null;
  const aim = aimOf(limits.window, 0);
  const { unit } = parts[part];
  const needed = closed === null ? 1 : Math.abs(aim - closed) / learned.perUnit + learned.deadBand;
  const counted = setUp.counts[part];
  const amount =
    counted !== undefined && counted > 0
      ? counted
      : Math.max(hands[unit].smallest, Math.round(needed * 4) / 4);
  const whole = unit === 'click' ? Math.max(1, Math.round(amount)) : amount;
  const watched = part === 'idle-stop' && unitHere(bench) === 'V';
  const loop = newLoop();
  setUp.loop = loop;
  setUp.step = { kind: 'turned' };
  loop.advised = { part, amount: whole, watched, slack: true };
  // The clicks were lost when it was backed off: what it showed before tells nothing of this move.
  loop.before = watched ? closed : null;
  sayMove(
    turn,
    bench,
    part,
    1,
    whole,
    watched ? limits.window : null,
    [...stage.do],
    [line(`${bench.procedure.id}-${stage.id}`)],
  );
  return true;
}
