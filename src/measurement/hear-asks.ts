// Hears what a short message asks for by its structure: a verb of talking and a noun of a person, whatever stands around them.
import { slotsAt } from './hear-flags.ts';
import type { Token } from './hear-tokens.ts';
import type { Heard, SteeringWord } from './heard.ts';
import type { Lexicon, Meaning, Role } from './lexicon.ts';
import { longestMatch } from './phrase-trie.ts';

/** So many words may stand around the pattern that have no place in any. */
const mostStrange = 4;

/** "Posso parlare con una persona vera": all slots, in any order, and nothing denied or supposed. */
export function hearAsk(said: readonly Token[], lexicons: readonly Lexicon[]): Heard | null {
  if (said.some(({ kind }) => kind !== 'word')) return null;
  for (const lexicon of lexicons) {
    const word = askedFor(said, lexicon, lexicons);
    if (word !== null) return { kind: 'word', word };
  }
  return null;
}

function askedFor(
  said: readonly Token[],
  { asks }: Lexicon,
  lexicons: readonly Lexicon[],
): SteeringWord | null {
  const filled = new Map<number, Set<number>>();
  let whole: number | null = null;
  let strange = 0;
  for (let at = 0; at < said.length; ) {
    const slots = slotsAt(said, at, said.length, asks);
    for (const { pattern, slot } of slots.flatMap(([all]) => all)) {
      const hits = (filled.get(pattern) ?? new Set()).add(slot);
      filled.set(pattern, hits);
      if (hits.size === asks.patterns[pattern]!.slots) whole ??= pattern;
    }
    const taken = Math.max(0, ...slots.map(([, length]) => length));
    const known = meaningAt(said, at, lexicons);
    if (known !== null && hasRole(known.found, ...forbids)) return null;
    if (taken === 0 && (known === null || !hasRole(known.found, ...around))) strange++;
    // "D'un coup de main": a longer phrase may lie across one that is asked for.
    const across =
      taken === 0 &&
      [1, 2].some(
        (step) =>
          step < (known?.length ?? 1) &&
          at + step < said.length &&
          slotsAt(said, at + step, said.length, asks).length > 0,
      );
    at += taken > 0 ? taken : across ? 1 : (known?.length ?? 1);
  }
  return whole === null || strange > mostStrange ? null : (asks.patterns[whole]!.flag as SteeringWord);
}

const forbids: readonly Role[] = ['negation', 'hypothetical', 'past', 'elsewhen'];
const around: readonly Role[] = [
  'filler',
  'beside',
  'plain',
  'article',
  'joiner',
  'label',
  'wish',
  'now',
  'pronoun',
];

const hasRole = ({ roles }: Meaning, ...any: readonly Role[]) => any.some((role) => roles.has(role));

function meaningAt(said: readonly Token[], at: number, lexicons: readonly Lexicon[]) {
  let best = null;
  for (const { meanings } of lexicons) {
    const match = longestMatch(meanings, said, at);
    if (match !== null && (best === null || match.length > best.length)) best = match;
  }
  return best;
}

/** "I am the mechanic": somebody tells who they are, and calls nobody. */
export function isSelf(said: readonly Token[], at: number, lexicons: readonly Lexicon[]): boolean {
  for (let from = at - 1; from >= Math.max(0, at - 4); from--) {
    const known = meaningAt(said, from, lexicons);
    if (known?.found.roles.has('self') && from + known.length <= at) return true;
    if (known === null || !hasRole(known.found, 'article', 'plain', 'filler')) return false;
  }
  return false;
}
