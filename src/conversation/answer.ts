// Takes an answer that is no reading: a confirmation, a choice, a count, a figure from the manual; for text and buttons alike.

import { hearCount } from '../measurement/hear-count.ts';
import { foldPhrase } from '../measurement/hear-fold.ts';
import type { Heard } from '../measurement/heard.ts';
import { targetFor } from '../procedure/machine.ts';
import { type MoveUnit, type Part, parts } from '../procedure/vocabulary.ts';
import { advise } from './adjust.ts';
import { askBack } from './ask-back.ts';
import { askStage } from './ask-stage.ts';
import { awaitedOf } from './awaited.ts';
import { checkById } from './checks.ts';
import { enterNext } from './enter-stage.ts';
import { figure, unitOf, unitSaid } from './fill-in.ts';
import { leaveAsIs, startWayBack, wayBackDone } from './give-up.ts';
import { confirmHeard } from './hear-reading.ts';
import { decideLink } from './menu.ts';
import { answerCheck, followOdd } from './odd-reading.ts';
import { follow } from './outcome.ts';
import { afterActions } from './rig.ts';
import { carry, line, sayAgain } from './say.ts';
import { firstFound } from './state.ts';
import { benchOf, type Turn } from './turn.ts';
import { suspect, weighAnswer } from './weigh-evidence.ts';

/** A button, or a word that means one. The choice is known to be one of those offered. */
export function choose(turn: Turn, choice: string): void {
  const { state } = turn;
  if (state.offered) return decideLink(turn, choice);
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  if (setUp.heard) return confirmHeard(turn, choice === 'yes');
  if (choice === 'jumping') return tellJumping(turn);
  const { step } = setUp;
  switch (step.kind) {
    case 'cautions':
      setUp.acknowledged.push(...step.cautions);
      return step.before === 'turn' ? advise(turn) : askStage(turn);
    case 'give-up':
      if (choice === 'restore') return startWayBack(turn);
      if (choice === 'leave') return leaveAsIs(turn);
      setUp.step = { kind: 'stage' };
      if (setUp.held) return sayAgain(turn);
      return askStage(turn);
    case 'way-back':
      return wayBackDone(turn);
    case 'check': {
      const ask = checkById(bench, step.check)?.ask;
      return ask?.kind === 'choice' ? answerCheck(turn, ask.question, choice) : sayAgain(turn);
    }
    case 'turned':
    case 'fixed':
      return sayAgain(turn);
    case 'stage':
      break;
  }
  const { ask } = stage;
  // Nothing but a number gets past a reading.
  if (!ask || 'reading' in ask || 'readings' in ask) return askBack(turn, 'number-wanted');
  setUp.rig = afterActions(setUp.rig, setUp.doing, turn.scene.now);
  setUp.doing = [];
  if ('question' in ask) {
    const answer = ask.answers.find((one) => one.id === choice);
    setUp.answers[ask.question] = choice;
    if (answer?.outcome && 'call' in answer.outcome)
      suspect(bench, { kind: 'answer', question: ask.question, answer: choice });
    else weighAnswer(bench, ask.question, choice);
    if (answer?.outcome) return follow(turn, answer.outcome);
  }
  if ('target' in ask) {
    // Without the figure there is nothing to set by.
    setUp.checkOnly ??= 'no-figure';
    carry(turn, [line('check-only-no-figure')]);
  }
  setUp.passed[stage.id] = 'passed';
  enterNext(turn);
}

/** A number where a count, a figure from the manual, or nothing of the kind is asked for. */
export function answerNumber(turn: Turn, heard: Heard, typed: string): void {
  const { setUp, stage, machine } = benchOf(turn);
  const { ask } = stage;
  if (!ask || (heard.kind !== 'reading' && heard.kind !== 'unclear'))
    return askBack(turn, 'unclear-nothing-understood');
  if ('count' in ask) {
    const count = hearCount(typed, turn.scene.lexicons(turn.state.language));
    const { unit } = parts[ask.count as Part];
    if (count === null || !canBeCounted(count, unit) || namesOther(turn, typed, unit))
      return askBack(turn, 'unclear-count');
    setUp.counts[ask.count as string] = count;
  } else if ('target' in ask) {
    const target = targetFor(machine, ask.target, ask.at ?? null);
    const value = heard.kind === 'reading' ? heard.value : (heard.meant?.[0]?.value ?? null);
    if (value === null) return askBack(turn, 'unclear-nothing-understood');
    const middle = target?.centre ?? null;
    const [low, high] = target?.asked?.between ?? (middle === null ? [0, 5] : [middle * 0.5, middle * 1.6]);
    if (value < low || value > high) {
      carry(turn, [line('figure-out-of-reach', { low, high, unit: unitSaid(unitOf(ask.target)) })]);
      return sayAgain(turn);
    }
    setUp.manual[ask.target] = value;
    carry(turn, [
      line('figure-taken', {
        value: figure(value, heard.kind === 'reading' ? heard.resolution : 0.001),
        unit: unitSaid(unitOf(ask.target)),
      }),
    ]);
  } else {
    return askBack(turn, 'unclear-nothing-understood');
  }
  setUp.rig = afterActions(setUp.rig, setUp.doing, turn.scene.now);
  setUp.doing = [];
  setUp.passed[stage.id] = 'passed';
  enterNext(turn);
}

/** Clicks are whole; turns come in eighths, tenths or thirds. A voltage sent here by mistake hardly ever does. */
function canBeCounted(count: number, unit: MoveUnit): boolean {
  if (count > 60) return false;
  if (unit === 'click') return Number.isInteger(count);
  return [8, 10, 3].some((shares) => Math.abs(count * shares - Math.round(count * shares)) <= 0.02);
}

/** Turns where clicks are counted, or the other way round, are a count of something else. */
function namesOther({ scene, state }: Turn, typed: string, unit: MoveUnit): boolean {
  const said = foldPhrase(typed).split(' ');
  const other = unit === 'click' ? 'turn' : 'click';
  const hash = state.setUp?.content ?? scene.current.hash;
  return [state.language, 'en'].some((language) =>
    [1, 2].some((amount) =>
      said.includes(foldPhrase(scene.label(line(`desk-unit-${other}`, { amount }), language, hash))),
    ),
  );
}

/** The owner says that the figure jumps: it wanders, however far. */
function tellJumping(turn: Turn): void {
  const bench = benchOf(turn);
  const awaited = awaitedOf(bench);
  if (!awaited) return sayAgain(turn);
  const middle = bench.setUp.loop?.before ?? firstFound(bench.setUp, 'signal-idle@as-found')?.value ?? 0.6;
  const seen = { kind: 'range', low: middle - 0.05, high: middle + 0.05, resolution: 0.001 } as const;
  followOdd(turn, bench, awaited, seen, {
    result: 'implausible',
    measure: awaited.measure,
    unit: unitOf(awaited.measure),
    value: null,
    low: null,
    high: null,
  });
}
