// Where long texts are cut: at a sentence, else at a line, else at a blank, and never within a character.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitByLimits, splitText } from '../../../adapters/wire/split-text.ts';

describe('a text is cut', () => {
  test.each([
    { name: 'not at all where it fits', text: 'Turn it in. Stop.', limit: 20, pieces: ['Turn it in. Stop.'] },
    {
      name: 'behind a sentence',
      text: 'Turn it in. Stop now.',
      limit: 15,
      pieces: ['Turn it in.', 'Stop now.'],
    },
    {
      name: 'behind the last sentence that fits, wherever a line ends',
      text: 'One.\nTwo goes on\nand on. Three.',
      limit: 22,
      pieces: ['One.', 'Two goes on\nand on.', 'Three.'],
    },
    {
      name: 'not behind a decimal point',
      text: 'Read 0.348 volts now',
      limit: 12,
      pieces: ['Read 0.348', 'volts now'],
    },
    {
      name: 'at a line where there is no sentence',
      text: 'first line\nsecond line',
      limit: 15,
      pieces: ['first line', 'second line'],
    },
    { name: 'at a blank where there is no line', text: 'aaa bbb ccc', limit: 8, pieces: ['aaa bbb', 'ccc'] },
    {
      name: 'anywhere where there is nothing else',
      text: 'aaaaaaaa',
      limit: 3,
      pieces: ['aaa', 'aaa', 'aa'],
    },
    { name: 'never within a character of two units', text: '🔧🔧🔧', limit: 3, pieces: ['🔧', '🔧', '🔧'] },
    { name: 'into nothing where there is nothing', text: ' \n ', limit: 3, pieces: [] },
  ])('$name', ({ text, limit, pieces }) => {
    expect(splitText(text, limit)).toEqual(pieces);
  });
});

test('a caption may be shorter than what follows it', () => {
  const limits = [5, 20];
  expect(splitByLimits('One. Two and three. Four.', (piece) => limits[piece] ?? 20)).toEqual([
    'One.',
    'Two and three. Four.',
  ]);
});

test('no piece is over the limit, nothing but blanks is lost, and no character is cut', () => {
  const texts = fc.string({ unit: 'grapheme', maxLength: 300 });
  fc.assert(
    fc.property(texts, fc.integer({ min: 2, max: 40 }), (text, limit) => {
      const wellFormed = text.toWellFormed();
      const pieces = splitText(wellFormed, limit);
      const bare = (some: string) => some.replace(/\s/gu, '');
      expect(pieces.every((piece) => piece.length <= limit && piece.isWellFormed())).toBe(true);
      expect(bare(pieces.join(''))).toBe(bare(wellFormed));
    }),
  );
});
