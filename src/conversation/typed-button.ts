// Finds the button whose words an owner typed instead of pressing it; for every message with choices.

import { hear } from '../measurement/hear.ts';
import { foldPhrase } from '../measurement/hear-fold.ts';
import type { Heard } from '../measurement/heard.ts';
import type { Turn } from './turn.ts';

/** Longer than this is no button's words. */
const longest = 120;

/** The choice that is meant; null where the latest message offers none that is called so, or two. */
export function typedButton({ state, scene }: Turn, text: string, heard: Heard): string | null {
  if (!state.latest || text.length > longest) return null;
  const { choices, labels = [] } = state.latest;
  const only = (called: string[]) => (called.length === 1 ? (called[0] ?? null) : null);
  const said = foldPhrase(text);
  if (said === '') return null;
  const called = choices.filter((id, place) =>
    [id, labels[place] ?? ''].some((name) => foldPhrase(name) === said),
  );
  if (called.length > 0) return only(called);
  // "nope" presses "No", in whatever language both are said.
  if (heard.kind !== 'word' || (heard.word !== 'yes' && heard.word !== 'no')) return null;
  const lexicons = scene.lexicons(state.language);
  const meansIt = (label: string) => {
    const own = hear(label, null, lexicons);
    return own.kind === 'word' && own.word === heard.word;
  };
  return only(choices.filter((_, place) => meansIt(labels[place] ?? '')));
}
