// Finds the longest known phrase at a place among words, for everything that a lexicon lists.

export interface PhraseTrie<T> {
  next: Map<string, PhraseTrie<T>>;
  found: T | null;
}

export interface Match<T> {
  found: T;
  length: number;
}

export function emptyTrie<T>(): PhraseTrie<T> {
  return { next: new Map(), found: null };
}

/** Adds a phrase; `merge` says what a phrase means that is listed twice. */
export function addPhrase<T>(
  trie: PhraseTrie<T>,
  words: readonly string[],
  found: T,
  merge?: (a: T, b: T) => T,
): void {
  let node = trie;
  for (const word of words) {
    let next = node.next.get(word);
    if (!next) {
      next = emptyTrie();
      node.next.set(word, next);
    }
    node = next;
  }
  node.found = node.found !== null && merge ? merge(node.found, found) : found;
}

export function longestMatch<T>(
  trie: PhraseTrie<T>,
  tokens: readonly { text: string }[],
  at: number,
): Match<T> | null {
  let node = trie;
  let best: Match<T> | null = null;
  for (let i = at; i < tokens.length; i++) {
    const next = node.next.get(tokens[i]!.text);
    if (!next) break;
    node = next;
    if (node.found !== null) best = { found: node.found, length: i - at + 1 };
  }
  return best;
}
