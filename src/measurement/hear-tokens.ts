// Cuts a folded message into numerals, words and marks, for the parser; in one pass, so in linear time.
import { foldWord } from './hear-fold.ts';

export interface Token {
  kind: 'numeral' | 'word' | 'mark' | 'code';
  /** Small letters without accents; of a numeral its digits and marks. */
  text: string;
  raw: string;
  /** No space before it. */
  glued: boolean;
  /** A letter was read as the digit that it looks like. */
  repaired: boolean;
}

/** The text of a token that is the overload sign, however it was typed. */
const overloadSign = 'o.l';

const arrows = /[-=]{1,2}>/uy;
/** "1st", "2º", "3ème": a place in a list. */
const ordinal = /\d{1,2}(?:st|nd|rd|th|er|ère|re|e|ème|eme)(?![\p{L}\d])/iuy;
const space = /[^\S\n]+/uy;
const time = /\d{1,2}:\d{2}(?::\d{2})?(?![\d.,])/uy;
const date = /(?:\d{4}([-/.])\d{1,2}\1\d{1,2}|\d{1,2}([-/.])\d{1,2}\2(?:19|20)\d{2})(?!\d)/uy;
/** The overload sign of a meter's display. */
const glyph = /(?:[0oO][.,]?[lL]|[.,][0oO][.,]?[lL]|[0oO][.,][0oO]?[lL])(?![\p{L}\p{M}\d'])/uy;
/** "0.46,1.3": a comma between two decimals parts them. */
const listed = /\d*\.\d+(?=,\d*\.\d)/uy;
const numeral = /(?:\d|[.,](?=\d))\d*(?:[.,']\d+)*(?:[eE][-+]?\d{1,2}(?![\d\p{L}]))?/uy;
/** A letter O, l or I between digits or beside a decimal mark: a slip for 0 or 1. */
const slipped =
  /(?:[\doO]*\d[\doO|lI]*(?:[.,][\doO|lI]+)?|[oOlI]?[.,][oO|lI]*\d[\doO|lI]*|[oO|lI][.,][\doO|lI]*\d[\doO|lI]*)(?=$|[^\p{L}\d]|(?:m?v|rpm|mm|cm|nm|kpa|psi|bar)(?![\p{L}\d]))/iuy;
/** "0V35", "1k5": the unit's letter in the place of the decimal mark (IEC 60062, from memory). */
const lettered = /(\d{1,2})([vVkK])(\d{1,3})(?![\p{L}\d.,])/uy;
const word = /\p{L}[\p{L}\p{M}]*(?:'\p{L}[\p{L}\p{M}]*)*/uy;
/** Letters and digits in one: a model or a part number. */
const code = /[\p{L}\d]+(?:[-_/]?[\p{L}\d]+)*/uy;
const signAhead = /^(?:mv|rpm|mm|cm|nm|kpa|psi|bar)$/iu;
const codeTail = /-?\d+(?![.,]?\d)[\p{L}\d]*(?:-[\p{L}\d]+)*/uy;
const picture = /\p{Extended_Pictographic}(?:\u200d\p{Extended_Pictographic})*/uy;

export function tokenise(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  let glued = false;
  const take = (pattern: RegExp): string | null => {
    pattern.lastIndex = at;
    return pattern.exec(text)?.[0] ?? null;
  };
  const push = (kind: Token['kind'], raw: string, textOf = raw, repaired = false) => {
    tokens.push({ kind, raw, text: textOf, glued, repaired });
    at += raw.length;
    glued = true;
  };
  while (at < text.length) {
    const gap = take(space);
    if (gap !== null) {
      at += gap.length;
      glued = false;
      continue;
    }
    const char = text[at]!;
    const previous = glued ? tokens.at(-1) : undefined;
    const afterDigits = previous?.kind === 'numeral';
    if (!afterDigits && previous?.kind !== 'word' && /[0oO.,]/u.test(char)) {
      const sign = take(glyph);
      if (sign !== null) {
        push('word', sign, overloadSign);
        continue;
      }
    }
    // Dots in a row are no decimal marks.
    if (char === '.' && previous?.text === '.') {
      push('mark', char);
      continue;
    }
    if (!afterDigits && /[\d.,oOlI|]/u.test(char)) {
      const stamp = take(time) ?? take(date) ?? take(ordinal);
      if (stamp !== null) {
        push('code', stamp);
        continue;
      }
      const slip = previous?.kind === 'word' ? null : take(slipped);
      if (slip !== null && /[oOlI|]/u.test(slip) && isRepair(slip)) {
        push('numeral', slip, slip.replace(/[oO]/gu, '0').replace(/[lI|]/gu, '1'), true);
        continue;
      }
      const between = previous?.kind === 'word' ? null : take(lettered);
      if (between !== null) {
        const [whole, fraction] = between.split(/[vk]/iu);
        push('numeral', between, `${whole}.${fraction}`, true);
        tokens.push({
          kind: 'word',
          raw: 'v',
          text: /v/iu.test(between) ? 'v' : 'k',
          glued: true,
          repaired: false,
        });
        continue;
      }
      const digits = take(listed) ?? take(numeral);
      if (digits !== null) {
        push('numeral', digits);
        continue;
      }
    }
    const letters = take(word);
    if (letters !== null) {
      takeWord(letters);
      continue;
    }
    const drawn = take(picture);
    if (drawn !== null) {
      push('word', drawn);
      continue;
    }
    const arrow = take(arrows);
    if (arrow !== null) {
      push('mark', arrow, '→');
      continue;
    }
    const one = String.fromCodePoint(text.codePointAt(at)!);
    push(one === '%' || one === '°' ? 'word' : 'mark', one);
  }
  return tokens;

  function takeWord(letters: string): void {
    const parts = elided(letters);
    for (const [index, part] of parts.entries()) {
      const written = index < parts.length - 1 ? `${part}'` : part;
      push('word', written, foldWord(part.replaceAll("'", '')));
    }
    const unit = tokens.at(-1)!.glued && tokens.at(-2)?.kind === 'numeral';
    // "rpm1450".
    const sign = signAhead.test(letters);
    const tail = sign || (unit && text[at] === '-') ? null : take(codeTail);
    if (tail !== null) {
      const last = tokens.pop()!;
      at -= last.raw.length;
      glued = last.glued;
      const whole = take(code) ?? last.raw + tail;
      push('code', whole, whole.toLowerCase());
    }
  }
}

/** "l'essence" is two words; "won't" and "j'ai" are one. */
function elided(letters: string): string[] {
  if (!letters.includes("'")) return [letters];
  const parts: string[] = [];
  for (const part of letters.split("'")) {
    const before = parts.at(-1);
    if (before !== undefined && part.length <= 2) parts[parts.length - 1] = `${before}'${part}`;
    else parts.push(part);
  }
  return parts;
}

/** "0.4O7" and "5OO" are slips; "OL", "0L" and "2l" are not. */
function isRepair(slip: string): boolean {
  const digits = slip.replace(/\D/gu, '').length;
  if (/^\d+[lI|]+$/u.test(slip) || /\d.*\|/u.test(slip)) return false;
  return digits > 0 && (/[.,]/u.test(slip) || /^\d/u.test(slip));
}
