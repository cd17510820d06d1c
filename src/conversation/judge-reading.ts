// Judges a reading against its limits as they stand, keeps it, and goes on from there: passed, turned, looked into, or sent back; for taking a reading.

import type { Line, VerdictFact } from '../chat/facts.ts';
import type { Seen } from '../diagnosis/evidence.ts';
import { swapsOf } from '../measurement/slip.ts';
import type { Measure } from '../procedure/vocabulary.ts';
import { advance, afterFixing } from './adjust.ts';
import { stageHands } from './ask-check.ts';
import { askReading } from './ask-reading.ts';
import type { Awaited } from './awaited.ts';
import { callPerson } from './call-person.ts';
import { enterNext, passStage } from './enter-stage.ts';
import { figure, unitOf, unitSaid } from './fill-in.ts';
import { carryPass, digitForOthers, keep, outLine, record } from './keep-reading.ts';
import { aimWindow } from './learn-loop.ts';
import type { Limits } from './limits.ts';
import { followOdd, giveToDesk } from './odd-reading.ts';
import { follow } from './outcome.ts';
import { carry, line, sayAgain } from './say.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';
import { type Figure, judgeFigure, noted, verdictOf } from './verdict.ts';
import { suspect, suspectReading, weighMiss, weighWaver } from './weigh-evidence.ts';

/** Nobody having turned anything, a throttle that shuts comes back to within this (V; common practice, no source). */
const steady = 0.004;
/** So many readings in a row that cannot tell, and a person had better look. */
const enoughUnclear = 3;

/** A figure, what it is a reading of, and what it is held against. */
export interface Reading {
  bench: Bench;
  awaited: Awaited;
  limits: Limits;
  seen: Figure;
}

export function judgeReading(turn: Turn, reading: Reading, typed: string): void {
  const { bench, awaited, limits, seen } = reading;
  const { setUp, stage } = bench;
  const judged = judgeFigure(seen, aimWindow(bench, limits.window), limits.target);
  const verdict = verdictOf(awaited, seen, judged);
  record(turn, awaited, seen, typed, verdict);
  if (judged.result === 'wandering') return followOdd(turn, bench, awaited, seen, verdict);
  if (judged.result === 'unclear') {
    return cannotTell(turn, judged.why === 'digit' ? judged.needed : null, verdict);
  }
  const finest = digitForOthers(bench, awaited.measure);
  if (seen.resolution > finest) return cannotTell(turn, finest, { ...verdict, result: 'unclear' });
  setUp.unclear = 0;
  const passed = judged.result === 'pass';
  const decides = stage.noteOnly || stage.failing !== undefined;
  if (!passed && decides && setUp.reread === null) return readOnceMore(turn, reading, verdict);
  keep(turn, bench, awaited, verdict, judged, seen.resolution, passed);
  if (wavers(bench, verdict, seen.resolution)) {
    return followWaver(turn, reading, verdict);
  }
  if (passed) carryPass(turn, bench, verdict, seen.resolution);
  if (setUp.step.kind === 'fixed') return afterFixing(turn, verdict, passed);
  if (passed) return stage.adjust && setUp.loop?.free ? advance(turn, verdict) : passStage(turn);
  followMiss(turn, reading, verdict);
}

/** What would decide against the machine is read twice: a figure is easily mistyped. */
function readOnceMore(turn: Turn, { bench, awaited, seen }: Reading, verdict: VerdictFact): void {
  bench.setUp.reread = verdict.value ?? 0;
  carry(turn, [outLine(verdict, seen.resolution)], { verdict });
  askReading(turn, awaited.measure, stageHands(bench), [line('read-once-more')], {}, [], { asked: true });
}

/** It came to rest somewhere else: from the stop on again, or the cause is looked for. */
function followWaver(turn: Turn, reading: Reading, verdict: VerdictFact): void {
  const { bench, awaited, limits, seen } = reading;
  const { setUp, stage } = bench;
  carry(turn, [line('came-back-differently')], { verdict });
  weighWaver(bench, awaited, seen, setUp.reread ?? 0);
  const wavered = (setUp.failures.wavering ?? 0) + 1;
  setUp.failures.wavering = wavered;
  // A closed throttle that rests somewhere else each time is held, or its sensor slack: no figure means anything.
  if (wavered > (limits.target.like === undefined ? 1 : 2)) {
    suspect(bench, null);
    return giveToDesk(turn, bench, 'not-for-an-owner');
  }
  if (stage.failing && !failedTooOften(bench, limits)) return follow(turn, stage.failing);
  followOdd(turn, bench, awaited, seen, verdict);
}

/** Outside its limits: turned, or what the stage says of it, or noted, or looked into. */
function followMiss(turn: Turn, reading: Reading, verdict: VerdictFact): void {
  const { bench, awaited, limits, seen } = reading;
  const { setUp, stage } = bench;
  if (stage.adjust && setUp.checkOnly === null) return advance(turn, verdict);
  if (stage.failing && !failedTooOften(bench, limits)) {
    carry(turn, [outLine(verdict, seen.resolution)], { verdict });
    if ('call' in stage.failing) suspectReading(bench, awaited, seen);
    else if (limits.target.like !== undefined) weighMiss(bench, awaited, seen);
    return follow(turn, stage.failing);
  }
  if (stage.noteOnly) {
    setUp.passed[setUp.stage] = 'noted';
    carryNoted(turn, verdict, seen.resolution);
    return enterNext(turn);
  }
  carry(turn, [outLine(verdict, seen.resolution)], { verdict });
  followOdd(turn, bench, awaited, seen, verdict);
}

/** Nothing to hold it against: kept as found, said so, and gone on. */
export function noteReading(
  turn: Turn,
  awaited: Awaited,
  seen: Seen & { kind: 'value' },
  typed: string,
): void {
  const verdict = noted(awaited, seen);
  record(turn, awaited, seen, typed, verdict);
  carryNoted(turn, verdict, seen.resolution);
  passStage(turn);
}

function carryNoted(turn: Turn, verdict: VerdictFact, resolution: number): void {
  const value = figure(verdict.value ?? 0, resolution);
  carry(turn, [line('noted', { value, unit: unitSaid(verdict.unit) })], { verdict });
}

/** What has to come to rest in the same place came to another one first, and no slip of the fingers explains it. */
function wavers({ setUp, stage }: Bench, { value, result }: VerdictFact, resolution: number): boolean {
  const { reread } = setUp;
  if (reread === null || value === null || value === undefined) return false;
  if (stage.failing === undefined || !('go' in stage.failing) || stage.ask === undefined) return false;
  if (!('reading' in stage.ask) || unitOf(stage.ask.reading) !== 'V') return false;
  const apart = Math.abs(value - reread) > Math.max(steady, 2 * resolution);
  // The last digit flickers between two looks; what is out both times is not made good by a slip in the first.
  const slipped = swapsOf(reread, resolution).some((meant) => Math.abs(meant - value) <= 2.01 * resolution);
  return apart && !(slipped && result === 'pass');
}

/** Going back helps once, and twice where something is set there and only just missed; after that the cause is looked for. */
function failedTooOften({ setUp, stage }: Bench, { target }: Limits): boolean {
  // Not coming back is one failure, whatever the hand did before.
  const what = target.like === undefined ? stage.id : 'coming-back';
  const failures = (setUp.failures[what] ?? 0) + 1;
  setUp.failures[what] = failures;
  const enough = target.like === undefined ? 2 : 1;
  return stage.failing !== undefined && 'go' in stage.failing && failures > enough;
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
