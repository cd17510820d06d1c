// A reading of nothing because the control unit fell asleep: woken again as often as needed, and not counted as trouble; for taking a reading.

import type { Seen } from '../diagnosis/evidence.ts';
import { askBack } from './ask-back.ts';
import type { Awaited } from './awaited.ts';
import { checkById } from './checks.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';

/** Below this (V) the meter shows what it shows of a control unit asleep. */
const asleepBelow = 0.03;

/** A unit that fell asleep is woken again as often as needed; only one that stays at nothing is trouble. */
export function isAsleep(bench: Bench, { measure }: Awaited, seen: Seen): boolean {
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

export function wakeAgain(turn: Turn, awaited: Awaited, typed: string): void {
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
