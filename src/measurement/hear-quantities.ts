// Finds the quantities in a message: each number with its sign, its unit and the words beside it that change what it is.
import { readNumber } from './hear-numbers.ts';
import { hasUse, isMark, isRole, type Piece } from './hear-pieces.ts';
import { blank, withTail, withUnit } from './hear-units.ts';
import type { Habits, SpokenNumber } from './spoken-number.ts';
import type { TypedUnit } from './unit-factors.ts';

export interface Quantity {
  number: SpokenNumber | null;
  /** The meter's overload, among numbers. */
  overload: boolean;
  unit: TypedUnit | null;
  /** Where the name is short for two units. */
  otherUnit: TypedUnit | null;
  /** Of a kind that no stage asks for, or part of a name. */
  foreign: boolean;
  /** A word that says nothing is stuck to it. */
  stray: boolean;
  negative: boolean;
  /** A dash that could be a minus or a bullet. */
  doubtfulSign: boolean;
  hedged: boolean;
  bound: boolean;
  echo: boolean;
  from: number;
  to: number;
}

/** Nobody sends more readings in one message; what compares numbers with each other stays quick. */
export const mostQuantities = 64;

export function findQuantities(pieces: readonly Piece[], habits: Habits, inches: boolean): Quantity[] {
  const found: Quantity[] = [];
  let at = 0;
  while (at < pieces.length && found.length <= mostQuantities) {
    const piece = pieces[at]!;
    if (isRole(piece, 'overload')) {
      found.push({ ...blank, overload: true, from: at, to: at + 1 });
      at++;
      continue;
    }
    const number = isArticleOnly(pieces, at) || isDenial(pieces, at) ? null : readNumber(pieces, at, habits);
    if (number === null) {
      at++;
      continue;
    }
    const quantity = withTail(pieces, withUnit(pieces, number, inches, found.at(-1)));
    quantity.echo ||= pieces.slice(number.from, number.to).some(({ repaired }) => repaired);
    withSign(pieces, quantity, found.at(-1));
    withWords(pieces, quantity, found.at(-1)?.to ?? 0);
    found.push(quantity);
    at = Math.max(quantity.to, at + 1);
  }
  return found;
}

/** "Zero smell of petrol": a nought that denies what stands behind it. */
function isDenial(pieces: readonly Piece[], at: number): boolean {
  const [piece, next] = [pieces[at]!, pieces[at + 1]];
  return (
    isRole(piece, 'negation') &&
    piece.meaning.number === 0 &&
    next?.kind === 'word' &&
    !hasUse(next) &&
    !next.sign &&
    next.meaning.unit === null
  );
}

/** "un", "ein", "one" are numbers only where something of a number follows. */
function isArticleOnly(pieces: readonly Piece[], at: number): boolean {
  const piece = pieces[at]!;
  if (!isRole(piece, 'article')) return false;
  const next = pieces[at + 1];
  if (next === undefined) return false;
  const { multiplier, number, unit, fraction } = next.meaning;
  const goesOn = multiplier !== null || number !== null || unit !== null || fraction !== null;
  return !(goesOn || next.sign !== null || isRole(next, 'point', 'and-half', 'units-first'));
}

function withSign(pieces: readonly Piece[], quantity: Quantity, previous: Quantity | undefined): void {
  const at = quantity.from - 1;
  const piece = pieces[at];
  if (isRole(piece, 'minus') && piece!.kind === 'word') {
    quantity.negative = true;
    quantity.from = at;
    return;
  }
  if (
    !isMark(piece, '-') ||
    isMark(pieces[at - 1], '+') ||
    (isMark(pieces[at - 1], '/') && isMark(pieces[at - 2], '+'))
  )
    return;
  const starts = at === 0 || isMark(pieces[at - 1], '\n');
  const touches = pieces[at + 1]!.glued;
  const behindNumber = previous !== undefined && previous.to === at;
  // "3-4" and "3 - 4" are two numbers; "0.5 -0.5" is a number and a negative one.
  if (behindNumber && (piece!.glued || !touches)) return;
  if (!touches && !starts && pieces[at - 1]?.kind === 'word' && piece!.glued) return;
  quantity.from = at;
  if (
    touches &&
    (!piece!.glued || starts || isMark(pieces[at - 1], '=:(~,/±') || pieces[at - 1]!.sign !== null)
  ) {
    quantity.negative = true;
  } else if (touches) quantity.from = at + 1;
  else quantity.doubtfulSign = true;
}

/** "I think in" ends no figure in inches. */
const lateUnit = (piece: Piece | undefined) =>
  piece?.meaning.unit ?? (piece && !hasUse(piece) ? piece.sign?.found.unit : null);

/** The point of "ca.", the comma of "not sure, 0.35". */
const isShortened = (pieces: readonly Piece[], at: number) =>
  isMark(pieces[at], '.,') && pieces[at]!.glued && isRole(pieces[at - 1], 'hedge');

function withWords(pieces: readonly Piece[], quantity: Quantity, floor: number): void {
  let at = quantity.from - 1;
  for (let steps = 0; steps < 3 && at >= floor; steps++, at--) {
    const piece = pieces[at];
    if (isRole(piece, 'plus-minus') && at === floor && floor > 0) break;
    if (isRole(piece, 'hedge') || (isMark(piece, '~') && (at > floor || floor === 0))) {
      quantity.hedged = true;
      quantity.from = at;
    } else if (isRole(piece, 'bound') || isMark(piece, '<>')) {
      quantity.bound = true;
      quantity.from = at;
    } else if (!isRole(piece, 'article', 'plain', 'filler') && !isShortened(pieces, at)) break;
  }
  // "0.4 or less", "0.4+".
  const beyond = pieces[quantity.to];
  const more = isMark(beyond, '+') && beyond!.glued && pieces[quantity.to + 1] === undefined;
  if (more || (isRole(beyond, 'bound-behind') && pieces[quantity.to + 1]?.kind !== 'numeral')) {
    quantity.bound = true;
    quantity.to++;
  }
  for (let steps = 0; steps < 2; steps++) {
    const after = pieces[quantity.to];
    const hyphen = isMark(after, '-(') && isRole(pieces[quantity.to + 1], 'hedge') ? 1 : 0;
    if (!isRole(pieces[quantity.to + hyphen], 'hedge') && !(isMark(after, '?') && steps === 0)) break;
    const beyond = pieces[quantity.to + hyphen + 1];
    if (beyond?.kind === 'numeral' && !isMark(after, '?')) break;
    quantity.hedged = true;
    quantity.to += hyphen + 1;
    // "five or so volts".
    const late = quantity.unit === null ? lateUnit(pieces[quantity.to]) : null;
    if (late) {
      quantity.unit = late;
      quantity.to++;
    }
  }
}
