// The words that the chat platforms show outside of any conversation, in every language of the content; for the bot.
import type { Words } from '../../adapters/wire/surroundings.ts';
import { chooseLanguage } from '../words/choose-language.ts';
import { label } from '../words/render.ts';
import { prepareWording, type WordFiles, type Wording } from '../words/wording.ts';

export function makePlatformWords(files: WordFiles, workshop: string): Words {
  const languages = Object.keys(files);
  const wordings = new Map<string, Wording>();
  return {
    languages,
    workshop,
    say(text, locale, fillIn = {}) {
      const language = chooseLanguage(locale, languages);
      let wording = wordings.get(language);
      if (!wording) {
        wording = prepareWording(language, files);
        wordings.set(language, wording);
      }
      return label(text, fillIn, wording);
    },
  };
}
