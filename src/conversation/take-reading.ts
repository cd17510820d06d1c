// Takes what the owner says the meter shows: confirms what was repaired, judges it against the limits as they stand, and goes on from there.

import type { Line, VerdictFact } from '../chat/facts.ts';
import type { Value } from '../measurement/heard.ts';
import { judge } from '../measurement/judge.ts';
import { judgeRange } from '../measurement/judge-range.ts';
import { digitsSwapped, swapsOf } from '../measurement/slip.ts';
import { unknownMeter } from '../measurement/uncertainty.ts';
import { contains } from '../measurement/window.ts';
import type { Measure } from '../procedure/vocabulary.ts';
import { advance, afterFixing } from './adjust.ts';
import { askBack, askHeard } from './ask-back.ts';
import { askReading } from './ask-reading.ts';
import { type Awaited, awaitedOf } from './awaited.ts';
import { callPerson } from './call-person.ts';
import { checkById } from './checks.ts';
import { enterNext } from './enter-stage.ts';
import { figure, unitOf, unitSaid } from './fill-in.ts';
import { carryPass, digitForOthers, implausible, keep, outLine, record, verdictOf } from './keep-reading.ts';
import { aimWindow, noteTrial } from './learn-loop.ts';
import { type Limits, limitsFor } from './limits.ts';
import { followOdd, giveToDesk, type Seen, stageHands, takeCheckReading } from './odd-reading.ts';
import { follow } from './outcome.ts';
import { pictureOfSweep } from './picture-subjects.ts';
import { afterActions } from './rig.ts';
import { carry, line, sayAgain } from './say.ts';
import { takeAsked } from './staff-ask.ts';
import { judgeSweep } from './sweep.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';
import { clearOdd, isOdd, suspectReading, weighMiss, weighWaver } from './weigh-evidence.ts';

/** Wider than this a reading wanders, and no verdict can be told from it (V; common practice, no source). */
export const widestFlicker = 0.004;
/** Nobody having turned anything, a throttle that shuts comes back to within this (V; common practice, no source). */
const steady = 0.004;
/** Below this (V) the meter shows what it shows of a control unit asleep. */
const asleepBelow = 0.03;
/** So many readings in a row that cannot tell, and a person had better look. */
const enoughUnclear = 3;

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
      // Over the range says something of the dial, nothing of what is measured: once, the next range is asked for.
      if (seen.kind === 'overload' && setUp.unclear === 0) {
        setUp.unclear += 1;
        return askBack(turn, 'next-range');
      }
      record(turn, awaited, seen, typed, implausible(awaited, seen, null));
      return takeCheckReading(turn, bench, awaited, seen);
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
  const odd = setUp.oddity;
  // Nothing was mended in between: the two figures are of one state, or it wanders.
  if (odd?.done.at(-1) === 'read-again' && odd.seen.kind === 'value') setUp.reread ??= odd.seen.value;
  clearOdd(bench, awaited, seen);
  if (!limits) return keepAndGoOn(turn, bench, awaited, seen, typed);

  const window = aimWindow(bench, limits.window);
  const policy = { acceptance: limits.target.guarded ? 'guarded' : 'simple' } as const;
  const judged =
    seen.kind === 'value'
      ? judge(seen, window, unknownMeter, policy)
      : judgeRange(seen, widestFlicker, window, unknownMeter, policy);
  const verdict = verdictOf(awaited, seen, judged);
  record(turn, awaited, seen, typed, verdict);
  if (judged.result === 'wandering') return followOdd(turn, bench, awaited, seen, verdict);
  if (judged.result === 'unclear')
    return cannotTell(turn, judged.why === 'digit' ? judged.needed : null, verdict);
  const finest = digitForOthers(bench, awaited.measure);
  if (seen.resolution > finest) return cannotTell(turn, finest, { ...verdict, result: 'unclear' });
  setUp.unclear = 0;
  const passed = judged.result === 'pass';
  const decides = bench.stage.noteOnly || bench.stage.failing !== undefined;
  if (!passed && decides && setUp.reread === null) {
    setUp.reread = verdict.value ?? 0;
    carry(turn, [outLine(verdict, seen.resolution)], { verdict });
    return askReading(turn, awaited.measure, stageHands(bench), [line('read-once-more')], {}, [], {
      asked: true,
    });
  }
  keep(turn, bench, awaited, verdict, judged, seen.resolution, passed);
  if (wavers(bench, verdict, seen.resolution)) {
    carry(turn, [line('came-back-differently')], { verdict });
    weighWaver(bench, awaited, seen, setUp.reread ?? 0);
    const wavered = (setUp.failures.wavering ?? 0) + 1;
    setUp.failures.wavering = wavered;
    // A closed throttle that rests somewhere else each time is held, or its sensor slack: no figure means anything.
    if (wavered > (limits.target.like === undefined ? 1 : 2)) {
      suspectReading(bench, awaited, seen);
      return giveToDesk(turn, bench, 'not-for-an-owner');
    }
    if (bench.stage.failing && !failedTooOften(bench, limits)) return follow(turn, bench.stage.failing);
    return followOdd(turn, bench, awaited, seen, verdict);
  }
  if (passed) carryPass(turn, bench, verdict, seen.resolution);
  if (setUp.step.kind === 'fixed') return afterFixing(turn, verdict, passed);
  if (passed) return bench.stage.adjust && setUp.loop?.free ? advance(turn, verdict) : passOn(turn, bench);
  if (bench.stage.adjust && setUp.checkOnly === null) return advance(turn, verdict);
  if (bench.stage.failing && !failedTooOften(bench, limits)) {
    carry(turn, [outLine(verdict, seen.resolution)], { verdict });
    if ('call' in bench.stage.failing) suspectReading(bench, awaited, seen);
    else if (limits.target.like !== undefined) weighMiss(bench, awaited, seen);
    return follow(turn, bench.stage.failing);
  }
  if (bench.stage.noteOnly) {
    setUp.passed[setUp.stage] = 'noted';
    carry(
      turn,
      [line('noted', { value: figure(verdict.value ?? 0, seen.resolution), unit: unitSaid(verdict.unit) })],
      {
        verdict,
      },
    );
    return enterNext(turn);
  }
  carry(turn, [outLine(verdict, seen.resolution)], { verdict });
  followOdd(turn, bench, awaited, seen, verdict);
}

/** What has to come to rest in the same place came to another one first, and no slip of the fingers explains it. */
function wavers({ setUp, stage }: Bench, { value }: VerdictFact, resolution: number): boolean {
  const { reread } = setUp;
  if (reread === null || value === null || value === undefined) return false;
  if (stage.failing === undefined || !('go' in stage.failing) || stage.ask === undefined) return false;
  if (!('reading' in stage.ask) || unitOf(stage.ask.reading) !== 'V') return false;
  const apart = Math.abs(value - reread) > Math.max(steady, 2 * resolution);
  return apart && !digitsSwapped(reread, value, resolution);
}

/** So near (V, 1/min) a figure lies to one that it could have been mistyped for. */
const slipReach = { V: 0.06, '1/min': 400 } as const;

/**
 * The last word on a figure that nothing else is held against: where two digits that changed places would make the
 * difference between right and not, it is repeated before it counts.
 */
function isSlipAway({ stage, setUp, machine }: Bench, limits: Limits | null, seen: Value): boolean {
  if (!limits || setUp.reread !== null || stage.failing === undefined || stage.ask === undefined)
    return false;
  if (!('reading' in stage.ask) || limits.target.like !== undefined) return false;
  const { reading } = stage.ask;
  // What other readings are held against gets found out by them.
  if (Object.values(machine.targets).some(({ like }) => like === reading)) return false;
  const reach = unitOf(reading) === 'V' ? slipReach.V : slipReach['1/min'];
  if (!contains(limits.window, seen.value)) return false;
  return swapsOf(seen.value, seen.resolution).some(
    (other) => !contains(limits.window, other) && Math.abs(other - seen.value) <= reach,
  );
}

/** Going back helps once; after that the cause is looked for. */
function failedTooOften({ setUp, stage }: Bench, { target }: Limits): boolean {
  // Not coming back is one failure, whatever the hand did before.
  const what = target.like === undefined ? stage.id : 'coming-back';
  const failures = (setUp.failures[what] ?? 0) + 1;
  setUp.failures[what] = failures;
  return stage.failing !== undefined && 'go' in stage.failing && failures > 1;
}

/** All values of a sweep come in one message; it passes when it rises all the way and comes back. */
function takeSeries(turn: Turn, bench: Bench, awaited: Awaited, seen: Seen, typed: string): void {
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
  passOn(turn, bench);
}

function passOn(turn: Turn, bench: Bench): void {
  bench.setUp.passed[bench.setUp.stage] = 'passed';
  enterNext(turn);
}

function keepAndGoOn(turn: Turn, bench: Bench, awaited: Awaited, seen: Seen, typed: string): void {
  // Nothing to hold it against: kept as found, said so, and gone on.
  if (seen.kind !== 'value') return askBack(turn, 'unclear-one-number');
  const verdict: VerdictFact = {
    result: 'pass',
    measure: awaited.measure,
    unit: unitOf(awaited.measure),
    value: seen.value,
    low: null,
    high: null,
  };
  record(turn, awaited, seen, typed, verdict);
  carry(turn, [line('noted', { value: figure(seen.value, seen.resolution), unit: unitSaid(verdict.unit) })], {
    verdict,
  });
  passOn(turn, bench);
}

/** A unit that fell asleep is woken again as often as needed; only one that stays at nothing is trouble. */
function isAsleep(bench: Bench, { measure }: Awaited, seen: Seen): boolean {
  const { setUp } = bench;
  const needsPower = measure.startsWith('signal-') || measure === 'supply-voltage';
  const shows =
    seen.kind === 'value' ? Math.abs(seen.value) : seen.kind === 'range' ? Math.abs(seen.high) : null;
  const nothing = seen.kind === 'none' || (shows !== null && shows < asleepBelow);
  if (!needsPower || !nothing) {
    setUp.wakes = 0;
    return false;
  }
  setUp.wakes += 1;
  // Where the odd reading itself is taken again, nothing may be what it shows.
  const { step } = setUp;
  const retaken = step.kind === 'check' && checkById(bench, step.check)?.ask.kind === 'retake';
  return setUp.wakes === 1 && !retaken;
}

function wakeAgain(turn: Turn, awaited: Awaited, typed: string): void {
  const { setUp } = benchOf(turn);
  setUp.rig = { ...setUp.rig, awake: false, awakeSince: null };
  turn.taken.push({
    setUp: setUp.code,
    stage: setUp.stage,
    measure: awaited.measure,
    situation: awaited.situation,
    typed,
    value: 0,
    low: null,
    high: null,
    result: 'implausible',
    struck: 'asleep',
    at: turn.scene.now,
  });
  turn.state.taken += 1;
  askBack(turn, 'asleep-again');
}

function cannotTell(turn: Turn, needed: number | null, verdict: VerdictFact): void {
  const bench = benchOf(turn);
  const { setUp } = bench;
  setUp.unclear += 1;
  const lines: Line[] =
    needed === null ? [line('unclear-meter')] : [line('unclear-digits', { digit: needed })];
  if (setUp.unclear >= enoughUnclear) {
    return callPerson(turn, { reason: 'meter-too-coarse', goOn: false, first: lines });
  }
  carry(turn, lines, { verdict });
  if (setUp.step.kind !== 'stage') return sayAgain(turn);
  // The leads are in and the power is on: only what a hand holds is done again.
  askReading(turn, verdict.measure as Measure, stageHands(bench), []);
}
