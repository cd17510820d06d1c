// Whether nothing that content knows of explains the readings: the posterior predictive check that calls a person.
import { unknownCause } from '../procedure/fault.ts';
import { chanceInWay, tailInWay } from './chance.ts';
import type { Observation } from './evidence.ts';
import { type Healthy, healthyAt } from './healthy.ts';
import { type Hypothesis, predict } from './hypothesis.ts';
import type { Belief } from './posterior.ts';
import { shapeOf } from './sweep-shape.ts';

/** A reading further out than one in two hundred is not explained. */
const explained = 0.005;

/**
 * True when "none that we know of" is the likeliest by far, or when not one of the known causes that are still in
 * question would show each of these readings, or one as far out, at least once in two hundred times.
 */
export function unexplained(belief: Belief, observations: readonly Observation[]): boolean {
  const unknown = belief.causes.find((cause) => cause.id === unknownCause)?.probability ?? 0;
  if (unknown >= 0.5) return true;
  const known = belief.hypotheses.filter(({ hypothesis }) =>
    hypothesis.causes.every((cause) => cause.id !== unknownCause),
  );
  const most = Math.max(...known.map((one) => one.probability));
  const inQuestion = known.filter((one) => one.probability >= most / 100);
  return !inQuestion.some(({ hypothesis }) =>
    observations.every((observation) => tailOf(hypothesis, observation) >= explained),
  );
}

/** The chance of a reading at least as far out as the one seen, under one hypothesis. */
export function tailOf(hypothesis: Hypothesis, observation: Observation): number {
  const healthy = observation.expected === null ? null : healthyAt(observation, observation.expected);
  if (healthy === null) return 1;
  const { seen, measure, situation } = observation;
  const ways = predict(hypothesis, measure, situation, observation.supply !== null);
  if (seen.kind === 'series') {
    const { start, shape } = shapeOf(seen.values, seen.resolution);
    if (shape === 'broken' || shape === 'not-back') {
      return ways.some((way) => way.broken || way.wander > 0) ||
        hypothesis.causes.some((cause) => (cause.sweep?.[shape] ?? 0) > explained)
        ? 1
        : 0.02;
    }
    const follows = { rising: 1, falling: -1, flat: 0, overload: 0 }[shape];
    return start === null || ways.some((way) => way.follows === follows) ? 1 : 0.002;
  }
  return ways.reduce((sum, way) => sum + way.share * tailOfOne(way, seen, healthy), 0);
}

function tailOfOne(
  way: Parameters<typeof chanceInWay>[0],
  seen: Exclude<Observation['seen'], { kind: 'series' }>,
  healthy: Healthy,
): number {
  if (seen.kind === 'overload' || seen.kind === 'none') return chanceInWay(way, seen, healthy);
  if (way.form !== 'number') return 0;
  if (seen.kind === 'value') return tailInWay(way, seen.value, seen.resolution, healthy);
  const width = seen.high - seen.low;
  const ofWidth = way.wander > 0 ? Math.min(1, (6 * way.wander) / width) : Math.exp(-width / 0.01);
  return ofWidth * tailInWay(way, (seen.low + seen.high) / 2, seen.resolution, healthy);
}
