// A measure or a check that staff have the program ask: cautions first, then the owner's answer, judged and told to the desk.

import type { Facts } from '../chat/facts.ts';
import type { Seen } from '../diagnosis/evidence.ts';
import { doLines, doneButton } from './ask-reading.ts';
import { checkById } from './checks.ts';
import { asideOf, judgeForDesk, limitsLine, nameOfReading, resultLine, seenLine } from './desk-judge.ts';
import { unitOf, unitSaid } from './fill-in.ts';
import { fitCheck } from './fit-check.ts';
import { record } from './keep-reading.ts';
import { actionsToRead, afterActions } from './rig.ts';
import { caseFact, line, say, tellDesk } from './say.ts';
import { type Asked, keepAsides } from './state.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';
import { noted } from './verdict.ts';
import { weighAnswer } from './weigh-evidence.ts';

/** What was asked, said or said again. */
export function sayAsked(turn: Turn, asked: Asked): void {
  const bench = benchOf(turn);
  const { setUp } = bench;
  if (asked.cautions.length > 0) {
    setUp.doing = [];
    return say(turn, {
      lines: asked.cautions.map((caution) => line(`caution-${caution}`)),
      facts: { cautions: asked.cautions, ask: { kind: 'confirm' } },
      buttons: [{ id: 'done', label: line('button-understood') }],
    });
  }
  const check = asked.check === null ? undefined : checkById(bench, asked.check);
  if (asked.kind === 'question') {
    return sayQuestion(turn, bench, asked, (check?.do ?? []) as Bench['stage']['do']);
  }
  const fitted = check ? fitCheck(check, asked.measure) : null;
  const own = fitted?.doing ?? [];
  const doing = actionsToRead(setUp.rig, asked.measure, own, turn.scene.now);
  setUp.doing = doing;
  const spoken = fitted ? doing.filter((action) => !own.includes(action)) : doing;
  const facts: Facts = {
    ask: { kind: 'reading', measure: asked.measure, unit: unitOf(asked.measure) },
    ...(doing.length > 0 ? { do: doing } : {}),
  };
  say(turn, {
    lines: [
      line('asked-by', { name: asked.by, measure: nameOfReading(asked.measure, asked.situation) }),
      ...doLines(turn, bench, spoken),
      ...(fitted ? [fitted.words] : []),
      line('ask-number'),
    ],
    facts,
  });
}

function sayQuestion(
  turn: Turn,
  bench: Bench,
  asked: Asked & { kind: 'question' },
  own: Bench['stage']['do'],
): void {
  bench.setUp.doing = [...own];
  const { question } = asked;
  const answers = bench.content.faults.questions.find((one) => one.id === question)?.usual ?? {};
  say(turn, {
    lines: [line('asked-question-by', { name: asked.by }), line(`check-${asked.check}`)],
    facts: { ...(own.length > 0 ? { do: [...own] } : {}), ask: { kind: 'choice', question } },
    buttons: [...Object.keys(answers), 'dont-know'].map((answer) => ({
      id: answer,
      label: line(`answer-${question}-${answer}`),
    })),
  });
}

/** A button, or a word that means one, at what staff asked; the choice is known to be offered. */
export function answerAsked(turn: Turn, asked: Asked, choice: string): void {
  const bench = benchOf(turn);
  const { setUp } = bench;
  if (asked.cautions.length > 0) {
    if (choice !== doneButton.id) return sayAsked(turn, asked);
    setUp.acknowledged.push(...asked.cautions);
    asked.cautions = [];
    return sayAsked(turn, asked);
  }
  if (asked.kind !== 'question') return sayAsked(turn, asked);
  setUp.rig = afterActions(setUp.rig, setUp.doing, turn.scene.now);
  setUp.doing = [];
  setUp.asked = null;
  weighAnswer(bench, asked.question, choice);
  say(turn, { lines: [line('asked-answered', { name: asked.by })] });
  const { case: one } = turn.state;
  if (!one) return;
  const answer = line(`answer-${asked.question}-${choice}`);
  tellDesk(turn, one.id, {
    lines: [line('desk-asked-answer', { check: line(`check-${asked.check}`), answer })],
    facts: { case: caseFact(turn, one) },
  });
}

/** The number that staff asked for: it counts for the desk, and moves nothing on the straight path. */
export function takeAsked(
  turn: Turn,
  bench: Bench,
  asked: Asked & { kind: 'reading' },
  seen: Seen,
  typed: string,
): void {
  const { setUp } = bench;
  const { measure, situation } = asked;
  setUp.rig = afterActions(setUp.rig, setUp.doing, turn.scene.now);
  setUp.doing = [];
  setUp.asked = null;
  setUp.wakes = 0;
  const awaited = { measure, situation };
  const verdict = judgeForDesk(bench, awaited, seen);
  record(turn, awaited, seen, typed, verdict ?? noted(awaited, seen));
  const digit = seen.kind === 'value' ? seen.resolution : 0.001;
  const own = asideOf(measure, situation, typed, verdict, { why: 'asked', at: turn.state.taken });
  if (seen.kind === 'value') Object.assign(own, { value: seen.value, resolution: digit });
  keepAsides(setUp, [own]);
  const unit = unitOf(measure);
  const shown = seenLine(seen, unitSaid(unit));
  say(turn, { lines: [line('asked-noted', { shown, name: asked.by })] });
  const { case: one } = turn.state;
  if (!one) return;
  const limits = limitsLine(verdict?.low ?? null, verdict?.high ?? null, digit);
  const name = nameOfReading(measure, situation);
  tellDesk(turn, one.id, {
    lines: [
      limits && verdict
        ? line('desk-reading', { measure: name, shown, limits, result: resultLine(verdict) })
        : line('desk-reading-plain', { measure: name, shown }),
    ],
    facts: { case: caseFact(turn, one), ...(verdict ? { verdict } : {}) },
  });
}
