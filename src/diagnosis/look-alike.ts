// Which of the likeliest causes no measure can tell apart, so that the desk is told so and not given a guess.
import type { Fault, FaultContent } from '../procedure/fault.ts';
import { middleOf } from './chance.ts';
import { type Healthy, usualSupply } from './healthy.ts';
import { type Hypothesis, hypothesesOf, predict } from './hypothesis.ts';
import type { Belief } from './posterior.ts';
import type { Way } from './way.ts';

/** The likeliest causes of nearly equal chance that show the same of every measure; fewer than two: none. */
export function lookAlike(content: FaultContent, belief: Belief): string[] {
  const [first, ...others] = belief.causes;
  if (first === undefined) return [];
  const alike = others
    .filter((cause) => cause.probability > first.probability / 5)
    .filter((cause) => showTheSame(content, first.id, cause.id));
  return alike.length === 0 ? [] : [first.id, ...alike.map((cause) => cause.id)];
}

/** Whether two causes predict the same of every measure that either has something to say about. */
export function showTheSame(content: FaultContent, a: string, b: string): boolean {
  const one = hypothesesOf(content).find((hypothesis) => hypothesis.id === a);
  const other = hypothesesOf(content).find((hypothesis) => hypothesis.id === b);
  if (one === undefined || other === undefined) return false;
  const causes = [...one.causes, ...other.causes];
  return placesOf(causes).every(([measure, situation]) => near(one, other, measure, situation));
}

/** Measures and situations that these causes speak of; a pattern stands for all that it fits. */
function placesOf(causes: readonly Fault[]): [string, string][] {
  const shown = causes.flatMap((cause) => cause.shows);
  const measures = new Set(shown.flatMap((entry) => entry.on).map((on) => on.replace(/\*$/, '')));
  const situations = new Set(['', ...shown.flatMap((entry) => entry.at ?? [])]);
  return [...measures].flatMap((measure) =>
    [...situations].map((situation): [string, string] => [measure, situation]),
  );
}

/** A healthy figure to hold two predictions against each other; any would do. */
const somewhere: Healthy = {
  right: { share: 1, middle: 0.7, half: 0, spread: 0.01 },
  any: [{ share: 1, middle: 0.7, half: 0, spread: 0.01 }],
  supply: usualSupply,
  scale: 5,
};

/** How far apart two predictions may be and still look the same. */
const hardly = 0.05;

function near(one: Hypothesis, other: Hypothesis, measure: string, situation: string): boolean {
  const theirs = summary(other, measure, situation);
  return summary(one, measure, situation).every(
    (figure, index) => Math.abs(figure - (theirs[index] ?? 0)) < hardly,
  );
}

function summary(hypothesis: Hypothesis, measure: string, situation: string): number[] {
  const ways = predict(hypothesis, measure, situation, false);
  const mean = (of: (way: Way) => number) => ways.reduce((sum, way) => sum + way.share * of(way), 0);
  return [
    mean((way) => middleOf(way, somewhere.right, somewhere)),
    mean((way) => way.follows),
    mean((way) => Number(way.wander > 0 || way.broken)),
    mean((way) => Number(way.form === 'number')),
    mean((way) => way.give),
    mean((way) => Number(way.above < Number.POSITIVE_INFINITY)),
  ];
}
