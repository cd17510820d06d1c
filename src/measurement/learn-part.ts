// What moving a part does to the reading on this machine, learned from the moves made so far; for the next move.
import { median, robustSpread } from './median.ts';

type Sense = 1 | -1 | 0;

/** What content says of the part before anything was tried. `sense` 0: which way raises the reading is not known. */
export interface Prior {
  perUnit: number;
  /** How far `perUnit` may be off, in its own unit; half of it where content does not say. */
  spread?: number;
  sense: Sense;
  /** How many units may pass before the part touches. */
  deadBand?: number;
}

/** One move and what the meter showed before and after it. Amounts are in the part's unit, in its positive direction. */
export interface Trial {
  amount: number;
  before: number;
  after: number;
  /** The part may have turned freely for some of it. */
  slack: boolean;
  /** The owner turned by the meter, not by the amount, which is then only what was expected. */
  watched: boolean;
}

export interface Learned {
  sense: Sense;
  perUnit: number;
  spread: number;
  /** Units still to be turned before the part touches, as far as is known. */
  deadBand: number;
  /** Units turned in one direction, last, without any change. */
  consumed: number;
  /** The part bears: there is no slack in the next move, unless the part is backed off first. */
  touching: boolean;
  /** How many moves tell how far a unit goes. */
  told: number;
}

const trialsKept = 8;

export function remember(trials: readonly Trial[], trial: Trial): Trial[] {
  return [...trials, trial].slice(-trialsKept);
}

export function learn(prior: Prior, trials: readonly Trial[], noise: number): Learned {
  const spread = prior.spread ?? prior.perUnit / 2;
  const told = trials.filter((trial) => moved(trial, noise) && !isTooFar(prior, trial, noise));
  const sense = weighSense(prior.sense, told, trials[0]);
  const consumed = turnedFreely(trials, noise);
  const touching = bears(trials, noise);
  const agreeing = told.filter((trial) => !trial.watched && signOf(trial) === sense);
  // A move with slack in it shows less than the part can do; such moves count only where there are no others.
  const clean = agreeing.filter((trial) => !trial.slack);
  const ratios = (clean.length > 0 ? clean : agreeing).map((trial) =>
    clamp((trial.after - trial.before) / trial.amount, prior.perUnit, spread),
  );
  return {
    sense,
    perUnit: median([prior.perUnit, ...ratios]),
    spread: ratios.length < 3 ? spread / (1 + ratios.length) : Math.max(robustSpread(ratios), noise),
    deadBand: touching ? 0 : Math.max(0, (prior.deadBand ?? 0) - consumed),
    consumed,
    touching,
    told: ratios.length,
  };
}

/** Whether a reading after this move is out of all proportion, as when two digits were swapped: better read again. */
export function isTooFar(prior: Prior, trial: Trial, noise: number): boolean {
  const spread = prior.spread ?? prior.perUnit / 2;
  const farthest =
    (prior.perUnit + 2 * spread) * Math.max(1, Math.abs(trial.amount)) * (trial.watched ? 3 : 1.5);
  return Math.abs(trial.after - trial.before) > farthest + noise;
}

/**
 * Log-odds, as each move may have gone the wrong way or been misread: the first turn of a part by one owner in ten
 * (common practice, no source), later ones seldom. Where the owner turned by the meter, coming nearer tells little,
 * for a hand turns back by what it sees; going away tells nearly as much as any other move.
 */
function weighSense(known: Sense, told: readonly Trial[], first: Trial | undefined): Sense {
  let odds = known * logOdds(0.02);
  for (const trial of told) {
    const sign = signOf(trial);
    const away = sign * odds < 0;
    const wrong = trial.watched ? (away ? 0.08 : 0.25) : trial === first ? 0.1 : 0.04;
    odds += sign * logOdds(wrong);
  }
  return Math.abs(odds) < 0.1 ? known : odds > 0 ? 1 : -1;
}

function logOdds(wrong: number): number {
  return Math.log((1 - wrong) / wrong);
}

function signOf(trial: Trial): number {
  return Math.sign(trial.after - trial.before) * Math.sign(trial.amount);
}

function moved(trial: Trial, noise: number): boolean {
  return trial.amount !== 0 && Math.abs(trial.after - trial.before) > noise;
}

/** Unchanged though it was moved, where it may have turned freely; elsewhere that only means that nobody turned it. */
export function isFree(trial: Trial, noise: number): boolean {
  return trial.slack && !moved(trial, noise);
}

/** Units turned freely in the last direction, since the last move that did anything. */
function turnedFreely(trials: readonly Trial[], noise: number): number {
  const direction = Math.sign(trials.at(-1)?.amount ?? 0);
  const last = trials.findLastIndex(
    (trial) => !isFree(trial, noise) || Math.sign(trial.amount) !== direction,
  );
  return trials.slice(last + 1).reduce((sum, trial) => sum + Math.abs(trial.amount), 0);
}

/** Whether the part bears now: the last move told, and did not bring the reading back to where it stood while nothing bore. */
function bears(trials: readonly Trial[], noise: number): boolean {
  const last = trials.at(-1);
  if (!last || isFree(last, noise)) return false;
  const floor = trials.findLast((trial) => isFree(trial, noise))?.after;
  return floor === undefined || Math.abs(last.after - floor) > noise;
}

/** One bad reading must not make a part look five times as lively as any of its kind. */
function clamp(ratio: number, perUnit: number, spread: number): number {
  return Math.min(perUnit + 2 * spread, Math.max(perUnit / 4, Math.abs(ratio)));
}
