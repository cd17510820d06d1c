// Tells the reading from the other numbers of a message: pins, ranges of the meter, targets, what was before, what was taken back.
import { toNumber } from './hear-numerals.ts';
import { hasUse, isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';

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

/** "pin 2", "the 20 range", "2nd try": a number that is part of a name. */
function isNamed(pieces: readonly Piece[], quantity: Quantity, numbers: readonly Quantity[]): boolean {
  if (isDial(pieces, quantity)) return true;
  const { number, from, to } = quantity;
  if (!number?.whole) return false;
  const before = pieces[from - 1];
  // "The middle one: 0.35".
  const one =
    number.spoken && to === from + 1 && pieces[from]!.meaning.number === 1 && quantity.unit === null;
  if (one && numbers.length > 1 && namesOne(before)) return true;
  if (isMark(before, '#')) return true;
  if (isRole(pieces[to], 'counted') && quantity.unit === null && !isMark(pieces[to], '.')) {
    return pieces[to]!.kind === 'word' && numbers.length > 1 && !isMark(pieces[to - 1], ',.;');
  }
  if (quantity.unit !== null && !quantity.foreign) return false;
  let at = from - 1;
  while (at >= 0 && (isMark(pieces[at], '.°-:') || isRole(pieces[at], 'article')) && at > from - 3) at--;
  if (isRole(pieces[at], 'counted')) return !isMark(pieces[from - 1], ':');
  // "pins 1 and 2": the second goes with the first.
  const previous = numbers.findLast((other) => other.to < from && other.to >= from - 2);
  const link = previous ? pieces.slice(previous.to, from) : [];
  const together =
    link.length === 1 && (isRole(link[0], 'joiner', 'to', 'label') || isMark(link[0], '-/&,+'));
  return previous !== undefined && together && quantity.unit === null && isNamed(pieces, previous, numbers);
}

const namesOne = (piece: Piece | undefined) =>
  piece?.kind === 'word' && (!hasUse(piece) || isRole(piece, 'label'));

/** The meter's own range: "on the 20 range", "range 20 V", "2 V scale". */
function isDial(pieces: readonly Piece[], quantity: Quantity): boolean {
  const { from, to, number } = quantity;
  const digits = number?.numeral?.decimal?.digits ?? number?.decimal?.digits ?? '';
  const round =
    number?.whole === true &&
    /^(?:2|4|5|6|10|20|40|50|60|100|200|400|500|600|1000|2000|4000|6000)$/u.test(digits);
  if (!round) return false;
  for (let at = to; at < to + 3; at++) {
    if (isRole(pieces[at], 'dial')) return true;
    if (!isRole(pieces[at], 'article') && !isMark(pieces[at], '-') && !pieces[at]?.sign) break;
  }
  for (let at = from - 1; at >= Math.max(0, from - 4); at--) {
    if (isRole(pieces[at], 'dial')) return true;
    if (!isRole(pieces[at], 'plain', 'article', 'filler', 'to', 'label') && !isMark(pieces[at], ':=')) break;
  }
  return false;
}

/** "1) 0.46 2) 1.3": numbers that only count the lines. */
function withoutListNumbers(pieces: readonly Piece[], quantities: readonly Quantity[]): readonly Quantity[] {
  let count = 0;
  const listed = quantities.filter((quantity, index) => {
    const mark = pieces[quantity.to];
    const digits = quantity.number?.numeral?.decimal?.digits;
    const next = quantities[index + 1];
    if (!isMark(mark, ').:') || digits !== String(count + 1) || next?.from !== quantity.to + 1) return false;
    count++;
    return true;
  });
  return count >= 2 ? quantities.filter((quantity) => !listed.includes(quantity)) : quantities;
}

/** "not 0.45": denied just in front of it. */
function isDenied(pieces: readonly Piece[], { from }: Quantity, second: boolean, several: boolean): boolean {
  for (let at = from - 1; at >= Math.max(0, from - 3); at--) {
    const piece = pieces[at];
    // "0.54 no 0.45" takes back what was before it; "no es 0,45" denies what follows.
    if (isRole(piece, 'correction') && at === from - 1 && (second || !several)) return false;
    if (isRole(piece, 'negation') && !isRole(piece, 'not-negation', 'no-reading')) {
      return !isMark(pieces[at + 1], ',.');
    }
    if (!isRole(piece, 'article', 'plain', 'filler', 'label', 'hedge')) return false;
  }
  return false;
}

/** "Not jumping", "no longer moving", "springt nicht mehr". */
export function isWordDenied(pieces: readonly Piece[], at: number): boolean {
  const denies = (piece: Piece | undefined) => isRole(piece, 'negation') && !isRole(piece, 'not-negation');
  let before = at - 1;
  while (isRole(pieces[before], 'plain', 'filler', 'article') && !denies(pieces[before])) before--;
  return denies(pieces[before]) || denies(pieces[at + 1]);
}

/** "I put 0.64 but it was 0.46": what was typed before is taken back by what the meter showed. */
function correctedByPast(
  pieces: readonly Piece[],
  quantities: readonly Quantity[],
): readonly Quantity[] | null {
  const [one, two] = quantities;
  if (quantities.length !== 2 || !one || !two) return null;
  // "Hab 0,64 geschrieben, war aber 0,46": the verb may stand behind.
  const behind = isRole(pieces[one.to], 'entered') ? 1 : 0;
  const entered = behind === 1 || pieces.slice(0, one.from).some((piece) => isRole(piece, 'entered'));
  const link = pieces.slice(one.to + behind, two.from);
  const takesBack = link.some((piece) => isRole(piece, 'past', 'but', 'correction'));
  return entered && takesBack && !link.some((piece) => isRole(piece, 'entered', 'now', 'or', 'elsewhen'))
    ? [two]
    : null;
}

/** "0.64 but it was 0.46", "it was 0.46 and I typed 0.64", "0.36 or 0.63": either could be meant. */
function isUndecided(pieces: readonly Piece[], quantities: readonly Quantity[]): boolean {
  return quantities.slice(1).some((quantity, index) => {
    const link = pieces.slice(quantities[index]!.to, quantity.from);
    const has = (...any: Parameters<typeof isRole>[1][]) => link.some((piece) => isRole(piece, ...any));
    const rest = pieces.slice(quantity.to);
    const earlier =
      rest.some((piece) => isRole(piece, 'elsewhen', 'past')) || has('elsewhen', 'now', 'correction');
    const typed = pieces.slice(0, quantities[index]!.from).some((piece) => isRole(piece, 'entered'));
    return (has('but') && has('past') && !earlier) || has('or', 'entered') || (typed && has('elsewhen'));
  });
}

/** A label that says more than "at" or "is". */
const isState = (piece: Piece | undefined) =>
  isRole(piece, 'label') && !isRole(piece, 'plain', 'filler', 'joiner');

/** The round voltages that things are named after. */
const nominal = /^(?:5|6|12|24|48)$/u;

/** "The 12 V battery", "the 5 volt feed", "a 450 reads 0.35": what a thing is called. */
function isRating(pieces: readonly Piece[], quantity: Quantity, numbers: readonly Quantity[]): boolean {
  const { number, unit, from, to } = quantity;
  if (!number?.whole || number.juxtaposed) return false;
  const digits = number.numeral?.decimal?.digits ?? number.decimal?.digits ?? '';
  const others = numbers.filter((other) => other !== quantity && !other.foreign);
  const decimals = others.some((other) => other.number?.whole === false);
  if (unit === 'V' && nominal.test(digits)) {
    const behind = isMark(pieces[to], '-') ? pieces[to + 1] : pieces[to];
    // "5 V supply, 0.35 V signal": a label like the other's.
    const labels = others.some((other) => isState(pieces[other.to]) || isState(pieces[other.from - 1]));
    if (isRole(behind, 'rated') && !(isRole(behind, 'label') && labels)) return true;
    const front = isRole(pieces[from - 1], 'plain', 'article', 'between', 'to')
      ? pieces[from - 2]
      : pieces[from - 1];
    return decimals && isRole(front, 'rated');
  }
  const before = pieces[from - 1];
  const name = before?.kind === 'word' && !hasUse(before) && !before.sign && !before.meaning.unit;
  return (
    unit === null &&
    !number.spoken &&
    /^\d{3,4}$/u.test(digits) &&
    decimals &&
    name === true &&
    others.every((other) => isVolts(other))
  );
}

/** A decimal of less than a hundred: a bare figure of three digits beside it is none of its kind. */
const isVolts = ({ number, unit }: Quantity) =>
  number?.numeral?.decimal != null &&
  !number.whole &&
  (unit === null || unit === 'V') &&
  toNumber(number.numeral.decimal) < 100;

/** "first 0.35, now 0.41": what is said to be now goes before what is not. */
function presentOnly(pieces: readonly Piece[], quantities: readonly Quantity[]): readonly Quantity[] {
  const now = quantities.findIndex((quantity, index) => {
    const floor = quantities[index - 1]?.to ?? 0;
    return index > 0 && pieces.slice(floor, quantity.from).some((piece) => isRole(piece, 'now'));
  });
  return now === quantities.length - 1 && now > 0 ? quantities.slice(now) : quantities;
}

/** A target, a change or what was before: said in front of the number, in the same clause; or just behind it. */
function isElsewhere(
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
    if (!place && (isRole(piece, 'elsewhen') || (several && isRole(piece, 'past')))) return true;
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

/** "0.54, sorry, 0.45": what comes behind the last word that takes something back. */
function lastWord(
  pieces: readonly Piece[],
  quantities: readonly Quantity[],
): { kept: readonly Quantity[]; corrected: boolean } {
  for (let at = pieces.length - 1; at >= 0; at--) {
    if (!isRole(pieces[at], 'correction')) continue;
    const after = quantities.filter(({ from }) => from > at);
    const before = quantities.filter(({ to }) => to <= at);
    if (after.length > 0 && before.length > 0) return { kept: after, corrected: true };
  }
  return { kept: quantities, corrected: false };
}

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
