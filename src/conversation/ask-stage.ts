// Says what a stage wants done and asks its question, whenever the stage is entered or said again.

import type { Facts, LineArgument } from '../chat/facts.ts';
import type { Stage } from '../procedure/procedure.ts';
import { parts } from '../procedure/vocabulary.ts';
import { askReading, doLines, doneButton } from './ask-reading.ts';
import { machineFillIn, partFillIn, unitOf } from './fill-in.ts';
import { pictureOfStage } from './picture-of-stage.ts';
import { actionsToRead } from './rig.ts';
import { line, say } from './say.ts';
import type { Step } from './state.ts';
import type { Button } from './turn.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';
import { turnFirst } from './turn-first.ts';

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

const skipButton: Button = { id: 'skip', label: line('button-skip') };

function fillIn(turn: Turn, { machine }: Bench, stage: Stage): Record<string, LineArgument> {
  const ask = stage.ask;
  const counted = ask && 'count' in ask && typeof ask.count === 'string' ? ask.count : undefined;
  const part = counted ?? stage.shows ?? stage.adjust?.part;
  return {
    ...machineFillIn(machine, turn.state.language),
    ...(part === undefined ? {} : partFillIn(machine, part, turn.state.language)),
  };
}
