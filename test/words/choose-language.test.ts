import { expect, test } from 'vitest';
import { chooseLanguage } from '../../src/words/choose-language.ts';

// Lookup as in RFC 4647, 3.4: the range is shortened from its end until something fits; else the default.
test.each([
  ['de', ['en', 'de'], 'de'],
  ['de-CH-1996', ['en', 'de'], 'de'],
  ['de-ch-1996', ['en', 'de', 'de-CH'], 'de-CH'],
  ['pt_BR', ['en', 'pt'], 'pt'],
  ['PT', ['en', 'pt'], 'pt'],
  ['ja', ['en', 'de'], 'en'],
  ['den', ['en', 'de'], 'en'],
  ['', ['en', 'de'], 'en'],
  [null, ['en', 'de'], 'en'],
])('for the locale %j and the languages %j, the words are in "%s"', (locale, languages, chosen) => {
  expect(chooseLanguage(locale, languages)).toBe(chosen);
});
