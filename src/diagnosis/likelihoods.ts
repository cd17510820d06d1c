// What one piece of evidence says about every cause, as weights that the conversation adds up in its state.
import { type Fault, type FaultContent, nothingWrong, type Predictor } from '../procedure/fault.ts';
import { chanceOf, countsAlone } from './chance.ts';
import type { Answer, Evidence, Observation, SeenTo, Tried, Weights } from './evidence.ts';
import { healthyAt } from './healthy.ts';
import { type Hypothesis, hypothesesOf, inOrder, movesAfter, predictAll } from './hypothesis.ts';
import { healthyWay } from './way.ts';

/**
 * How much the evidence speaks for each cause and pair, against a machine in order, set or not set yet. What says
 * nothing gives no weights.
 */
export function likelihoods(content: FaultContent, evidence: Evidence): Weights {
  const hypotheses = hypothesesOf(content);
  const chances = chancesOf(content, evidence, hypotheses);
  const base = chancesOf(content, evidence, onlyInOrder)?.[0] ?? 1;
  if (chances === null) return {};
  const weights: Weights = {};
  hypotheses.forEach(({ id }, index) => {
    const chance = chances[index] ?? base;
    const weight = chance === base ? 0 : Math.round(1000 * Math.log(chance / base));
    if (weight !== 0) weights[id] = weight;
  });
  return weights;
}

const onlyInOrder = [inOrder];

/** Sums weights; the order does not matter. */
export function addWeights(...several: readonly Weights[]): Weights {
  const sums: Weights = {};
  for (const weights of several) {
    for (const id in weights) sums[id] = (sums[id] ?? 0) + (weights[id] ?? 0);
  }
  return sums;
}

/**
 * What the weights of a reading that was in order say later on: nothing about what comes and goes in between (leads
 * moved, unit asleep, a button pressed), all of it about what lasts.
 */
export function lastingWeights(content: FaultContent, weights: Weights): Weights {
  const lasting: Weights = {};
  for (const { id, causes } of hypothesesOf(content)) {
    const kept = causes.filter((cause) => !cause.passing);
    const weight =
      kept.length === causes.length
        ? (weights[id] ?? 0)
        : kept.reduce((sum, cause) => sum + (weights[cause.id] ?? 0), 0);
    if (weight !== 0) lasting[id] = weight;
  }
  return lasting;
}

/** How often, at one reading, something that comes and goes is about (common practice, no source). */
const somethingPasses = 0.08;

/**
 * What an odd reading says once it is gone again: either a cause that flickers showed it, or something that comes and
 * goes did, which is about at one reading in a dozen whatever else is wrong. So a pin that slipped accuses nobody for
 * good, and a plug that drops out again and again stands out in the end. What would still show it has not done it.
 */
export function weightsOfPast(content: FaultContent, weights: Weights): Weights {
  const passing = content.faults.filter((fault) => fault.passing);
  const shares = passing.reduce((sum, { prior }) => sum + prior['odd-reading'], 0);
  const shown = passing.reduce(
    (sum, { id, prior }) => sum + prior['odd-reading'] * Math.exp((weights[id] ?? 0) / 1000),
    0,
  );
  const byPassing = shares === 0 ? 0 : (somethingPasses * shown) / shares;
  const past: Weights = {};
  for (const { id, causes } of hypothesesOf(content)) {
    const flickering = causes.find((cause) => !cause.passing && flickers(cause));
    if (flickering === undefined) continue;
    const shows = (1 - somethingPasses) * Math.exp((weights[flickering.id] ?? 0) / 1000);
    const weight = Math.round(1000 * Math.log((shows + byPassing) / (1 - somethingPasses + byPassing)));
    if (weight !== 0) past[id] = weight;
  }
  return past;
}

/** Whether it shows now and then, by what content predicts: it wanders, drops out, comes to rest elsewhere, bends some sweeps. */
function flickers({ shows, changes, sweep }: Fault): boolean {
  const unsteady = ({ kind }: Predictor) => kind === 'wandering' || kind === 'drop-out';
  const wanders = shows.some(
    ({ as }) => as.reduce((sum, one) => sum + (unsteady(one) ? one.share : 0), 0) >= 0.2,
  );
  const rests = changes.some(({ after, same }) => after.includes('snap') && same < 0.5);
  const rising = sweep?.rising ?? 1;
  return wanders || rests || (rising > 0.1 && rising < 0.7);
}

/** The chance of the evidence under each hypothesis, in their order; null where it says nothing. */
export function chancesOf(
  content: FaultContent,
  evidence: Evidence,
  hypotheses: readonly Hypothesis[],
): number[] | null {
  switch (evidence.kind) {
    case 'observation':
      return ofObservation(hypotheses, evidence);
    case 'answer':
      return ofAnswer(content, hypotheses, evidence);
    case 'tried':
      return ofTried(content, hypotheses, evidence);
    case 'seen-to':
      return ofSeenTo(content, hypotheses, evidence);
  }
}

function ofObservation(hypotheses: readonly Hypothesis[], observation: Observation): number[] | null {
  const healthy = observation.expected === null ? null : healthyAt(observation, observation.expected);
  if (healthy === null) return null;
  const { measure, situation, supply, seen, previous } = observation;
  // Sent again with nothing done in between, only two figures can be held against each other.
  if (countsAlone(observation) && (seen.kind !== 'value' || previous?.seen.kind !== 'value')) return null;
  const all = predictAll(hypotheses, measure, situation, supply !== null);
  const after = previous?.after ?? null;
  // Most causes leave most readings alone: those are reckoned once for all of them.
  let untouched: number | null = null;
  return hypotheses.map((hypothesis, index) => {
    const ways = all[index] ?? healthyWay;
    const touches =
      ways !== healthyWay ||
      seen.kind === 'series' ||
      (after !== null && movesAfter(hypothesis, after) !== null);
    if (touches) return chanceOf(hypothesis, observation, healthy, ways);
    untouched ??= chanceOf(inOrder, observation, healthy, healthyWay);
    return untouched;
  });
}

/** An answer that the question does not know ("don't know" among them) says nothing. */
function ofAnswer(content: FaultContent, hypotheses: readonly Hypothesis[], answer: Answer): number[] | null {
  const question = content.questions.find((one) => one.id === answer.question);
  if (question?.usual[answer.answer] === undefined) return null;
  const answers = Object.keys(question.usual).length;
  return hypotheses.map((hypothesis) => {
    // Of two causes, the one that departs further from the usual answer decides.
    const usual = question.usual[answer.answer] ?? 0;
    const shares = hypothesis.causes.map((cause) => {
      const said = cause.answers[question.id];
      return said === undefined ? usual : (said[answer.answer] ?? 0);
    });
    const share = shares.reduce(
      (far, one) => (Math.abs(one - usual) > Math.abs(far - usual) ? one : far),
      usual,
    );
    return (1 - question.slips) * share + question.slips / answers;
  });
}

/** Owners say "done" without doing, and look without seeing: nothing is ever ruled out for good. */
function ofTried(content: FaultContent, hypotheses: readonly Hypothesis[], tried: Tried): number[] | null {
  const check = content.checks.find((one) => one.id === tried.check);
  if (check === undefined) return null;
  return hypotheses.map((hypothesis) => {
    const mended = hypothesis.causes.map((cause) => check.mends[cause.id] ?? 0);
    const all = mended.length === 0 ? 0 : mended.reduce((product, share) => product * share, 1);
    const none = mended.reduce((product, share) => product * (1 - share), 1);
    const share = { right: all, changed: 1 - all - none, 'as-before': none }[tried.result];
    // Nothing to mend: the reading is right once it is taken again.
    const ofWell = tried.result === 'right' ? 0.9 : 0.05;
    return hypothesis.id === nothingWrong ? ofWell : 0.94 * share + 0.02;
  });
}

/** What the check mends is still there only where it did not take. */
function ofSeenTo(content: FaultContent, hypotheses: readonly Hypothesis[], { check: id }: SeenTo) {
  const check = content.checks.find((one) => one.id === id);
  if (check === undefined) return null;
  return hypotheses.map(({ causes }) => {
    // What sits in the machine stays as it was put; leads, meter and hands do not.
    const there = causes.filter((cause) => cause.layer === 'mechanical' || cause.layer === 'sensor');
    return there.reduce((left, cause) => left * (1 - 0.95 * (check.mends[cause.id] ?? 0)), 1);
  });
}
