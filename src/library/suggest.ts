// Guesses what a misspelt id was meant to be, for the mend of a problem.

/** How many letters have to be put in, taken out, changed, or swapped with their neighbour (optimal string alignment). */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const next = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const same = a[row - 1] === b[column - 1];
      let cost = Math.min(next[column - 1]! + 1, last[column]! + 1, last[column - 1]! + (same ? 0 : 1));
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) cost = Math.min(cost, beforeLast[column - 2]! + 1);
      next.push(cost);
    }
    beforeLast = last;
    last = next;
  }
  return last[b.length]!;
}

/** The known word nearest to what was written, or null where none is near enough to be meant. */
export function nearest(written: string, known: Iterable<string>): string | null {
  const limit = written.length > 5 ? 2 : 1;
  let best: { word: string; distance: number } | null = null;
  for (const word of known) {
    if (Math.abs(word.length - written.length) > limit) continue;
    const distance = editDistance(written, word);
    if (distance <= limit && (best === null || distance < best.distance)) best = { word, distance };
  }
  return best?.word ?? null;
}

/** A mend for an id that nobody knows: the one that was probably meant, else all that there are. */
export function suggest(written: string, known: Iterable<string>, what: string): string {
  const words = [...known];
  const near = nearest(written, words);
  if (near !== null) return `Did you mean "${near}"?`;
  if (words.length === 0) return `There is no ${what} yet: add one, or take this out.`;
  return `Use one of: ${words.join(', ')}.`;
}
