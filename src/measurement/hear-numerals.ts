// Reads a typed numeral into its digits, in every way in which its marks can be meant; no arithmetic is done on the text.

/** A number as its digits and where the mark goes: digits × 10^exp, known to 10^place. */
export interface Decimal {
  digits: string;
  exp: number;
  place: number;
  negative: boolean;
}

/** The mark that the readings of a numeral hang on. */
export interface Numeral {
  decimal: Decimal | null;
  grouped: Decimal | null;
  /** The mark in question, where there are two readings. */
  mark: string | null;
}

const shape = /^(\d*)((?:[.,']\d+)*)(?:[eE]([-+]?\d{1,2}))?$/u;

export function readNumeral(text: string): Numeral | null {
  const parts = shape.exec(text);
  if (parts === null) return null;
  const [, whole = '', tail = '', power = '0'] = parts;
  const marks = tail.replace(/\d/gu, '');
  const pieces = tail === '' ? [] : tail.slice(1).split(/[.,']/u);
  const shift = Number(power);
  const plain = (integer: string, fraction: string): Decimal => ({
    digits: integer + fraction || '0',
    exp: shift - fraction.length,
    place: shift - fraction.length,
    negative: false,
  });
  if (marks === '') return { decimal: plain(whole, ''), grouped: null, mark: null };
  const last = marks.at(-1)!;
  const groups = isGrouped(whole, pieces) ? plain(whole + pieces.join(''), '') : null;
  if (marks.length === 1) {
    const decimal = plain(whole, pieces[0]!);
    return { decimal, grouped: groups, mark: last };
  }
  // Several of one mark are groups; two kinds are groups, then the decimal mark.
  if ([...marks].every((mark) => mark === last))
    return groups && { decimal: null, grouped: groups, mark: null };
  const front = marks.slice(0, -1);
  if (front.includes(last) || [...front].some((mark) => mark !== front[0])) return null;
  if (last === "'" || !isGrouped(whole, pieces.slice(0, -1))) return null;
  return { decimal: plain(whole + pieces.slice(0, -1).join(''), pieces.at(-1)!), grouped: null, mark: null };
}

/** One to three digits, then threes: "1.500", but not "0.500" or "12.50". */
function isGrouped(whole: string, groups: readonly string[]): boolean {
  return /^[1-9]\d{0,2}$/u.test(whole) && groups.every((group) => group.length === 3);
}

export function toNumber({ digits, exp, negative }: Decimal): number {
  const size = Number(`${digits}e${exp}`);
  return negative && size !== 0 ? -size : size;
}

export function shiftBy(decimal: Decimal, power: number): Decimal {
  return { ...decimal, exp: decimal.exp + power, place: decimal.place + power };
}

/** A whole number whose last spoken place is known. */
export function wholeDecimal(value: number, place: number): Decimal {
  return { digits: String(value), exp: 0, place, negative: false };
}
