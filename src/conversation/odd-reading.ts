// Leaves the straight path for a reading that makes no sense: weighs the causes, asks the one next check, and comes back; or calls a person.

import type { VerdictFact } from '../chat/facts.ts';
import type { Evidence, Observation, Seen } from '../diagnosis/evidence.ts';
import { addWeights, likelihoods, weightsOfPast } from '../diagnosis/likelihoods.ts';
import { type CheckAdvice, nextCheck } from '../diagnosis/next-check.ts';
import { type Belief, likelyCauses } from '../diagnosis/posterior.ts';
import { isNear, sameSeen } from '../diagnosis/same-state.ts';
import { unexplained } from '../diagnosis/unexplained.ts';
import type { CallReason, Check } from '../procedure/fault.ts';
import type { Measure } from '../procedure/vocabulary.ts';
import { askCheckAgain } from './ask-check.ts';
import { askStage } from './ask-stage.ts';
import type { Awaited } from './awaited.ts';
import { callPerson } from './call-person.ts';
import { cautionsFor } from './cautions-before.ts';
import { jumpTo } from './enter-stage.ts';
import { unitSaid } from './fill-in.ts';
import { fitCheck, fits } from './fit-check.ts';
import { carry, line } from './say.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';
import { bandsOf, beliefOf, observationOf, ownersCauses, suspect } from './weigh-evidence.ts';

/** So many detours at one stage, each thought to be over, and a person had better look. */
const detoursEnough = 2;

/** The check that asks for the idle stop once more. */
const backOffAgain = 'back-off-again';
/** The look that tells whether something else holds the plate, and its question. */
const lookAtLever = 'look-at-lever';
const leverRest = 'lever-rest';

export function followOdd(
  turn: Turn,
  bench: Bench,
  awaited: Awaited,
  seen: Seen,
  verdict: VerdictFact,
): void {
  const { setUp, content } = bench;
  const observation = observationOf(bench, awaited, seen);
  const odd = setUp.oddity;
  if (!odd) {
    const detours = `${bench.stage.id}/odd`;
    setUp.failures[detours] = (setUp.failures[detours] ?? 0) + 1;
    if ((setUp.failures[detours] ?? 0) > detoursEnough) {
      carry(turn, [oddLine(verdict, seen)], { verdict });
      suspect(bench, { ...observation, settable: false });
      setUp.oddity?.done.push(awaited.measure);
      return giveToDesk(turn, bench, 'nothing-left');
    }
    setUp.oddity = {
      weights: likelihoods(content.faults, observation),
      done: [awaited.measure],
      seen,
      under: setUp.step.kind === 'check' ? { kind: 'stage' } : setUp.step,
      retakes: 0,
      settled: false,
    };
  } else if (setUp.step.kind === 'check' || odd.retakes >= 0) {
    odd.retakes += 1;
    const last = odd.done.at(-1) ?? '';
    if (sameSeen(odd.seen, seen)) {
      odd.weights = addWeights(
        odd.weights,
        likelihoods(content.faults, { kind: 'tried', check: last, result: 'as-before' }),
        stoodStill(bench, observation, odd.seen, last === backOffAgain, odd.retakes === 1),
      );
    } else {
      // Nearly the same is the same state once more; anything else was a state that is gone.
      odd.weights = addWeights(
        isNear(odd.seen, seen) ? {} : weightsOfPast(content.faults, odd.weights),
        likelihoods(content.faults, observation),
      );
      if (last !== 'read-again') odd.done = odd.done.filter((one) => one !== last || odd.retakes > 6);
    }
    odd.seen = seen;
  }
  const facts = { verdict };
  carry(turn, [oddLine(verdict, seen)], facts);
  advise(turn, bench, observation.settable, seen.kind === 'series' ? null : observation);
}

/** That it stood still when it was looked at again counts once; that the idle stop was backed off once more, for itself. */
function stoodStill(
  bench: Bench,
  observation: Observation,
  before: Seen,
  backedOff: boolean,
  first: boolean,
) {
  if (!backedOff && !first) return {};
  const after = backedOff ? 'back-off:idle-stop' : null;
  const expect = backedOff && observation.previous?.after === after ? 'falls' : 'same';
  const previous = { seen: before, after, expect, alone: true } as const;
  return likelihoods(bench.content.faults, { ...observation, previous });
}

/** The next check of lowest expected cost, or a person. */
function advise(turn: Turn, bench: Bench, settable: boolean, observation: Observation | null): void {
  const { setUp, content } = bench;
  const odd = setUp.oddity;
  if (!odd) return askStage(turn);
  const belief = beliefOf(bench);
  const advice = nextCheck(content.faults, belief, {
    done: [...odd.done, ...closedTo(bench)],
    lacking: setUp.answers.tachometer === 'none' ? ['tachometer'] : [],
    bands: bandsOf(bench),
    supply: setUp.supply,
    settable,
  });
  const helpless = odd.retakes >= 1 && observation !== null && unexplained(belief, [observation]);
  const mends = advice.kind === 'check' && advice.ask.kind === 'retake';
  if ((!mends || helpless) && observation !== null && !odd.done.includes('read-again')) {
    // Two digits change places easily: nobody is called for one figure.
    odd.done.push('read-again');
    setUp.step = { kind: 'check', check: 'read-again' };
    return askCheckAgain(turn, 'read-again');
  }
  if (advice.kind === 'call' || helpless || odd.retakes > 8) {
    return giveToDesk(turn, bench, advice.kind === 'call' ? advice.reason : 'unknown-cause');
  }
  const stood = observation?.previous?.after === 'back-off:idle-stop';
  if (advice.ask.kind === 'go-on' && stood && !odd.done.includes(backOffAgain)) {
    // "Done" gets said without doing, and setting over a held plate would be wrong for good.
    odd.done.push(backOffAgain);
    setUp.step = { kind: 'check', check: backOffAgain };
    return askCheckAgain(turn, backOffAgain);
  }
  if (advice.ask.kind === 'go-on' && odd.done.includes(backOffAgain) && !odd.done.includes(leverRest)) {
    setUp.step = { kind: 'check', check: lookAtLever };
    return askCheckAgain(turn, lookAtLever);
  }
  odd.done.push(advice.check);
  if (advice.ask.kind === 'go-on') {
    odd.settled = true;
    setUp.step = odd.under;
    carry(turn, [line(`check-${advice.check}`)]);
    return askStage(turn);
  }
  askCheck(turn, bench, advice, belief);
}

export function giveToDesk(turn: Turn, bench: Bench, reason: CallReason): void {
  suspect(bench, null);
  turn.carriedFacts.causes = ownersCauses(beliefOf(bench));
  callPerson(turn, { reason: `call-${reason}`, goOn: false, first: [line(`call-${reason}-owner`)] });
}

/** Checks that are out of the question here, whatever they would tell. */
function closedTo(bench: Bench): string[] {
  const { setUp, stage, content } = bench;
  const closed = [
    // A stop that nobody was asked to back off, or that is set again, stays where it is.
    ...(setUp.rig.idleStop === 'off' ? [] : [backOffAgain]),
    ...(setUp.failures[`${stage.id}/screws`] === undefined ? [] : ['look-at-screws']),
    ...content.faults.checks.filter((check) => isOutOfPlace(bench, check)).map(({ id }) => id),
  ];
  // What was done once may be worth a second look; what was done twice is not.
  return [...closed, ...closed];
}

/** Beside the point of this reading; and leads in wires and waking wait for the stages that show their cautions. */
function isOutOfPlace(bench: Bench, check: Check): boolean {
  const { ask } = bench.stage;
  const read = ask && 'reading' in ask ? ask.reading : null;
  if (!fits(check, read)) return true;
  const { doing } = fitCheck(check, read);
  const live = doing.some((action) => ['wake', 'probe', 'probe-supply', 'probe-ground'].includes(action));
  const measured =
    check.ask.kind === 'reading' ? (check.ask.measure as Measure) : live ? 'supply-voltage' : null;
  return measured !== null && cautionsFor(bench, measured).length > 0;
}

/** A sensor that was loose has moved: its baseline is checked again, from the stops on. Null while it was not checked yet. */
function stageAfterMoving({ procedure, setUp }: Bench): string | null {
  const baseline = procedure.stages.find((stage) => stage.adjust?.part === 'sensor-body');
  if (!baseline || setUp.passed[baseline.id] === undefined) return null;
  const stopsOff = procedure.stages.findIndex((stage) =>
    stage.do.some((action) => action.startsWith('back-off')),
  );
  const from = stopsOff === -1 ? procedure.stages.indexOf(baseline) : stopsOff;
  for (const stage of procedure.stages.slice(from)) delete setUp.passed[stage.id];
  return procedure.stages[from]?.id ?? null;
}

function askCheck(turn: Turn, bench: Bench, advice: CheckAdvice, belief: Belief): void {
  const likely = likelyCauses(belief).filter(
    (cause) => cause.id !== 'nothing-wrong' && cause.id !== 'unknown',
  );
  const { failing } = bench.stage;
  if (advice.do.includes('check:screws') && failing && 'go' in failing) {
    // A baseline is set cold: once it has run, a sensor found loose is not set again in one go.
    if (bench.setUp.rig.hot) return giveToDesk(turn, bench, 'not-for-an-owner');
    bench.setUp.extra = ['check:screws'];
    bench.setUp.failures[`${bench.stage.id}/screws`] = 1;
    carry(turn, [line(`fault-${advice.cause}-why`)]);
    return jumpTo(turn, stageAfterMoving(bench) ?? failing.go);
  }
  bench.setUp.step = { kind: 'check', check: advice.check };
  if (likely.length > 0) turn.carriedFacts.causes = ownersCauses(belief);
  if (likely.some((cause) => cause.id === advice.cause)) carry(turn, [line(`fault-${advice.cause}-why`)]);
  askCheckAgain(turn, advice.check);
}

/** An answer to a check's question. */
export function answerCheck(turn: Turn, question: string, answer: string): void {
  const bench = benchOf(turn);
  const odd = bench.setUp.oddity;
  if (!odd) return askStage(turn);
  odd.weights = addWeights(odd.weights, likelihoods(content(bench), { kind: 'answer', question, answer }));
  odd.done.push(question);
  advise(turn, bench, bench.stage.adjust !== undefined, null);
}

/** A reading of another measure that a check asked for: it weighs, and the odd reading is looked at again. */
export function takeCheckReading(turn: Turn, bench: Bench, awaited: Awaited, seen: Seen): void {
  const odd = bench.setUp.oddity;
  if (!odd) return askStage(turn);
  const evidence: Evidence = {
    kind: 'observation',
    measure: awaited.measure,
    situation: awaited.situation ?? 'check',
    seen,
    expected: bandsOf(bench)[awaited.measure] ?? null,
    settable: false,
    supply: null,
  };
  odd.weights = addWeights(odd.weights, likelihoods(content(bench), evidence));
  odd.done.push(awaited.measure);
  advise(turn, bench, bench.stage.adjust !== undefined, null);
}

/** An answer that content calls a sign of a fault, as a sweep that jumped: looked at once more with the leads seen to, then a person. */
export function followAnswer(turn: Turn): void {
  const bench = benchOf(turn);
  const { setUp, stage, procedure } = bench;
  setUp.failures[stage.id] = (setUp.failures[stage.id] ?? 0) + 1;
  const before = procedure.stages[procedure.stages.indexOf(stage) - 1];
  if ((setUp.failures[stage.id] ?? 0) > 1 || !before) {
    const { ask } = stage;
    const question = ask && 'question' in ask ? ask.question : null;
    if (question !== null)
      suspect(bench, { kind: 'answer', question, answer: setUp.answers[question] ?? '' });
    return giveToDesk(turn, bench, 'not-for-an-owner');
  }
  setUp.extra = ['check:leads'];
  carry(turn, [line('jumped-once-more')]);
  jumpTo(turn, before.id);
}

const content = (bench: Bench) => bench.content.faults;

function oddLine(verdict: VerdictFact, seen: Seen) {
  if (seen.kind === 'overload') return line('odd-overload');
  if (seen.kind === 'none') return line('odd-nothing');
  if (seen.kind === 'series') return line('odd-sweep');
  const digits = Math.max(0, -Math.floor(Math.log10(seen.resolution) + 1e-9));
  if (seen.kind === 'range') {
    return line('odd-range', {
      low: { value: seen.low, digits },
      high: { value: seen.high, digits },
      unit: unitSaid(verdict.unit),
    });
  }
  return line('odd-value', { value: { value: seen.value, digits }, unit: unitSaid(verdict.unit) });
}
