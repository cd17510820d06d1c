// Reads how many turns or clicks somebody counted: figures, number words and parts of one in any language; for counts, whose unit no meter has.
import { numberOf } from './hear-cardinals.ts';
import { foldText } from './hear-fold.ts';
import { readTypedFraction } from './hear-fractions.ts';
import { readNumber } from './hear-numbers.ts';
import { toNumber } from './hear-numerals.ts';
import { isMark, isRole, type Piece, readPieces } from './hear-pieces.ts';
import { tokenise } from './hear-tokens.ts';
import type { Lexicon } from './lexicon.ts';
import type { Habits } from './spoken-number.ts';

/** Longer than this is no count. */
const longest = 200;

/** What was counted, as "2", "2 1/2 turns", "zweieinhalb", "deux tours et demi"; null where there is not just one. */
export function hearCount(text: string, lexicons: readonly Lexicon[]): number | null {
  if (text.length > longest) return null;
  const tokens = tokenise(foldText(text));
  // "quart de tour" is a name of something counted; here its words count one by one.
  const pieces = readPieces(tokens, lexicons).flatMap((piece) =>
    piece.length > 1 && isRole(piece, 'other-quantity')
      ? tokens.slice(piece.at, piece.at + piece.length).flatMap((token) => readPieces([token], lexicons))
      : [piece],
  );
  const [own] = lexicons;
  const habits = { upToNineteen: own?.upToNineteen ?? new Set<number>() };
  let count: number | null = null;
  for (let at = 0; at < pieces.length; ) {
    const found = countAt(pieces, at, habits);
    if (found !== null && (count !== null || Number.isNaN(found.value))) return null;
    count = found?.value ?? count;
    at = found?.to ?? at + 1;
  }
  return count;
}

interface Found {
  value: number;
  to: number;
}

/** The count that begins here, with the part of one behind it: "two", "two and a quarter", "one turn and a half". */
function countAt(pieces: readonly Piece[], from: number, habits: Habits): Found | null {
  const part = partAt(pieces, from);
  if (part !== null) return part;
  const whole = wholeAt(pieces, from, habits);
  if (whole === null || !Number.isInteger(whole.value)) return whole;
  let at = whole.to;
  while (isCounted(pieces[at]) || isRole(pieces[at], 'label')) at += 1;
  if (isRole(pieces[at], 'and-half')) return { value: whole.value + 0.5, to: at + 1 };
  const joined = isRole(pieces[at], 'joiner') ? at + 1 : at > whole.to ? at : null;
  const more = joined === null ? null : partAt(pieces, joined);
  return more === null ? { ...whole, to: at } : { value: whole.value + more.value, to: more.to };
}

/** "half", "a quarter", "three quarters of a turn", "eine dreiviertel Umdrehung". */
function partAt(pieces: readonly Piece[], from: number): Found | null {
  const share = typedPartAt(pieces, from) ?? spokenPartAt(pieces, from);
  if (share === null) return null;
  let ahead = share.to;
  while (
    ahead < share.to + 3 &&
    (isRole(pieces[ahead], 'article', 'plain', 'point') || isMark(pieces[ahead], '-'))
  )
    ahead += 1;
  return isCounted(pieces[ahead]) ? { value: share.value, to: ahead + 1 } : share;
}

function typedPartAt(pieces: readonly Piece[], from: number): Found | null {
  const typed = readTypedFraction(pieces, from);
  const value = typed?.decimal ? toNumber(typed.decimal) : 1;
  return typed !== null && value < 1 ? { value, to: typed.to } : null;
}

function spokenPartAt(pieces: readonly Piece[], from: number): Found | null {
  const first = pieces[from];
  const typed = /^\d$/u.test(first?.text ?? '') ? Number(first?.text) : null;
  const over = numberOf(first) ?? typed;
  const led = over !== null || isRole(first, 'article');
  const at = led ? from + (isMark(pieces[from + 1], '-') ? 2 : 1) : from;
  const under = pieces[at]?.meaning.fraction ?? null;
  if (under !== null && over !== 0 && (over ?? 1) < under) return { value: (over ?? 1) / under, to: at + 1 };
  // "eine dreiviertel": the article of what is counted stands in front.
  if (isRole(first, 'article') && numberOf(pieces[from + 1]) !== null) return spokenPartAt(pieces, from + 1);
  // A word that is both, as "meia" (six, half), is a part where it leads nothing.
  const own = first?.meaning.fraction ?? null;
  return own === null ? null : { value: 1 / own, to: from + 1 };
}

function wholeAt(pieces: readonly Piece[], from: number, habits: Habits): Found | null {
  // "a turn", "vuelta y media": the name alone stands for one.
  const named = isRole(pieces[from], 'article') ? from + 1 : from;
  if (isCounted(pieces[named]) && (named > from || isRole(pieces[named + 1], 'and-half', 'joiner'))) {
    return { value: 1, to: named + 1 };
  }
  const number = readNumber(pieces, from, habits);
  if (number === null) return null;
  const { numeral, to } = number;
  const decimal = number.decimal ?? numeral?.decimal ?? numeral?.grouped ?? null;
  return { value: decimal === null || number.malformed ? Number.NaN : toNumber(decimal), to };
}

/** Turns and clicks by name; some languages name engine speed by the same word. */
const isCounted = (piece: Piece | undefined): boolean =>
  isRole(piece, 'other-quantity') || piece?.meaning.unit === '1/min';
