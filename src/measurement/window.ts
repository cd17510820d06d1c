// The limits that a reading is held against, and what moves them; for verdicts and for the next move.
import { fromCounts, tidy, toCounts } from './counts.ts';

/** Both limits belong to the window; null where there is none. */
export interface Window {
  low: number | null;
  high: number | null;
}

export function contains(window: Window, value: number): boolean {
  return (
    (window.low === null || tidy(value) >= window.low) && (window.high === null || tidy(value) <= window.high)
  );
}

/** Infinity where a side is open. */
export function widthOf(window: Window): number {
  return window.low === null || window.high === null ? Number.POSITIVE_INFINITY : window.high - window.low;
}

export function shiftWindow(window: Window, by: number): Window {
  return mapLimits(window, (limit) => limit + by);
}

/** A sensor divides its supply, so its limits go with the supply that was measured. */
export function scaleWindow(window: Window, measuredSupply: number, nominalSupply: number): Window {
  return mapLimits(window, (limit) => (limit * measuredSupply) / nominalSupply);
}

/** What the meter can show inside the window: what is printed, and what decides. Nothing may be left (low above high). */
export function roundInward(window: Window, resolution: number): Window {
  return {
    low: window.low === null ? null : fromCounts(Math.ceil(toCounts(window.low, resolution)), resolution),
    high: window.high === null ? null : fromCounts(Math.floor(toCounts(window.high, resolution)), resolution),
  };
}

/** Where to aim: the middle, or just inside the only limit by `margin`. */
export function aimOf(window: Window, margin: number): number {
  if (window.low !== null && window.high !== null) return tidy((window.low + window.high) / 2);
  if (window.low !== null) return window.low + margin;
  return window.high === null ? 0 : window.high - margin;
}

function mapLimits(window: Window, change: (limit: number) => number): Window {
  return {
    low: window.low === null ? null : tidy(change(window.low)),
    high: window.high === null ? null : tidy(change(window.high)),
  };
}
