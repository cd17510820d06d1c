// How far the reading goes when a part is fixed or let go, learned on this machine and aimed off for; for the next move.
import { median } from './median.ts';
import { shiftWindow, type Window } from './window.ts';

/** What content expects: usually no shift, give or take `spread`. */
export interface ShiftPrior {
  shift: number;
  spread: number;
}

const shiftsKept = 4;

/** Adds what was seen this time: the reading after, less the reading (or the aim) before. */
export function rememberShift(shifts: readonly number[], before: number, after: number): number[] {
  return [...shifts, Number((after - before).toPrecision(12))].slice(-shiftsKept);
}

/** The middle of the shifts seen, but for those that no screw can bring about. */
export function learnShift(prior: ShiftPrior, shifts: readonly number[]): number {
  const likely = shifts.filter((shift) => Math.abs(shift - prior.shift) <= 4 * prior.spread);
  return likely.length === 0 ? prior.shift : median(likely);
}

/** Where the reading has to be before the fixing, so that the shift brings it into the window. */
export function aimBefore(window: Window, shift: number): Window {
  return shiftWindow(window, -shift);
}
