// Tells whether several figures of one message stand in clauses or lists of their own, so that they are a series.
import { hasUse, isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';

const ends = ',;/\n.|';

/** What makes a figure more than a labelled one. */
const tellsMore = [
  'correction',
  'change',
  'or',
  'attempt',
  'same',
  'hypothetical',
  'elsewhen',
  'entered',
] as const;

const mostWords = 7;

/** "12.7 key off and 14.3 at 4000 rpm": each figure with words of its own that no other has, whatever they are. */
export function labelled(
  pieces: readonly Piece[],
  kept: readonly Quantity[],
  all: readonly Quantity[],
  onlyKnown = false,
): boolean {
  if (kept.some(({ overload }) => overload)) return false;
  const clauses = clausesOf(pieces, kept);
  if (clauses === null) return false;
  const others = all.filter(({ foreign }) => foreign);
  const strict = onlyKnown || !kept.every(isPrecise);
  const seen = new Set<string>();
  return clauses.every(([front, behind], index) => {
    const clause = front.concat(behind);
    const nameless = (piece: Piece) => isRole(piece, 'plain', 'filler', 'joiner');
    // "Sin contacto 12,8": what is denied is the label, not the figure.
    const denied = front.findLastIndex(
      (piece) => isRole(piece, 'negation') && !isRole(piece, 'not-negation'),
    );
    if (denied >= 0 && !front.slice(denied + 1).some((piece) => !nameless(piece) && piece.kind === 'word'))
      return false;
    if (clause.some((piece) => isRole(piece, ...tellsMore) && !isRole(piece, 'label'))) return false;
    const words = clause.filter((piece) => piece.kind === 'word' && !nameless(piece) && piece.sign === null);
    const names = words.filter((piece) => isRole(piece, 'label') || (!strict && !hasUse(piece)));
    const { from, to } = kept[index]!;
    const [first, last] = [from - front.length, to + behind.length];
    const beside = others.filter((other) => other.from >= first && other.to <= last);
    const label = [
      ...clause
        .filter((piece) => names.includes(piece) || isRole(piece, 'negation'))
        .map(({ text, length, at }) => (length > 1 ? `${text}${at}` : text)),
      ...beside.map((other) => pieces[other.from]!.text),
    ].join(' ');
    if (names.length + beside.length === 0 || words.length > mostWords || seen.has(label)) return false;
    seen.add(label);
    return true;
  });
}

/** Whether each figure has a clause of its own, and none tells of another time than the others. */
export function standApart(
  pieces: readonly Piece[],
  quantities: readonly Quantity[],
  all: readonly Quantity[],
): boolean {
  if (quantities.length < 2) return false;
  const tellOf = (role: 'past' | 'now') =>
    quantities.map(({ from }, index) =>
      pieces.slice(quantities[index - 1]?.to ?? 0, from).some((piece) => isRole(piece, role)),
    );
  const [past, now] = [tellOf('past'), tellOf('now')];
  // "It was shut at 0.36 and wide open 4.28" tells of one time, "it was 0.36, now 0.41" of two.
  if (new Set(past).size > 1 && now.includes(true)) return false;
  // "Plug loose 0.35, now pushed home 0.41" is one reading; "closed 0.46, now open 4.28" are two.
  return labelled(pieces, quantities, all, new Set(now).size > 1);
}

/** A figure with a decimal part or a unit is no count of something. */
const isPrecise = ({ number, unit }: Quantity) => number !== null && (!number.whole || unit !== null);

/** The words in front of each figure and behind it; null where nobody knows whose they are. */
function clausesOf(
  pieces: readonly Piece[],
  kept: readonly Quantity[],
): [front: Piece[], behind: Piece[]][] | null {
  const closes = (piece: Piece) => isMark(piece, ends) || isRole(piece, 'joiner', 'but');
  const clauses = kept.map((): [Piece[], Piece[]] => [[], []]);
  const start = pieces.slice(0, kept[0]!.from);
  const end = pieces.slice(kept.at(-1)!.to);
  const labelsLead = start.some(
    (piece) => piece.kind === 'word' && !isRole(piece, 'plain', 'filler', 'shows'),
  );
  const labelsTrail = end[0] !== undefined && !closes(end[0]);
  clauses[0]![0] = start.slice(start.findLastIndex((piece) => isMark(piece, ends)) + 1);
  clauses.at(-1)![1] = end;
  for (let index = 1; index < kept.length; index++) {
    const gap = pieces.slice(kept[index - 1]!.to, kept[index]!.from);
    const first = gap.findIndex(closes);
    const last = gap.findLastIndex(closes);
    if (first >= 0) {
      clauses[index - 1]![1] = gap.slice(0, first);
      clauses[index]![0] = gap.slice(first);
      // What stands between two ends belongs to the figure behind, unless that has words of its own.
      if (last > first && last < gap.length - 1) clauses[index]![0] = gap.slice(last + 1);
    } else if (labelsLead) clauses[index]![0] = gap;
    else if (labelsTrail) clauses[index - 1]![1] = gap;
    else return null;
  }
  return clauses;
}

/** Between the numbers of a series stand marks, labels and joining words, nothing that tells a story. */
export function looseEnds(link: readonly Piece[]): boolean {
  return link.every((piece) => {
    if (piece.kind !== 'word') return piece.kind !== 'mark' || ',;/\n.:|-→()&+='.includes(piece.text);
    return isRole(piece, 'label', 'joiner', 'filler', 'article', 'counted', 'now', 'to', 'past', 'but');
  });
}

/** "0.47, then 1.2, and in the end 4.25": three and more of a kind, a few words between them that take nothing back. */
export function isSequence(kept: readonly Quantity[], links: readonly Piece[][]): boolean {
  if (kept.length < 3 || !kept.every((quantity) => isPrecise(quantity) && !quantity.overload)) return false;
  return links.every((link) => {
    const words = link.filter(({ kind }) => kind === 'word');
    return (
      words.length <= 4 &&
      !words.some((piece) => isRole(piece, ...tellsMore, 'negation') && !isRole(piece, 'label'))
    );
  });
}
