// When somebody is at the desk: opening spans on the workshop's own clock, holidays, and a day that was called off; for the conversation and the desk.
import type { Workshop } from '../procedure/workshop.ts';

type Hours = Pick<Workshop, 'hours' | 'holidays' | 'timeZone'>;

const weekdays = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'] as const;
const minuteMs = 60_000;
const dayMs = 24 * 60 * minuteMs;
/** A workshop that does not open within so many days has no opening to speak of. */
const farthestDays = 60;

/** Making a formatter takes longer than all else here. */
const formatters = new Map<string, Intl.DateTimeFormat>();

function formatterOf(timeZone: string): Intl.DateTimeFormat {
  const made =
    formatters.get(timeZone) ??
    new Intl.DateTimeFormat('en-US', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
    });
  formatters.set(timeZone, made);
  return made;
}

/** What a clock on the workshop's wall shows, as if it hung at Greenwich. */
function wallOf(instant: number, timeZone: string): number {
  const shown = Object.fromEntries(
    formatterOf(timeZone)
      .formatToParts(instant)
      .map(({ type, value }) => [type, Number(value)]),
  ) as Record<'year' | 'month' | 'day' | 'hour' | 'minute', number>;
  return Date.UTC(shown.year, shown.month - 1, shown.day, shown.hour, shown.minute);
}

/** The instant at which the wall shows this; where the clocks skip it, the instant of the skip or just after. */
function instantOf(wall: number, timeZone: string): number {
  const offsetAt = (instant: number) => wallOf(instant, timeZone) - Math.floor(instant / minuteMs) * minuteMs;
  const near = wall - offsetAt(wall);
  return wall - offsetAt(near);
}

/** The day on the workshop's calendar, as "2026-01-05". */
export function dayOf({ timeZone }: Hours, instant: number): string {
  return dayName(wallOf(instant, timeZone));
}

const dayName = (wall: number): string => new Date(wall).toISOString().slice(0, 10);

const minutesIn = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));

/** The spans of the day that begins at this midnight on the wall, in minutes. */
function spansOf(workshop: Hours, midnight: number, closedOn: string | null): [number, number][] {
  const day = dayName(midnight);
  if (day === closedOn || workshop.holidays.includes(day)) return [];
  const weekday = weekdays[new Date(midnight).getUTCDay()] ?? 'sun';
  return (workshop.hours[weekday] ?? []).map(([opens, closes]) => [minutesIn(opens), minutesIn(closes)]);
}

const midnightOf = (wall: number): number => Math.floor(wall / dayMs) * dayMs;

export function isOpenAt(workshop: Hours, instant: number, closedOn: string | null): boolean {
  const wall = wallOf(instant, workshop.timeZone);
  const minute = (wall - midnightOf(wall)) / minuteMs;
  return spansOf(workshop, midnightOf(wall), closedOn).some(
    ([opens, closes]) => minute >= opens && minute < closes,
  );
}

/** The next instant after this one at which it opens; null where none is in sight. */
export function opensNext(workshop: Hours, instant: number, closedOn: string | null): number | null {
  return firstAfter(workshop, instant, closedOn, (spans) => spans.map(([opens]) => opens));
}

/** The next instant after this one at which the day's last span ends. */
export function dayEndsNext(workshop: Hours, instant: number, closedOn: string | null): number | null {
  return firstAfter(workshop, instant, closedOn, (spans) => spans.slice(-1).map(([, closes]) => closes));
}

function firstAfter(
  workshop: Hours,
  instant: number,
  closedOn: string | null,
  minutesOf: (spans: [number, number][]) => number[],
): number | null {
  const today = midnightOf(wallOf(instant, workshop.timeZone));
  for (let day = 0; day < farthestDays; day += 1) {
    const midnight = today + day * dayMs;
    for (const minutes of minutesOf(spansOf(workshop, midnight, closedOn))) {
      const at = instantOf(midnight + minutes * minuteMs, workshop.timeZone);
      if (at > instant) return at;
    }
  }
  return null;
}

/** "09:14", or "Mon 5 Jan, 09:14" on another day than the one given. */
export function tellTime(
  workshop: Hours & Pick<Workshop, 'language'>,
  instant: number,
  today: number | null,
): string {
  const { timeZone, language } = workshop;
  const isToday = today !== null && dayOf(workshop, instant) === dayOf(workshop, today);
  return new Intl.DateTimeFormat(language === 'en' ? 'en-GB' : language, {
    timeZone,
    hourCycle: 'h23',
    hour: '2-digit',
    minute: '2-digit',
    ...(isToday ? {} : { weekday: 'short', day: 'numeric', month: 'short' }),
  }).format(instant);
}
