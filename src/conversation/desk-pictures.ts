// The pictures that go with a new card: every reading against its band in one strip, and the causes with their shares; for the desk.
import type { CauseFact } from '../chat/facts.ts';
import type { PictureRequest } from '../chat/outgoing-message.ts';
import type { Case } from '../desk/case.ts';
import { roundInward } from '../measurement/window.ts';
import { inLanguage } from '../procedure/localised.ts';
import { parts } from '../procedure/vocabulary.ts';
import { digitsOf, unitOf } from './fill-in.ts';
import { limitsFor } from './limits.ts';
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
  const approach = approached(turn, bench);
  if (approach) {
    tellDesk(turn, one.id, { lines: [line('desk-picture-approach')], facts, picture: approach });
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

/** The moves of the adjusting loop that was left, and what each did; null where there was none. */
function approached(turn: Turn, bench: Bench): PictureRequest | null {
  const { setUp, stage } = bench;
  const { ask, adjust } = stage;
  const trials = setUp.loop?.trials ?? [];
  const [first] = trials;
  if (!first || !adjust || !ask || !('reading' in ask)) return null;
  const limits = limitsFor(bench, ask.reading, ask.at ?? null);
  const { directions, unit } = parts[adjust.part];
  const resolution = unitOf(ask.reading) === 'V' ? 0.001 : 1;
  const window = roundInward(limits?.window ?? { low: null, high: null }, resolution);
  return drawnForDesk(turn, bench, 'approach', {
    label: line(`measure-${ask.reading}`),
    unit: unitOf(ask.reading),
    digits: digitsOf(resolution),
    low: window.low,
    high: window.high,
    readings: [
      { value: first.before, move: null },
      ...trials.map(({ amount, after }) => ({
        value: after,
        move: { direction: amount > 0 ? directions[0] : directions[1], amount: Math.abs(amount), unit },
      })),
    ],
    result: 'adjust',
  });
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
