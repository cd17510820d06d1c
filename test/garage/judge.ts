// Holds what the program declared against what is true of the machine, for one finished conversation.
import type { VerdictFact } from '../../src/chat/facts.ts';
import { causeNames } from './cause-names.ts';
import type { Story } from './drive.ts';
import type { Machine } from './machine.ts';
import { statedError } from './meter.ts';
import type { Sent } from './owner.ts';
import { trueValue } from './truth.ts';
import { sensorIsFree } from './turn-parts.ts';

export interface Outcome {
  /** `set`, `right-as-found`, `accepted`, `not-set`, or null where no record was made. */
  declared: string | null;
  baseline: string | null;
  withPerson: boolean;
  /** The reason that the case gave, and the first cause that the desk was shown. */
  reason: string | null;
  stuck: string | null;
  /** Why a declared set-up is wrong; empty where it is right, or nothing was declared. */
  wrong: string[];
  trulySet: boolean;
  touched: boolean;
  /** Place of the true cause in what the desk was shown: 1 is first; null where it was not among them, or nobody was told any. */
  rank: number | null;
  /** Probability of the first cause, and whether it is a true one. */
  first: { probability: number; right: boolean } | null;
  messages: number;
  stages: number;
  /** Readings sent in each adjusting loop. */
  loops: number[];
  /** Ended as it should for its kind. */
  endedRight: boolean;
}

/** Measures whose truth is the machine's own and is looked at in its last state; the others are held to their moment. */
const standing = new Set(['signal-closed-stop', 'signal-idle', 'signal-fast-idle', 'signal-wide-open']);

export function judgeStory(story: Story): Outcome {
  const { scene } = story;
  const outputs = story.steps.flatMap((step) => step.outputs);
  const record = outputs.findLast((output) => output.facts.record)?.facts.record ?? null;
  const opened = outputs.find((output) => output.facts.case);
  const declared = record?.result ?? null;
  const claims = declared === 'set' || declared === 'right-as-found';
  const wrong = claims ? whatIsWrong(story, declared) : [];
  const trulySet = declared === 'set' && wrong.length === 0;
  const ranked = rankTrueCause(story);
  const withPerson = opened !== undefined;
  const touched = scene.touched.size > 0;
  return {
    declared,
    baseline: record?.baseline ?? null,
    withPerson,
    reason: opened?.facts.case?.reason ?? null,
    stuck: story.stuck,
    wrong,
    trulySet,
    touched,
    ...ranked,
    messages: story.steps.filter((step) => 'from' in step.line).length,
    stages: countStages(story),
    loops: countLoops(story),
    endedRight: endedRight(story, {
      claims: claims && wrong.length === 0,
      trulySet,
      withPerson,
      touched,
      declared,
    }),
  };
}

function endedRight(
  { scene }: Story,
  end: { claims: boolean; trulySet: boolean; withPerson: boolean; touched: boolean; declared: string | null },
): boolean {
  if (!scene.complaint) return end.declared === 'right-as-found' && !end.touched && !end.withPerson;
  const forPerson = scene.faults.some((fault) => !fault.byOwner);
  return forPerson ? end.withPerson || end.claims : end.claims && !end.withPerson;
}

function whatIsWrong(story: Story, declared: string): string[] {
  const { scene } = story;
  const wrong: string[] = [];
  const judged = lastVerdicts(story);
  for (const [measure, { verdict, sent }] of judged) {
    const truth =
      standing.has(measure) || !sent
        ? trueValue(asWarm(scene.machine, sent?.warm ?? false), measure, false)
        : sent.truth;
    if (truth === null) continue;
    const allowed = sent?.allowed ?? statedError(scene.meter, truth);
    const { low, high } = verdict;
    const past = Math.max(low === null ? 0 : low - truth, high === null ? 0 : truth - high);
    if (past > allowed + 1e-9) {
      wrong.push(
        `${measure} is ${truth.toFixed(4)}, outside ${low} to ${high} by more than ${allowed.toFixed(4)}`,
      );
    }
  }
  for (const measure of ['signal-closed-stop', 'signal-idle', 'signal-fast-idle']) {
    if (declared === 'set' && !judged.has(measure))
      wrong.push(`declared set without a verdict on ${measure}`);
  }
  if (declared === 'set' && sensorIsFree(scene.machine)) wrong.push('the sensor was left loose');
  for (const fault of scene.faults) if (fault.ruins?.(scene)) wrong.push(`still there: ${fault.id}`);
  return wrong;
}

/** Heat counts in a truth as it did in the reading that was judged. */
function asWarm(machine: Machine, warm: boolean): Machine {
  return { ...machine, engine: { ...machine.engine, warm } };
}

interface Judged {
  verdict: VerdictFact;
  sent: Sent | null;
}

/** The last verdict of each measure, beside the reading it was given on. */
function lastVerdicts(story: Story): Map<string, Judged> {
  const last = new Map<string, Judged>();
  const sentLast = new Map<string, Sent>();
  for (const step of story.steps) {
    if (step.sent) sentLast.set(step.sent.measure, step.sent);
    for (const { facts } of step.outputs) {
      const { verdict } = facts;
      if (!verdict || (verdict.low === null && verdict.high === null)) continue;
      last.set(verdict.measure, { verdict, sent: sentLast.get(verdict.measure) ?? null });
    }
  }
  return last;
}

/**
 * Where the desk's list, as it stood last, has a true cause first. A cause counts as true by its row (which two causes may
 * share: a desk reads "row 4" and looks at the stop and at the bore), or by its name. Of two faults at once either will
 * do, since the desk finds the other beside it; so the figure is kind to pairs, and those are left out of what has to be
 * reached. Cases without a list are not ranked at all: nobody was told anything.
 */
function rankTrueCause(story: Story): Pick<Outcome, 'rank' | 'first'> {
  const causes = story.steps
    .flatMap((step) => step.outputs)
    .findLast((output) => output.to === 'desk' && output.facts.causes?.length)?.facts.causes;
  const { faults } = story.scene;
  if (!causes) return { rank: null, first: null };
  const isTrue = (cause: { id: string; row: string | null }) =>
    faults.some(
      (fault) =>
        cause.id === fault.id ||
        (causeNames[fault.id] ?? []).includes(cause.id) ||
        (fault.row !== null && cause.row === fault.row),
    );
  const place = causes.findIndex(isTrue);
  const top = causes[0]!;
  return {
    rank: place < 0 ? null : place + 1,
    first: top.probability === undefined ? null : { probability: top.probability, right: isTrue(top) },
  };
}

/** Stages in which something was asked. */
function countStages(story: Story): number {
  const stages = new Set<string>();
  for (const { outputs } of story.steps) {
    for (const { facts } of outputs) if (facts.ask && facts.stage) stages.add(facts.stage);
  }
  return stages.size;
}

/** A loop: readings of one measure in one stage, from the first advised move until another measure or stage is asked for. */
function countLoops(story: Story): number[] {
  const loops: number[] = [];
  let current: { of: string; readings: number } | null = null;
  for (const { outputs, sent } of story.steps) {
    if (sent && current) current.readings += 1;
    const asking = outputs.findLast((output) => output.facts.ask && output.to !== 'desk')?.facts;
    const ask = asking?.ask;
    if (!ask || ask.kind === 'choice') continue;
    const of = 'measure' in ask ? `${asking.stage}/${ask.measure}` : null;
    if (current && current.of !== of) {
      loops.push(current.readings);
      current = null;
    }
    if (!current && of && asking.move) current = { of, readings: 0 };
  }
  if (current) loops.push(current.readings);
  return loops;
}
