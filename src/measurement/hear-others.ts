// Tells the reading from the other numbers of a message: pins, ranges of the meter, targets, what was before, what was taken back.
import { standApart } from './hear-clauses.ts';
import { isElsewhere, presentOnly } from './hear-elsewhere.ts';
import { isCount, isNamed, isRating, withoutListNumbers } from './hear-named.ts';
import { isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';
import { correctedByPast, endsTakenBack, isDenied, isUndecided, lastWord } from './hear-taken-back.ts';

export interface Sorted {
  kept: readonly Quantity[];
  /** All, in order, to take over a unit from. */
  all: readonly Quantity[];
  /** One took the place of another in the same breath. */
  corrected: boolean;
  /** Words that take something back stand at the very end: nobody knows what is right. */
  trailingCorrection: boolean;
  /** A figure with a decimal part was left out, and nothing beside it says why. */
  unclaimed: boolean;
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
  const nameless = numbers.filter(
    (quantity) => !isNamed(pieces, quantity, numbers) && !isRating(pieces, quantity, numbers),
  );
  const named = nameless.filter((quantity) => !isCount(pieces, quantity, nameless));
  const measured = withoutListNumbers(pieces, named).filter(({ foreign }) => !foreign);
  const wrongQuantity = named.some(({ foreign }) => foreign);
  const apart = standApart(pieces, measured, all);
  const denied = apart
    ? measured
    : measured.filter((quantity, index) => !isDenied(pieces, quantity, index > 0, measured.length > 1));
  const retyped = apart ? null : correctedByPast(pieces, denied);
  const here =
    (apart ? measured : retyped) ??
    denied.filter((quantity, index) => !isElsewhere(pieces, quantity, denied, index));
  // "It was 0.35, got 0.41": likely a change, but nothing says now.
  const guessed = !apart && here.length < denied.length && here.length > 0 && saysPastOnly(pieces, denied);
  const settled = apart || retyped !== null ? here : presentOnly(pieces, here);
  const overloads = all.filter(({ overload }) => overload);
  const present = [...settled, ...(settled.length > 0 ? overloads : [])].sort((a, b) => a.from - b.from);
  const { kept, corrected } = lastWord(pieces, present);
  return {
    kept,
    all,
    corrected:
      corrected ||
      retyped !== null ||
      guessed ||
      settled.length < here.length ||
      named.length < nameless.length ||
      (denied.length < measured.length && kept.length > 0),
    unclaimed: numbers.some(({ stray, number }) => stray && number?.whole === false),
    undecided: retyped === null && kept.length === 1 && isUndecided(pieces, denied),
    trailingCorrection: kept.length > 0 && endsTakenBack(pieces, kept),
    wrongQuantity,
    referred: measured.length > 0,
  };
}

function saysPastOnly(pieces: readonly Piece[], [first]: readonly Quantity[]): boolean {
  return (
    pieces.slice(0, first!.from).some((piece) => isRole(piece, 'past')) &&
    !pieces.some((piece) => isRole(piece, 'now', 'elsewhen', 'wish'))
  );
}
