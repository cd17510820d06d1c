// What a check may bring to light, and how likely each cause makes it: the channel that the expected cost of asking is computed over.
import type { Check, FaultContent } from '../procedure/fault.ts';
import { chanceOf, middleOf } from './chance.ts';
import type { Band, Observation } from './evidence.ts';
import { healthyAt } from './healthy.ts';
import { type Hypothesis, predict } from './hypothesis.ts';
import { chancesOf } from './likelihoods.ts';

type Beliefs = readonly { hypothesis: Hypothesis; probability: number }[];

/** For each outcome, its chance under each of the hypotheses believed in; under one hypothesis they add to 1. */
export function outcomesOf(
  content: FaultContent,
  beliefs: Beliefs,
  check: Check,
  situation: { bands: Readonly<Record<string, Band>>; supply: number | null },
): number[][] | null {
  if (check.ask.kind === 'choice') return ofQuestion(content, beliefs, check.ask.question);
  if (check.ask.kind !== 'reading') return null;
  const expected = situation.bands[check.ask.measure];
  if (expected === undefined) return null;
  return ofReading(beliefs, {
    kind: 'observation',
    measure: check.ask.measure,
    situation: check.id,
    seen: { kind: 'overload' },
    expected,
    settable: false,
    supply: situation.supply,
  });
}

function ofQuestion(content: FaultContent, beliefs: Beliefs, id: string): number[][] | null {
  const question = content.questions.find((one) => one.id === id);
  if (question === undefined) return null;
  const hypotheses = beliefs.map((one) => one.hypothesis);
  return Object.keys(question.usual).map(
    (answer) => chancesOf(content, { kind: 'answer', question: id, answer }, hypotheses) ?? [],
  );
}

/** How many figures stand for all that a meter may show. */
const atMost = 8;

/** The figures that the causes predict stand for all; each cause then says how likely it makes each of them. */
function ofReading(beliefs: Beliefs, template: Observation): number[][] | null {
  const healthy = template.expected === null ? null : healthyAt(template, template.expected);
  if (healthy === null) return null;
  const predictHere = (hypothesis: Hypothesis) =>
    predict(hypothesis, template.measure, template.situation, template.supply !== null);
  const figures: { value: number; weight: number }[] = [];
  for (const { hypothesis, probability } of beliefs) {
    for (const way of predictHere(hypothesis)) {
      if (way.form !== 'number') continue;
      const value = middleOf(way, healthy.right, healthy);
      const near = figures.find((figure) => Math.abs(figure.value - value) < 0.02 * healthy.scale);
      if (near === undefined) figures.push({ value, weight: probability * way.share });
      else near.weight += probability * way.share;
    }
  }
  figures.sort((a, b) => b.weight - a.weight);
  const seen: Observation['seen'][] = [
    ...figures
      .slice(0, atMost)
      .map(({ value }) => ({ kind: 'value' as const, value, resolution: 0.004 * healthy.scale })),
    { kind: 'overload' },
    { kind: 'none' },
  ];
  const chances = seen.map((one) =>
    beliefs.map(({ hypothesis }) =>
      chanceOf(hypothesis, { ...template, seen: one }, healthy, predictHere(hypothesis)),
    ),
  );
  return chances.map((row) =>
    row.map((chance, index) => chance / chances.reduce((sum, other) => sum + (other[index] ?? 0), 0)),
  );
}
