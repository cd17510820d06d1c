// Reads fractions, typed (1/8, 3 1/2) and in words (half a volt), for the reader of numbers.
import { numberOf } from './hear-cardinals.ts';
import { isMark, isRole, type Piece } from './hear-pieces.ts';
import { plainNumber, type SpokenNumber } from './spoken-number.ts';

/** "1/8", "3 1/2", "1/2". */
export function readTypedFraction(pieces: readonly Piece[], from: number): SpokenNumber | null {
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

export function partOf(whole: number, over: number, under: number, from: number, to: number): SpokenNumber {
  const digits = String(Math.round((whole + over / under) * 1e6));
  const place = under === 2 ? -1 : under === 4 ? -2 : -3;
  const decimal = { digits, exp: -6, place, negative: false };
  return { ...plainNumber, decimal, denominator: under, from, to, spoken: true };
}

/** "half a volt", "three quarters", "ein halbes Volt", "an eighth". */
export function readSpokenFraction(
  pieces: readonly Piece[],
  from: number,
  behindUnit = false,
): SpokenNumber | null {
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
  else if (!behindUnit && (!led || (under <= 4 && counted === null))) return null;
  return partOf(0, counted ?? 1, under, from, to);
}
