// The adjusting loop: what to turn, which way and how far, learned on this machine from reading to reading, until it is right and fixed.

import type { VerdictFact } from '../chat/facts.ts';
import type { Seen } from '../diagnosis/evidence.ts';
import { hands } from '../measurement/hand-amount.ts';
import { isTooFar, type Learned, learn, type Prior, remember } from '../measurement/learn-part.ts';
import { aimBefore, learnShift, rememberShift } from '../measurement/learn-shift.ts';
import { nextMove } from '../measurement/next-move.ts';
import { aimOf, type Window } from '../measurement/window.ts';
import { partOf } from '../procedure/machine.ts';
import { type Part, parts } from '../procedure/vocabulary.ts';
import { askReading } from './ask-stage.ts';
import { callPerson } from './call-person.ts';
import { enterNext, showCautions } from './enter-stage.ts';
import { figure } from './fill-in.ts';
import { outLine } from './keep-reading.ts';
import { limitsFor } from './limits.ts';
import { pictureOfVerdict } from './picture-subjects.ts';
import { carry, line } from './say.ts';
import { sayMove } from './say-move.ts';
import type { Loop } from './state.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';

/** Two readings of one state differ by no more than this (V, 1/min; common practice, no source). */
const noise = { V: 0.0015, '1/min': 30 } as const;
/** What fixing may do to the reading (V; common practice, no source). */
const shiftPrior = { shift: 0, spread: 0.014 };
/** How much faster a volt more at the idle stop makes the engine run (1/min; common practice, no source). */
const speedPerVolt = 12_500;
/** So often fixed and still not right, and a person had better look. */
const fixesEnough = 6;

export const newLoop = (): Loop => ({
  free: false,
  advised: null,
  before: null,
  trials: [],
  loose: null,
  fixes: 0,
  doubted: false,
});

const unitHere = ({ stage }: Bench): 'V' | '1/min' =>
  stage.ask && 'reading' in stage.ask && stage.ask.reading === 'idle-speed' ? '1/min' : 'V';

/** Trials of one part are kept apart by what was read: volts and engine speed are learned separately. */
const trialsKey = (bench: Bench, part: string): string => (unitHere(bench) === 'V' ? part : `${part}@speed`);

function priorOf(bench: Bench, part: string): Prior {
  const own = partOf(bench.machine, part);
  const [positive] = parts[part as Part].directions;
  const volts = own?.perUnit ?? 0.01;
  const perUnit = unitHere(bench) === 'V' ? volts : volts * speedPerVolt;
  const sense = !own || own.raises === 'unknown' ? 0 : own.raises === positive ? 1 : -1;
  return { perUnit, spread: perUnit * 0.6, sense, deadBand: own?.deadBand ?? 0 };
}

function learnedOf(bench: Bench, part: string): Learned {
  return learn(
    priorOf(bench, part),
    bench.setUp.trials[trialsKey(bench, part)] ?? [],
    noise[unitHere(bench)],
  );
}

/** While what fixes the part is loose, the limits are those before the shift that fixing brings. */
export function aimWindow({ setUp }: Bench, window: Window): Window {
  const loop = setUp.loop;
  if (!loop?.free || setUp.step.kind === 'fixed') return window;
  return aimBefore(window, learnShift(shiftPrior, setUp.shifts));
}

/** What the last move did is learned; `doubtful` where the figure is out of all proportion and is better read again. */
export function noteTrial(bench: Bench, seen: Seen): 'taken' | 'doubtful' {
  const { setUp } = bench;
  const loop = setUp.loop;
  if (!loop) return 'taken';
  const value =
    seen.kind === 'value' ? seen.value : seen.kind === 'range' ? (seen.low + seen.high) / 2 : null;
  if (value === null) return 'taken';
  if (setUp.step.kind === 'fixed' && loop.loose !== null) {
    if (Math.abs(value - loop.loose) <= 0.05) setUp.shifts = rememberShift(setUp.shifts, loop.loose, value);
    loop.loose = null;
  }
  const { advised } = loop;
  if (advised) {
    const { part } = advised;
    if (!setUp.touched.includes(part)) setUp.touched.push(part);
    if (part === 'idle-stop') setUp.rig.idleStop = 'set';
    if (part === 'fast-idle') setUp.rig.fastIdle = 'set';
    if (loop.before !== null) {
      const trial = {
        amount: advised.amount,
        before: loop.before,
        after: value,
        slack: advised.slack,
        watched: advised.watched,
      };
      if (!loop.doubted && isTooFar(priorOf(bench, part), trial, noise[unitHere(bench)])) {
        loop.doubted = true;
        return 'doubtful';
      }
      const key = trialsKey(bench, part);
      setUp.trials[key] = remember(setUp.trials[key] ?? [], trial);
      loop.trials = [...loop.trials, trial].slice(-8);
    }
    loop.advised = null;
  }
  loop.doubted = false;
  loop.before = value;
  return 'taken';
}

/** From a judged reading to the next message of the loop. */
export function advance(turn: Turn, verdict: VerdictFact): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  const { adjust } = stage;
  if (!adjust) return enterNext(turn);
  const loop = setUp.loop ?? newLoop();
  setUp.loop = loop;
  loop.before ??= verdict.value ?? null;
  if (verdict.result === 'pass' && loop.free && adjust.fix) return fix(turn, bench, loop);
  const first = loop.trials.length === 0 && !loop.free;
  const resolution = resolutionOf(verdict);
  carry(turn, [first ? outLine(verdict, resolution) : shortLine(verdict, resolution)], { verdict });
  const cautions = adjust.cautions.filter((caution) => !setUp.acknowledged.includes(caution));
  if (cautions.length > 0) {
    return showCautions(turn, cautions, 'turn', first ? pictureOfVerdict(turn, bench, verdict) : null);
  }
  advise(turn);
}

/** Names the next move and asks for the number. */
export function advise(turn: Turn): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  const { adjust } = stage;
  const limits =
    stage.ask && 'reading' in stage.ask ? limitsFor(bench, stage.ask.reading, stage.ask.at ?? null) : null;
  if (!adjust || !limits) return enterNext(turn);
  const loop = setUp.loop ?? newLoop();
  setUp.loop = loop;
  setUp.step = { kind: 'turned' };
  const freeing = adjust.free !== undefined && !loop.free;
  if (freeing) loop.free = true;
  const window = aimWindow(bench, limits.window);
  const learned = learnedOf(bench, adjust.part);
  const watched =
    unitHere(bench) === 'V' &&
    (adjust.part === 'sensor-body' || adjust.part === 'idle-stop') &&
    learned.sense !== 0;
  const { unit } = parts[adjust.part];
  const aim = aimOf(window, noise[unitHere(bench)]);
  const reading = loop.before ?? aim;
  const next = nextMove(
    { unit, hand: hands[unit], learned, watched, loop: loop.trials },
    reading,
    window,
    aim,
    noise[unitHere(bench)],
  );
  if (next.kind === 'stuck') return giveToPerson(turn, next.why);
  // Freed, it may have crept into the aim by itself: one nudge the other way costs less than a wrong "done".
  const direction =
    next.kind === 'within' ? (reading > aim ? -learned.sense || 1 : learned.sense || 1) : next.direction;
  const amount = next.kind === 'within' ? hands[unit].smallest : next.amount;
  const slack = (priorOf(bench, adjust.part).deadBand ?? 0) > 0 && !learned.touching;
  loop.advised = { part: adjust.part, amount: direction * amount, watched, slack };
  sayMove(
    turn,
    bench,
    adjust.part,
    direction,
    amount,
    watched ? window : null,
    freeing && adjust.free ? [adjust.free] : [],
    freeing && window.low !== limits.window.low ? [line('aim-off')] : [],
    !freeing && loop.trials.length > 0,
  );
}

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
  const limits =
    stage.ask && 'reading' in stage.ask ? limitsFor(bench, stage.ask.reading, stage.ask.at ?? null) : null;
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

function fix(turn: Turn, bench: Bench, loop: Loop): void {
  const { adjust, ask } = bench.stage;
  if (!adjust?.fix || !ask || !('reading' in ask)) return enterNext(turn);
  loop.loose = loop.before;
  loop.fixes += 1;
  bench.setUp.step = { kind: 'fixed' };
  askReading(turn, ask.reading, [adjust.fix], []);
}

/** Fixed and read again: right, or the shift is aimed off for, or the screws themselves are nudged. */
export function afterFixing(turn: Turn, verdict: VerdictFact, passed: boolean): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  const loop = setUp.loop ?? newLoop();
  setUp.loop = loop;
  loop.before = verdict.value ?? loop.before;
  if (passed) {
    setUp.passed[stage.id] = 'passed';
    return enterNext(turn);
  }
  carry(turn, [outLine(verdict, resolutionOf(verdict))], { verdict });
  if (loop.fixes >= fixesEnough) return giveToPerson(turn, 'moves-stop-helping');
  loop.free = false;
  loop.trials = [];
  advise(turn);
}

function giveToPerson(turn: Turn, why: string): void {
  callPerson(turn, { reason: `stuck-${why}`, goOn: false, first: [line(`stuck-${why}`)] });
}

/** The loop's last message said again. A move by the meter may be said again: it stops where it is right; another is not. */
export function askAgainInLoop(turn: Turn): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  const { ask } = stage;
  if (!ask || !('reading' in ask)) return;
  const advised = setUp.loop?.advised;
  const doing = setUp.doing;
  if (setUp.step.kind === 'turned' && advised && (advised.watched || doing.length > 0)) {
    const limits = limitsFor(bench, ask.reading, ask.at ?? null);
    const window = advised.watched && limits ? aimWindow(bench, limits.window) : null;
    return sayMove(
      turn,
      bench,
      advised.part as Part,
      Math.sign(advised.amount),
      Math.abs(advised.amount),
      window,
      doing,
    );
  }
  askReading(turn, ask.reading, doing, []);
}

const resolutionOf = (verdict: VerdictFact): number => verdict.resolution ?? 0.001;

function shortLine(verdict: VerdictFact, resolution: number) {
  const high = verdict.high !== null && (verdict.value ?? 0) > verdict.high;
  return line(high ? 'loop-high' : 'loop-low', { value: figure(verdict.value ?? 0, resolution) });
}
