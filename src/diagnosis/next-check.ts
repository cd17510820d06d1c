// Which check to ask for next, or whether to call a person: the one with the lowest expected cost, for the conversation.
import {
  type CallReason,
  type Check,
  type FaultContent,
  nothingWrong,
  unknownCause,
} from '../procedure/fault.ts';
import type { Band } from './evidence.ts';
import { expectedCostOfObserving, expectedCostOfRepair, type Step } from './expected-cost.ts';
import type { Hypothesis } from './hypothesis.ts';
import { lookAlike } from './look-alike.ts';
import { outcomesOf } from './outcomes.ts';
import type { Belief } from './posterior.ts';

export interface Situation {
  /** Questions that were answered, measures that were read lately (the odd one among them), and checks carried out, as their ids. */
  done: readonly string[];
  /** Tools that the owner has not got. */
  lacking: readonly string[];
  /** What a healthy machine would show, by measure: for checks that take another reading. */
  bands: Readonly<Record<string, Band>>;
  /** The measured supply, null where unknown. */
  supply: number | null;
  /** The odd reading is of something that can be set: it may be only that. */
  settable: boolean;
}

export interface CheckAdvice {
  kind: 'check';
  check: string;
  /** The cause that the check is about. */
  cause: string;
  do: string[];
  /** What puts things back once the answer is there. */
  back: string[];
  ask: Check['ask'];
  minutes: number;
  expectedCost: number;
}

interface CallAdvice {
  kind: 'call';
  reason: CallReason;
  cause: string;
  /** For `look-alike`: the causes that no reading here tells apart. */
  causes: string[];
  expectedCost: number;
}

export type Advice = CheckAdvice | CallAdvice;

/** A person's time in minutes, and how much longer it takes where nobody knows what to look for (common practice, no source). */
const callMinutes = 40;
const searchMinutes = 45;

const sureEnough = 0.6;
const worthASecondLook = 0.3;

type Beliefs = readonly { hypothesis: Hypothesis; probability: number }[];

export function nextCheck(content: FaultContent, belief: Belief, situation: Situation): Advice {
  const beliefs = believed(belief);
  const open = content.checks.filter((check) => isOpen(check, beliefs, situation));
  const mending = open
    .filter((check) => Object.keys(check.mends).length > 0)
    .map((check) => (situation.done.includes(check.id) ? lookedOnceAlready(check) : check));
  const plan = planRepair(beliefs, mending);
  let best: { check: Check; cost: number } | null =
    plan.steps[0] === undefined ? null : { check: plan.steps[0].by, cost: plan.cost };
  let lowest = plan.cost;

  for (const check of open) {
    if (check.ask.kind !== 'choice' && check.ask.kind !== 'reading') continue;
    const cost = costOfAsking(content, beliefs, check, situation, mending);
    if (cost !== null && cost < lowest - 1e-9) {
      lowest = cost;
      best = { check, cost };
    }
  }
  if (best === null) return call(content, belief, plan.cost);
  const { check } = best;
  return {
    kind: 'check',
    check: check.id,
    cause: causeOf(belief, check),
    do: check.do,
    back: check.back,
    ask: check.ask,
    minutes: check.minutes,
    expectedCost: best.cost,
  };
}

/** What is worth a thought, adding to 1. */
function believed(belief: Belief): Beliefs {
  const worth = belief.hypotheses.filter((one) => one.probability > 0.001);
  const sum = worth.reduce((total, one) => total + one.probability, 0);
  return worth.map(({ hypothesis, probability }) => ({ hypothesis, probability: probability / sum }));
}

function isOpen(check: Check, beliefs: Beliefs, { done, lacking, settable }: Situation): boolean {
  if (check.for !== 'owner' || check.tools.some((tool) => lacking.includes(tool))) return false;
  if (check.ask.kind === 'go-on' && !settable) return false;
  if (check.ask.kind === 'choice' && done.includes(check.ask.question)) return false;
  if (check.ask.kind === 'reading' && done.includes(check.ask.measure)) return false;
  const times = done.filter((one) => one === check.id).length;
  if (times === 0) return true;
  // A mend that did nothing is asked for once more where hardly anything else fits: people look without seeing.
  return check.ask.kind === 'retake' && times === 1 && chanceToMend(check, beliefs) > worthASecondLook;
}

function chanceToMend(check: Check, beliefs: Beliefs): number {
  return beliefs.reduce((sum, one) => sum + one.probability * mendedBy(check, one.hypothesis), 0);
}

function lookedOnceAlready(check: Check): Check {
  return {
    ...check,
    mends: Object.fromEntries(Object.entries(check.mends).map(([fault, share]) => [fault, share / 2])),
  };
}

/**
 * The order of mending by p/c, each step's p being what the steps before it have left; it ends with a person where
 * another step costs more than it saves.
 */
function planRepair(
  beliefs: Beliefs,
  mending: readonly Check[],
): { steps: (Step & { by: Check })[]; cost: number } {
  const left = beliefs.map((one) => one.probability);
  const most = Math.max(0, ...left);
  const call = callMinutes + searchMinutes * (1 - most);
  const rest = new Set(mending);
  const steps: (Step & { by: Check })[] = [];
  while (rest.size > 0) {
    let best: { by: Check; probability: number } | null = null;
    const remaining = left.reduce((sum, one) => sum + one, 0);
    for (const by of rest) {
      let probability = 0;
      for (const [index, one] of beliefs.entries()) {
        probability += (left[index] ?? 0) * mendedBy(by, one.hypothesis);
      }
      // To set what is not only off its mark would hide a fault: this takes more than being cheap.
      if (by.ask.kind === 'go-on' && probability <= sureEnough * remaining) continue;
      if (best === null || probability / by.minutes > best.probability / best.by.minutes) {
        best = { by, probability };
      }
    }
    if (best === null) break;
    if (best.probability * call <= remaining * best.by.minutes) break;
    rest.delete(best.by);
    steps.push({ by: best.by, probability: best.probability, check: best.by.minutes });
    for (const [index, one] of beliefs.entries()) {
      left[index] = (left[index] ?? 0) * (1 - mendedBy(best.by, one.hypothesis));
    }
  }
  return { steps, cost: expectedCostOfRepair(steps, call) };
}

/** Of two causes, mending one is half the way. */
function mendedBy(check: Check, hypothesis: Hypothesis): number {
  return (
    hypothesis.causes.reduce((sum, cause) => sum + (check.mends[cause.id] ?? 0), 0) / hypothesis.causes.length
  );
}

/** What is expected in all if this is asked first; null where nobody can say what to expect. */
function costOfAsking(
  content: FaultContent,
  beliefs: Beliefs,
  check: Check,
  situation: Situation,
  mending: readonly Check[],
): number | null {
  const outcomes = outcomesOf(content, beliefs, check, situation);
  if (outcomes === null) return null;
  return expectedCostOfObserving(
    check.minutes,
    outcomes.map((chances) => {
      const joint = beliefs.map((one, index) => one.probability * (chances[index] ?? 0));
      const probability = joint.reduce((sum, one) => sum + one, 0);
      const after = beliefs.map((one, index) => ({
        hypothesis: one.hypothesis,
        probability: probability === 0 ? 0 : (joint[index] ?? 0) / probability,
      }));
      return { probability, cost: planRepair(after, mending).cost };
    }),
  );
}

/** The likeliest of the causes that the check would mend; where it mends none, the likeliest of all. */
function causeOf(belief: Belief, check: Check): string {
  const mended = belief.causes
    .map((cause) => ({ id: cause.id, p: cause.probability * (check.mends[cause.id] ?? 0) }))
    .sort((a, b) => b.p - a.p)[0];
  if (mended !== undefined && mended.p > 0) return mended.id;
  return likeliest(belief);
}

function likeliest(belief: Belief): string {
  const named = belief.causes.find((cause) => cause.id !== nothingWrong && cause.id !== unknownCause);
  return named?.id ?? unknownCause;
}

function call(content: FaultContent, belief: Belief, expectedCost: number): CallAdvice {
  const first = belief.causes[0];
  const cause = likeliest(belief);
  const alike = lookAlike(content, belief);
  const mendable = content.checks.some((check) => check.for === 'owner' && (check.mends[cause] ?? 0) > 0);
  const reason: CallReason =
    first?.id === unknownCause
      ? 'unknown-cause'
      : alike.length > 1
        ? 'look-alike'
        : mendable
          ? 'nothing-left'
          : 'not-for-an-owner';
  return { kind: 'call', reason, cause, causes: alike.length > 1 ? alike : [cause], expectedCost };
}
