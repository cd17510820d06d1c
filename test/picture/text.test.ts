// Holds text on pictures to its fonts and languages: widths, fitting, wrapping, numbers, and what has no place in XML.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { amountWords } from '../../src/picture/amounts.ts';
import { readGlyphWidths } from '../../src/picture/glyph-widths.ts';
import { fontFiles, penReader } from '../../src/picture/read-pen.ts';
import { fontOptions } from '../../src/picture/render.ts';
import { escapeXml } from '../../src/picture/svg.ts';
import { fit, wrap } from '../../src/picture/text.ts';

const penOf = penReader(join(import.meta.dirname, '../../content/words'));
const pen = penOf('en');

describe('widths of characters', () => {
  // Advance widths as fontTools 4.66.1 reads them from the shipped files, in units of 1/2048 em.
  test.each([
    [
      'regular',
      0,
      { A: 1401, '0': 1303, '.': 651, '±': 1716, '¼': 1985, Ж: 2206, ß: 1290, W: 2025, '↻': 1716 },
    ],
    ['bold', 1, { A: 1585, '0': 1425, '.': 778, '±': 1716, '¼': 2120, Ж: 2507, ß: 1473, W: 2259, '↻': 1716 }],
  ] as const)('%s are those of an independent reader', (_, file, expected) => {
    const widths = readGlyphWidths(readFileSync(fontFiles[file]));
    expect(widths.size).toBe(1591);
    for (const [letter, units] of Object.entries(expected)) {
      expect(widths.get(letter.codePointAt(0)!)! * 2048, letter).toBeCloseTo(units, 6);
    }
  });

  test('are where the renderer puts the ink', () => {
    // Between two strokes of the same shape lies exactly the width of what stands before the second.
    for (const [text, bold] of [
      ['Größe, данные 0,348 V', false],
      ['Closed stop ±0.008', true],
    ] as const) {
      const inkOf = (body: string) => {
        const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="2000" height="100"><text x="10" y="60" font-family="DejaVu Sans" font-size="40"${bold ? ' font-weight="bold"' : ''}>${body}</text></svg>`;
        return new Resvg(svg, { font: fontOptions }).innerBBox()!.width;
      };
      const ours = pen.width(text, 40, bold);
      expect(Math.abs(inkOf(`|${text}|`) - inkOf('|') - pen.width('|', 40, bold) - ours)).toBeLessThan(1.5);
    }
  });
});

describe('what a picture can show', () => {
  test.each([
    ['one\ntwo\t three', 'one two three'],
    ['bell\u0007 and \u0000', 'bell and'],
    ['a\u202eb\u200bc\u2066d', 'abcd'],
    ['half \ud83d pair', 'half  pair'],
    ['bike 🏍️!', 'bike ▯!'],
    ['摩托', '▯▯'],
    ['e\u0301', 'é'],
    ['Κινητήρας Двигатель Größe', 'Κινητήρας Двигатель Größe'],
  ])('%j comes out as %j', (given, shown) => {
    expect(pen.clean(given)).toBe(shown);
  });

  test('is well-formed XML for any text at all', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const clean = pen.clean(text);
        expect(clean.isWellFormed()).toBe(true);
        // The characters that XML 1.0, 2.2 forbids, as far as they can be left, and those that end markup.
        expect(escapeXml(clean)).not.toMatch(
          /[\u0000-\u001f\u007f-\u009f\ufffe\uffff<>"']|&(?!(amp|lt|gt|quot|#39);)/,
        );
      }),
      { numRuns: 1000 },
    );
  });
});

describe('fitting', () => {
  test('text never gets wider than its room, nor smaller than the smallest type', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 80 }),
        fc.integer({ min: 40, max: 700 }),
        fc.boolean(),
        (text, max, bold) => {
          const fitted = fit(pen, pen.clean(text), 44, bold, max);
          expect(fitted.width).toBeLessThanOrEqual(max);
          expect(fitted.size).toBeGreaterThanOrEqual(22);
        },
      ),
    );
  });

  test('lines hold every word, in order, and no more lines than allowed', () => {
    fc.assert(
      fc.property(fc.lorem({ maxCount: 20 }), fc.integer({ min: 1, max: 3 }), (text, count) => {
        const lines = wrap(pen, text, 22, false, 300, count);
        expect(lines.length).toBeLessThanOrEqual(count);
        expect(lines.join(' ')).toBe(pen.clean(text));
        for (const line of lines.slice(0, -1)) {
          if (line.includes(' ')) expect(pen.width(line, 22, false)).toBeLessThanOrEqual(300);
        }
      }),
    );
  });
});

describe('numbers follow the language', () => {
  // Decimal signs by CLDR: point in English, comma in the others; never grouped by our own rule.
  test.each([
    ['en', '1234.500', '-0.048'],
    ['de', '1234,500', '-0,048'],
    ['es', '1234,500', '-0,048'],
    ['fr', '1234,500', '-0,048'],
    ['pt', '1234,500', '-0,048'],
    ['it', '1234,500', '-0,048'],
  ])('in %s', (language, large, negative) => {
    expect(penOf(language).figure(1234.5, 3)).toBe(large);
    expect(penOf(language).figure(-0.048, 3)).toBe(negative);
  });

  test('what rounds to nothing has no sign', () => {
    expect(pen.figure(-0.0004, 3)).toBe('0.000');
  });

  test('a language without words of its own speaks English, numbers too', () => {
    expect(penOf('xx').say('picture-pass')).toBe('right');
    expect(penOf('../../etc').figure(0.5, 1)).toBe('0.5');
  });

  test.each([
    [0.25, 'turn', '¼ turn'],
    [1, 'turn', '1 turn'],
    [1.5, 'turn', '1½ turns'],
    [0.0625, 'turn', '1/16 turn'],
    [1.0625, 'turn', '1 1/16 turns'],
    [0.4, 'turn', '0.4 turn'],
    [2, 'click', '2 clicks'],
    [1, 'nudge', '1 hair'],
    [1.5, 'mm', '1.5\u00a0mm'],
  ] as const)('%d %s is said as %s', (amount, unit, words) => {
    expect(amountWords(pen, { amount, unit })).toBe(words);
  });
});
