// Holds the parser to its safety net: of two figures with decimals, none is left out without a word.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { readLexicon } from '../../src/commands/interpret.ts';
import { hear } from '../../src/measurement/hear.ts';
import { foldWord } from '../../src/measurement/hear-fold.ts';
import type { Lexicon, Role } from '../../src/measurement/lexicon.ts';
import { languages } from './corpus/read-corpus.ts';

/** Words that say of the figure beside them that it is no reading of now; and names of quantities and parts. */
const claims: readonly Role[] = ['elsewhen', 'wish', 'past', 'change', 'other-quantity'];

const lexicons = new Map<string, Lexicon>();
const said = new Map<string, { phrases: string[]; claiming: string[] }>();
for (const language of languages) {
  lexicons.set(language, await readLexicon('content', language));
  const file = parse(readFileSync(`content/words/${language}/lexicon.yaml`, 'utf8')) as {
    phrases: Record<string, string[]>;
    units: Record<string, string[]>;
  };
  const units = Object.values(file.units).flat();
  const claiming = new Set([...claims.flatMap((role) => file.phrases[role] ?? []), ...units].map(foldWord));
  const others = Object.entries(file.phrases).filter(([role]) => !claims.includes(role as Role));
  const phrases = others.flatMap(([, all]) => all).filter((phrase) => !claiming.has(foldWord(phrase)));
  // A phrase may hold one of them, as "as before" does, and two words may make one.
  said.set(language, { phrases, claiming: [...claiming] });
}

const unknown = fc.constantFrom('blorp', 'wumsel', 'frindo', 'tatche');
const mark = fc.constantFrom(',', ';', '.', '-', '?', '!', ':', '(', ')', '\n', '...');

test.each(languages)('two figures with decimals never come to one, but with an echo: %s', (language) => {
  const { phrases, claiming } = said.get(language)!;
  const word = fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...phrases) }, unknown, mark);
  const words = fc.array(word, { maxLength: 3 });
  const figure = fc.integer({ min: 11, max: 499 }).map((hundredths) => (hundredths / 100).toFixed(2));
  const own = lexicons.get(language)!;
  const known = language === 'en' ? [own] : [own, lexicons.get('en')!];
  fc.assert(
    fc.property(words, figure, words, figure, words, (before, one, between, two, behind) => {
      const message = [...before, one, ...between, two, ...behind].join(' ');
      fc.pre(one !== two && !claiming.some((phrase) => ` ${foldWord(message)} `.includes(` ${phrase} `)));
      const heard = hear(message, 'V', known);
      expect(heard.kind === 'reading' && heard.echo !== true, `${message}: ${JSON.stringify(heard)}`).toBe(
        false,
      );
    }),
    { numRuns: 1000 },
  );
});
