// Finds the language to answer a person in, for the inbox: the nearest that content has to what their platform reports.
import { fallbackLanguage } from './wording.ts';

/** By the lookup of RFC 4647, 3.4: the tag is shortened from its end until a language fits. */
export function chooseLanguage(locale: string | null, languages: readonly string[]): string {
  const parts = (locale ?? '').replaceAll('_', '-').toLowerCase().split('-');
  for (let length = parts.length; length > 0; length -= 1) {
    const tag = parts.slice(0, length).join('-');
    const found = languages.find((language) => language.toLowerCase() === tag);
    if (found !== undefined) return found;
  }
  return fallbackLanguage;
}
