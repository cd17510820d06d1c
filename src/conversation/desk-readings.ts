// What was read and tried in a set-up, as a short table for the desk: as found, latest, struck, and what each move did.
import type { Line } from '../chat/facts.ts';
import type { Trial } from '../measurement/learn-part.ts';
import { targetFor } from '../procedure/machine.ts';
import { type Part, parts } from '../procedure/vocabulary.ts';
import { limitsLine, nameOfReading, resultLine, seenLine } from './desk-judge.ts';
import { figure, unitOf, unitSaid } from './fill-in.ts';
import { limitsFor } from './limits.ts';
import { line } from './say.ts';
import type { Aside, Kept } from './state.ts';
import type { Bench } from './turn.ts';

const trialsShown = 2;

export function readingLines(bench: Bench): Line[] {
  const { found, readings, asides } = bench.setUp;
  const keys = Object.keys(readings).sort((a, b) => (readings[a]?.at ?? 0) - (readings[b]?.at ?? 0));
  return [
    ...keys.flatMap((key) => {
      const [latest, first] = [readings[key], found[key]];
      if (!latest) return [];
      // A first reading that another followed is still what was found.
      const asFound = first && first.at !== latest.at ? [keptLine(bench, key, first, true)] : [];
      return [...asFound, keptLine(bench, key, latest, false)];
    }),
    ...asides.map(asideLine),
  ];
}

function keptLine(bench: Bench, key: string, kept: Kept, first: boolean): Line {
  const [measure = '', situation] = key.split('@');
  const shown = seenLine(
    { kind: 'value', value: kept.value, resolution: kept.resolution },
    unitSaid(unitOf(measure)),
  );
  const name = nameOfReading(measure, situation ?? null);
  const named = first
    ? line('desk-first', { measure: name })
    : situation === 'as-found'
      ? line('desk-as-found', { measure: name })
      : name;
  const result =
    kept.result === 'accepted'
      ? line('desk-result-accepted', { name: bench.setUp.accepted[key]?.by ?? '' })
      : resultLine({ result: kept.result === 'pass' ? 'pass' : 'adjust', value: kept.value, low: kept.low });
  const limits = limitsLine(kept.low, kept.high, kept.resolution);
  if (!limits) return line('desk-reading-plain', { measure: named, shown });
  const source = sourceLine(bench, measure, situation ?? null);
  return source
    ? line('desk-reading-from', { measure: named, shown, limits, result, source })
    : line('desk-reading', { measure: named, shown, limits, result });
}

/** Where a target comes from, so that the desk can weigh it. */
function sourceLine(bench: Bench, measure: string, situation: string | null): Line | null {
  const target = limitsFor(bench, measure, situation)?.target ?? targetFor(bench.machine, measure, situation);
  if (!target) return null;
  const source = line(`desk-source-${target.source}`);
  return target.reference === undefined || target.source === 'owner'
    ? source
    : line('desk-source-page', { source, page: target.reference });
}

function asideLine(aside: Aside): Line {
  const measure = nameOfReading(aside.measure, aside.situation);
  if (aside.why !== 'asked' || aside.value === null) {
    return line('desk-struck', { measure, typed: aside.typed, why: line(`desk-why-${aside.why}`) });
  }
  const shown = seenLine(
    { kind: 'value', value: aside.value, resolution: aside.resolution },
    unitSaid(unitOf(aside.measure)),
  );
  const limits = limitsLine(aside.low, aside.high, aside.resolution);
  if (!limits) return line('desk-reading-plain', { measure: line('desk-asked-for', { measure }), shown });
  const { low, high, value } = aside;
  const isRight = (low === null || value >= low) && (high === null || value <= high);
  return line('desk-reading', {
    measure: line('desk-asked-for', { measure }),
    shown,
    limits,
    result: resultLine({ result: isRight ? 'pass' : 'adjust', value, low }),
  });
}

/** What was turned last and what it did. */
export function trialLines({ setUp }: Bench): Line[] {
  return Object.entries(setUp.trials).flatMap(([key, trials]) => {
    const [part = ''] = key.split('@');
    const digit = key.endsWith('@speed') ? 1 : 0.001;
    return trials.slice(-trialsShown).map((trial) => trialLine(part as Part, trial, digit));
  });
}

function trialLine(part: Part, { amount, before, after }: Trial, digit: number): Line {
  const { directions, unit } = parts[part];
  const size = Number(Math.abs(amount).toFixed(2));
  return line('desk-trial', {
    part: line(`part-${part}`),
    amount: size,
    unit: line(`desk-unit-${unit}`, { amount: size }),
    direction: line(`desk-direction-${amount > 0 ? directions[0] : directions[1]}`),
    before: figure(before, digit),
    after: figure(after, digit),
  });
}
