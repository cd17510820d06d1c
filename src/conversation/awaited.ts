// Which measure a number would be a reading of at this moment, and in which situation; for understanding and judging it.
import type { Measure } from '../procedure/vocabulary.ts';
import { checkById } from './checks.ts';
import type { Bench } from './turn.ts';

/** What a figure is a reading of. */
export interface ReadingOf {
  measure: Measure;
  situation: string | null;
}

export interface Awaited extends ReadingOf {
  /** How many values are asked for in one message; 1 for a plain reading. */
  count: number;
}

/** Null where the moment asks for no reading. */
export function awaitedOf(bench: Bench): Awaited | null {
  const { setUp, stage } = bench;
  const { asked } = setUp;
  // What staff ask for comes before all else; otherwise nothing is read while they hold the set-up.
  if (asked) {
    if (asked.kind !== 'reading' || asked.cautions.length > 0) return null;
    return { measure: asked.measure, situation: asked.situation, count: 1 };
  }
  if (setUp.held) return null;
  const { step } = setUp;
  if (step.kind === 'check') {
    const ask = checkById(bench, step.check)?.ask;
    if (ask?.kind === 'reading') return { measure: ask.measure as Measure, situation: step.check, count: 1 };
    if (ask?.kind !== 'retake') return null;
  } else if (step.kind !== 'stage' && step.kind !== 'turned' && step.kind !== 'fixed') {
    return null;
  }
  const { ask } = stage;
  if (ask && 'reading' in ask) return { measure: ask.reading, situation: ask.at ?? null, count: 1 };
  if (ask && 'readings' in ask) return { measure: ask.readings, situation: ask.at ?? null, count: ask.count };
  return null;
}
