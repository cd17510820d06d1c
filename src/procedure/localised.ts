// A short text that a workshop writes beside its content, in one or several languages; for machines, procedures and names.
import { z } from 'zod';

export const languageSchema = z.string().regex(/^[a-z]{2}$/, 'a language is two small letters, as "en"');

/** Either one text for all languages (a name), or one text per language, English at least. */
export const localisedSchema = z.union([
  z.string().min(1),
  z.record(languageSchema, z.string().min(1)).refine((texts) => texts.en !== undefined, {
    message: 'the English text is missing: add "en:"',
  }),
]);

export type Localised = z.infer<typeof localisedSchema>;

/** The text in the language asked for, in English where that is missing. */
export function inLanguage(text: Localised, language: string): string {
  return typeof text === 'string' ? text : (text[language] ?? text.en ?? '');
}
