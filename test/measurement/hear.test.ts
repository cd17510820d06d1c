// Holds the parser against the corpus, the platform's own number formats, and a unit library; and feeds it anything.
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { expect, describe as group, test } from 'vitest';
import { readLexicon } from '../../src/commands/interpret.ts';
import { hear } from '../../src/measurement/hear.ts';
import type { Lexicon } from '../../src/measurement/lexicon.ts';
import { units } from '../../src/measurement/unit.ts';
import { unitFactors } from '../../src/measurement/unit-factors.ts';
import { describe, isAsExpected, languages, readCorpus } from './corpus/read-corpus.ts';

type Convert = (size: number) => { from(unit: string): { to(unit: string): number } };
const convert = createRequire(import.meta.url)('convert-units') as Convert;

const prepared = new Map<string, Lexicon>();
for (const language of languages) prepared.set(language, await readLexicon('content', language));

function lexiconsOf(language: string): Lexicon[] {
  const own = prepared.get(language)!;
  return language === 'en' ? [own] : [own, prepared.get('en')!];
}

group('the corpus', () => {
  test('holds at least 400 messages, in six languages and all units', () => {
    const rows = languages.flatMap((language) => readCorpus(language));
    expect(rows.length).toBeGreaterThanOrEqual(400);
    expect(new Set(rows.map(({ unit }) => unit))).toEqual(new Set(units));
  });

  for (const language of languages) {
    test(`every message is understood as its row says: ${language}`, () => {
      const wrong = readCorpus(language).flatMap((row) => {
        const heard = hear(row.message, row.unit, lexiconsOf(language));
        return isAsExpected(heard, row.expected)
          ? []
          : [
              `${language}.tsv:${row.line} ${JSON.stringify(row.message)}: ${row.expected}, heard ${describe(heard)}`,
            ];
      });
      expect(wrong).toEqual([]);
    });
  }
});

// Oracle: Intl.NumberFormat of the platform, which formats by ICU and CLDR.
group('numbers as the platform writes them are understood again, with their resolution', () => {
  const locales = [
    'en-US',
    'en-GB',
    'es-ES',
    'es-MX',
    'de-DE',
    'de-CH',
    'de-AT',
    'fr-FR',
    'fr-CH',
    'fr-CA',
    'pt-BR',
    'pt-PT',
    'it-IT',
    'ar-EG',
    'fa-IR',
    'hi-IN',
  ];
  for (const locale of locales) {
    const own = languages.find((language) => locale.startsWith(language)) ?? 'en';
    const format = (value: number, digits: number) =>
      new Intl.NumberFormat(locale, { minimumFractionDigits: digits, maximumFractionDigits: digits }).format(
        value,
      );

    test(`volts in ${locale}`, () => {
      fc.assert(
        fc.property(
          fc.integer({ min: -15_999, max: 15_999 }),
          fc.integer({ min: 1, max: 3 }),
          (thousandths, digits) => {
            const value = Number((thousandths / 1000).toFixed(digits));
            const heard = hear(format(value, digits), 'V', lexiconsOf(own));
            expect(heard).toEqual({
              kind: 'reading',
              value: value === 0 ? 0 : value,
              unit: 'V',
              resolution: 10 ** -digits,
            });
          },
        ),
      );
    });

    test(`engine speeds in ${locale}`, () => {
      fc.assert(
        fc.property(fc.integer({ min: 400, max: 15_000 }), (speed) => {
          const heard = hear(format(speed, 0), '1/min', lexiconsOf(own));
          expect(heard).toEqual({ kind: 'reading', value: speed, unit: '1/min', resolution: 1 });
        }),
      );
    });
  }
});

group('units', () => {
  // Oracle: the convert-units library. It rounds some factors to six or so digits, so it is held to that.
  const library = [
    ['in', 'mm', 'in', 'mm'],
    ['ft', 'mm', 'ft', 'mm'],
    ['cm', 'mm', 'cm', 'mm'],
    ['bar', 'kPa', 'bar', 'kPa'],
    ['psi', 'kPa', 'psi', 'kPa'],
    ['mV', 'V', 'mV', 'V'],
  ] as const;
  test.each(library)('%s to %s as the library has it', (typed, asked, from, to) => {
    const heard = hear(`7 ${typed}`, asked, lexiconsOf('en'));
    const expected = convert(7).from(from).to(to);
    expect(heard).toMatchObject({ kind: 'reading', unit: asked });
    expect((heard as { value: number }).value / expected).toBeCloseTo(1, 5);
  });

  // International yard and pound agreement 1959; standard gravity, 3rd CGPM 1901; NIST SP 811 (2008), appendix B.8, prints these factors.
  test.each([
    ['in', 25.4],
    ['ft', 304.8],
    ['psi', 6.894757],
    ['ft-lb', 1.355818],
    ['in-lb', 0.1129848],
    ['kgf-m', 9.80665],
    ['at', 98.0665],
    ['atm', 101.325],
  ] as const)('one %s is what the published table says', (unit, published) => {
    const { factor } = unitFactors[unit] as { factor: number };
    expect(Number(factor.toPrecision(7))).toBe(published);
  });
});

group('whatever is typed', () => {
  const fragments = fc.constantFrom(
    '0',
    '1',
    '48',
    '348',
    '.',
    ',',
    '-',
    '/',
    '0.348',
    'V',
    'mV',
    'rpm',
    'OL',
    'between',
    'and',
    'half',
    'a',
    'point',
    'three',
    'hundred',
    'sorry',
    'not',
    '±',
    '→',
    '"',
    '\n',
    ' ',
    '½',
    '٣',
    'ß',
    '👍',
    'fuel',
    'leak',
    "'",
    '(',
    '~',
    'k',
    'e',
    '1/8',
    '%',
    '\u202e',
    '\ud800',
  );
  const anything = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'grapheme' }),
    fc.array(fragments, { maxLength: 30 }).map((parts) => parts.join('')),
    fc.array(fragments, { maxLength: 30 }).map((parts) => parts.join(' ')),
  );

  test('it is answered, never thrown back, and numbers in it are finite', () => {
    fc.assert(
      fc.property(
        anything,
        fc.constantFrom(...units, null),
        fc.constantFrom(...languages),
        (text, unit, language) => {
          const heard = hear(text, unit, lexiconsOf(language));
          if (heard.kind === 'reading')
            expect(Number.isFinite(heard.value) && heard.resolution > 0).toBe(true);
          if (heard.kind === 'range') expect(heard.low).toBeLessThanOrEqual(heard.high);
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('a reading has its digits in the text, or its number words', () => {
    const letters = fc.string({ unit: fc.constantFrom(...'bcdfghjklmpqrstvwxyz .,!?') });
    fc.assert(
      fc.property(letters, fc.constantFrom(...units), (text, unit) => {
        expect(hear(text, unit, lexiconsOf('en')).kind).not.toBe('reading');
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 999 }), letters, (thousandths, around) => {
        const digits = (thousandths / 1000).toFixed(3);
        const heard = hear(`${around.replaceAll(/[.,]/gu, '')} ${digits} V`, 'V', lexiconsOf('en'));
        if (heard.kind === 'reading') expect(heard.value).toBe(Number(digits));
      }),
    );
  });

  test('a message of more than 4,096 characters is too long', () => {
    expect(hear('0'.repeat(4097), 'V', lexiconsOf('en'))).toEqual({ kind: 'unclear', why: 'too-long' });
  });

  test('where no reading is awaited, only a number that names its unit is one', () => {
    expect(hear('0.348', null, lexiconsOf('en')).kind).toBe('unclear');
    expect(hear('348 mV', null, lexiconsOf('en'))).toEqual({
      kind: 'reading',
      value: 0.348,
      unit: 'V',
      resolution: 0.001,
    });
    expect(hear('yes', null, lexiconsOf('en'))).toEqual({ kind: 'word', word: 'yes' });
  });
});
