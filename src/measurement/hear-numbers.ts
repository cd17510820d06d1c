// Reads one number out of a message's pieces, typed or spoken: digits, number words, decimals, halves and fractions of any language.
import { type Decimal, type Numeral, readNumeral, shiftBy, wholeDecimal } from './hear-numerals.ts';
import { isMark, isRole, type Piece } from './hear-pieces.ts';

export interface SpokenNumber {
  /** Typed with marks that can mean two things. */
  numeral: Numeral | null;
  /** Everything else. */
  decimal: Decimal | null;
  /** Several numbers in one breath: "four twelve", "three four eight". */
  juxtaposed: readonly Decimal[] | null;
  /** A fraction's denominator. */
  denominator: number | null;
  negative: boolean;
  /** A whole number without a decimal mark or word. */
  whole: boolean;
  spoken: boolean;
  echo: boolean;
  malformed: boolean;
  from: number;
  to: number;
}

export interface Habits {
  upToNineteen: ReadonlySet<number>;
  wholeDecimals: boolean;
}

const base = {
  numeral: null,
  decimal: null,
  juxtaposed: null,
  denominator: null,
  negative: false,
  whole: false,
  spoken: false,
  echo: false,
  malformed: false,
};

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
      return { ...base, malformed: true, from, to: from + 4 };
    }
  }
  if (isInteger && isMark(next, '.,') && next!.glued && /^[.,]/u.test(pieces[from + 2]?.text ?? '')) {
    return { ...base, malformed: true, from, to: from + 3 };
  }
  const doubled = next?.kind === 'numeral' && next.glued;
  const numeral = readNumeral(piece.text);
  if (numeral === null || doubled) return { ...base, malformed: true, from, to: from + (doubled ? 2 : 1) };
  const common = { ...base, echo: piece.repaired, from };
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
    return { ...base, decimal: whole, spoken: true, whole: true, from, to: rest.to };
  }
  return { ...base, decimal, spoken: true, whole: decimal.exp >= 0, from, to: from + 2 };
}

/** "1/8", "3 1/2", "1/2". */
function readTypedFraction(pieces: readonly Piece[], from: number): SpokenNumber | null {
  const slash = (at: number) =>
    isMark(pieces[at], '/') && pieces[at]!.glued && pieces[at + 1]?.glued === true;
  const integer = (at: number) =>
    /^\d{1,4}$/u.test(pieces[at]?.text ?? '') ? Number(pieces[at]!.text) : null;
  const fraction = (at: number) => {
    const [over, under] = [integer(at), integer(at + 2)];
    if (over === null || under === null || !slash(at + 1) || over >= under || over === 0) return null;
    return [2, 3, 4, 5, 8, 10, 16, 32, 64].includes(under) ? { over, under } : null;
  };
  const alone = fraction(from);
  if (alone !== null) return partOf(0, alone.over, alone.under, from, from + 3);
  const mixed = integer(from) === null ? null : fraction(from + 1);
  if (mixed !== null && !pieces[from + 1]!.glued) {
    return partOf(integer(from)!, mixed.over, mixed.under, from, from + 4);
  }
  const hyphen = isMark(pieces[from + 1], '-') && pieces[from + 1]!.glued && pieces[from + 2]?.glued;
  const joined = isRole(pieces[from + 1], 'joiner') || hyphen ? fraction(from + 2) : null;
  return joined === null ? null : partOf(integer(from)!, joined.over, joined.under, from, from + 5);
}

function partOf(whole: number, over: number, under: number, from: number, to: number): SpokenNumber {
  const digits = String(Math.round((whole + over / under) * 1e6));
  const place = under === 2 ? -1 : under === 4 ? -2 : -3;
  const decimal = { digits, exp: -6, place, negative: false };
  return { ...base, decimal, denominator: under, from, to, spoken: true };
}

/** "0. 487", "0 .487", ". 487": a gap that got in by a slip. */
function readParted(pieces: readonly Piece[], from: number, mark: number): SpokenNumber | null {
  const [before, dot, after] = [mark > from ? pieces[from] : undefined, pieces[mark], pieces[mark + 1]];
  const fits = before === undefined || /^\d{1,2}$/u.test(before.text);
  if (!fits) return null;
  const digits = before?.text ?? '';
  const parted = (fraction: string, to: number): SpokenNumber => ({
    ...base,
    decimal: { digits: digits + fraction, exp: -fraction.length, place: -fraction.length, negative: false },
    echo: true,
    from,
    to,
  });
  // "0 .487": the mark went with the digits behind it.
  if (before?.text === '0' && dot?.kind === 'numeral' && !dot.glued && /^[.,]\d{2,}$/u.test(dot.text)) {
    return parted(dot.text.slice(1), mark + 1);
  }
  if (!isMark(dot, '.,') || after?.kind !== 'numeral' || !/^\d{2,}$/u.test(after.text)) return null;
  if (after.glued && dot!.glued) return null;
  if (before !== undefined && before.text !== '0' && dot!.glued) return null;
  return parted(after.text, mark + 2);
}

const startsDigits = (piece: Piece | undefined) =>
  piece !== undefined && (/^\d+$/u.test(piece.text) || piece.meaning.number !== null);

interface Cardinal {
  value: number;
  place: number;
  to: number;
}

/** One whole number in words: "dreihundert acht und vierzig", "quatre-vingt-dix-neuf". */
function readCardinal(pieces: readonly Piece[], from: number, habits: Habits): Cardinal | null {
  let total = 0;
  let group = 0;
  let place = 1;
  let last: 'none' | 'unit' | 'ten' | 'hundred' | 'thousand' = 'none';
  let at: number = from;
  let took = false;
  for (;;) {
    const hyphen: number = took && isMark(pieces[at], '-') && pieces[at]!.glued ? 1 : 0;
    const joined: number = took && isRole(pieces[at + hyphen], 'joiner') && last !== 'unit' ? 1 : 0;
    const hyphens: number = hyphen + joined + (joined === 1 && isMark(pieces[at + hyphen + 1], '-') ? 1 : 0);
    const here = at + hyphens;
    const piece = pieces[here];
    const value = numberOf(piece);
    const multiplier = piece?.meaning.multiplier ?? null;
    if (value !== null && value < 10 && last !== 'unit') {
      const teen = group % 100;
      if (last === 'ten' && (teen < 20 || value === 0)) break;
      if (value === 0 && took) break;
      const tens = tensBefore(pieces, here);
      if (tens !== null && last !== 'ten') {
        group += value + tens.value;
        place = 1;
        at = tens.to;
      } else {
        group += value;
        place = 1;
        at = here + 1;
      }
      last = 'unit';
    } else if (value !== null && value >= 10 && value < 100 && last !== 'unit') {
      const onTop: boolean = last === 'ten' && value < 20 && habits.upToNineteen.has(group % 100);
      if (last === 'ten' && !onTop) break;
      group += value;
      place = value % 10 === 0 ? 10 : 1;
      last = value % 10 === 0 && !onTop ? 'ten' : 'unit';
      at = here + 1;
    } else if (value !== null && value >= 100 && (last === 'none' || last === 'thousand')) {
      group += value;
      place = 100;
      last = 'hundred';
      at = here + 1;
    } else if (multiplier !== null && last !== 'thousand' && (group > 0 || !took)) {
      if (multiplier === 100 && last === 'hundred') break;
      if (!took && piece!.text.length < 2) break;
      if (multiplier === 100) group = (group || 1) * 100;
      else [total, group] = [total + (group || 1) * multiplier, 0];
      place = multiplier;
      last = multiplier === 100 ? 'hundred' : 'thousand';
      at = here + 1;
    } else break;
    took = true;
  }
  return took ? { value: total + group, place, to: at } : null;
}

/** An article is a number only in front of hundred or thousand. */
const numberOf = (piece: Piece | undefined): number | null => piece?.meaning.number ?? null;

/** "zwei und fuenfzig": the tens behind the units. */
function tensBefore(pieces: readonly Piece[], at: number): Cardinal | null {
  if (!isRole(pieces[at + 1], 'units-first')) return null;
  const tens = numberOf(pieces[at + 2]);
  return tens !== null && tens >= 20 && tens < 100 && tens % 10 === 0
    ? { value: tens, place: 1, to: at + 3 }
    : null;
}

function readSpoken(pieces: readonly Piece[], from: number, habits: Habits): SpokenNumber | null {
  const first = pieces[from];
  if (isRole(first, 'point') && startsDigits(pieces[from + 1]))
    return readDecimals(pieces, from, from, '', habits);
  const fraction = readSpokenFraction(pieces, from);
  if (fraction !== null) return fraction;
  let at = from;
  const cardinals: Cardinal[] = [];
  const skipped = isRole(first, 'article') && numberOf(first) === null ? 1 : 0;
  if (skipped === 1 && pieces[from + 1]?.meaning.unit === 'in') {
    return { ...base, decimal: wholeDecimal(1, 0), spoken: true, whole: true, from, to: from + 1 };
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
    return { ...base, malformed: true, spoken: true, from, to: at + 1 };
  }
  const parted = isRole(pieces[at], 'point', 'inner-point') && startsDigits(pieces[at + 1]);
  if (parted && (cardinals.length === 1 || digits)) {
    return readDecimals(pieces, from, at, cardinals.map(({ value }) => value).join(''), habits);
  }
  const common = { ...base, spoken: true, whole: true, from, to: at };
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

/** "half a volt", "three quarters", "ein halbes Volt", "an eighth". */
function readSpokenFraction(pieces: readonly Piece[], from: number): SpokenNumber | null {
  const first = pieces[from];
  // A word that is both (a six and a half) is the half in front of a unit.
  const isHalf = first?.meaning.fraction != null && (pieces[from + 1]?.meaning.unit ?? null) !== null;
  const typed = first?.kind === 'numeral' && /^\d$/u.test(first.text) ? Number(first.text) : null;
  const counted = isHalf ? null : (numberOf(first) ?? typed);
  const led = counted !== null || isRole(first, 'article');
  const hyphen = led && isMark(pieces[from + 1], '-') ? 1 : 0;
  const at = led ? from + 1 + hyphen : from;
  const under = pieces[at]?.meaning.fraction ?? null;
  if (under === null || (counted ?? 1) >= under || counted === 0) return null;
  let to = at + 1;
  // "half a volt", "a quarter of an inch": a unit behind it makes it a number, or the "a" in front.
  let ahead = to;
  while (
    ahead < to + 3 &&
    (isRole(pieces[ahead], 'article', 'plain', 'between') || isMark(pieces[ahead], '-'))
  )
    ahead++;
  const unit = pieces[ahead]?.meaning.unit ?? pieces[ahead]?.sign?.found.unit ?? null;
  if (unit !== null || isRole(pieces[ahead], 'other-quantity')) to = ahead;
  else if (!led || (under <= 4 && counted === null)) return null;
  return partOf(0, counted ?? 1, under, from, to);
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
      echo = !habits.wholeDecimals;
      break;
    }
  }
  const decimal = {
    digits: integer + fraction,
    exp: -fraction.length,
    place: -fraction.length,
    negative: false,
  };
  return { ...base, decimal, spoken: true, echo, malformed: fraction === '', from, to: at };
}
