// How many turns or clicks somebody counted, as people of six languages say it; common practice, no source: halves and quarters of a turn.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLexicon } from '../../src/commands/interpret.ts';
import { hearCount } from '../../src/measurement/hear-count.ts';
import type { Lexicon } from '../../src/measurement/lexicon.ts';
import { languages } from './corpus/read-corpus.ts';

const prepared = new Map<string, Lexicon>();
for (const language of languages) prepared.set(language, await readLexicon('content', language));

/** The language itself, and English beside it. */
const lexiconsOf = (language: string): Lexicon[] =>
  [...new Set([language, 'en'])].flatMap((one) => prepared.get(one) ?? []);

const said: Record<string, [typed: string, count: number | null][]> = {
  en: [
    ['2', 2],
    ['2.5', 2.5],
    ['2 1/2', 2.5],
    ['2½', 2.5],
    ['2-1/2', 2.5],
    ['1/2', 0.5],
    ['two', 2],
    ['Two and a half', 2.5],
    ['two and a half turns', 2.5],
    ['2 and a half turns', 2.5],
    ['2 turns and a half', 2.5],
    ['one and a quarter', 1.25],
    ['one turn and a quarter', 1.25],
    ['two and three quarters', 2.75],
    ['three quarters of a turn', 0.75],
    ['half a turn', 0.5],
    ['half', 0.5],
    ['a quarter', 0.25],
    ['a turn and a half', 1.5],
    ['one full turn and a half', 1.5],
    ['a turn', 1],
    ['I counted two and a half turns, then it was free', 2.5],
    ['about 3 turns', 3],
    ['eleven clicks', 11],
    ['twelve', 12],
    ['zero', 0],
    ['2 or 3', null],
    ['between two and three', null],
    ['two, no, three', null],
    ['a few', null],
    ['done', null],
    ['', null],
  ],
  de: [
    ['zwei', 2],
    ['zweieinhalb', 2.5],
    ['zwei einhalb Umdrehungen', 2.5],
    ['zweieinhalb Umdrehungen', 2.5],
    ['zwei und eine halbe', 2.5],
    ['2 ½ Umdrehungen', 2.5],
    ['anderthalb', 1.5],
    ['eineinhalb Umdrehungen', 1.5],
    ['eine halbe Umdrehung', 0.5],
    ['eine dreiviertel Umdrehung', 0.75],
    ['ein Viertel', 0.25],
    ['eine Umdrehung', 1],
    ['elf Rasten', 11],
    ['2,5', 2.5],
    ['zwei oder drei', null],
  ],
  es: [
    ['dos y media', 2.5],
    ['dos vueltas y media', 2.5],
    ['vuelta y media', 1.5],
    ['una vuelta y media', 1.5],
    ['media vuelta', 0.5],
    ['un cuarto de vuelta', 0.25],
    ['tres cuartos de vuelta', 0.75],
    ['dos vueltas y un cuarto', 2.25],
    ['once clics', 11],
    ['dos o tres', null],
  ],
  fr: [
    ['deux et demi', 2.5],
    ['deux tours et demi', 2.5],
    ['un tour et demi', 1.5],
    ['un demi-tour', 0.5],
    ['un quart de tour', 0.25],
    ['trois quarts de tour', 0.75],
    ['2 tours 1/2', 2.5],
    ['onze clics', 11],
    ['deux ou trois', null],
  ],
  it: [
    ['due e mezzo', 2.5],
    ['due giri e mezzo', 2.5],
    ['un giro e mezzo', 1.5],
    ['mezzo giro', 0.5],
    ['un quarto di giro', 0.25],
    ['tre quarti di giro', 0.75],
    ['undici scatti', 11],
    ['due o tre', null],
  ],
  pt: [
    ['dois e meio', 2.5],
    ['duas voltas e meia', 2.5],
    ['uma volta e meia', 1.5],
    ['meia volta', 0.5],
    ['um quarto de volta', 0.25],
    ['três quartos de volta', 0.75],
    ['onze cliques', 11],
    ['duas ou três', null],
  ],
};

describe.each(Object.entries(said))('in %s', (language, rows) => {
  test.each(rows)('"%s" is a count of %s', (typed, count) => {
    expect(hearCount(typed, lexiconsOf(language))).toBe(count);
  });
});

test('any count typed in figures is that count, with its name or without', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 60 }),
      fc.constantFrom('', '.25', '.5', '.75', ' 1/4', ' 1/2', ' 3/4'),
      fc.constantFrom('', ' turns', ' clicks'),
      (whole, part, name) => {
        const [over, under] = part.includes('/')
          ? part.trim().split('/').map(Number)
          : [Number(part || 0), 1];
        expect(hearCount(`${whole}${part}${name}`, lexiconsOf('en'))).toBeCloseTo(whole + over! / under!, 9);
      },
    ),
  );
});
