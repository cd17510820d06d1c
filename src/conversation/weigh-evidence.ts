// What readings and answers say of the causes: weighed, summed up in the state, and told to owner and desk; for the readings and the detours.

import type { CauseFact } from '../chat/facts.ts';
import type { Band, Evidence, Observation, Seen } from '../diagnosis/evidence.ts';
import { addWeights, lastingWeights, likelihoods, weightsOfPast } from '../diagnosis/likelihoods.ts';
import { plausible } from '../diagnosis/plausible.ts';
import { type Belief, likelyCauses, posterior, priorsOf } from '../diagnosis/posterior.ts';
import { measureIds, measures } from '../procedure/vocabulary.ts';
import type { Awaited } from './awaited.ts';
import { speedPerVolt } from './learn-loop.ts';
import { type Limits, limitsFor, middleOf, readingKey } from './limits.ts';
import { firstFound } from './state.ts';
import { sweepLimits } from './sweep.ts';
import type { Bench } from './turn.ts';

/** What the diagnosis is told of this reading. */
export function observationOf(bench: Bench, awaited: Awaited, seen: Seen): Observation {
  const { setUp, stage } = bench;
  const limits = seen.kind === 'series' ? null : limitsFor(bench, awaited.measure, awaited.situation);
  const sweep = seen.kind === 'series' ? sweepLimits(bench, seen) : null;
  const settable = stage.adjust !== undefined || stage.noteOnly || stage.failing !== undefined;
  const observation: Observation = {
    kind: 'observation',
    measure: awaited.measure,
    situation: awaited.situation ?? 'as-found',
    seen,
    expected: sweep ?? limits?.window ?? null,
    settable,
    supply: awaited.measure === 'supply-voltage' ? null : setUp.supply,
  };
  if (awaited.measure === 'idle-speed') Object.assign(observation, speedAsSetCold(bench, observation));
  // What should merely have come back may be off by an idle stop not settled, and by no more.
  if (limits?.target.like !== undefined && stage.failing) observation.reach = 0.03;
  const before = firstFound(setUp, 'signal-idle@as-found');
  const turned = setUp.counts['idle-stop'] ?? 0;
  if (
    awaited.measure === 'signal-closed-stop' &&
    setUp.readings['signal-closed-stop@closed'] === undefined &&
    !setUp.loop &&
    before &&
    turned >= 1
  ) {
    observation.previous = {
      seen: { kind: 'value', value: before.value, resolution: before.resolution },
      after: 'back-off:idle-stop',
      expect: 'falls',
    };
  }
  const engaged = setUp.readings['signal-fast-idle@engaged'];
  if (awaited.measure === 'signal-released' && engaged && stage.do.includes('release:fast-idle')) {
    observation.previous = {
      seen: { kind: 'value', value: engaged.value, resolution: engaged.resolution },
      after: 'release:fast-idle',
      expect: 'falls',
    };
  }
  return observation;
}

/** How far off its speed an engine may be whose idle stop was set cold, warm as it is now (1/min; common practice, no source). */
const speedReach = 250;

/** The stop stands where the cold figure wants it, short of the warm one, and the engine runs slower by so much. */
function speedAsSetCold(bench: Bench, { expected }: Observation): Partial<Observation> {
  const cold = bench.setUp.readings['signal-idle@static'];
  const window = limitsFor(bench, 'signal-idle', 'warm')?.window;
  const warm = window ? middleOf(window) : null;
  if (!cold || warm === null || expected === null) return { reach: speedReach };
  const slower = (warm - cold.value) * speedPerVolt;
  const shift = (limit: number | null) => (limit === null ? null : limit - slower);
  return { expected: { low: shift(expected.low), high: shift(expected.high) }, reach: speedReach };
}

/** Whether this reading can't come from a machine that is in order or only not set yet. */
export function isOdd(bench: Bench, awaited: Awaited, seen: Seen): boolean {
  // The diagnosis knows what a meter shows; of engine speed it knows nothing, and leads are not moved while it runs.
  if (measures[awaited.measure].probing === null) return false;
  if (bench.setUp.oddity?.settled) return false;
  return plausible(observationOf(bench, awaited, seen)) === 'implausible';
}

/** The reading made sense: what it and the detour say of lasting causes is kept, the rest is over. */
export function clearOdd(bench: Bench, awaited: Awaited, seen: Seen): void {
  const { setUp, content } = bench;
  if (setUp.oddity) {
    setUp.evidence = addWeights(setUp.evidence, weightsOfPast(content.faults, setUp.oddity.weights));
  }
  const observation = observationOf(bench, awaited, seen);
  if (setUp.oddity || (isAsFound(bench, awaited) && isFinal(bench, observation))) {
    keepWeights(bench, observation);
  }
  setUp.oddity = null;
}

/** What decides against the machine is read twice, and weighed once; what must come back is weighed for having done so. */
function isFinal({ setUp, stage }: Bench, observation: Observation): boolean {
  if (setUp.reread !== null) return stage.failing === undefined;
  const decides = stage.noteOnly === true || stage.failing !== undefined;
  return !decides || plausible({ ...observation, settable: false }) === 'plausible';
}

/** What was turned until it read right, or was weighed before, says nothing new of causes. */
function isAsFound({ setUp, stage }: Bench, { measure, situation }: Awaited): boolean {
  const turned = stage.adjust?.turnFirst === true || (setUp.loop?.trials.length ?? 0) > 0;
  return !turned && setUp.readings[readingKey(measure, situation)] === undefined;
}

function keepWeights({ setUp, content }: Bench, ...all: readonly Evidence[]): void {
  const weights = all.map((one) => lastingWeights(content.faults, likelihoods(content.faults, one)));
  setUp.evidence = addWeights(setUp.evidence, ...weights);
}

/** The same thing was read twice and had moved in between, with nobody turning anything: kept, and what was seen. */
export function weighWaver(bench: Bench, awaited: Awaited, seen: Seen, before: number): void {
  const wavered = waverOf(bench, awaited, seen, before);
  if (wavered) keepWeights(bench, wavered);
}

function waverOf(bench: Bench, awaited: Awaited, seen: Seen, before: number): Observation | null {
  if (seen.kind !== 'value') return null;
  const hand = bench.stage.do.includes('snap') ? 'snap' : null;
  return {
    ...observationOf(bench, awaited, seen),
    previous: {
      seen: { kind: 'value', value: before, resolution: seen.resolution },
      after: hand,
      expect: 'same',
      alone: true,
    },
  };
}

/** What an owner answered to a question of the procedure counts as evidence too. */
export function weighAnswer(bench: Bench, question: string, answer: string): void {
  keepWeights(bench, { kind: 'answer', question, answer });
}

/** Something is wrong for certain: this speaks for every cause, also for those that come and go. */
export function suspect(bench: Bench, evidence: Evidence | null): void {
  const { setUp, content } = bench;
  setUp.oddity ??= {
    weights: {},
    done: [],
    seen: { kind: 'none' },
    under: setUp.step.kind === 'check' ? { kind: 'stage' } : setUp.step,
    retakes: 0,
    settled: false,
  };
  if (evidence)
    setUp.oddity.weights = addWeights(setUp.oddity.weights, likelihoods(content.faults, evidence));
}

/** A reading that is right nowhere near here, twice taken. */
export function suspectReading(bench: Bench, awaited: Awaited, seen: Seen): void {
  suspect(bench, readTwice(bench, awaited, seen));
  suspect(bench, readAgain);
}

/** It did not come back, twice taken: kept for what lasts, and gone on from. */
export function weighMiss(bench: Bench, awaited: Awaited, seen: Seen): void {
  keepWeights(bench, readTwice(bench, awaited, seen), readAgain);
}

const readAgain = { kind: 'tried', check: 'read-again', result: 'as-before' } as const;

function readTwice(bench: Bench, awaited: Awaited, seen: Seen): Observation {
  return { ...observationOf(bench, awaited, seen), settable: false, sure: true };
}

/**
 * The shares of odd readings hold where a reading was odd; a machine that is suspected for what it did, or for what its
 * owner said, is one of those that run badly.
 */
export function beliefOf(bench: Bench): Belief {
  const {
    setUp,
    content: { faults },
  } = bench;
  const odd = setUp.oddity !== null && setUp.oddity.done.length > 0;
  return posterior(
    faults,
    priorsOf(faults, odd ? 'odd-reading' : 'complaint'),
    addWeights(
      setUp.evidence,
      setUp.oddity?.weights ?? {},
      ...seenTo(bench).map((check) => likelihoods(faults, { kind: 'seen-to', check })),
    ),
  );
}

/** What the set-up has put right by now: a sensor set and read again is not off its mark, a cable freed by the meter not tight. */
function seenTo({ setUp, procedure, stage: here, content: { faults } }: Bench): string[] {
  const past = procedure.stages.filter((stage) => setUp.passed[stage.id] !== undefined);
  const done = new Set<string>([...past, here].flatMap((stage) => stage.do));
  const set = past.some((stage) => stage.adjust?.part === 'sensor-body');
  return faults.checks
    .filter(({ ask, do: actions }) =>
      ask.kind === 'go-on'
        ? set
        : actions.length > 0 && actions.every((action) => /^check:/.test(action) && done.has(action)),
    )
    .map(({ id }) => id);
}

/** With shares, for the desk. */
export function desksCauses(belief: Belief): CauseFact[] {
  return belief.causes
    .filter((cause) => cause.probability >= 0.01)
    .slice(0, 6)
    .map(({ id, row, probability }) => ({ id, row, probability: Number(probability.toFixed(3)) }));
}

export function ownersCauses(belief: Belief): CauseFact[] {
  return likelyCauses(belief).map(({ id, row }) => ({ id, row }));
}

export function bandsOf(bench: Bench): Record<string, Band> {
  return Object.fromEntries(
    measureIds.flatMap((measure) => {
      const limits: Limits | null = limitsFor(bench, measure, null);
      return limits ? [[measure, limits.window] as const] : [];
    }),
  );
}
