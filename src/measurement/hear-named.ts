// Knows the figures that only name something: pin 2, the 20 range, a 12 V battery, the numbers of a list.
import { isState } from './hear-elsewhere.ts';
import { toNumber } from './hear-numerals.ts';
import { hasUse, isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';

/** "pin 2", "the 20 range", "2nd try": a number that is part of a name. */
export function isNamed(pieces: readonly Piece[], quantity: Quantity, numbers: readonly Quantity[]): boolean {
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
  if (isRole(pieces[at], 'counted'))
    return !isMark(pieces[from - 1], ':') && !isRange(pieces, quantity, numbers);
  // "pins 1 and 2": the second goes with the first.
  const previous = numbers.findLast((other) => other.to < from && other.to >= from - 2);
  const link = previous ? pieces.slice(previous.to, from) : [];
  const together =
    link.length === 1 && (isRole(link[0], 'joiner', 'to', 'label') || isMark(link[0], '-/&,+'));
  return previous !== undefined && together && quantity.unit === null && isNamed(pieces, previous, numbers);
}

/** "Depending on the spot 35 to 45 mm": the lower end of what carries the unit. */
function isRange(pieces: readonly Piece[], { from, to }: Quantity, numbers: readonly Quantity[]): boolean {
  const upper = numbers.find((other) => other.from === to + 1);
  const long = (pieces[from]?.text.length ?? 0) > 1;
  return (
    long && upper?.unit != null && !upper.foreign && (isRole(pieces[to], 'to') || isMark(pieces[to], '-'))
  );
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
export function withoutListNumbers(
  pieces: readonly Piece[],
  quantities: readonly Quantity[],
): readonly Quantity[] {
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

/** The round voltages that things are named after. */
const nominal = /^(?:5|6|12|24|48)$/u;

/** "The 12 V battery", "the 5 volt feed", "a 450 reads 0.35": what a thing is called. */
export function isRating(
  pieces: readonly Piece[],
  quantity: Quantity,
  numbers: readonly Quantity[],
): boolean {
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

/** "12.64, bought 2 years ago": a whole figure counts the word behind it, whatever that is, and "my 450 reads 0.35" names what is measured, where another is the reading. */
export function isCount(
  pieces: readonly Piece[],
  { number, unit, foreign, to }: Quantity,
  numbers: readonly Quantity[],
): boolean {
  const behind = pieces[to];
  const digits = number?.numeral?.decimal?.digits ?? number?.decimal?.digits ?? '';
  return (
    number?.whole === true &&
    unit === null &&
    !foreign &&
    !number.juxtaposed &&
    /^[1-9]\d{0,3}$/u.test(digits) &&
    behind?.kind === 'word' &&
    !behind.glued &&
    behind.sign === null &&
    (!hasUse(behind) || (digits.length >= 3 && isRole(behind, 'shows'))) &&
    numbers.some((other) => !other.foreign && other.number?.whole === false && !other.number.spoken)
  );
}

/** A decimal of less than a hundred: a bare figure of three digits beside it is none of its kind. */
const isVolts = ({ number, unit }: Quantity) =>
  number?.numeral?.decimal != null &&
  !number.whole &&
  (unit === null || unit === 'V') &&
  toNumber(number.numeral.decimal) < 100;
