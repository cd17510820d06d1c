// A member of the desk has the program ask the owner for a measure; what guards a reading guards this one too.
import { enter } from '../desk/case.ts';
import { foldPhrase } from '../measurement/hear-fold.ts';
import { type Measure, measureIds } from '../procedure/vocabulary.ts';
import { cautionsFor } from './cautions-before.ts';
import { nameOfReading } from './desk-judge.ts';
import { named } from './desk-names.ts';
import { limitsFor } from './limits.ts';
import { line } from './say.ts';
import { answer, hasSetUp, holds, isClear, type Seat, tell } from './seat.ts';
import { sayAsked } from './staff-ask.ts';
import type { Asked } from './state.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';

export function askMeasure(seat: Seat, rest: string): void {
  if (!holds(seat) || !hasSetUp(seat) || !isClear(seat)) return;
  const bench = benchOf(seat.turn);
  const measure = measureNamed(seat.turn, rest);
  if (measure === null || !askable(measure)) {
    const key =
      rest.trim() === '' ? 'desk-ask-which' : measure === null ? 'desk-ask-unknown' : 'desk-ask-running';
    return tell(seat, { lines: [line(key)], buttons: measureButtons(bench) });
  }
  const { setUp } = bench;
  const by = seat.member.name;
  const asked: Asked = {
    kind: 'reading',
    measure,
    situation: situationOf(bench, measure),
    check: null,
    cautions: cautionsFor(bench, measure),
    by,
  };
  setUp.asked = asked;
  setUp.heard = null;
  enter(seat.one, seat.turn.scene.now, by, 'asked', measure);
  sayAsked(seat.turn, asked);
  answer(seat, line('desk-asked', { measure: nameOfReading(measure, asked.situation) }));
}

/** "idle", "signal-idle", "closed stop", or what the desk calls it: the one measure that is meant; null where none is, or several. */
function measureNamed(turn: Turn, words: string): Measure | null {
  return measureById(words) ?? named(turn, words, measureIds, (id) => line(`measure-${id}`));
}

/** "signal-idle", "idle". */
export function measureById(words: string): Measure | null {
  const said = foldPhrase(words).replaceAll(' ', '-');
  return measureIds.find((id) => id === said || id === `signal-${said}`) ?? null;
}

/** A sweep has a stage of its own; a running engine comes after the start list and no other way. */
const askable = (measure: Measure): boolean => measure !== 'signal-sweep' && measure !== 'idle-speed';

function measureButtons(bench: Bench) {
  return measureIds
    .filter((measure) => askable(measure) && limitsFor(bench, measure, situationOf(bench, measure)) !== null)
    .slice(0, 12)
    .map((measure) => ({ id: `ask:${measure}`, label: line(`measure-${measure}`) }));
}

/** As the stage has it, else as it was read last. */
export function situationOf({ setUp, stage, machine }: Bench, measure: string): string | null {
  const { ask } = stage;
  if (ask && 'reading' in ask && ask.reading === measure) return ask.at ?? null;
  const latest = Object.entries(setUp.readings)
    .filter(([key]) => key.startsWith(`${measure}@`))
    .sort(([, a], [, b]) => b.at - a.at)[0];
  if (latest) return latest[0].split('@')[1] ?? null;
  // Never read so far: as the machine's content has it first.
  if (machine.targets[measure] !== undefined) return null;
  return (
    Object.keys(machine.targets)
      .find((key) => key.startsWith(`${measure}@`))
      ?.split('@')[1] ?? null
  );
}
