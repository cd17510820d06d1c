// Small seeded models of parts and of the hand that turns them, and the loop of reading and moving; for the tests of moves.
import type { Hand, MoveUnit } from '../../src/measurement/hand-amount.ts';
import { isTooFar, learn, type Prior, remember, type Trial } from '../../src/measurement/learn-part.ts';
import { nextMove, type StuckWhy } from '../../src/measurement/next-move.ts';
import { aimOf, contains, type Window } from '../../src/measurement/window.ts';

export interface Draw {
  between(low: number, high: number): number;
  chance(share: number): boolean;
  normal(spread: number): number;
}

/** Mulberry32, a public-domain generator: the same seed gives the same machine. */
export function drawFrom(seed: number): Draw {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    between: (low, high) => low + (high - low) * next(),
    chance: (share) => next() < share,
    normal: (spread) => spread * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
  };
}

/** A part of one machine: where the reading is, and what turning by so many units does to it. */
export interface Model {
  volts(): number;
  turn(units: number): void;
}

export interface Slips {
  wrongFirst: number;
  falseDone: number;
  swapped: number;
}

export const ordinarySlips: Slips = { wrongFirst: 0.1, falseDone: 0.05, swapped: 0.02 };

export interface Loop {
  model: Model;
  prior: Prior;
  unit: MoveUnit;
  hand: Hand;
  window: Window;
  /** How finely the hand turns while it watches, in units; null where it turns blind. */
  watching: number | null;
  slips: Slips;
  /** A reading out of all proportion is asked for once more before it counts. */
  asksAgain: boolean;
  draw: Draw;
  trials?: readonly Trial[];
}

export interface Ended {
  end: 'within' | StuckWhy | 'endless';
  readings: number;
  /** Within the window, give or take what the last digit and the noise hide. */
  truly: boolean;
  trials: readonly Trial[];
}

const noise = 0.002;

export function turnUntilRight(loop: Loop): Ended {
  const { model, window, draw, slips } = loop;
  let trials = loop.trials ?? [];
  let readings = 0;
  const tried: Trial[] = [];
  const read = () => {
    readings += 1;
    const shown = Math.round((model.volts() + draw.normal(0.0004)) * 1000) / 1000;
    return draw.chance(slips.swapped) ? swapDigits(shown, draw) : shown;
  };
  let before = read();
  while (readings < 40) {
    const learned = learn(loop.prior, trials, noise);
    const watched = loop.watching !== null && learned.sense !== 0;
    const part = { unit: loop.unit, hand: loop.hand, learned, watched, loop: tried };
    const move = nextMove(part, before, window, aimOf(window, 0.01), noise);
    if (move.kind !== 'move') {
      const end = move.kind === 'within' ? 'within' : move.why;
      return { end, readings, truly: isTruly(model, window), trials };
    }
    const wrong = trials.length === 0 && draw.chance(slips.wrongFirst);
    const units = move.direction * move.amount * (wrong ? -1 : 1);
    if (!draw.chance(slips.falseDone)) {
      if (watched && loop.watching !== null && !wrong)
        watchAndTurn(model, window, move.direction * loop.watching, draw);
      else model.turn(units);
    }
    const trial = (after: number): Trial => ({
      amount: move.direction * move.amount,
      before,
      after,
      slack: (loop.prior.deadBand ?? 0) > 0 && !learned.touching,
      watched,
    });
    let after = read();
    if (loop.asksAgain && isTooFar(loop.prior, trial(after), noise)) after = read();
    tried.push(trial(after));
    trials = remember(trials, trial(after));
    before = after;
  }
  return { end: 'endless', readings, truly: isTruly(model, window), trials };
}

function isTruly(model: Model, window: Window): boolean {
  const spare = 0.002;
  return contains({ low: (window.low ?? 0) - spare, high: (window.high ?? 0) + spare }, model.volts());
}

/** Turns until the band shows or it has gone clearly the wrong way; the hand lets go with an error of its own. */
function watchAndTurn(model: Model, { low, high }: Window, step: number, draw: Draw): void {
  const middle = ((low ?? 0) + (high ?? 0)) / 2;
  const start = model.volts();
  let onward = step;
  for (let i = 0; i < 400; i += 1) {
    const miss = model.volts() - middle;
    if (Math.abs(miss) < ((high ?? 0) - (low ?? 0)) * 0.3) break;
    if (Math.abs(miss) > Math.abs(start - middle) + 0.03) break;
    const passed = Math.sign(miss) !== Math.sign(start - middle);
    onward = passed ? -Math.abs(onward) * Math.sign(step) : Math.abs(onward) * Math.sign(step);
    model.turn(onward);
  }
  model.turn(draw.normal(Math.abs(step) * 0.1));
}

function swapDigits(shown: number, draw: Draw): number {
  const digits = shown.toFixed(3).split('');
  const at = draw.chance(0.5) ? 2 : 3;
  [digits[at], digits[at + 1]] = [digits[at + 1] ?? '0', digits[at] ?? '0'];
  return Number(digits.join(''));
}

export function summarise(runs: readonly Ended[]) {
  const readings = runs.map((run) => run.readings).toSorted((a, b) => a - b);
  const share = (count: number) => Number((count / runs.length).toFixed(4));
  return {
    within: share(runs.filter((run) => run.end === 'within').length),
    falsely: share(runs.filter((run) => run.end === 'within' && !run.truly).length),
    median: readings[Math.floor(runs.length / 2)] ?? 0,
    p95: readings[Math.floor(runs.length * 0.95)] ?? 0,
    stuck: share(runs.filter((run) => run.end !== 'within' && run.end !== 'endless').length),
    endless: runs.filter((run) => run.end === 'endless').length,
  };
}
