// What readings and answers say of the causes: weighed, summed up in the state, and told to owner and desk; for the readings and the detours.

import type { CauseFact } from '../chat/facts.ts';
import type { Band, Evidence, Observation, Seen } from '../diagnosis/evidence.ts';
import { addWeights, lastingWeights, likelihoods } from '../diagnosis/likelihoods.ts';
import { plausible } from '../diagnosis/plausible.ts';
import { type Belief, likelyCauses, posterior, priorsOf } from '../diagnosis/posterior.ts';
import { measureIds, measures } from '../procedure/vocabulary.ts';
import type { Awaited } from './awaited.ts';
import { type Limits, limitsFor } from './limits.ts';
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
  if (awaited.measure === 'idle-speed') observation.reach = 1200;
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
  return observation;
}

/** Whether this reading can't come from a machine that is in order or only not set yet. */
export function isOdd(bench: Bench, awaited: Awaited, seen: Seen): boolean {
  // The diagnosis knows what a meter shows; of engine speed it knows nothing, and leads are not moved while it runs.
  if (measures[awaited.measure].probing === null) return false;
  if (bench.setUp.oddity?.settled) return false;
  return plausible(observationOf(bench, awaited, seen)) === 'implausible';
}

/** The reading made sense: what it says of lasting causes is kept, the rest of the detour is over. */
export function clearOdd(bench: Bench, awaited: Awaited, seen: Seen): void {
  const { setUp, content } = bench;
  const weights = likelihoods(content.faults, observationOf(bench, awaited, seen));
  setUp.evidence = addWeights(setUp.evidence, lastingWeights(content.faults, weights));
  setUp.oddity = null;
}

/** The same thing was read twice and had moved in between, with nobody turning anything. */
export function weighWaver(bench: Bench, awaited: Awaited, seen: Seen, before: number): void {
  const { setUp, content } = bench;
  if (seen.kind !== 'value') return;
  const previous = {
    seen: { kind: 'value', value: before, resolution: seen.resolution },
    after: null,
    expect: 'same',
  } as const;
  const weights = likelihoods(content.faults, { ...observationOf(bench, awaited, seen), previous });
  setUp.evidence = addWeights(setUp.evidence, lastingWeights(content.faults, weights));
}

/** What an owner answered to a question of the procedure counts as evidence too. */
export function weighAnswer(bench: Bench, question: string, answer: string): void {
  const { setUp, content } = bench;
  const weights = likelihoods(content.faults, { kind: 'answer', question, answer });
  setUp.evidence = addWeights(setUp.evidence, lastingWeights(content.faults, weights));
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
  suspect(bench, { ...observationOf(bench, awaited, seen), settable: false });
}

/** It did not come back, twice taken: kept for what lasts, and gone on from. */
export function weighMiss(bench: Bench, awaited: Awaited, seen: Seen): void {
  const { setUp, content } = bench;
  const weights = likelihoods(content.faults, { ...observationOf(bench, awaited, seen), settable: false });
  setUp.evidence = addWeights(setUp.evidence, lastingWeights(content.faults, weights));
}

export function beliefOf({ setUp, content: { faults } }: Bench): Belief {
  return posterior(
    faults,
    priorsOf(faults, setUp.oddity ? 'odd-reading' : 'complaint'),
    addWeights(setUp.evidence, setUp.oddity?.weights ?? {}),
  );
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
