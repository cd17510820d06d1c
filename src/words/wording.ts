// One language made ready for rendering, for the renderer: which words stand under each key, with English in place of what is missing.
import { FluentBundle, FluentResource } from '@fluent/bundle';
import { NUMBER } from './figures.ts';

/** The Fluent files of each language, as `{ en: { 'stages.ftl': '…' } }`. */
export type WordFiles = Readonly<Record<string, Readonly<Record<string, string>>>>;

export interface Wording {
  language: string;
  /** The bundle that speaks for a key: the language's own, or the English one. */
  bundleOf: ReadonlyMap<string, FluentBundle>;
  list: Intl.ListFormat;
}

export const fallbackLanguage = 'en';

/** English steps in where a language has no words; `check` lets that pass for a missing file, and for a draft. */
export function prepareWording(language: string, words: WordFiles): Wording {
  const own = words[language] ?? {};
  const english = words[fallbackLanguage] ?? {};
  const bundleOf = new Map<string, FluentBundle>();
  // The English bundle holds every file, since one file may use a term of another.
  const englishBundle = language === fallbackLanguage ? null : prepareBundle(fallbackLanguage, english);
  if (englishBundle) {
    for (const text of Object.values(english)) {
      for (const key of keysOf(text)) bundleOf.set(key, englishBundle);
    }
  }
  const ownBundle = prepareBundle(language, own);
  for (const text of Object.values(own)) for (const key of keysOf(text)) bundleOf.set(key, ownBundle);
  return { language, bundleOf, list: new Intl.ListFormat(language, { type: 'conjunction' }) };
}

function prepareBundle(language: string, files: Readonly<Record<string, string>>): FluentBundle {
  const bundle = new FluentBundle(language, { useIsolating: false, functions: { NUMBER } });
  for (const [file, text] of Object.entries(files)) {
    const [error] = bundle.addResource(new FluentResource(text));
    if (error) throw new Error(`words/${language}/${file}: ${error.message}`);
  }
  return bundle;
}

function keysOf(text: string): string[] {
  return new FluentResource(text).body.map((entry) => entry.id).filter((id) => !id.startsWith('-'));
}
