// Asks for a reading, with all that has to be done in front of it; for stages, moves and checks.

import type { Facts, Line } from '../chat/facts.ts';
import type { PictureRequest } from '../chat/outgoing-message.ts';
import { type Action, type measures, parts } from '../procedure/vocabulary.ts';
import { machineFillIn, partFillIn, unitOf } from './fill-in.ts';
import { pictureOfStage } from './picture-of-stage.ts';
import { pictureOfMove } from './picture-subjects.ts';
import { actionsToRead } from './rig.ts';
import { line, say } from './say.ts';
import { type Bench, type Button, benchOf, type Turn } from './turn.ts';

export const doneButton: Button = { id: 'done', label: line('button-done') };

/** Asks for a reading: what has to be done for it, the words given, and the number. */
export function askReading(
  turn: Turn,
  measure: keyof typeof measures,
  own: readonly Action[],
  words: readonly Line[],
  more: Facts = {},
  buttons: Button[] = [],
  /** Actions that the words already speak of, and whether they ask for the number too. */
  { worded = [], asked = worded.length > 0 }: { worded?: readonly Action[]; asked?: boolean } = {},
): void {
  const bench = benchOf(turn);
  const doing = actionsToRead(bench.setUp.rig, measure, [...bench.setUp.extra, ...own], turn.scene.now);
  bench.setUp.doing = doing;
  bench.setUp.extra = [];
  const facts: Facts = { ...more, ask: { kind: 'reading', measure, unit: unitOf(measure) } };
  if (doing.length > 0) facts.do = doing;
  const spoken = doing.filter((action) => !worded.includes(action));
  // What is said of the reading comes before the unit is woken for it: the last thing done is the last thing said.
  const upTo = spoken.at(-1) === 'wake' ? spoken.length - 1 : spoken.length;
  say(turn, {
    lines: [
      ...doLines(turn, bench, spoken.slice(0, upTo)),
      ...words,
      ...doLines(turn, bench, spoken.slice(upTo)),
      ...(asked ? [] : [line(measure === 'idle-speed' ? 'ask-speed' : 'ask-number')]),
    ],
    facts,
    buttons,
    picture: pictureOfAsk(turn, bench, more),
  });
}

/** A part's first move shows which one and which way; the moves after it need no picture. */
function pictureOfAsk(turn: Turn, bench: Bench, { move, verdict }: Facts): PictureRequest | null {
  if (move) return bench.setUp.touched.includes(move.part) ? null : pictureOfMove(turn, bench, move);
  return verdict ? null : pictureOfStage(turn, bench);
}

export function doLines(turn: Turn, bench: Bench, doing: readonly Action[]): Line[] {
  const common = machineFillIn(bench.machine, turn.state.language);
  return doing.map((action) => {
    const torque = bench.machine.sensor.screwTorque;
    if (action === 'tighten:sensor-screws' && torque !== undefined) {
      return line('do-tighten-sensor-screws-to', { torque });
    }
    const part = action.split(':')[1];
    const own = isPart(part) ? partFillIn(bench.machine, part, turn.state.language) : {};
    return line(`do-${action.replace(':', '-')}`, { ...common, ...own });
  });
}

const isPart = (part: string | undefined): part is keyof typeof parts => part !== undefined && part in parts;
