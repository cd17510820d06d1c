// Tells which figures of a message are no reading of now: a target, a change, what was before.
import { isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';

/** A label that says more than "at" or "is". */
export const isState = (piece: Piece | undefined) =>
  isRole(piece, 'label') && !isRole(piece, 'plain', 'filler', 'joiner');

/** "first 0.35, now 0.41": what is said to be now goes before what is not. */
export function presentOnly(pieces: readonly Piece[], quantities: readonly Quantity[]): readonly Quantity[] {
  const now = quantities.findIndex((quantity, index) => {
    const floor = quantities[index - 1]?.to ?? 0;
    return index > 0 && pieces.slice(floor, quantity.from).some((piece) => isRole(piece, 'now'));
  });
  return now === quantities.length - 1 && now > 0 ? quantities.slice(now) : quantities;
}

/** A target, a change or what was before: said in front of the number, in the same clause; or just behind it. */
export function isElsewhere(
  pieces: readonly Piece[],
  quantity: Quantity,
  all: readonly Quantity[],
  index: number,
): boolean {
  const floor = all[index - 1]?.to ?? 0;
  const several = all.length > 1;
  const before = pieces[quantity.from - 1];
  const after = pieces[quantity.to];
  // "From 0.36 down to 0.35": which of them stands now is for the person to say.
  const goesTo = pieces.slice(quantity.to, quantity.to + 3).some((piece) => isRole(piece, 'to'));
  if (several && goesTo && isRole(after, 'change', 'to')) return false;
  if (isRole(before, 'change') && !isRole(before, 'to')) return true;
  if (isRole(after, 'change') && !isRole(after, 'hedge', 'to') && !hasNext(pieces, quantity)) return true;
  for (let at = quantity.from - 1; at >= floor; at--) {
    const piece = pieces[at];
    if (isMark(piece, '.,;\n()!') || isRole(piece, 'but', 'now')) break;
    // "Avant 32, arrière 40": in front, not before.
    const place = isRole(piece, 'label') && several && isBesideLabel(pieces, all, index);
    if (!place && (isRole(piece, 'elsewhen', 'wish') || (several && isRole(piece, 'past')))) return true;
  }
  const link = pieces.slice(floor, quantity.from);
  const ranged = link.length === 1 && (isRole(link[0], 'to', 'joiner', 'or') || isMark(link[0], '-~/'));
  if (index > 0 && ranged && isElsewhere(pieces, all[index - 1]!, all, index - 1)) return true;
  if (hasNext(pieces, quantity)) return false;
  // "12.6 before starting, 14.3 after."
  if (isRole(after, 'label') && several && isBesideLabel(pieces, all, index)) return false;
  return isRole(after, 'elsewhen') || (several && isRole(after, 'past'));
}

/** Every other number has a label of its own. */
function isBesideLabel(pieces: readonly Piece[], all: readonly Quantity[], index: number): boolean {
  return all.every(
    (other, at) =>
      at === index || isRole(pieces[other.from - 1], 'label') || isRole(pieces[other.to], 'label'),
  );
}

/** What stands behind this number belongs to the next one. */
function hasNext(pieces: readonly Piece[], { to }: Quantity): boolean {
  const next = pieces[to + 1];
  return next?.kind === 'numeral' || next?.meaning.number != null || isRole(next, 'point');
}
