// Asks a check of the diagnosis: a question, a reading of another measure, or the odd reading once more; for detours and whoever says them again.

import type { Measure } from '../procedure/vocabulary.ts';
import { askReading } from './ask-reading.ts';
import { askStage } from './ask-stage.ts';
import { awaitedOf } from './awaited.ts';
import { checkById } from './checks.ts';
import { fitCheck } from './fit-check.ts';
import { carry, line, say } from './say.ts';
import { type Bench, benchOf, type Turn } from './turn.ts';

/** The check's own question, said or said again. */
export function askCheckAgain(turn: Turn, id: string): void {
  const bench = benchOf(turn);
  const check = checkById(bench, id);
  if (!check) return askStage(turn);
  const awaited = awaitedOf(bench);
  const { doing, words } = fitCheck(check, awaited?.measure ?? null);
  if (check.ask.kind === 'choice') {
    const { question } = check.ask;
    const answers = bench.content.faults.questions.find((one) => one.id === question)?.usual ?? {};
    bench.setUp.doing = [...doing];
    return say(turn, {
      lines: [words],
      facts: { ...(doing.length > 0 ? { do: [...doing] } : {}), ask: { kind: 'choice', question } },
      buttons: [...Object.keys(answers), 'dont-know'].map((answer) => ({
        id: answer,
        label: line(`answer-${question}-${answer}`),
      })),
    });
  }
  const ask = bench.stage.ask;
  if (check.ask.kind === 'retake' && ask && 'readings' in ask) {
    bench.setUp.doing = [];
    bench.setUp.extra = [...doing];
    carry(turn, [words]);
    return askStage(turn, { kind: 'check', check: id });
  }
  const measure =
    check.ask.kind === 'reading' ? (check.ask.measure as Measure) : (awaited?.measure ?? 'signal-idle');
  const hands = stageHands(bench).filter((action) => !doing.includes(action));
  const own = check.ask.kind === 'retake' ? [...doing, ...hands] : doing;
  askReading(turn, measure, own, [words], {}, [], { worded: doing });
}

/** What the stage's reading needs a hand for each time: a snap, a held grip; not what moves leads or takes parts off. */
export function stageHands({ stage }: Bench) {
  return stage.do.filter((action) =>
    ['open', 'snap', 'engage:fast-idle', 'release:fast-idle'].includes(action),
  );
}
