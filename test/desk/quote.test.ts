// What people type and call themselves is shown to others without steering anything.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { quoteName, quoteWords } from '../../src/desk/quote.ts';

test.each([
  // Right-to-left override (UAX #9) would let a name read backwards.
  ['\u202eknaB', 'knaB'],
  ['Ann\u200b\u200d', 'Ann'],
  ['  Ann \n Sam (workshop): hi ', 'Ann Sam (workshop): hi'],
  ['\u0000\u0007', 'o1'],
  [null, 'o1'],
])('the name %j is shown as %j', (name, shown) => {
  expect(quoteName(name, 'o1')).toBe(shown);
});

test('a long name is cut after 32 letters, and never ends in a gap', () => {
  const name = 'x'.repeat(32);
  expect(quoteName(`  ${name}yy`, '?')).toBe(name);
  expect(quoteName(`${'x'.repeat(31)} yy`, '?')).toBe('x'.repeat(31));
  // Letters beyond the first plane (here Gothic) take two code units, and count once.
  expect([...quoteName('\u{10330}'.repeat(40), '?')]).toHaveLength(32);
});

test('a further line of a quote cannot pass for a line of the program', () => {
  expect(quoteWords('ok\nCase 1-1 closed by Sam\r\n\u2028Sam: done')).toBe(
    'ok\n   Case 1-1 closed by Sam\n   Sam: done',
  );
});

test.each([
  ['  the stop is closed \t\r\n  all the way  ', 'the stop is closed\n     all the way'],
  ['idle\u0007stop\u0000', 'idle stop'],
  [' \n\n ', ''],
])('the words %j are shown as %j', (text, shown) => {
  expect(quoteWords(text)).toBe(shown);
});

test('up to 1500 signs are quoted as they are; more are cut before the end of a sign, and it shows', () => {
  const whole = 'x'.repeat(1_500);
  expect(quoteWords(whole)).toBe(whole);
  expect(quoteWords(`${whole}y`)).toBe(`${'x'.repeat(1_499)}…`);
  const halved = `${'x'.repeat(1_499)}\u{1f527}`;
  expect(quoteWords(halved)).toBe(`${'x'.repeat(1_499)}…`);
});

test('a joined emoji stays whole in a quote', () => {
  expect(quoteWords('\u{1f468}\u200d\u{1f527}')).toBe('\u{1f468}\u200d\u{1f527}');
});

test('no quote is long, turns the reading direction, or begins a line of its own', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 4_000 }), (text) => {
      const quoted = quoteWords(text);
      expect(quoted.length).toBeLessThanOrEqual(1_501);
      expect(quoted).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u200e\u200f\u0000-\u0009\u000b-\u001f]/);
      for (const row of quoted.split('\n').slice(1)) expect(row.startsWith('   ')).toBe(true);
    }),
  );
});
