// Finds the button whose words an owner typed instead of pressing it; for every message with choices.
import { foldPhrase } from '../measurement/hear-fold.ts';
import type { Turn } from './turn.ts';

/** Longer than this is no button's words. */
const longest = 120;

/** The choice that is meant; null where the latest message offers none that is called so, or two. */
export function typedButton({ state }: Turn, text: string): string | null {
  if (!state.latest || text.length > longest) return null;
  const { choices, labels = [] } = state.latest;
  const said = foldPhrase(text);
  if (said === '') return null;
  const called = choices.filter((id, place) => labels[place] === said || foldPhrase(id) === said);
  return called.length === 1 ? (called[0] ?? null) : null;
}
