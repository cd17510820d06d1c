import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { editDistance, nearest, suggest } from '../../src/library/suggest.ts';

describe('the distance between two words', () => {
  // Levenshtein's usual textbook pairs, and the ones that tell optimal string alignment apart (from memory).
  test.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['flaw', 'lawn', 2],
    ['', 'abc', 3],
    ['abc', 'abc', 0],
    ['ab', 'ba', 1],
    ['ca', 'abc', 3],
  ])('from "%s" to "%s" is %i', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
  });

  test('is the same both ways, nought only for the same word, and at most the longer word', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c', '-'), maxLength: 8 });
    fc.assert(
      fc.property(word, word, (a, b) => {
        const distance = editDistance(a, b);
        expect(editDistance(b, a)).toBe(distance);
        expect(distance === 0).toBe(a === b);
        expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
        expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
    );
  });
});

describe('what was meant', () => {
  const known = ['idle-stop', 'fast-idle', 'cable'];
  test.each([
    ['idel-stop', 'idle-stop'],
    ['idlestop', 'idle-stop'],
    ['fast-idel', 'fast-idle'],
    ['cabel', 'cable'],
    ['table', 'cable'],
    ['cabbage', null],
    ['throttle', null],
    ['', null],
  ])('by "%s" is %j', (written, meant) => {
    expect(nearest(written, known)).toBe(meant);
  });

  test('is asked, else everything is named, else it is said that there is nothing', () => {
    expect(suggest('idel-stop', known, 'part')).toBe('Did you mean "idle-stop"?');
    expect(suggest('throttle', known, 'part')).toBe('Use one of: idle-stop, fast-idle, cable.');
    expect(suggest('throttle', [], 'part')).toBe('There is no part yet: add one, or take this out.');
  });
});
