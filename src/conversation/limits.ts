// The limits of a reading as they stand now: the machine's target, the owner's manual, the latest reading it goes by, and the supply; for verdicts and moves.
import { scaleWindow, type Window } from '../measurement/window.ts';
import { targetFor } from '../procedure/machine.ts';
import { type Target, windowOf } from '../procedure/target.ts';
import type { Kept } from './state.ts';
import type { Bench } from './turn.ts';

export const readingKey = (measure: string, situation: string | null): string =>
  situation === null ? measure : `${measure}@${situation}`;

export interface Limits {
  target: Target;
  window: Window;
}

/** Null where nothing is known that the reading could be held against. */
export function limitsFor(bench: Bench, measure: string, situation: string | null): Limits | null {
  const { machine, setUp } = bench;
  const target = targetFor(machine, measure, situation);
  if (!target) return null;
  // A figure of the owner's own map or manual stands in for the workshop's.
  const manual = setUp.manual[measure];
  const tolerance = target.tolerance ?? null;
  if (manual !== undefined && tolerance !== null && target.like === undefined) {
    const window = windowOf({ ...target, centre: manual }, manual);
    return (
      window && {
        target: { ...target, source: 'owner' },
        window: widened(bench, measure, situation, target, scaled(bench, target, window)),
      }
    );
  }
  const reference =
    target.like === undefined ? null : (referenceFor(bench, target.like, situation)?.value ?? null);
  const window = windowOf(target, reference);
  if (!window) return null;
  return { target, window: widened(bench, measure, situation, target, scaled(bench, target, window)) };
}

/** What staff accepted is right from then on, as far about as any other figure would be. */
function widened(
  { setUp }: Bench,
  measure: string,
  situation: string | null,
  target: Target,
  window: Window,
): Window {
  const accepted = setUp.accepted[readingKey(measure, situation)];
  if (!accepted) return window;
  const about = target.tolerance ?? 0;
  const round = (value: number) => Number(value.toFixed(12));
  return {
    low: window.low === null ? null : Math.min(window.low, round(accepted.value - about)),
    high: window.high === null ? null : Math.max(window.high, round(accepted.value + about)),
  };
}

/** The latest reading of the measure that another goes by: in the same situation, else the newest of all. */
export function referenceFor(bench: Bench, measure: string, situation: string | null): Kept | undefined {
  const { readings } = bench.setUp;
  const same = situation === null ? undefined : readings[readingKey(measure, situation)];
  if (same) return same;
  return Object.entries(readings)
    .filter(([key]) => key === measure || key.startsWith(`${measure}@`))
    .map(([, kept]) => kept)
    .sort((a, b) => b.at - a.at)[0];
}

function scaled({ setUp, machine }: Bench, target: Target, window: Window): Window {
  if (!target.scales || setUp.supply === null) return window;
  return scaleWindow(window, setUp.supply, machine.sensor.nominalSupply);
}

/** The middle of what the machine should show here, for figures spoken of and expectations; null where there is none. */
export function middleOf({ low, high }: Window): number | null {
  if (low === null || high === null) return low ?? high;
  return (low + high) / 2;
}

/** The limits of the reading that the stage itself asks for; null where it asks none, or has nothing to hold it against. */
export function stageLimits(bench: Bench): Limits | null {
  const { ask } = bench.stage;
  return ask && 'reading' in ask ? limitsFor(bench, ask.reading, ask.at ?? null) : null;
}
