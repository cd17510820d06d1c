// Tells how several numbers of one message stand to each other, for the file that decides what they come to.
import { shiftBy } from './hear-numerals.ts';
import { isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';

/** "OL on 2 V, 0.35 on 20 V": ranges of the meter among its readings. */
export function isMixed(kept: readonly Quantity[]): boolean {
  const numbers = kept.filter(({ overload }) => !overload).map(({ number }) => number);
  const whole = numbers.filter((number) => number?.whole === true).length;
  return numbers.length < kept.length && whole > 0 && whole < numbers.length;
}

/** "0.3 4 8" is one figure in pieces; a 1 alone among decimals may be the meter's sign for too much. */
export function isBroken(kept: readonly Quantity[]): boolean {
  const digit = ({ number, unit }: Quantity) =>
    number?.whole === true &&
    unit === null &&
    /^\d$/u.test((number.numeral?.decimal ?? number.decimal)?.digits ?? '');
  const decimal = ({ number }: Quantity) => number !== null && !number.whole;
  if (
    kept.some(decimal) &&
    kept.some((one) => digit(one) && (one.number!.numeral?.decimal ?? one.number!.decimal)!.digits === '1')
  ) {
    return kept.every(({ unit }) => unit === null);
  }
  return kept.length <= 4 && decimal(kept[0]!) && kept.slice(1).every(digit);
}

/** "Over range on the 2 V": the number is where the dial stands. */
export function isRangeOfMeter(kept: readonly Quantity[], links: readonly Piece[][]): boolean {
  const [one, two] = kept;
  const told = links[0]?.some(({ kind }) => kind === 'word') === true;
  const digits = two?.number?.whole ? (two.number.numeral?.decimal?.digits ?? '') : '';
  return kept.length === 2 && one!.overload && told && /^(?:[2456]|10)0{0,3}$/u.test(digits);
}

export function isPlusMinus(link: readonly Piece[]): boolean {
  const marks = link.map(({ text }) => text).join('');
  return (
    marks === '±' ||
    marks === '+/-' ||
    marks === '+-' ||
    marks === '-+' ||
    link.some((piece) => isRole(piece, 'plus-minus'))
  );
}

/** "Idle 0.46 V, wide open 4.3 V" where the word for idle is the one for the least, too: it is no limit if the other has none. */
export function isStateLabel(pieces: readonly Piece[], kept: readonly Quantity[]): readonly Quantity[] {
  if (kept.every(({ bound }) => bound)) return kept;
  return kept.map((quantity) =>
    quantity.bound && isRole(pieces[quantity.from], 'label') ? { ...quantity, bound: false } : quantity,
  );
}

/** "Eighteen to nineteen hundred", "three to four hundred millivolts": the hundreds count for both. */
export function scaledBy(kept: readonly Quantity[], links: readonly Piece[][]): readonly Quantity[] {
  const [one, two] = kept;
  const small = one?.number?.numeral?.decimal ?? one?.number?.decimal;
  const large = two?.number?.decimal;
  if (kept.length !== 2 || !small || !large || !one!.number!.whole || one!.unit !== null) return kept;
  if (
    one!.number!.juxtaposed ||
    two!.number!.juxtaposed ||
    !two!.number!.spoken ||
    (large.place !== 2 && large.place !== 3)
  )
    return kept;
  if (!links[0]!.some((piece) => isRole(piece, 'to', 'joiner', 'or') || isMark(piece, '-~/'))) return kept;
  const scaled = shiftBy(small, large.place);
  const [low, high] = [scaled, large].map(({ digits, exp }) => Number(`${digits}e${exp}`));
  if (small.exp !== 0 || small.digits.length > 2 || low! >= high!) return kept;
  return [{ ...one!, number: { ...one!.number!, numeral: null, decimal: scaled, spoken: true } }, two!];
}

/** "Up to 0.37 and down to 0.34": one end in front of each. */
export function areExtremes(pieces: readonly Piece[], kept: readonly Quantity[]): boolean {
  const ends = kept.map(({ from }, index) => {
    const floor = kept[index - 1]?.to ?? 0;
    for (let at = from - 1; at >= floor; at--) {
      if (isRole(pieces[at], 'extreme')) return pieces[at]!.meaning;
      if (!isRole(pieces[at], 'plain', 'article', 'filler', 'label')) return null;
    }
    return null;
  });
  return ends.every((end) => end !== null) && ends[0] !== ends[1];
}
