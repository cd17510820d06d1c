// Which of the likeliest causes no measure can tell apart, so that the desk is told so and not given a guess.
import type { Fault, FaultContent } from '../procedure/fault.ts';
import type { Band } from './evidence.ts';
import { healthyAt } from './healthy.ts';
import { type Hypothesis, hypothesesOf, predict } from './hypothesis.ts';
import type { Belief } from './posterior.ts';
import type { Way } from './way.ts';

/** The likeliest causes of nearly equal chance that show the same on every measure with a band; fewer than two: none. */
export function lookAlike(
  content: FaultContent,
  belief: Belief,
  bands: Readonly<Record<string, Band>>,
): string[] {
  const [first, ...others] = belief.causes;
  if (first === undefined) return [];
  const alike = others
    .filter((cause) => cause.probability > first.probability / 3)
    .filter((cause) => showTheSame(content, first.id, cause.id, bands));
  return alike.length === 0 ? [] : [first.id, ...alike.map((cause) => cause.id)];
}

/** Whether two causes predict the same of every measure, and of every question that content asks. */
export function showTheSame(
  content: FaultContent,
  a: string,
  b: string,
  bands: Readonly<Record<string, Band>>,
): boolean {
  const find = (id: string) => hypothesesOf(content).find((one) => one.id === id);
  const one = find(a);
  const other = find(b);
  if (one === undefined || other === undefined) return false;
  return (
    JSON.stringify(answersOf(one)) === JSON.stringify(answersOf(other)) &&
    Object.entries(bands).every(([measure, band]) => near(one, other, measure, band))
  );
}

function answersOf(hypothesis: Hypothesis): Fault['answers'][] {
  return hypothesis.causes.map((cause) => cause.answers);
}

/** How far apart two predictions may be and still look the same, as a share of what the meter could show. */
const hardly = 0.03;

function near(one: Hypothesis, other: Hypothesis, measure: string, expected: Band): boolean {
  const healthy = healthyAt(
    {
      kind: 'observation',
      measure,
      situation: '',
      seen: { kind: 'none' },
      expected,
      settable: false,
      supply: null,
    },
    expected,
  );
  if (healthy === null) return true;
  const summary = (hypothesis: Hypothesis) => {
    const ways = predict(hypothesis, measure, '');
    const mean = (of: (way: Way) => number) => ways.reduce((sum, way) => sum + way.share * of(way), 0);
    return [
      mean((way) => way.signal * healthy.right.middle + way.supply * healthy.supply.middle + way.offset) /
        healthy.scale,
      mean((way) => way.follows) / 10,
      mean((way) => Number(way.wander > 0)) / 10,
      mean((way) => Number(way.form === 'number')) / 10,
    ];
  };
  const theirs = summary(other);
  return summary(one).every((figure, index) => Math.abs(figure - (theirs[index] ?? 0)) < hardly);
}
