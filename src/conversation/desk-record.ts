// A case's record in lines for a person, or as JSON for another program; in its thread and at the desk as a whole.
import type { Line } from '../chat/facts.ts';
import { tellTime } from '../desk/opening-hours.ts';
import type { Workshop } from '../procedure/workshop.ts';
import type { CaseRecord } from './case-record.ts';
import { line } from './say.ts';

/** Written into one message. */
export const jsonLine = (record: unknown): Line => line('desk-json', { json: JSON.stringify(record) });

export function recordLines(record: CaseRecord, workshop: Workshop): Line[] {
  const when = (iso: string) => tellTime(workshop, Date.parse(iso), null);
  const name = record.owner.name ?? record.owner.person;
  return [
    line('desk-record-head', { id: record.id, name, opened: when(record.opened) }),
    line('desk-reason', { reason: line(`reason-${record.reason}`) }),
    ...(record.code === null || record.machine === null
      ? []
      : [line('desk-about', { machine: record.machine, code: record.code })]),
    ...(record.job === null ? [] : [line('desk-job', { job: record.job })]),
    ...Object.entries(record.readings).map(([reading, { value, result }]) =>
      line('desk-record-reading', { reading, value, result }),
    ),
    ...record.beside.map(({ measure, typed, why }) =>
      why === 'asked'
        ? line('desk-record-asked', { measure: line(`measure-${measure}`), typed })
        : line('desk-struck', { measure: line(`measure-${measure}`), typed, why: line(`desk-why-${why}`) }),
    ),
    line(''),
    ...record.history.map(({ at, by, what, note }) =>
      line('desk-record-entry', {
        when: when(at),
        what: line(`desk-did-${what}`, { name: by ?? name }),
        note: note === null ? '' : `: ${note}`,
      }),
    ),
    ...(record.cause === null ? [] : [line('desk-record-cause', { cause: record.cause })]),
  ];
}
