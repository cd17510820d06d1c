// Holds what the workshop says of itself against the calendar and the clock, for `check`.
import type { Workshop } from '../procedure/workshop.ts';
import type { Finding } from './finding.ts';
import { nearest } from './suggest.ts';

export function checkWorkshop(workshop: Workshop): Finding[] {
  const findings: Finding[] = [];
  const { timeZone, hours, holidays } = workshop;
  if (!isTimeZone(timeZone)) {
    const near = nearest(timeZone, Intl.supportedValuesOf('timeZone'));
    const mend = near ? `Did you mean "${near}"?` : 'Write it as "Europe/Dublin" or "UTC".';
    findings.push({ path: ['timeZone'], message: `There is no time zone "${timeZone}".`, mend });
  }
  for (const [day, spans] of Object.entries(hours)) {
    let closed = '00:00';
    for (const [index, [opens, closes]] of (spans ?? []).entries()) {
      const path = ['hours', day, index];
      if (opens >= closes) {
        findings.push({
          path,
          message: `On ${day} it opens at ${opens} and closes at ${closes}.`,
          mend: 'Give the earlier time first.',
        });
      } else if (opens < closed) {
        const mend = 'Give the spans of a day in order, and apart from each other.';
        findings.push({
          path,
          message: `On ${day} it opens at ${opens}, before it has closed at ${closed}.`,
          mend,
        });
      }
      closed = closes;
    }
  }
  for (const [index, day] of holidays.entries()) {
    if (isDay(day)) continue;
    findings.push({
      path: ['holidays', index],
      message: `There is no day ${day}.`,
      mend: 'Write year, month and day as "2026-12-25".',
    });
  }
  return findings;
}

function isTimeZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
}

function isDay(day: string): boolean {
  const instant = new Date(`${day}T00:00:00Z`);
  return !Number.isNaN(instant.getTime()) && instant.toISOString().startsWith(day);
}
