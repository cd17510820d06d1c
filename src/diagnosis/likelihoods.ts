// What one piece of evidence says about every cause, as weights that the conversation adds up in its state.
import { type FaultContent, nothingWrong } from '../procedure/fault.ts';
import { chanceOf } from './chance.ts';
import type { Answer, Evidence, Observation, Tried, Weights } from './evidence.ts';
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
  }
}

function ofObservation(hypotheses: readonly Hypothesis[], observation: Observation): number[] | null {
  const healthy = observation.expected === null ? null : healthyAt(observation, observation.expected);
  if (healthy === null) return null;
  const { measure, situation, supply, seen, previous } = observation;
  // Sent again with nothing done in between, only two figures can be held against each other.
  if (previous?.after === null && (seen.kind !== 'value' || previous.seen.kind !== 'value')) return null;
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
