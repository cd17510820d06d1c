// A member of the desk accepts a value that the limits do not: recorded as accepted, by whom and why, and never as plainly set.
import { enter } from '../desk/case.ts';
import { nameOfReading, seenLine } from './desk-judge.ts';
import { unitOf, unitSaid } from './fill-in.ts';
import { readingKey } from './limits.ts';
import { line } from './say.ts';
import { answer, hasSetUp, holds, isClear, type Seat } from './seat.ts';
import { measureById } from './staff-ask-for.ts';
import { type Bench, benchOf } from './turn.ts';

interface Latest {
  measure: string;
  situation: string | null;
  value: number;
  resolution: number;
  low: number | null;
  high: number | null;
  at: number;
}

export function acceptValue(seat: Seat, rest: string): void {
  if (!holds(seat) || !hasSetUp(seat) || !isClear(seat)) return;
  const bench = benchOf(seat.turn);
  const { setUp, stage } = bench;
  const [first = '', ...others] = rest.trim().split(/\s+/u);
  const named = measureById(first);
  const reason = (named === null ? rest : others.join(' ')).trim();
  if (reason === '') return answer(seat, line('desk-accept-reason'));
  // What is still loose will move when it is fixed.
  if (setUp.rig.sensor === 'loose') return answer(seat, line('desk-accept-loose'));
  const latest = latestOf(bench, named);
  if (!latest) return answer(seat, line('desk-accept-none'));
  const by = seat.member.name;
  const { ask } = stage;
  const isHere = ask !== undefined && 'reading' in ask && ask.reading === latest.measure;
  const key = readingKey(latest.measure, isHere ? (ask.at ?? null) : latest.situation);
  const { value, resolution, low, high, at } = latest;
  setUp.readings[key] = { value, resolution, low, high, at, result: 'accepted' };
  setUp.accepted[key] = { by, value };
  if (latest.measure === 'supply-voltage') setUp.supply = value;
  if (isHere) setUp.passed[stage.id] = 'accepted';
  const shown = seenLine({ kind: 'value', value, resolution }, unitSaid(unitOf(latest.measure)));
  enter(seat.one, seat.turn.scene.now, by, 'accepted', `${key} ${value} ${reason}`);
  answer(
    seat,
    line('desk-accepted', { measure: nameOfReading(latest.measure, latest.situation), shown, name: by }),
  );
}

/** The newest figure, of this measure where one is named; struck ones and those asked for count too. */
function latestOf({ setUp }: Bench, measure: string | null): Latest | null {
  const kept = Object.entries(setUp.readings).map(([key, reading]): Latest => {
    const [measure = '', situation] = key.split('@');
    return { ...reading, measure, situation: situation ?? null };
  });
  const beside = setUp.asides.flatMap((aside): Latest[] =>
    aside.value === null || aside.why === 'asleep' ? [] : [{ ...aside, value: aside.value }],
  );
  const found = [...kept, ...beside].filter((one) => measure === null || one.measure === measure);
  return found.sort((a, b) => b.at - a.at)[0] ?? null;
}
