// The adjusting loop: what to turn, which way and how far, from reading to reading, until it is right and fixed.

import type { VerdictFact } from '../chat/facts.ts';
import { hands } from '../measurement/hand-amount.ts';
import { nextMove, type StuckWhy } from '../measurement/next-move.ts';
import { aimOf } from '../measurement/window.ts';
import { type Part, parts } from '../procedure/vocabulary.ts';
import { askReading } from './ask-reading.ts';
import { callPerson } from './call-person.ts';
import { enterNext, showCautions } from './enter-stage.ts';
import { figure } from './fill-in.ts';
import { outLine } from './keep-reading.ts';
import { aimWindow, learnedOf, newLoop, noiseHere, priorOf, unitHere } from './learn-loop.ts';
import { stageLimits } from './limits.ts';
import { pictureOfVerdict } from './picture-subjects.ts';
import { carry, line } from './say.ts';
import { sayMove } from './say-move.ts';
import type { Loop } from './state.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';
import { suspect, weighAnswer } from './weigh-evidence.ts';

/** How turning went, in the answers of the question that content asks of nobody. */
const movesTell: Readonly<Record<StuckWhy, string>> = {
  'slots-at-end': 'at-the-end',
  'moves-stop-helping': 'no-help',
  'too-coarse': 'helping',
};
/** So often fixed and still not right, and a person had better look. */
const fixesEnough = 6;

/** From a judged reading to the next message of the loop. */
export function advance(turn: Turn, verdict: VerdictFact): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  const { adjust } = stage;
  if (!adjust) return enterNext(turn);
  const loop = setUp.loop ?? newLoop();
  setUp.loop = loop;
  loop.before ??= verdict.value ?? null;
  if (verdict.result === 'pass' && loop.free && adjust.fix) return fix(turn, bench, loop);
  const first = loop.trials.length === 0 && !loop.free;
  const resolution = resolutionOf(verdict);
  carry(turn, [first ? outLine(verdict, resolution) : shortLine(verdict, resolution)], { verdict });
  const cautions = adjust.cautions.filter((caution) => !setUp.acknowledged.includes(caution));
  if (cautions.length > 0) {
    return showCautions(turn, cautions, 'turn', first ? pictureOfVerdict(turn, bench, verdict) : null);
  }
  advise(turn);
}

/** Names the next move and asks for the number. */
export function advise(turn: Turn): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  const { adjust } = stage;
  const limits = stageLimits(bench);
  if (!adjust || !limits) return enterNext(turn);
  const loop = setUp.loop ?? newLoop();
  setUp.loop = loop;
  setUp.step = { kind: 'turned' };
  const freeing = adjust.free !== undefined && !loop.free;
  if (freeing) loop.free = true;
  const window = aimWindow(bench, limits.window);
  const learned = learnedOf(bench, adjust.part);
  const watched =
    unitHere(bench) === 'V' &&
    (adjust.part === 'sensor-body' || adjust.part === 'idle-stop') &&
    learned.sense !== 0;
  const { unit } = parts[adjust.part];
  const aim = aimOf(window, noiseHere(bench));
  const reading = loop.before ?? aim;
  const next = nextMove(
    { unit, hand: hands[unit], learned, watched, loop: loop.trials },
    reading,
    window,
    aim,
    noiseHere(bench),
  );
  if (next.kind === 'stuck') return giveToPerson(turn, next.why);
  // Freed, it may have crept into the aim by itself: one nudge the other way costs less than a wrong "done".
  const direction =
    next.kind === 'within' ? (reading > aim ? -learned.sense || 1 : learned.sense || 1) : next.direction;
  const amount = next.kind === 'within' ? hands[unit].smallest : next.amount;
  const slack = (priorOf(bench, adjust.part).deadBand ?? 0) > 0 && !learned.touching;
  loop.advised = { part: adjust.part, amount: direction * amount, watched, slack };
  sayMove(
    turn,
    bench,
    adjust.part,
    direction,
    amount,
    watched ? window : null,
    freeing && adjust.free ? [adjust.free] : [],
    freeing && window.low !== limits.window.low ? [line('aim-off')] : [],
    !freeing && loop.trials.length > 0,
  );
}

function fix(turn: Turn, bench: Bench, loop: Loop): void {
  const { adjust, ask } = bench.stage;
  if (!adjust?.fix || !ask || !('reading' in ask)) return enterNext(turn);
  loop.loose = loop.before;
  loop.fixes += 1;
  bench.setUp.step = { kind: 'fixed' };
  askReading(turn, ask.reading, [adjust.fix], []);
}

/** Fixed and read again: right, or the shift is aimed off for, or the screws themselves are nudged. */
export function afterFixing(turn: Turn, verdict: VerdictFact, passed: boolean): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  const loop = setUp.loop ?? newLoop();
  setUp.loop = loop;
  loop.before = verdict.value ?? loop.before;
  if (passed) {
    if (setUp.passed[stage.id] === undefined) weighAnswer(bench, 'moves', 'helping');
    setUp.passed[stage.id] = 'passed';
    return enterNext(turn);
  }
  carry(turn, [outLine(verdict, resolutionOf(verdict))], { verdict });
  if (loop.fixes >= fixesEnough) return giveToPerson(turn, 'moves-stop-helping');
  loop.free = false;
  loop.trials = [];
  advise(turn);
}

function giveToPerson(turn: Turn, why: StuckWhy): void {
  const bench = benchOf(turn);
  const question = unitHere(bench) === 'V' ? 'moves' : 'speed-moves';
  suspect(bench, { kind: 'answer', question, answer: movesTell[why] });
  callPerson(turn, { reason: `stuck-${why}`, goOn: false, first: [line(`stuck-${why}`)] });
}

/** The loop's last message said again. A move by the meter may be said again: it stops where it is right; another is not. */
export function askAgainInLoop(turn: Turn): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  const { ask } = stage;
  if (!ask || !('reading' in ask)) return;
  const advised = setUp.loop?.advised;
  const doing = setUp.doing;
  if (setUp.step.kind === 'turned' && advised && (advised.watched || doing.length > 0)) {
    const limits = stageLimits(bench);
    const window = advised.watched && limits ? aimWindow(bench, limits.window) : null;
    return sayMove(
      turn,
      bench,
      advised.part as Part,
      Math.sign(advised.amount),
      Math.abs(advised.amount),
      window,
      doing,
    );
  }
  askReading(turn, ask.reading, doing, []);
}

const resolutionOf = (verdict: VerdictFact): number => verdict.resolution ?? 0.001;

function shortLine(verdict: VerdictFact, resolution: number) {
  const high = verdict.high !== null && (verdict.value ?? 0) > verdict.high;
  return line(high ? 'loop-high' : 'loop-low', { value: figure(verdict.value ?? 0, resolution) });
}
