// The pictures that go with a new card: every reading against its band in one strip, and the causes with their shares; for the desk.
import type { CauseFact } from '../chat/facts.ts';
import type { PictureRequest } from '../chat/outgoing-message.ts';
import type { Case } from '../desk/case.ts';
import { inLanguage } from '../procedure/localised.ts';
import { digitsOf, unitOf } from './fill-in.ts';
import { caseFact, line, tellDesk } from './say.ts';
import type { Kept } from './state.ts';
import type { Bench, Turn } from './turn.ts';

const stagesShown = 16;

/** Once for each case: the card's own text stands without them. */
export function showPictures(turn: Turn, one: Case, bench: Bench, causes: readonly CauseFact[]): void {
  const facts = { case: caseFact(turn, one) };
  if (Object.keys(bench.setUp.readings).length > 1) {
    tellDesk(turn, one.id, { lines: [line('desk-picture-readings')], facts, picture: strip(turn, bench) });
  }
  if (causes.length > 1) {
    tellDesk(turn, one.id, {
      lines: [line('desk-picture-causes')],
      facts: { ...facts, causes: [...causes] },
      picture: shares(turn, bench, causes),
    });
  }
}

function strip(turn: Turn, bench: Bench): PictureRequest {
  const { readings, found } = bench.setUp;
  const { language } = turn.scene.current.workshop;
  const inOrder = Object.entries(readings)
    .sort(([, a], [, b]) => a.at - b.at)
    .slice(-stagesShown);
  return drawnForDesk(turn, bench, 'strip', {
    title: inLanguage(bench.machine.name, language),
    stages: inOrder.map(([key, kept]) => stageOfStrip(key, kept, found[key])),
  });
}

function stageOfStrip(key: string, kept: Kept, first: Kept | undefined) {
  const [measure = key] = key.split('@');
  return {
    label: line(`measure-${measure}`),
    unit: unitOf(measure),
    digits: digitsOf(kept.resolution),
    low: kept.low,
    high: kept.high,
    readings: [...(first ? [first.value] : []), kept.value],
    result: kept.result === 'out' ? 'adjust' : 'pass',
  };
}

function shares(turn: Turn, bench: Bench, causes: readonly CauseFact[]): PictureRequest {
  return drawnForDesk(turn, bench, 'causes', {
    title: inLanguage(bench.machine.name, turn.scene.current.workshop.language),
    rows: causes.map(({ id, probability }) => ({
      name: line(`fault-${id}`),
      probability: probability ?? 0,
      evidence: [{ text: line(`fault-${id}-why`), speaks: 'for' }],
    })),
  });
}

function drawnForDesk(turn: Turn, bench: Bench, drawing: string, subject: unknown): PictureRequest {
  const { language } = turn.scene.current.workshop;
  return { kind: 'drawn', drawing, contentHash: bench.setUp.content, language, subject };
}
