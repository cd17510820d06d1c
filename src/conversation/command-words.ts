// The few words that are commands of our own, in each language and in English: an owner's, as a whole message, and those of the desk.
import { foldPhrase } from '../measurement/hear-fold.ts';
import type { Lexicon } from '../measurement/lexicon.ts';
import type { Scene } from './turn.ts';

/** Whoever wants to be forgotten is understood, whatever became of the lexicons. */
const always = ['erase me', 'erase'];

const longest = 60;

export function asksToErase(text: string, lexicons: readonly Lexicon[]): boolean {
  if (text.length > longest) return false;
  const said = foldPhrase(text.trim().replace(/^[./]/u, ''));
  return always.includes(said) || lexicons.some(({ commands }) => commands.get(said) === 'erase');
}

/** What staff may say, in the desk's language and in English. */
export function commandsOf({ lexicons, current }: Pick<Scene, 'lexicons' | 'current'>) {
  const known = lexicons(current.workshop.language).map(({ commands }) => commands);
  return (words: string): string | undefined => {
    const said = foldPhrase(words.slice(0, longest));
    return known.map((commands) => commands.get(said)).find((command) => command !== undefined);
  };
}
