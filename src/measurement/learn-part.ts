// What moving a part does to the reading on this machine, learned from the moves made so far; for the next move.
import { median, robustSpread } from './median.ts';

export type Sense = 1 | -1 | 0;

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
  const touching = consumed === 0 && trials.length > 0;
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
 * (common practice, no source), later ones seldom. A watched move tells little: the owner turns back by the meter.
 */
function weighSense(known: Sense, told: readonly Trial[], first: Trial | undefined): Sense {
  const prior = known * logOdds(0.02);
  const odds = told.reduce((sum, trial) => {
    const wrong = trial.watched ? 0.25 : trial === first ? 0.1 : 0.04;
    return sum + signOf(trial) * logOdds(wrong);
  }, prior);
  return Math.abs(odds) < 0.5 ? known : odds > 0 ? 1 : -1;
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

function turnedFreely(trials: readonly Trial[], noise: number): number {
  const direction = Math.sign(trials.at(-1)?.amount ?? 0);
  const sinceChange = trials.slice(
    trials.findLastIndex((trial) => moved(trial, noise) || Math.sign(trial.amount) !== direction) + 1,
  );
  return sinceChange.reduce((sum, trial) => sum + Math.abs(trial.amount), 0);
}

/** One bad reading must not make a part look five times as lively as any of its kind. */
function clamp(ratio: number, perUnit: number, spread: number): number {
  return Math.min(perUnit + 2 * spread, Math.max(perUnit / 4, Math.abs(ratio)));
}
