// What is known of the part in hand, from the machine's content and from what each move did to the reading; for the adjusting loop.

import type { Seen } from '../diagnosis/evidence.ts';
import { isTooFar, type Learned, learn, type Prior, remember } from '../measurement/learn-part.ts';
import { aimBefore, learnShift, rememberShift } from '../measurement/learn-shift.ts';
import type { Window } from '../measurement/window.ts';
import { partOf } from '../procedure/machine.ts';
import { type Part, parts } from '../procedure/vocabulary.ts';
import type { Loop } from './state.ts';
import type { Bench } from './turn.ts';

/** Two readings of one state differ by no more than this (V, 1/min; common practice, no source). */
const noises = { V: 0.0015, '1/min': 30 } as const;
/** What fixing may do to the reading (V; common practice, no source). */
const shiftPrior = { shift: 0, spread: 0.014 };
/** How much faster a volt more at the idle stop makes the engine run (1/min; common practice, no source). */
export const speedPerVolt = 12_500;
export const newLoop = (): Loop => ({
  free: false,
  advised: null,
  before: null,
  trials: [],
  loose: null,
  fixes: 0,
  doubted: false,
});

export const unitHere = ({ stage }: Bench): 'V' | '1/min' =>
  stage.ask && 'reading' in stage.ask && stage.ask.reading === 'idle-speed' ? '1/min' : 'V';

export const noiseHere = (bench: Bench): number => noises[unitHere(bench)];

/** Trials of one part are kept apart by what was read: volts and engine speed are learned separately. */
const trialsKey = (bench: Bench, part: string): string => (unitHere(bench) === 'V' ? part : `${part}@speed`);

export function priorOf(bench: Bench, part: string): Prior {
  const own = partOf(bench.machine, part);
  const [positive] = parts[part as Part].directions;
  const volts = own?.perUnit ?? 0.01;
  const perUnit = unitHere(bench) === 'V' ? volts : volts * speedPerVolt;
  const sense = !own || own.raises === 'unknown' ? 0 : own.raises === positive ? 1 : -1;
  return { perUnit, spread: perUnit * 0.6, sense, deadBand: own?.deadBand ?? 0 };
}

export function learnedOf(bench: Bench, part: string): Learned {
  return learn(priorOf(bench, part), bench.setUp.trials[trialsKey(bench, part)] ?? [], noiseHere(bench));
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
      if (!loop.doubted && isTooFar(priorOf(bench, part), trial, noiseHere(bench))) {
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
