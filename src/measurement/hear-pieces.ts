// Looks the words of a message up in the lexicons, longest phrases first, for the parser.
import type { Token } from './hear-tokens.ts';
import { type Lexicon, type Meaning, noMeaning, type Role } from './lexicon.ts';
import { longestMatch, type Match } from './phrase-trie.ts';
import { type Sign, unitSigns } from './unit-signs.ts';

/** One or several tokens with one meaning. */
export interface Piece {
  kind: Token['kind'];
  text: string;
  raw: string;
  glued: boolean;
  repaired: boolean;
  meaning: Meaning;
  /** The sign of a unit; it counts only behind a number, or in front of one. */
  sign: Match<Sign> | null;
  /** Where its first token stands, and how many there are. */
  at: number;
  length: number;
}

export function isRole(piece: Piece | undefined, ...any: Role[]): boolean {
  if (piece === undefined || piece.meaning === noMeaning) return false;
  for (const role of any) if (piece.meaning.roles.has(role)) return true;
  return false;
}

/** Roles that a word has only beside others of a kind; else it tells of something else. */
const idle: ReadonlySet<Role> = new Set([
  'beside',
  'entered',
  'attempt',
  'rated',
  'refusal',
  'twice',
  'self',
  'figure-word',
]);

/** Whether a word has a use in a message about readings. */
export function hasUse({ meaning: { roles } }: Piece): boolean {
  for (const role of roles) if (!idle.has(role)) return true;
  return false;
}

export function isMark(piece: Piece | undefined, marks: string): boolean {
  return piece !== undefined && piece.kind === 'mark' && marks.includes(piece.text);
}

export function readPieces(tokens: readonly Token[], lexicons: readonly Lexicon[]): Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  let afterNumeral: boolean = false;
  while (at < tokens.length) {
    const token = tokens[at]!;
    // "1900 1/min" and "3 m m": behind a numeral the longest sign goes before any phrase.
    const sign = token.kind === 'word' || afterNumeral ? longestMatch(unitSigns, tokens, at) : null;
    const known = bestMatch(tokens, at, lexicons);
    const bySign: boolean =
      afterNumeral && sign !== null && sign.length > 1 && sign.length >= (known?.length ?? 1);
    const length: number = bySign ? sign!.length : (known?.length ?? 1);
    if (known === null && sign === null && token.kind === 'word') {
      const parts = splitCompound(token, at, lexicons);
      if (parts !== null) {
        pieces.push(...parts);
        at++;
        afterNumeral = true;
        continue;
      }
    }
    const meaning: Meaning = bySign ? noMeaning : (known?.found ?? noMeaning);
    pieces.push({
      kind: length > 1 ? 'word' : token.kind,
      text: token.text,
      raw: token.raw,
      glued: token.glued,
      repaired: token.repaired,
      meaning,
      sign: sign !== null && sign.length === length ? sign : null,
      at,
      length,
    });
    afterNumeral =
      (token.kind === 'numeral' && length === 1) || meaning.number !== null || meaning.multiplier !== null;
    at += length;
  }
  hearAlike(pieces);
  return sayTwice(pieces);
}

/** "Point double five": one digit said for two. */
function sayTwice(pieces: Piece[]): Piece[] {
  return pieces.map((piece, at) => {
    const next = pieces[at + 1];
    const digit = isRole(piece, 'twice') && next?.meaning.number != null && next.meaning.number < 10;
    if (!digit) return piece;
    return { ...piece, repaired: true, sign: null, meaning: { ...noMeaning, number: next.meaning.number } };
  });
}

/** "Three for eight", "point to six": what dictation took for another word is a digit among spoken digits. */
function hearAlike(pieces: Piece[]): void {
  const isDigit = (piece: Piece | undefined) => piece?.meaning.number != null && piece.meaning.number < 10;
  for (let at = 1; at < pieces.length; at++) {
    const piece = pieces[at]!;
    const number = piece.meaning.soundsLike;
    if (number === null) continue;
    // "Point four ate": a word with no other use here may be the last digit.
    const goesOn = isDigit(pieces[at + 1]) || pieces[at + 1]?.meaning.soundsLike != null;
    if (!goesOn && hasUse(piece)) continue;
    const behindPoint = isRole(pieces[at - 1], 'point');
    // "Three to eight" is a range.
    if (!behindPoint && (!isDigit(pieces[at - 1]) || isRole(piece, 'to'))) continue;
    pieces[at] = { ...piece, repaired: true, meaning: { ...noMeaning, number } };
  }
}

/** The owner's own language first; another only for a word that it lacks, or for a longer phrase. */
function bestMatch(
  tokens: readonly Token[],
  at: number,
  lexicons: readonly Lexicon[],
): Match<Meaning> | null {
  let best: Match<Meaning> | null = null;
  for (const lexicon of lexicons) {
    const match = longestMatch(lexicon.meanings, tokens, at);
    if (match !== null && (best === null || match.length > best.length)) best = match;
  }
  // A numeral alone is no phrase, but it may begin one: "1 on the left".
  return best !== null && tokens[at]!.kind === 'numeral' && best.length === 1 ? null : best;
}

const longestCompound = 64;

/** "dreihundertachtundvierzig": the parts of a word that is all number words; null for any other. */
function splitCompound(token: Token, at: number, lexicons: readonly Lexicon[]): Piece[] | null {
  const { text } = token;
  if (text.length < 5 || text.length > longestCompound) return null;
  for (const { compounds } of lexicons) {
    if (compounds === null) continue;
    const parts = partsOf(text, compounds);
    if (parts !== null) {
      return parts.map((part, index) => ({
        kind: 'word',
        text: part,
        raw: part,
        glued: index > 0 || token.glued,
        repaired: false,
        meaning: compounds.get(part)!,
        sign: null,
        at,
        length: 1,
      }));
    }
  }
  return null;
}

/** Longest part first; a place from which there was no way on is not tried again. */
function partsOf(text: string, known: ReadonlyMap<string, Meaning>): string[] | null {
  const dead = new Set<number>();
  const from = (start: number): string[] | null => {
    if (start === text.length) return [];
    if (dead.has(start)) return null;
    for (let end = Math.min(text.length, start + 14); end > start; end--) {
      const part = text.slice(start, end);
      if (!known.has(part)) continue;
      const rest = from(end);
      if (rest !== null) return [part, ...rest];
    }
    dead.add(start);
    return null;
  };
  return from(0);
}
