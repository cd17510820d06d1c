// The desk's lists in lines: what waits and is in hand, what a search found, one record, and the summary of a day.
import type { Facts, Line } from '../chat/facts.ts';
import { type Archive, type CaseListing, findIn, type RecordListing } from '../desk/listing.ts';
import { dayOf, tellTime } from '../desk/opening-hours.ts';
import { quoteName } from '../desk/quote.ts';
import type { Content } from '../procedure/content.ts';
import type { CaseRecord } from './case-record.ts';
import { machineName } from './desk-names.ts';
import { jsonLine, recordLines } from './desk-record.ts';
import type { DeskScene } from './hear-desk.ts';
import { line, type Message } from './say.ts';

const shown = 8;

/** Waiting first, then in hand; the oldest of each first. */
export function casesLines({ openCases, current, now }: DeskScene): Line[] {
  const waiting = openCases.filter(({ state }) => state === 'waiting');
  const taken = openCases.filter(({ state }) => state === 'taken');
  if (waiting.length + taken.length === 0) return [line('desk-list-none')];
  const lineOf = (one: CaseListing) => caseLine(one, current, now);
  return [
    ...(waiting.length === 0
      ? []
      : [line('desk-list-waiting', { count: waiting.length }), ...waiting.map(lineOf)]),
    ...(taken.length === 0 ? [] : [line('desk-list-taken', { count: taken.length }), ...taken.map(lineOf)]),
  ];
}

function caseLine(one: CaseListing, content: Content, now: number | null): Line {
  const { workshop } = content;
  const { owner, machine, code } = one.body as CaseRecord;
  return line('desk-list-case', {
    id: one.id,
    name: quoteName(owner.name, owner.person),
    machine: machine === null ? '-' : machineName(content, machine),
    code: code ?? '-',
    reason: line(`reason-${one.reason}`),
    since: tellTime(workshop, one.openedAt, now),
    state:
      one.state === 'taken' && one.takenBy !== null
        ? line('desk-state-taken', { name: one.takenBy })
        : line(`desk-list-state-${one.state}`),
  });
}

export function findLines(archive: Archive, text: string, content: Content): Message {
  const { cases, records } = findIn(archive, text);
  if (cases.length + records.length === 0) {
    return { lines: [line('desk-found-none', { text: quoteName(text, '-') })] };
  }
  const lines = [
    ...cases.slice(0, shown).map((one) => caseLine(one, content, null)),
    ...records.slice(0, shown).map((one) => recordLine(one, content)),
  ];
  const ids = [...cases.map(({ id }) => id), ...records.map(({ code }) => code)].slice(0, shown);
  return { lines, buttons: ids.map((id) => ({ id: `record:${id}`, label: id })) };
}

function recordLine({ code, machine, result, at }: RecordListing, content: Content): Line {
  return line('desk-found-record', {
    code,
    machine: machineName(content, machine),
    result: line(`desk-result-record-${result}`),
    when: tellTime(content.workshop, at, null),
  });
}

/** By the case's number or the record's code; with "json" as data. */
export function recordOf({ cases, records }: Archive, rest: string, content: Content): Line[] {
  const [id = '', form = ''] = rest.trim().split(/\s+/u);
  const asData = form.toLowerCase() === 'json';
  const one = cases.find((found) => found.id === id);
  if (one) return asData ? [jsonLine(one.body)] : recordLines(one.body as CaseRecord, content);
  const record = records.find(({ code }) => code === id.toUpperCase());
  if (record) {
    const { at, code, procedure, machine, result, body } = record;
    if (asData)
      return [
        jsonLine({ code, at: new Date(at).toISOString(), procedure, machine, result, ...(body as Facts) }),
      ];
    return [recordLine(record, content), ...((body as Facts).lines ?? [])];
  }
  return [line('desk-found-none', { text: quoteName(id, '-') })];
}

/** Nothing where the day saw nothing. */
export function summaryLines(
  { openCases, current, now }: DeskScene,
  { cases, records }: Archive,
  at: number,
): Line[] {
  const { workshop } = current;
  const day = dayOf(workshop, at);
  const isToday = (instant: number) => dayOf(workshop, instant) === day;
  const waiting = openCases.filter(({ state }) => state === 'waiting');
  const taken = openCases.filter(({ state }) => state === 'taken');
  const ended = cases.filter(
    ({ state, changedAt }) => (state === 'closed' || state === 'returned') && isToday(changedAt),
  ).length;
  const done = records.filter((record) => isToday(record.at)).length;
  if (waiting.length + taken.length + ended + done === 0) return [];
  return [
    line('desk-summary', { waiting: waiting.length, taken: taken.length, ended, done }),
    ...[...waiting, ...taken].map((one) => caseLine(one, current, now)),
  ];
}
