// When the desk is next reminded of a case: while somebody is there, and more rarely each time; for the clock's part of the conversation.
import type { Workshop } from '../procedure/workshop.ts';
import { isOpenAt, opensNext } from './opening-hours.ts';

/** Waits no longer than this (ms) between two reminders. */
const longestWait = 8 * 3_600_000;

/** Null where no opening is in sight. */
export function remindNext(
  workshop: Pick<Workshop, 'hours' | 'holidays' | 'timeZone' | 'remindMinutes'>,
  now: number,
  reminded: number,
  closedOn: string | null,
): number | null {
  const first = workshop.remindMinutes * 60_000;
  const at = now + Math.min(first * 2 ** Math.min(reminded, 8), Math.max(first, longestWait));
  return isOpenAt(workshop, at, closedOn) ? at : opensNext(workshop, at, closedOn);
}
