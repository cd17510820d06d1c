// The edges of how a figure may be written: marks, groups, powers, fractions, ranges and slips, each beside its neighbour that means something else.
import { expect, describe as group, test } from 'vitest';
import { readLexicon } from '../../src/commands/interpret.ts';
import { hear } from '../../src/measurement/hear.ts';
import { readNumeral, toNumber } from '../../src/measurement/hear-numerals.ts';
import type { Unit } from '../../src/measurement/unit.ts';
import { describe } from './corpus/read-corpus.ts';

const english = await readLexicon('content', 'en');
const german = await readLexicon('content', 'de');

type Row = [message: string, unit: Unit, heard: string];

// ISO 80000-1:2009, 7.3.1 and 7.3.2: the decimal sign is a comma or a point, and groups of three are parted by a gap, never by
// either; that people use points, commas and apostrophes for groups all the same is common practice, no source.
group('marks and groups', () => {
  test.each<Row>([
    ['1,234.5', '1/min', 'reading 1234.5 0.1'],
    ['1.234,5', '1/min', 'reading 1234.5 0.1'],
    ["1'234.5", '1/min', 'reading 1234.5 0.1'],
    ['1 350', '1/min', 'reading 1350 1'],
    ['12 350', '1/min', 'reading 12350 1'],
    ['1 350.5', '1/min', 'reading 1350.5 0.1'],
    ['1 350 mV', 'V', 'reading 1.35 0.001'],
    // No group is shorter than three, and none begins with nought.
    ['12,34.5', '1/min', 'unclear malformed-number'],
    ['1.234.5', '1/min', 'unclear malformed-number'],
    ["1.234'5", '1/min', 'unclear malformed-number'],
    ['1,234.567,8', '1/min', 'unclear malformed-number'],
    ['1 35', '1/min', 'unclear bare-figure'],
    ['0 350', '1/min', 'series 0 350'],
    ['123 350', '1/min', 'series 123 350'],
    ['1 350', 'V', 'unclear bare-figure'],
    // Powers of ten move the last digit too.
    ['1.2e3', '1/min', 'reading 1200 100'],
    ['4.87e-1', 'V', 'reading 0.487 0.001'],
  ])('%j in %s is %s', (message, unit, heard) => {
    expect(describe(hear(message, unit, [english]))).toBe(heard);
  });

  test.each<[string, number | null, number | null, string | null]>([
    ['1350', 1350, null, null],
    ['1.350', 1.35, 1350, '.'],
    ['1,350', 1.35, 1350, ','],
    ["1'350", 1.35, 1350, "'"],
    ['0.350', 0.35, null, '.'],
    ['12.50', 12.5, null, '.'],
    ['1350.000', 1350, null, '.'],
    ['999.999', 999.999, 999_999, '.'],
    ['.487', 0.487, null, '.'],
    ['1.234.567', null, 1_234_567, null],
    ['1,234,567', null, 1_234_567, null],
    ['1.234,5', 1234.5, null, null],
    ['1,234,567.89', 1_234_567.89, null, null],
    ["1'234'567.8", 1_234_567.8, null, null],
    ['1e3', 1000, null, null],
    ['2.5E-2', 0.025, null, '.'],
  ])('the numeral %s may mean %d or %d', (text, decimal, grouped, mark) => {
    const read = readNumeral(text)!;
    expect(read.decimal && toNumber(read.decimal)).toBe(decimal);
    expect(read.grouped && toNumber(read.grouped)).toBe(grouped);
    expect(read.mark).toBe(mark);
  });

  test.each([
    '1.23.456',
    '1.2,3.4',
    '12,34.5',
    "1,234'5",
    '1.234,567.8',
    'x',
    '1.',
    '1e',
    '1..2',
    '1,234,56',
  ])('the numeral %s means nothing', (text) => {
    expect(readNumeral(text)).toBeNull();
  });
});

group('fractions', () => {
  // An eighth of an inch is 3.175 mm (international inch of 25.4 mm, 1959).
  test.each<Row>([
    ['1/8 in', 'mm', 'reading 3.175 3.175'],
    ['3 1/2 in', 'mm', 'reading 88.9 12.7'],
    ['3 and 1/8 in', 'mm', 'reading 79.375 3.175'],
    ['3-1/8 in', 'mm', 'reading 79.375 3.175'],
    ['an eighth of an inch', 'mm', 'reading 3.175 3.175'],
    ['three-eighths of an inch', 'mm', 'reading 9.525 3.175'],
    ['half a volt', 'V', 'reading 0.5 0.1'],
    ['three quarters of a volt', 'V', 'reading 0.75 0.01'],
    ['two and a half volts', 'V', 'reading 2.5 0.1'],
    ['1 and a half volts', 'V', 'reading 1.5 0.1'],
    ['half', 'V', 'unclear nothing-understood'],
    ['a quarter', 'V', 'unclear nothing-understood'],
  ])('%j in %s is %s', (message, unit, heard) => {
    expect(describe(hear(message, unit, [english]))).toBe(heard);
  });

  test.each<Row>([
    ['anderthalb Volt', 'V', 'reading 1.5 0.1'],
    ['zweieinhalb Volt', 'V', 'reading 2.5 0.1'],
    ['anderthalbtausend', '1/min', 'reading 1500 100'],
    ['null Komma vier acht', 'V', 'reading 0.48 0.01'],
  ])('in German %j in %s is %s', (message, unit, heard) => {
    expect(describe(hear(message, unit, [german, english]))).toBe(heard);
  });
});

group('numerals and words together', () => {
  test.each<Row>([
    ['1 thousand three hundred', '1/min', 'reading 1300 100'],
    ['2 thousand fifty', '1/min', 'reading 2050 10'],
    ['1.9k', '1/min', 'reading 1900 100'],
    ['point four eight seven', 'V', 'reading 0.487 0.001'],
    ['nought point four eight seven', 'V', 'reading 0.487 0.001'],
    ['zero point four 8 7', 'V', 'reading 0.487 0.001'],
    ['zero point 48 7', 'V', 'unclear two-meanings'],
    ['zero point fifty two', 'V', 'reading 0.52 0.01 echo'],
    ['zero point', 'V', 'unclear malformed-number'],
    // A thousand of one and a thousand more are not one figure.
    ['2 thousand one thousand', '1/min', 'series 2000 1000'],
  ])('%j in %s is %s', (message, unit, heard) => {
    expect(describe(hear(message, unit, [english]))).toBe(heard);
  });
});

group('two figures', () => {
  test.each<Row>([
    ['between 0.34 and 0.37', 'V', 'range 0.34 0.37'],
    ['from 0.34 to 0.37', 'V', 'range 0.34 0.37'],
    ['0.34-0.37', 'V', 'range 0.34 0.37'],
    ['0.34...0.37', 'V', 'range 0.34 0.37'],
    ['min 0.34 max 0.37', 'V', 'range 0.34 0.37'],
    ['it jumps between 0.3 and 0.4', 'V', 'range 0.3 0.4'],
    ['0.35 ± 0.01', 'V', 'range 0.34 0.36'],
    ['1450 +/- 50', '1/min', 'range 1400 1500'],
    ['max 0.37 max 0.38', 'V', 'unclear two-meanings'],
    ['0.37 to 0.34', 'V', 'unclear two-meanings'],
    ['0.39 -0.41', 'V', 'unclear sign-or-bullet'],
    ['0.34 or 0.37', 'V', 'unclear two-meanings'],
    ['0.34, about 0.36', 'V', 'unclear two-meanings'],
    ['0.34 → 0.36', 'V', 'unclear two-meanings'],
    ['0.3, it wanders', 'V', 'unclear two-meanings'],
    ['at least 0.3', 'V', 'unclear bound-only'],
    ['0.34 0.35 0.36', 'V', 'series 0.34 0.35 0.36'],
    ['0.62 1.3 OL 1.2 0.62', 'V', 'series 0.62 1.3 OL 1.2 0.62'],
    ['OL OL', 'V', 'overload'],
    ['0.36 no 0.37', 'V', 'reading 0.37 0.01 echo'],
    ['sorry 0.36, not 0.34', 'V', 'reading 0.36 0.01 echo'],
  ])('%j in %s is %s', (message, unit, heard) => {
    expect(describe(hear(message, unit, [english]))).toBe(heard);
  });
});

group('a gap or a neighbouring key that got in by a slip is said back', () => {
  test.each<Row>([
    ['0. 487', 'V', 'reading 0.487 0.001 echo'],
    ['0 .487', 'V', 'reading 0.487 0.001 echo'],
    ['. 487', 'V', 'reading 0.487 0.001 echo'],
    ['0;348', 'V', 'reading 0.348 0.001 echo'],
    ['0; 348', 'V', 'unclear bare-figure'],
    ['12. 65', 'V', 'unclear bare-figure'],
    ['1. 2', 'V', 'unclear bare-figure'],
  ])('%j in %s is %s', (message, unit, heard) => {
    expect(describe(hear(message, unit, [english]))).toBe(heard);
  });
});

test('a bare whole number is a voltage only where nothing else is said', () => {
  expect(describe(hear('2', 'V', [english]))).toBe('reading 2 1');
  expect(describe(hear('I have 2 cats', 'V', [english]))).toBe('unclear bare-figure');
});
