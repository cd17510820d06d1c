// Finds the unit that goes with a number: behind it, in front of it, or in the place of its decimal mark.
import { partOf, readSpokenFraction, readTypedFraction } from './hear-fractions.ts';
import { hasUse, isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';
import type { SpokenNumber } from './spoken-number.ts';
import type { TypedUnit } from './unit-factors.ts';

export const blank: Quantity = {
  number: null,
  overload: false,
  unit: null,
  otherUnit: null,
  foreign: false,
  stray: false,
  negative: false,
  doubtfulSign: false,
  hedged: false,
  bound: false,
  echo: false,
  from: 0,
  to: 0,
};

export function withUnit(
  pieces: readonly Piece[],
  number: SpokenNumber,
  inches: boolean,
  previous: Quantity | undefined,
): Quantity {
  const quantity: Quantity = { ...blank, number, echo: number.echo, from: number.from, to: number.to };
  const named = pieces[number.from]!.meaning.unit;
  // "Pulgada y media", "inch and a half".
  if (named !== null && isRole(pieces[number.to - 1], 'and-half') && number.to === number.from + 2) {
    return { ...quantity, unit: named };
  }
  let at = number.to;
  // "1/4 of a turn".
  if (number.denominator !== null) {
    let ahead = at;
    while (ahead < at + 3 && isRole(pieces[ahead], 'plain', 'article', 'between')) ahead++;
    if (ahead > at && unitAt(pieces, ahead, inches) !== null) at = ahead;
  }
  // "0.35-volt", "1450-rpm".
  if (isMark(pieces[at], '-') && pieces[at]!.glued && pieces[at + 1]?.glued && unitAt(pieces, at + 1, inches))
    at++;
  // "'2' mm": a quoted figure.
  if (isMark(pieces[at], '\'"') && pieces[number.from - 1]?.text === pieces[at]!.text && pieces[at]!.glued)
    at++;
  const unit = unitAt(pieces, at, inches);
  if (unit === null) {
    const next = pieces[at];
    if (next?.glued && (next.kind === 'word' || next.kind === 'code') && !isRole(next, 'hedge', 'wanders')) {
      quantity.foreign = next.meaning.number === null && !hasUse(next);
      quantity.stray = quantity.foreign;
      if (quantity.foreign) quantity.to = at + 1;
    }
    return withUnitBefore(pieces, quantity, previous);
  }
  quantity.to = at + 1;
  if (unit === 'milli') {
    quantity.unit = inches ? 'm' : 'mV';
    quantity.echo ||= !inches;
  } else if (unit === 'other') quantity.foreign = true;
  else quantity.unit = unit;
  quantity.otherUnit = pieces[at]!.meaning.otherUnit;
  if (quantity.unit === 'mV' && pieces[at]!.raw.startsWith('M') && pieces[at]!.raw.length === 2) {
    quantity.echo = true;
  }
  if (addFraction(pieces, quantity)) return quantity;
  const after = pieces[quantity.to];
  if (isRole(after, 'and-half') && number.whole && number.decimal === null && number.numeral?.decimal) {
    halve(quantity, number.numeral.decimal.digits);
  } else if (isRole(after, 'and-half') && number.whole && number.decimal !== null) {
    halve(quantity, number.decimal.digits);
  }
  return quantity;
}

/** "An inch and a quarter", "1 inch and 1/8": the fraction behind the unit. */
function addFraction(pieces: readonly Piece[], quantity: Quantity): boolean {
  const { number, to } = quantity;
  const whole = number?.whole ? (number.numeral?.decimal ?? number.decimal) : null;
  if (whole?.exp !== 0 || !isRole(pieces[to], 'joiner')) return false;
  const part = readTypedFraction(pieces, to + 1) ?? readSpokenFraction(pieces, to + 1, true);
  if (!part?.denominator || unitAt(pieces, part.to, true) !== null) return false;
  const over = Math.round(Number(`${part.decimal!.digits}e-6`) * part.denominator);
  quantity.number = partOf(Number(whole.digits), over, part.denominator, quantity.from, part.to);
  quantity.to = part.to;
  return true;
}

/** "12 volts 6", "2 bar e 2": the unit said in the place of the decimal mark. */
export function withTail(pieces: readonly Piece[], quantity: Quantity): Quantity {
  const { unit, number, to } = quantity;
  const digits = number?.numeral?.decimal?.digits ?? number?.decimal?.digits ?? '';
  if ((unit !== 'V' && unit !== 'bar') || !number?.whole || number.juxtaposed || digits.length > 2)
    return quantity;
  const joined = isRole(pieces[to], 'behind-unit') ? 1 : 0;
  const tail = pieces[to + joined];
  const spoken = tail?.meaning.number ?? null;
  const figures = tail?.kind === 'numeral' ? tail.text : spoken === null ? '' : String(spoken);
  if (!/^\d{1,3}$/u.test(figures) || (joined === 1 && figures.length > 1) || tail!.glued) return quantity;
  // Something behind it makes it a figure of its own.
  const rest = pieces.slice(to + joined + 1);
  if (!rest.every((piece) => isMark(piece, '.!') || isRole(piece, 'filler'))) return quantity;
  if (digits !== '0' && figures.length > 2) return quantity;
  const place = -figures.length;
  const decimal = { digits: digits + figures, exp: place, place, negative: false };
  const joinedNumber = { ...number, numeral: null, decimal, whole: false };
  return { ...quantity, number: joinedNumber, echo: true, to: to + joined + 1 };
}

/** "12 volts and a half". */
function halve(quantity: Quantity, integer: string): void {
  const decimal = { digits: `${integer}5`, exp: -1, place: -1, negative: false };
  quantity.number = { ...quantity.number!, numeral: null, decimal, whole: false };
  quantity.to++;
}

/** "V 0.348", "rpm: 1450": a unit in front, where none is behind. */
function withUnitBefore(
  pieces: readonly Piece[],
  quantity: Quantity,
  previous: Quantity | undefined,
): Quantity {
  let at = quantity.from - 1;
  if (isMark(pieces[at], '=:')) at--;
  const piece = pieces[at];
  if (piece === undefined || at < (previous?.to ?? 0) || piece.text === 'in' || isWordOnly(piece, false))
    return quantity;
  const unit = piece.sign?.found.unit ?? piece.meaning.unit;
  if (unit && !quantity.foreign && isPlainUnit(piece)) quantity.unit = unit;
  return quantity;
}

const isPlainUnit = ({ text }: Piece) => !['"', "''", '%'].includes(text);

function unitAt(pieces: readonly Piece[], at: number, inches: boolean): TypedUnit | 'milli' | 'other' | null {
  const piece = pieces[at];
  if (piece === undefined) return null;
  if (piece.kind === 'mark') return inches ? unitOfMark(pieces, at) : null;
  const { text, raw, glued, sign, meaning } = piece;
  if (text === 'm' && (glued || raw === 'm') && sign === null) return 'milli';
  if (text === 'a' && (raw === 'A' ? isSign(pieces, at) : glued)) return 'other';
  if (text === 'in' && piece.length === 1) return inches && !isWord(pieces[at + 1]) ? 'in' : null;
  const small = sign?.found.unit === null && !glued && !/[A-Z]/u.test(raw);
  if (text.length === 1 && small && raw.replace(/'$/u, '') === text && !'ω°'.includes(text)) return null;
  // "0,54 ma 0,45", "0,54 äh 0,45": a word of the language that only looks like a sign.
  if (small && text.length <= 2 && hasUse(piece) && !isRole(piece, 'other-quantity')) return null;
  if (!glued && isWordOnly(piece, inches)) return null;
  if (text === 'am' || text === 'ps') return glued ? 'other' : null;
  // "3 volte" is three times; "0,35 volte" what dictation makes of volts.
  if (meaning.unit === 'V' && isRole(piece, 'other-quantity') && /^\d+$/u.test(pieces[at - 1]?.text ?? ''))
    return 'other';
  if (meaning.unit !== null) return meaning.unit;
  // "max 0.36 min 0.34".
  const least = sign?.found.unit === null && isRole(piece, 'bound', 'label');
  if (least && (pieces[at + 1]?.kind === 'numeral' || /[.,]/u.test(pieces[at - 1]?.text ?? ''))) return null;
  if (sign !== null) return sign.found.unit ?? 'other';
  // "first 0.35 second 0.36".
  const next = pieces[at + 1];
  if (isRole(piece, 'label') && (next?.kind === 'numeral' || isRole(next, 'attempt', 'counted'))) return null;
  return isRole(piece, 'other-quantity') ? 'other' : null;
}

/** "Um" between words, and "pá", are no signs of length and pressure. */
const isWordOnly = (piece: Piece, inches: boolean) =>
  piece.sign !== null &&
  ((piece.text === 'um' && !inches && hasUse(piece)) ||
    (piece.length === 1 && /\p{M}/u.test(piece.raw.normalize('NFD'))));

/** "0,349 A": amperes, unless all is in capitals and it may be a word. */
const isSign = (pieces: readonly Piece[], at: number) =>
  !isRole(pieces[at + 1], 'plain') || pieces.some(({ raw }) => /\p{Ll}/u.test(raw));

/** Inches and feet by their marks. */
function unitOfMark(pieces: readonly Piece[], at: number): TypedUnit | null {
  const { text, glued } = pieces[at]!;
  if (text === '"') return closesQuote(pieces, at) ? null : 'in';
  const opened = pieces.findIndex((piece) => isMark(piece, "'")) < at;
  return text === "'" && glued && !opened ? 'ft' : null;
}

/** The second of a pair of quotation marks is no sign of inches. */
function closesQuote(pieces: readonly Piece[], at: number): boolean {
  for (let before = at - 1; before >= Math.max(0, at - 6); before--) {
    if (isMark(pieces[before], '"'))
      return pieces[before + 1]?.glued === true && pieces[before - 1]?.kind !== 'numeral';
  }
  return false;
}

const isWord = (piece: Piece | undefined) => piece?.kind === 'word' && !hasUse(piece);
