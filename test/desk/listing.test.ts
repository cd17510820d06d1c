// What staff find in cases and records by the words that they type.
import { expect, test } from 'vitest';
import { type Archive, findIn } from '../../src/desk/listing.ts';

const aCase = (id: string, reason: string, words: string) => ({
  id,
  state: 'closed' as const,
  reason,
  takenBy: null,
  openedAt: 0,
  changedAt: 0,
  words,
  body: null,
});
const aRecord = (code: string, machine: string, key: string | null) => ({
  code,
  at: 0,
  procedure: 'baseline',
  machine,
  result: 'done',
  body: null,
  key,
});

const archive: Archive = {
  cases: [aCase('3-1', 'asked', 'Ann Kestrel 500'), aCase('4-2', 'unexplained', 'Bob Heron 900')],
  records: [aRecord('k7m2', 'kestrel-500', 'console:ann'), aRecord('p4x9', 'heron-900', null)],
};

const found = (text: string) => {
  const { cases, records } = findIn(archive, text);
  return [...cases.map(({ id }) => id), ...records.map(({ code }) => code)];
};

test.each<[string, string[]]>([
  ['ann', ['3-1', 'k7m2']],
  ['KESTREL', ['3-1', 'k7m2']],
  ['4-2', ['4-2']],
  ['unexplained', ['4-2']],
  ['P4X9', ['p4x9']],
  ['heron', ['4-2', 'p4x9']],
  // Every word has to be there.
  ['heron bob', ['4-2']],
  ['  heron   bob ', ['4-2']],
  ['ann heron', []],
  // What was typed is part of a word, or none of it.
  ['kest', ['3-1', 'k7m2']],
  ['kestrels', []],
  // The platform is nobody's name, and an owner who was erased has none.
  ['console', []],
  ['sole', []],
  ['null', []],
  ['undefined', []],
])('%j finds %j', (text, ids) => {
  expect(found(text)).toEqual(ids);
});

test.each(['', ' ', '\n\t'])('no words (%j) find nothing, and not everything', (text) => {
  expect(found(text)).toEqual([]);
});
