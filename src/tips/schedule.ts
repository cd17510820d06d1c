// When a tip may be posted next, on the workshop's own clock: its days and time, its rest, its quiet hours.
import { Cron } from 'croner';
import type { Tip } from '../procedure/tip.ts';

const dayMs = 24 * 3_600_000;

/** The first of its instants after this one. Where the clocks leave its time out it comes when they go on; where they show it twice, once. */
export function slotAfter(
  { days, time }: Pick<Tip, 'days' | 'time'>,
  timeZone: string,
  instant: number,
): number {
  return next(time, days.join(','), timeZone, instant);
}

/** The end of the quiet hours; null where it is not quiet. */
export function quietUntil({ quiet: [from, until] }: Pick<Tip, 'quiet'>, timeZone: string, instant: number) {
  if (from === until) return null;
  const ends = next(until, '*', timeZone, instant);
  return ends <= next(from, '*', timeZone, instant) ? ends : null;
}

/** When it has rested long enough; a day is 24 hours here, whatever the clocks do. */
export function restedAt({ restDays }: Pick<Tip, 'restDays'>, postedAt: number): number {
  return postedAt + restDays * dayMs;
}

/** The library is asked for instants only: nothing is started, and its own clock is not looked at. */
function next(time: string, days: string, timeZone: string, instant: number): number {
  const [hour, minute] = time.split(':').map(Number);
  const found = new Cron(`${minute} ${hour} * * ${days}`, { timezone: timeZone, paused: true }).nextRun(
    new Date(instant),
  );
  if (found === null) throw new Error(`there is no ${time} after ${new Date(instant).toISOString()}`);
  return found.getTime();
}
