// Says what a stage wants done and asks its question, whenever the stage is entered or said again.

import type { Facts, Line, LineArgument } from '../chat/facts.ts';
import type { PictureRequest } from '../chat/outgoing-message.ts';
import type { Stage } from '../procedure/procedure.ts';
import type { Action } from '../procedure/vocabulary.ts';
import { type measures, parts } from '../procedure/vocabulary.ts';
import { turnFirst } from './adjust.ts';
import { machineFillIn, partFillIn, unitOf } from './fill-in.ts';
import { pictureOfStage } from './picture-of-stage.ts';
import { pictureOfMove } from './picture-subjects.ts';
import { actionsToRead } from './rig.ts';
import { line, say } from './say.ts';
import type { Step } from './state.ts';
import type { Button } from './turn.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';

/** The stage's own ask; `step` is what is awaited where that is more than the stage's first answer. */
export function askStage(turn: Turn, step: Step = { kind: 'stage' }): void {
  const bench = benchOf(turn);
  const { setUp, stage } = bench;
  setUp.step = step;
  const ask = stage.ask;
  if (!ask) throw new Error(`Stage ${stage.id} asks nothing.`);
  const words = line(`${bench.procedure.id}-${stage.id}`, fillIn(turn, bench, stage));
  if ('reading' in ask) {
    if (step.kind === 'stage' && turnFirst(turn)) return;
    return askReading(turn, ask.reading, stage.do, [words]);
  }
  if ('readings' in ask) {
    const doing = actionsToRead(setUp.rig, ask.readings, [...setUp.extra, ...stage.do], turn.scene.now);
    setUp.doing = doing;
    setUp.extra = [];
    return say(turn, {
      lines: [...doLines(turn, bench, doing), words, line('ask-readings', { count: ask.count })],
      facts: {
        do: doing,
        ask: { kind: 'readings', measure: ask.readings, unit: unitOf(ask.readings), count: ask.count },
      },
    });
  }
  const doing = [...setUp.extra, ...stage.do];
  setUp.doing = doing;
  setUp.extra = [];
  const lines = [...doLines(turn, bench, doing), words];
  const facts: Facts = doing.length > 0 ? { do: doing } : {};
  const picture = pictureOfStage(turn, bench);
  if ('confirm' in ask) {
    return say(turn, {
      lines,
      facts: { ...facts, ask: { kind: 'confirm' } },
      buttons: [doneButton],
      picture,
    });
  }
  if ('question' in ask) {
    return say(turn, {
      lines,
      facts: { ...facts, ask: { kind: 'choice', question: ask.question } },
      buttons: ask.answers.map(({ id }) => ({
        id,
        label: line(`${bench.procedure.id}-${ask.question}-${id}`),
      })),
      picture,
    });
  }
  if ('count' in ask) {
    const unit = parts[ask.count].unit === 'click' ? 'click' : 'turn';
    return say(turn, {
      lines,
      facts: { ...facts, ask: { kind: 'count', part: ask.count, unit } },
      buttons: [skipButton],
      picture,
    });
  }
  say(turn, {
    lines,
    facts: { ...facts, ask: { kind: 'target', measure: ask.target, unit: unitOf(ask.target) } },
    buttons: [skipButton],
  });
}

export const doneButton: Button = { id: 'done', label: line('button-done') };
export const skipButton: Button = { id: 'skip', label: line('button-skip') };

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
    const part = action.split(':')[1];
    const own = isPart(part) ? partFillIn(bench.machine, part, turn.state.language) : {};
    return line(`do-${action.replace(':', '-')}`, { ...common, ...own });
  });
}

const isPart = (part: string | undefined): part is keyof typeof parts => part !== undefined && part in parts;

function fillIn(turn: Turn, { machine }: Bench, stage: Stage): Record<string, LineArgument> {
  const ask = stage.ask;
  const counted = ask && 'count' in ask && typeof ask.count === 'string' ? ask.count : undefined;
  const part = counted ?? stage.shows ?? stage.adjust?.part;
  return {
    ...machineFillIn(machine, turn.state.language),
    ...(part === undefined ? {} : partFillIn(machine, part, turn.state.language)),
  };
}
