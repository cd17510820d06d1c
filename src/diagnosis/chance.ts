// How likely a reading is, given one hypothesis: the densities behind the weights.

import { normalCdf } from '../measurement/conformance.ts';
import { change } from '../measurement/difference.ts';
import type { Observation, Seen } from './evidence.ts';
import type { Healthy, Plateau } from './healthy.ts';
import { type Hypothesis, movesAfter, predict, sweepSaid } from './hypothesis.ts';
import { shapeOf } from './sweep-shape.ts';
import type { Way } from './way.ts';

/** How a steady reading, and one that wanders, reach us (common practice, no source). */
const steady = { value: 0.97, range: 0.02, overload: 0.005, none: 0.005 };
const unsteady = { value: 0.4, range: 0.5, overload: 0.05, none: 0.05 };

/** No reading repeats more closely than this, whatever the digits say. */
const leastSpread = 0.003;

/** One reading in a hundred is a slip of the pen, and can be anything; hardly one that was taken twice. */
const slips = 0.01;
const slipsTwice = 0.0003;

const afterNothing = { falls: 0.02, same: 0.96, rises: 0.02 };

/** The chance of what was seen, in the ways that the hypothesis predicts here. Densities are per volt throughout, so only ratios between hypotheses mean anything. */
export function chanceOf(
  hypothesis: Hypothesis,
  observation: Observation,
  healthy: Healthy,
  ways: readonly Way[],
): number {
  const { seen } = observation;
  if (seen.kind === 'series') return chanceOfSweep(hypothesis, observation, seen, healthy, ways);
  const moved = howItMoved(observation);
  const onlyMoved = moved !== null && countsAlone(observation);
  const slip = observation.sure ? slipsTwice : slips;
  const signalMoves = moved === null ? afterNothing : usualMoves(hypothesis, observation);
  let sum = 0;
  for (const way of ways) {
    const ofReading = onlyMoved ? 1 : chanceInWay(way, seen, healthy);
    sum += way.share * ofReading * (moved === null ? 1 : moveInWay(way, signalMoves)[moved]);
  }
  const anything = onlyMoved
    ? 1 / 3
    : (steady[seen.kind] * spreadOut(seen, healthy)) / (moved === null ? 1 : 3);
  return (1 - slip) * sum + slip * anything;
}

/** Whether only its having moved counts, not where it stands. */
export function countsAlone({ previous }: Observation): boolean {
  return previous !== undefined && (previous.after === null || previous.alone === true);
}

/** How likely the reading is in one way, by kind and by figure. */
export function chanceInWay(way: Way, seen: Exclude<Seen, { kind: 'series' }>, healthy: Healthy): number {
  const kinds = way.wander > 0 ? unsteady : steady;
  if (way.form === 'overload') return seen.kind === 'overload' ? 0.97 : 0;
  if (way.form === 'blank') return seen.kind === 'none' ? 0.97 : 0;
  switch (seen.kind) {
    case 'none':
      return kinds.none;
    case 'overload':
      return kinds.overload + (1 - kinds.overload) * massAbove(way, healthy);
    case 'value':
      return kinds.value * density(way, seen.value, seen.resolution, healthy) * digits(way, seen.resolution);
    case 'range': {
      const width = seen.high - seen.low;
      const narrow = 2 * seen.resolution + 0.003;
      const ofWidth =
        way.wander > 0
          ? (width / way.wander ** 2) * Math.exp(-width / way.wander)
          : Math.exp(-width / narrow) / narrow;
      return kinds.range * ofWidth * density(way, (seen.low + seen.high) / 2, seen.resolution, healthy);
    }
  }
}

function digits(way: Way, resolution: number): number {
  if (way.digit > 0) return resolution > 0.5 * way.digit ? 0.9 : 0.1;
  return resolution < 0.05 ? 0.9 : 0.1;
}

function density(way: Way, value: number, resolution: number, healthy: Healthy): number {
  if (value > way.above) return 0;
  if (way.right) return densityOn(way, healthy.right, value, resolution, healthy);
  let sum = 0;
  for (const place of healthy.any) sum += place.share * densityOn(way, place, value, resolution, healthy);
  return sum;
}

/** A flat top with normal shoulders; its area is 2·half + spread·√(2π). */
function densityOn(way: Way, place: Plateau, value: number, resolution: number, healthy: Healthy): number {
  const half = halfOf(way, place);
  const spread = spreadOf(way, place, healthy, value, resolution);
  const beyond = Math.max(0, Math.abs(value - middleOf(way, place, healthy)) - half) / spread;
  return Math.exp(-0.5 * beyond * beyond) / (2 * half + spread * Math.sqrt(2 * Math.PI));
}

export function middleOf(way: Way, place: Plateau, healthy: Healthy): number {
  return way.signal * place.middle + way.supply * healthy.supply.middle + way.offset;
}

function halfOf(way: Way, place: Plateau): number {
  return (
    Math.abs(way.signal) * place.half + way.give + way.giveOfSignal * Math.abs(place.middle) + way.wander / 2
  );
}

function spreadOf(way: Way, place: Plateau, healthy: Healthy, value: number, resolution: number): number {
  const meter = 0.005 * value;
  return Math.sqrt(
    (way.signal * place.spread) ** 2 +
      (way.supply * healthy.supply.spread) ** 2 +
      way.spread ** 2 +
      meter ** 2 +
      (resolution + leastSpread) ** 2 / 4,
  );
}

/** The chance of a value at least this far out, in one way: what tells that nothing known explains a reading. */
export function tailInWay(way: Way, value: number, resolution: number, healthy: Healthy): number {
  if (value > way.above) return 0;
  const places = way.right ? [healthy.right] : healthy.any;
  return places.reduce((sum, place) => {
    const spread = spreadOf(way, place, healthy, value, resolution);
    const beyond = Math.abs(value - middleOf(way, place, healthy)) - halfOf(way, place);
    return sum + place.share * (beyond <= 0 ? 1 : 2 * normalCdf(-beyond / spread));
  }, 0);
}

/** How likely the figure lies above what the range can show. */
function massAbove(way: Way, healthy: Healthy): number {
  if (way.above === Number.POSITIVE_INFINITY) return 0;
  const places = way.right ? [healthy.right] : healthy.any;
  return places.reduce((sum, place) => {
    const width = halfOf(way, place) + spreadOf(way, place, healthy, way.above, 0);
    return sum + place.share * normalCdf((middleOf(way, place, healthy) - way.above) / (0.6 * width));
  }, 0);
}

/** Over all that a meter could show. */
function spreadOut(seen: Exclude<Seen, { kind: 'series' }>, healthy: Healthy): number {
  if (seen.kind === 'value') return 1 / (4 * healthy.scale);
  if (seen.kind === 'range') return 1 / (4 * healthy.scale) / healthy.scale;
  return 1;
}

type Moves = { falls: number; same: number; rises: number };

function howItMoved({ seen, previous }: Observation): keyof Moves | null {
  if (previous === undefined || seen.kind !== 'value' || previous.seen.kind !== 'value') return null;
  const noise = 2 * Math.max(seen.resolution, previous.seen.resolution);
  const sign = change(previous.seen, seen, noise);
  return sign === 0 ? 'same' : sign > 0 ? 'rises' : 'falls';
}

/** How the signal itself moves, before leads and meter turn it about. */
function usualMoves(hypothesis: Hypothesis, { previous }: Observation): Moves {
  if (previous === undefined || previous.after === null) return afterNothing;
  const said = movesAfter(hypothesis, previous.after);
  if (said !== null) return said;
  if (previous.expect === 'same') return afterNothing;
  const moves = { falls: 0.03, same: 0.05, rises: 0.03 };
  moves[previous.expect] = 0.92;
  return moves;
}

function moveInWay(way: Way, moves: Moves): Moves {
  if (way.wander > 0 || way.broken) return { falls: 0.35, same: 0.3, rises: 0.35 };
  if (way.follows === 0) return afterNothing;
  return way.follows > 0 ? moves : { falls: moves.rises, same: moves.same, rises: moves.falls };
}

function chanceOfSweep(
  hypothesis: Hypothesis,
  observation: Observation,
  seen: Extract<Seen, { kind: 'series' }>,
  healthy: Healthy,
  ways: readonly Way[],
): number {
  const { start, top, shape } = shapeOf(seen.values, seen.resolution);
  if (shape === 'overload') {
    return ways.reduce(
      (sum, way) => sum + way.share * chanceInWay(way, { kind: 'overload' }, healthy),
      0.001,
    );
  }
  const said = sweepSaid(hypothesis);
  const ofShape =
    said === null
      ? ways.reduce((sum, way) => sum + way.share * shapeInWay(way, shape), 0)
      : 0.95 * (said[shape] ?? 0) + 0.01;
  const atEnd = (value: number | null, middle: number, half: number, situation: string) => {
    if (value === null) return 1;
    const place = { share: 1, middle, half, spread: half };
    const there = { ...healthy, right: place, any: [place] };
    const reading = { kind: 'value' as const, value, resolution: Math.max(seen.resolution, 0.01) };
    const sum = predict(hypothesis, observation.measure, situation, observation.supply !== null).reduce(
      (total, way) => total + way.share * chanceInWay(way, reading, there),
      0,
    );
    return 0.95 * sum + 0.05 / (4 * healthy.scale);
  };
  const closed = healthy.right.middle - healthy.right.half;
  const open = healthy.right.middle + healthy.right.half;
  return ofShape * atEnd(start, closed, 0.1, observation.situation) * atEnd(top, open, 0.25, 'open');
}

function shapeInWay(way: Way, shape: Exclude<ReturnType<typeof shapeOf>['shape'], 'overload'>): number {
  if (way.broken) return shape === 'broken' ? 0.9 : 0.025;
  if (way.wander > 0) return { rising: 0.25, falling: 0.05, flat: 0.1, broken: 0.4, 'not-back': 0.2 }[shape];
  const usual = way.follows === 0 ? 'flat' : way.follows > 0 ? 'rising' : 'falling';
  return shape === usual ? 0.92 : 0.02;
}
