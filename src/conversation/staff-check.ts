// A member of the desk sends the owner one of the checks that content brings; its answer is told to the case.
import { enter } from '../desk/case.ts';
import type { Check } from '../procedure/fault.ts';
import type { Measure } from '../procedure/vocabulary.ts';
import { awaitedOf } from './awaited.ts';
import { cautionsFor } from './cautions-before.ts';
import { checkName, named } from './desk-names.ts';
import { line } from './say.ts';
import { answer, hasSetUp, holds, isClear, type Seat, tell } from './seat.ts';
import { sayAsked } from './staff-ask.ts';
import { situationOf } from './staff-ask-for.ts';
import type { Asked } from './state.ts';
import { type Bench, benchOf } from './turn.ts';

export function sendCheck(seat: Seat, rest: string): void {
  if (!holds(seat) || !hasSetUp(seat) || !isClear(seat)) return;
  const bench = benchOf(seat.turn);
  const offered = bench.content.faults.checks.filter((check) => isForOwner(bench, check));
  const ids = offered.map(({ id }) => id);
  const wanted = named(seat.turn, rest, ids, checkName);
  const check = offered.find(({ id }) => id === wanted);
  const asked = check && askedBy(bench, check, seat.member.name);
  if (!asked) {
    return tell(seat, {
      lines: [line(rest.trim() === '' ? 'desk-check-which' : 'desk-check-unknown')],
      buttons: ids.map((id) => ({ id: `check:${id}`, label: checkName(id) })),
    });
  }
  bench.setUp.asked = asked;
  bench.setUp.heard = null;
  enter(seat.one, seat.turn.scene.now, seat.member.name, 'checked', check.id);
  sayAsked(seat.turn, asked);
  answer(seat, line('desk-check-sent', { check: line(`check-${check.id}`) }));
}

/** What is the desk's own to do is not sent to a garage, nor is a part backed off whose way back was not counted. */
function isForOwner({ setUp }: Bench, check: Check): boolean {
  const uncounted = check.do.some(
    (action) =>
      action.startsWith('back-off:') && setUp.counts[action.slice('back-off:'.length)] === undefined,
  );
  return check.for === 'owner' && check.ask.kind !== 'go-on' && !uncounted;
}

function askedBy(bench: Bench, check: Check, by: string): Asked | null {
  if (check.ask.kind === 'choice') {
    // Leads in, or a part let go, only after the cautions of a signal reading.
    const cautions = check.do.length > 0 ? cautionsFor(bench, 'signal-idle') : [];
    return { kind: 'question', question: check.ask.question, check: check.id, cautions, by };
  }
  const measure = check.ask.kind === 'reading' ? (check.ask.measure as Measure) : measureOfStage(bench);
  if (measure === null) return null;
  const situation = situationOf(bench, measure);
  return { kind: 'reading', measure, situation, check: check.id, cautions: cautionsFor(bench, measure), by };
}

/** What is taken once more: the stage's own reading, else the idle signal. */
function measureOfStage(bench: Bench): Measure | null {
  const { setUp } = bench;
  const free = { ...bench, setUp: { ...setUp, held: false, asked: null, step: { kind: 'stage' as const } } };
  const awaited = awaitedOf(free);
  if (awaited && awaited.count > 1) return null;
  return awaited?.measure === 'idle-speed' ? null : (awaited?.measure ?? 'signal-idle');
}
