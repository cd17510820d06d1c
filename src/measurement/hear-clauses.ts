// Tells whether several figures of one message stand in clauses or lists of their own, so that they are a series.
import { isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';

const ends = ',;/\n.|';

/** "12.7 key off and 14.3 at 4000 rpm": each in a clause of its own, with a label that no other has. */
export function labelled(
  pieces: readonly Piece[],
  kept: readonly Quantity[],
  all: readonly Quantity[],
): boolean {
  const others = all.filter((quantity) => quantity.foreign);
  if (kept.some(({ overload }) => overload)) return false;
  const seen = new Set<string>();
  return kept.every(({ from, to }, index) => {
    const floor = kept[index - 1]?.to ?? 0;
    const ceiling = kept[index + 1]?.from ?? pieces.length;
    const closes = (at: number) => isMark(pieces[at], ends) || isRole(pieces[at], 'joiner', 'but');
    let first = from;
    while (first > floor && !closes(first - 1)) first--;
    let last = to;
    while (last < ceiling && !closes(last)) last++;
    // Two in one clause: nobody knows which label is whose.
    if ((first === floor && floor > 0) || (last === ceiling && ceiling < pieces.length)) return false;
    const clause = pieces.slice(first, from).concat(pieces.slice(to, last));
    if (clause.some((piece) => isRole(piece, ...tellsMore))) return false;
    const name = clause.filter(
      (piece) => isRole(piece, 'label') && !isRole(piece, 'plain', 'filler', 'joiner'),
    );
    const beside = others.filter((other) => other.from >= first && other.to <= last);
    const label = [
      ...name.map(({ text, length, at }) => (length > 1 ? `${text}${at}` : text)),
      ...beside.map((other) => pieces[other.from]!.text),
    ].join(' ');
    if (label === '' || seen.has(label)) return false;
    seen.add(label);
    return true;
  });
}

/** What makes a figure more than a labelled one. */
const tellsMore = [
  'correction',
  'change',
  'or',
  'attempt',
  'same',
  'negation',
  'hypothetical',
  'elsewhen',
] as const;

/** Between the numbers of a series stand marks, labels and joining words, nothing that tells a story. */
export function looseEnds(link: readonly Piece[]): boolean {
  return link.every((piece) => {
    if (piece.kind === 'mark') return ',;/\n.:|-→()&+='.includes(piece.text);
    return (
      isRole(piece, 'label', 'joiner', 'filler', 'article', 'counted', 'now', 'to', 'past', 'but') ||
      piece.kind === 'numeral'
    );
  });
}
