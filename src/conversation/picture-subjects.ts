// What the pictures of a conversation show: the reading against its band, the part and its sense, the sweep, the record; words in them are still lines.
import type { MoveFact, RecordFact, VerdictFact } from '../chat/facts.ts';
import type { PictureRequest } from '../chat/outgoing-message.ts';
import { fromCounts, toCounts } from '../measurement/counts.ts';
import { examineSweep } from '../measurement/sweep.ts';
import { greatestError, unknownMeter } from '../measurement/uncertainty.ts';
import { inLanguage } from '../procedure/localised.ts';
import { partOf } from '../procedure/machine.ts';
import type { Part } from '../procedure/vocabulary.ts';
import { digitsOf, unitOf } from './fill-in.ts';
import { limitsFor } from './limits.ts';
import { line } from './say.ts';
import type { Bench, Turn } from './turn.ts';

export function drawn(turn: Turn, bench: Bench, drawing: string, subject: unknown): PictureRequest {
  return { kind: 'drawn', drawing, contentHash: bench.setUp.content, language: turn.state.language, subject };
}

/** A reading that is off, before the first turn. */
export function pictureOfVerdict(turn: Turn, bench: Bench, verdict: VerdictFact): PictureRequest | null {
  const { value, low, high } = verdict;
  if (value === undefined || value === null) return null;
  const resolution = verdict.resolution ?? 0.001;
  return drawn(turn, bench, 'gauge', {
    label: line(`measure-${verdict.measure}`),
    unit: verdict.unit,
    value,
    ...(verdict.spread === undefined ? {} : { spread: verdict.spread }),
    digits: digitsOf(resolution),
    low,
    high,
    target:
      low !== null && high !== null
        ? fromCounts(Math.round(toCounts((low + high) / 2, resolution)), resolution)
        : null,
    uncertainty:
      verdict.unit === 'V' ? Number(greatestError({ value, resolution }, unknownMeter).toPrecision(3)) : null,
    result: verdict.result,
  });
}

/** The first turn of a part: which one, which way, how far. */
export function pictureOfMove(turn: Turn, bench: Bench, move: MoveFact): PictureRequest {
  const own = partOf(bench.machine, move.part);
  return drawn(turn, bench, 'part', {
    part: move.part as Part,
    move: { direction: move.direction, amount: move.amount, unit: move.unit },
    where: own ? inLanguage(own.where, turn.state.language) : null,
    until: move.until ? { low: move.until.low, high: move.until.high, digits: 3, unit: 'V' } : null,
    effect: own && own.raises !== 'unknown' ? (own.raises === move.direction ? 'raises' : 'lowers') : null,
  });
}

/** A sweep, with the places where something is wrong. */
export function pictureOfSweep(
  turn: Turn,
  bench: Bench,
  verdict: VerdictFact,
  resolution: number,
): PictureRequest {
  const values = verdict.values ?? [];
  const heights = values.map((value) => value ?? Number.POSITIVE_INFINITY);
  const peak = heights.indexOf(Math.max(...heights));
  const wideOpen = limitsFor(bench, 'signal-wide-open', 'open')?.window ?? { low: null, high: null };
  const sweep = examineSweep(values, resolution, { wideOpen, returnTolerance: 0.012, noise: 0.002 });
  return drawn(turn, bench, 'sweep', {
    label: line('measure-signal-sweep'),
    unit: unitOf('signal-sweep'),
    digits: digitsOf(resolution),
    up: values.slice(0, peak + 1),
    down: values.slice(peak + 1),
    faults: 'where' in sweep ? [{ kind: sweep.kind, where: sweep.where }] : [],
    result: verdict.result,
  });
}

/** The card that an owner keeps. */
export function pictureOfRecord(turn: Turn, bench: Bench, record: RecordFact): PictureRequest {
  const { setUp, machine, procedure, content } = bench;
  const { language } = turn.state;
  return drawn(turn, bench, 'record', {
    title: inLanguage(procedure.name, language),
    machine: inLanguage(machine.name, language),
    workshop: inLanguage(content.workshop.name, language),
    date: new Date(turn.scene.now).toISOString().slice(0, 10),
    result: record.result,
    ...(record.acceptedBy === undefined ? {} : { acceptedBy: record.acceptedBy }),
    values: Object.entries(setUp.readings)
      .filter(([key, kept]) => kept.result !== 'out' && !/@as-found$|sweep/u.test(key))
      .map(([key, kept]) => {
        const [measure = key, situation] = key.split('@');
        const apart = measure === 'signal-idle' && (situation === 'warm' || situation === 'static');
        return {
          label: line(`measure-${apart ? `${measure}-${situation}` : measure}`),
          value: kept.value,
          unit: unitOf(measure),
          digits: digitsOf(kept.resolution),
          low: kept.low,
          high: kept.high,
        };
      }),
    code: setUp.code,
  });
}
