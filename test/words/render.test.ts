import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Line } from '../../src/chat/facts.ts';
import { label, render } from '../../src/words/render.ts';
import { prepareWording } from '../../src/words/wording.ts';

const words = {
  en: {
    'main.ftl': `
read = { $value } V. Right.
turns = { $amount ->
    [one] { $amount } turn
   *[other] { $amount } turns
}
turn = Turn the { $part } { $direction ->
    [in] in
   *[out] out
}.
part-stop = idle stop
tools = You need { $tools }.
plain = Stand clear.
-shop = the shop
sign = From { -shop }.
regrouped = { NUMBER($value, useGrouping: "true") }
named = { NUMBER($value) } V
half = { $missing } V
`,
    'extra.ftl': 'extra = At { $value } V, from { -shop }.',
  },
  de: { 'main.ftl': 'read = { $value } V. Stimmt.\ntools = Du brauchst { $tools }.\n-shop = die Werkstatt' },
  es: { 'main.ftl': 'read = { $value } V. Bien.' },
};
const english = prepareWording('en', words);
const german = prepareWording('de', words);

describe('render', () => {
  test('puts each line on its own, and parts paragraphs at a line without a key', () => {
    const lines: Line[] = [
      { key: '' },
      { key: 'plain' },
      { key: 'plain' },
      { key: '' },
      { key: '' },
      { key: 'sign' },
      { key: '' },
    ];
    expect(render(lines, english)).toBe('Stand clear.\nStand clear.\n\nFrom the shop.');
  });

  test('says nothing for no lines', () => {
    expect(render([], english)).toBe('');
  });
});

describe('numbers', () => {
  // Digits and separators of the Unicode CLDR (number symbols of each locale), as ICU in Node has them.
  test.each([
    ['en', { value: 0.35, digits: 3 }, '0.350 V. Right.'],
    ['de', { value: 0.35, digits: 3 }, '0,350 V. Stimmt.'],
    ['es', { value: 0.35, digits: 3 }, '0,350 V. Bien.'],
    ['en', { value: 1750, digits: 0 }, '1750 V. Right.'],
    ['de', { value: 1750, digits: 0 }, '1750 V. Stimmt.'],
    ['de', { value: 12345.5, digits: 1 }, '12345,5 V. Stimmt.'],
    ['en', 1234567, '1234567 V. Right.'],
    ['en', 0.3, '0.3 V. Right.'],
    ['en', { value: -0.0004, digits: 3 }, '0.000 V. Right.'],
    ['en', { value: -0.348, digits: 3 }, '-0.348 V. Right.'],
  ] as const)('in %s, %j is written as "%s"', (language, value, text) => {
    expect(label('read', { value }, prepareWording(language, words))).toBe(text);
  });

  test('are never grouped and keep their digits, whatever they are', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9_999_999, max: 9_999_999 }),
        fc.integer({ min: 0, max: 4 }),
        (count, digits) => {
          const value = count / 10 ** digits;
          const written = label('named', { value: { value, digits } }, english);
          expect(written).toBe(`${(Object.is(value, -0) ? 0 : value).toFixed(digits)} V`);
        },
      ),
    );
  });

  // CLDR plural rules for English: one is i = 1 and v = 0, so that 1.0 is "other".
  test.each([
    [1, '1 turn'],
    [2, '2 turns'],
    [{ value: 1, digits: 0 }, '1 turn'],
    [{ value: 1, digits: 1 }, '1.0 turns'],
    [{ value: 0.5, digits: 1 }, '0.5 turns'],
  ] as const)('take the plural of their language: %j', (amount, text) => {
    expect(label('turns', { amount }, english)).toBe(text);
  });
});

describe('what fills a line in', () => {
  test('may choose between words', () => {
    expect(label('turn', { part: { key: 'part-stop' }, direction: 'out' }, english)).toBe(
      'Turn the idle stop out.',
    );
  });

  test('is put in as it is: what a person typed is no markup', () => {
    expect(label('read', { value: '{ $value } *bold*' }, english)).toBe('{ $value } *bold* V. Right.');
  });

  // CLDR list patterns, as Intl.ListFormat has them.
  test.each([
    [english, ['a meter', 'two pins', 'a bit'], 'You need a meter, two pins, and a bit.'],
    [english, ['a meter', { key: 'part-stop' }], 'You need a meter and idle stop.'],
    [german, ['Messgerät', 'zwei Nadeln', 'Bit'], 'Du brauchst Messgerät, zwei Nadeln und Bit.'],
  ] as const)('may be a list', (wording, tools, text) => {
    expect(label('tools', { tools }, wording)).toBe(text);
  });
});

describe('what is missing', () => {
  test.each([
    ['no-such-key', {}, 'There are no words for "no-such-key" in "en".'],
    ['-shop', {}, 'There are no words for "-shop" in "en".'],
    ['read', {}, 'The words for "read" in "en": Unknown variable: $value'],
    ['half', { value: 1 }, 'The words for "half" in "en": Unknown variable: $missing'],
    ['regrouped', { value: 1500 }, 'NUMBER takes no options'],
    ['named', { value: 'text' }, 'NUMBER takes a number'],
    ['turn', { part: { key: 'part-gone' }, direction: 'in' }, 'There are no words for "part-gone" in "en".'],
  ] as const)('is an error that names the key: %s', (key, args, message) => {
    expect(() => label(key, args, english)).toThrow(message);
  });

  test('falls back to English for a whole file, with English numbers in it', () => {
    expect(label('extra', { value: { value: 0.5, digits: 2 } }, german)).toBe('At 0.50 V, from the shop.');
  });

  test('falls back to English for a single message, as in a language that is still a draft', () => {
    expect(label('plain', {}, german)).toBe('Stand clear.');
  });

  test('is everything English where a language is not there at all', () => {
    expect(label('plain', {}, prepareWording('fr', words))).toBe('Stand clear.');
  });
});

test('a key that stands in two files of one language is an error', () => {
  expect(() => prepareWording('en', { en: { 'a.ftl': 'x = 1', 'b.ftl': 'x = 2' } })).toThrow(
    'words/en/b.ftl',
  );
});
