// Understands a message about the meter that has no reading in it: an overload, no reading, a figure of something else.

import type { Sorted } from './hear-others.ts';
import { isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';
import type { Heard, UnclearWhy } from './heard.ts';

const unclear = (why: UnclearWhy): Heard => ({ kind: 'unclear', why });

/** "1 ." and "just a 1, on the left": a meter's way to say that there is too much. */
export function hearLoneOne(pieces: readonly Piece[]): Heard | null {
  const typed = pieces.filter(({ text, kind }) => kind === 'numeral' && text === '1');
  const ones = typed.length > 0 ? typed : pieces.filter(({ meaning }) => meaning.number === 1);
  if (ones.length !== 1 || pieces.some(({ kind, text }) => kind === 'numeral' && text !== '1')) return null;
  const dotted = pieces.length === 2 && isMark(pieces[1], '.') && !pieces[1]!.glued;
  return dotted || pieces.some((piece) => isRole(piece, 'left-side')) ? { kind: 'overload' } : null;
}

export function hearNone(pieces: readonly Piece[], sorted: Sorted, found: readonly Quantity[]): Heard {
  const has = (role: Parameters<typeof isRole>[1]) => pieces.some((piece) => isRole(piece, role));
  const alone = (role: Parameters<typeof isRole>[1]) =>
    has(role) &&
    pieces.every(
      (piece) =>
        piece.kind === 'mark' || isRole(piece, role, 'filler', 'plain', 'article', 'label', 'screen'),
    );
  if (has('same')) return unclear('refers-back');
  if (sorted.kept.length === 0 && (found.some(({ overload }) => overload) || alone('overload-alone'))) {
    return { kind: 'overload' };
  }
  if (isDashes(pieces)) return { kind: 'no-reading' };
  if (isNoReading(pieces)) return { kind: 'no-reading' };
  const dark = (has('screen') || has('shows')) && has('no-reading-alone');
  if (has('no-reading') || dark || alone('no-reading-alone')) return { kind: 'no-reading' };
  if (sorted.wrongQuantity) return unclear('wrong-quantity');
  if (sorted.referred) return unclear('refers-back');
  return unclear('nothing-understood');
}

/** "Not getting any reading at all": a denial, and a word for figures soon behind it. */
const isNoReading = (pieces: readonly Piece[]) =>
  pieces.some((piece, at) => {
    if (!isRole(piece, 'negation', 'refusal')) return false;
    for (let ahead = at + 1; ahead <= at + 6; ahead++) {
      if (isRole(pieces[ahead], 'figure-word')) return true;
      if (!isRole(pieces[ahead], 'shows', 'plain', 'article', 'filler', 'beside', 'screen')) return false;
    }
    return false;
  });

/** "---": what some meters show where there is nothing to show. */
const isDashes = (pieces: readonly Piece[]) =>
  pieces.some((_, at) => [0, 1, 2].every((step) => isMark(pieces[at + step], '-')));
