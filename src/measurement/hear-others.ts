// Tells the reading from the other numbers of a message: pins, ranges of the meter, targets, what was before, what was taken back.
import { isElsewhere, presentOnly } from './hear-elsewhere.ts';
import { isNamed, isRating, withoutListNumbers } from './hear-named.ts';
import { isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';
import { correctedByPast, isDenied, isUndecided, lastWord } from './hear-taken-back.ts';

export interface Sorted {
  kept: readonly Quantity[];
  /** All, in order, to take over a unit from. */
  all: readonly Quantity[];
  /** One took the place of another in the same breath. */
  corrected: boolean;
  /** Words that take something back stand at the very end: nobody knows what is right. */
  trailingCorrection: boolean;
  /** Two figures of the unit, and no word that says which of them stands. */
  undecided: boolean;
  wrongQuantity: boolean;
  /** There was a number, but it is a target, a change, or was before. */
  referred: boolean;
}

export function sortQuantities(
  pieces: readonly Piece[],
  numbers: readonly Quantity[],
  all: readonly Quantity[],
): Sorted {
  const named = numbers.filter(
    (quantity) => !isNamed(pieces, quantity, numbers) && !isRating(pieces, quantity, numbers),
  );
  const measured = withoutListNumbers(pieces, named).filter(({ foreign }) => !foreign);
  const wrongQuantity = named.some(({ foreign }) => foreign);
  const denied = measured.filter(
    (quantity, index) => !isDenied(pieces, quantity, index > 0, measured.length > 1),
  );
  const retyped = correctedByPast(pieces, denied);
  const settled =
    retyped ??
    presentOnly(
      pieces,
      denied.filter((quantity, index) => !isElsewhere(pieces, quantity, denied, index)),
    );
  const overloads = all.filter(({ overload }) => overload);
  const present = [...settled, ...(settled.length > 0 ? overloads : [])].sort((a, b) => a.from - b.from);
  const { kept, corrected } = lastWord(pieces, present);
  const lastPiece = pieces.findLast(({ kind }) => kind !== 'mark');
  return {
    kept,
    all,
    corrected: corrected || retyped !== null || (denied.length < measured.length && kept.length > 0),
    undecided: retyped === null && kept.length === 1 && isUndecided(pieces, denied),
    trailingCorrection:
      kept.length > 0 && isRole(lastPiece, 'correction') && !isRole(lastPiece, 'label', 'filler'),
    wrongQuantity,
    referred: measured.length > 0,
  };
}
