// Reads one number out of a message's pieces, typed or spoken: digits, number words, decimals, halves and fractions of any language.
import { type Cardinal, numberOf, readCardinal } from './hear-cardinals.ts';
import { partOf, readSpokenFraction, readTypedFraction } from './hear-fractions.ts';
import { type Decimal, readNumeral, shiftBy, wholeDecimal } from './hear-numerals.ts';
import { isMark, isRole, type Piece } from './hear-pieces.ts';
import { type Habits, plainNumber, type SpokenNumber } from './spoken-number.ts';

/** The number that begins at a piece, or null. Signs in front are the caller's. */
export function readNumber(pieces: readonly Piece[], from: number, habits: Habits): SpokenNumber | null {
  const piece = pieces[from]!;
  if (piece.kind === 'numeral') return readTyped(pieces, from, habits);
  const opens = isMark(piece, '.') && (from === 0 || !piece.glued);
  if (opens && pieces[from + 1]?.kind === 'numeral' && /^\d+$/u.test(pieces[from + 1]!.text)) {
    return readParted(pieces, from, from);
  }
  return readSpoken(pieces, from, habits);
}

function readTyped(pieces: readonly Piece[], from: number, habits: Habits): SpokenNumber | null {
  const piece = pieces[from]!;
  const next = pieces[from + 1];
  const isInteger = /^\d+$/u.test(piece.text);
  if (isInteger && isRole(next, 'point') && startsDigits(pieces[from + 2])) {
    return readDecimals(pieces, from, from + 1, piece.text, habits);
  }
  if (isInteger) {
    const fraction = readTypedFraction(pieces, from);
    if (fraction !== null) return fraction;
    const parted = readParted(pieces, from, from + 1);
    if (parted !== null) return parted;
    // "0..487" and "0.4.87" are slips that nobody can be sure of.
    if (isMark(next, '.,') && next!.glued && isMark(pieces[from + 2], '.,') && pieces[from + 3]?.glued) {
      return { ...plainNumber, malformed: true, from, to: from + 4 };
    }
  }
  if (isInteger && isMark(next, '.,') && next!.glued && /^[.,]/u.test(pieces[from + 2]?.text ?? '')) {
    return { ...plainNumber, malformed: true, from, to: from + 3 };
  }
  const doubled = next?.kind === 'numeral' && next.glued;
  const numeral = readNumeral(piece.text);
  if (numeral === null || doubled)
    return { ...plainNumber, malformed: true, from, to: from + (doubled ? 2 : 1) };
  const common = { ...plainNumber, echo: piece.repaired, from };
  const multiplier = next?.meaning.multiplier ?? null;
  if (multiplier !== null && numeral.decimal !== null) {
    return readMultiplied(pieces, from, numeral.decimal, multiplier, habits);
  }
  const half = isRole(next, 'and-half') && isInteger;
  if (half) return { ...common, decimal: addHalf(piece.text), to: from + 2 };
  return { ...common, numeral, whole: isInteger, to: from + 1 };
}

const addHalf = (integer: string): Decimal => ({
  digits: `${integer}5`,
  exp: -1,
  place: -1,
  negative: false,
});

/** "1.9k", "5 hundred", "2 thousand 50". */
function readMultiplied(
  pieces: readonly Piece[],
  from: number,
  coefficient: Decimal,
  multiplier: number,
  habits: Habits,
): SpokenNumber {
  const power = Math.round(Math.log10(multiplier));
  const decimal = shiftBy(coefficient, power);
  const rest = coefficient.exp === 0 ? readCardinal(pieces, from + 2, habits) : null;
  const value = Number(`${coefficient.digits}e${coefficient.exp + power}`);
  if (rest !== null && rest.value < multiplier && coefficient.exp === 0) {
    const whole = wholeDecimal(value + rest.value, Math.round(Math.log10(rest.place)));
    return { ...plainNumber, decimal: whole, spoken: true, whole: true, from, to: rest.to };
  }
  return { ...plainNumber, decimal, spoken: true, whole: decimal.exp >= 0, from, to: from + 2 };
}

/** "0. 487", "0 .487", ". 487": a gap that got in by a slip. */
function readParted(pieces: readonly Piece[], from: number, mark: number): SpokenNumber | null {
  const [before, dot, after] = [mark > from ? pieces[from] : undefined, pieces[mark], pieces[mark + 1]];
  const fits = before === undefined || /^\d{1,2}$/u.test(before.text);
  if (!fits) return null;
  const digits = before?.text ?? '';
  const parted = (fraction: string, to: number): SpokenNumber => ({
    ...plainNumber,
    decimal: { digits: digits + fraction, exp: -fraction.length, place: -fraction.length, negative: false },
    echo: true,
    from,
    to,
  });
  // "0 .487": the mark went with the digits behind it.
  if (before?.text === '0' && dot?.kind === 'numeral' && !dot.glued && /^[.,]\d{2,}$/u.test(dot.text)) {
    return parted(dot.text.slice(1), mark + 1);
  }
  // "0;348": the key beside the comma.
  const beside = before?.text === '0' && isMark(dot, ';') && dot!.glued && after?.glued === true;
  if (beside && /^\d{2,}$/u.test(after.text)) return parted(after.text, mark + 2);
  if (!isMark(dot, '.,') || after?.kind !== 'numeral' || !/^\d{2,}$/u.test(after.text)) return null;
  if (after.glued && dot!.glued) return null;
  if (before !== undefined && before.text !== '0' && dot!.glued) return null;
  return parted(after.text, mark + 2);
}

const startsDigits = (piece: Piece | undefined) =>
  piece !== undefined && (/^\d+$/u.test(piece.text) || piece.meaning.number !== null);

function readSpoken(pieces: readonly Piece[], from: number, habits: Habits): SpokenNumber | null {
  const first = pieces[from];
  if (isRole(first, 'point') && startsDigits(pieces[from + 1]))
    return readDecimals(pieces, from, from, '', habits);
  const fraction = readSpokenFraction(pieces, from);
  if (fraction !== null) return fraction;
  const half = readOneAndHalf(pieces, from);
  if (half !== null) return half;
  let at = from;
  const cardinals: Cardinal[] = [];
  const skipped = isRole(first, 'article') && numberOf(first) === null ? 1 : 0;
  if (skipped === 1 && pieces[from + 1]?.meaning.unit === 'in') {
    return { ...plainNumber, decimal: wholeDecimal(1, 0), spoken: true, whole: true, from, to: from + 1 };
  }
  if (skipped === 1 && (pieces[from + 1]?.meaning.multiplier ?? null) === null) return null;
  at += skipped;
  for (;;) {
    const cardinal = readCardinal(pieces, at, habits);
    if (cardinal === null) break;
    cardinals.push(cardinal);
    at = cardinal.to;
    if (
      isMark(pieces[at], '-') &&
      pieces[at]!.glued &&
      pieces[at + 1]?.glued &&
      numberOf(pieces[at + 1]) !== null
    )
      at++;
  }
  if (cardinals.length === 0) return null;
  const digits = cardinals.every(({ value }) => value < 10);
  const [one] = cardinals;
  if (isRole(pieces[at], 'point') && at === pieces.length - 1) {
    return { ...plainNumber, malformed: true, spoken: true, from, to: at + 1 };
  }
  const parted = isRole(pieces[at], 'point', 'inner-point') && startsDigits(pieces[at + 1]);
  if (parted && (cardinals.length === 1 || digits)) {
    return readDecimals(pieces, from, at, cardinals.map(({ value }) => value).join(''), habits);
  }
  const common = { ...plainNumber, spoken: true, whole: true, from, to: at };
  if (cardinals.length > 1) {
    return {
      ...common,
      juxtaposed: cardinals.map(({ value, place }) => wholeDecimal(value, Math.log10(place))),
    };
  }
  if (isRole(pieces[at], 'and-half')) {
    return { ...common, decimal: addHalf(String(one!.value)), whole: false, to: at + 1 };
  }
  const mixed = isRole(pieces[at], 'joiner') ? readSpokenFraction(pieces, at + 1) : null;
  if (mixed?.denominator) {
    const over = Number(`${mixed.decimal!.digits}e-6`) * mixed.denominator;
    return partOf(one!.value, Math.round(over), mixed.denominator, from, mixed.to);
  }
  return { ...common, decimal: wholeDecimal(one!.value, Math.round(Math.log10(one!.place))) };
}

/** "Anderthalb Volt", "anderthalbtausend"; "pulgada y media", where the unit alone stands for one of it. */
function readOneAndHalf(pieces: readonly Piece[], from: number): SpokenNumber | null {
  const { number, unit } = pieces[from]!.meaning;
  const next = pieces[from + 1];
  const common = { ...plainNumber, spoken: true, from };
  if (unit !== null && isRole(next, 'and-half')) return { ...common, decimal: addHalf('1'), to: from + 2 };
  if (number === null || Number.isInteger(number)) return null;
  const decimal = addHalf(String(Math.floor(number)));
  const multiplier = next?.meaning.multiplier ?? null;
  if (multiplier === null) return { ...common, decimal, to: from + 1 };
  const power = Math.round(Math.log10(multiplier));
  return { ...common, decimal: shiftBy(decimal, power), whole: true, to: from + 2 };
}

/** What follows "point": digit by digit, or as one number ("fifty two"). */
function readDecimals(
  pieces: readonly Piece[],
  from: number,
  point: number,
  integer: string,
  habits: Habits,
): SpokenNumber {
  let fraction = '';
  let at = point + 1;
  let echo = false;
  while (at < pieces.length) {
    const piece = pieces[at]!;
    if (piece.kind === 'numeral' && /^\d+$/u.test(piece.text)) {
      // Digits typed one by one go on; another whole number begins something else.
      if (fraction !== '' && piece.text.length > 1) break;
      fraction += piece.text;
      at++;
      if (piece.text.length > 1) break;
      continue;
    }
    const cardinal = readCardinal(pieces, at, habits);
    if (cardinal === null) break;
    if (cardinal.value >= 10 && cardinal.value >= 1000) break;
    fraction += String(cardinal.value);
    at = cardinal.to;
    if (cardinal.value >= 10) {
      echo = true;
      break;
    }
  }
  const decimal = {
    digits: integer + fraction,
    exp: -fraction.length,
    place: -fraction.length,
    negative: false,
  };
  return { ...plainNumber, decimal, spoken: true, echo, malformed: fraction === '', from, to: at };
}
