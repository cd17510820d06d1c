// Holds what an owner typed against the machine's limits, for the eyes of the desk: read along, and asked for by staff.
import type { Line, LineArgument, VerdictFact } from '../chat/facts.ts';
import type { Seen } from '../diagnosis/evidence.ts';
import type { ReadingOf } from './awaited.ts';
import { figure } from './fill-in.ts';
import { limitsFor, readingKey } from './limits.ts';
import { line } from './say.ts';
import type { Aside } from './state.ts';
import type { Bench } from './turn.ts';
import { implausible, judgeFigure, verdictOf } from './verdict.ts';

/** `null` where nothing is known to hold it against. */
export function judgeForDesk(bench: Bench, awaited: ReadingOf, seen: Seen): VerdictFact | null {
  const limits = limitsFor(bench, awaited.measure, awaited.situation);
  if (seen.kind !== 'value' && seen.kind !== 'range') {
    return implausible(awaited, seen, limits?.window ?? null);
  }
  return limits && verdictOf(awaited, seen, judgeFigure(seen, limits.window, limits.target));
}

/** "low", "right", "makes no sense": how a verdict is called at the desk. */
export function resultLine({ result, value, low }: Pick<VerdictFact, 'result' | 'value' | 'low'>): Line {
  if (result !== 'adjust') return line(`desk-result-${result}`);
  return line(low !== null && (value ?? 0) < low ? 'desk-result-low' : 'desk-result-high');
}

/** The limits in words; `digit` is the worth of the reading's last digit. */
export function limitsLine(low: number | null, high: number | null, digit: number): Line | null {
  if (low === null && high === null) return null;
  if (low === null) return line('desk-limits-high', { high: figure(high ?? 0, digit) });
  if (high === null) return line('desk-limits-low', { low: figure(low, digit) });
  return line('desk-limits', { low: figure(low, digit), high: figure(high, digit) });
}

/** "Idle, as found": a measure and the situation it was read in. */
export function nameOfReading(measure: string, situation: string | null): string | Line {
  const key = readingKey(measure, situation);
  if (key === 'signal-idle@static' || key === 'signal-idle@warm')
    return line(`measure-${key.replace('@', '-')}`);
  return line(`measure-${measure}`);
}

/** What was seen as one figure with its unit, or in a word where it was none. */
export function seenLine(seen: Seen, unit: LineArgument): Line {
  switch (seen.kind) {
    case 'value':
      return line('desk-figure', { value: figure(seen.value, seen.resolution), unit });
    case 'range':
      return line('desk-figures', {
        low: figure(seen.low, seen.resolution),
        high: figure(seen.high, seen.resolution),
        unit,
      });
    case 'overload':
      return line('desk-overload');
    default:
      return line('desk-nothing');
  }
}

export function asideOf(
  measure: string,
  situation: string | null,
  typed: string,
  verdict: VerdictFact | null,
  more: Pick<Aside, 'why' | 'at'>,
): Aside {
  return {
    measure,
    situation,
    typed: typed.slice(0, 40),
    value: verdict?.value ?? null,
    resolution: verdict?.resolution ?? 0.001,
    low: verdict?.low ?? null,
    high: verdict?.high ?? null,
    ...more,
  };
}
