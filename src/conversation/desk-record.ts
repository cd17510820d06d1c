// A case's record in lines for a person, or as JSON for another program; in its thread and at the desk as a whole.
import type { Line } from '../chat/facts.ts';
import { tellTime } from '../desk/opening-hours.ts';
import type { Content } from '../procedure/content.ts';
import type { CaseRecord } from './case-record.ts';
import { nameOfReading, resultLine } from './desk-judge.ts';
import { causeName, machineName, noteName } from './desk-names.ts';
import { line } from './say.ts';

/** Written into one message. */
export const jsonLine = (record: unknown): Line => line('desk-json', { json: JSON.stringify(record) });

export function recordLines(record: CaseRecord, content: Content): Line[] {
  const when = (iso: string) => tellTime(content.workshop, Date.parse(iso), null);
  const name = record.owner.name ?? record.owner.person;
  return [
    line('desk-record-head', { id: record.id, name, opened: when(record.opened) }),
    line('desk-reason', { reason: line(`reason-${record.reason}`) }),
    ...(record.code === null || record.machine === null
      ? []
      : [line('desk-about', { machine: machineName(content, record.machine), code: record.code })]),
    ...(record.job === null ? [] : [line('desk-job', { job: record.job })]),
    ...Object.entries(record.readings).map(([reading, kept]) => readingLine(record, reading, kept)),
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
        note:
          note === null
            ? ''
            : line('desk-record-note', { note: noteName(content, record.procedure, what, note) }),
      }),
    ),
    ...(record.cause === null
      ? []
      : [line('desk-record-cause', { cause: causeName(content, record.cause) })]),
  ];
}

/** One reading as it was kept, under its name at the desk. */
function readingLine(
  { accepted }: CaseRecord,
  reading: string,
  { value, low, result }: CaseRecord['readings'][string],
): Line {
  const [measure = '', situation] = reading.split('@');
  const name = nameOfReading(measure, situation ?? null);
  const by = accepted.find((one) => one.reading === reading)?.by ?? '';
  return line('desk-record-reading', {
    reading: situation === 'as-found' ? line('desk-as-found', { measure: name }) : name,
    value,
    result:
      result === 'accepted'
        ? line('desk-result-accepted', { name: by })
        : resultLine({ result: result === 'pass' ? 'pass' : 'adjust', value, low }),
  });
}
