// Brings what was typed to plain digits, marks and letters, for the parser: other scripts' digits, wide forms, dashes, quotes, hidden marks.

const plain = /^[\x20-\x7e\n]*$/u;
/** Marks of direction, joiners, variation selectors (U+FE0E, U+FE0F), skin tones: nothing that anybody sees. */
const hidden = /\p{Default_Ignorable_Code_Point}|\p{Emoji_Modifier}/gu;

export function foldText(text: string): string {
  if (plain.test(text)) return text;
  return (
    text
      .replace(hidden, '')
      // A raised figure is a note's number, but behind a unit (min⁻¹, cm²).
      .replace(/(?<![\p{L}\u207b])[\u00b2\u00b3\u00b9\u2070-\u2079]+/gu, ' ')
      .replace(/\p{Nd}/gu, asciiDigit)
      .replace(/(?<=\d)[\u00a0\u202f\u2009\u2007](?=\d{3}(?!\d))/gu, "'")
      .replace(/[\u00bc-\u00be\u2150-\u215e\u2189]/gu, ' $&')
      // A sign of order stays one.
      .replace(/(?<=\d)[\u00ba\u00aa]/gu, 'th')
      .replace(/[\u2033\u201c-\u201f\u00ab\u00bb]/gu, '"')
      .replace(/[\u2018-\u201b\u02bc\u00b4\u2032]/gu, "'")
      .normalize('NFKC')
      .replace(/[\u2212\u2010-\u2013\u2015\ufe63]/gu, '-')
      .replace(/[\u066b\u00b7\u22c5](?=\d)/gu, '.')
      .replace(/\u066c(?=\d)/gu, "'")
      .replace(/[\u060c\u3001]/gu, ',')
      .replace(/\u2044/gu, '/')
      .replace(/[\u223c\u2248\u301c\uff5e]/gu, '~')
      .replace(/\u2264/gu, '<')
      .replace(/\u2265/gu, '>')
      .replace(/[\u27a1\u21d2\u2794\u279c]/gu, '\u2192')
      .replace(/\r\n?|[\u2028\u2029\v\f]/gu, '\n')
      .replace(/\u20e3/gu, '')
  );
}

/** The digit of any script: in Unicode, the ten digits of a script stand in order, and a run of them begins at its nought. */
function asciiDigit(digit: string): string {
  const point = digit.codePointAt(0)!;
  if (point < 0x80) return digit;
  let nought = noughts.get(point);
  if (nought === undefined) {
    nought = point;
    while (point - nought < 9 && /\p{Nd}/u.test(String.fromCodePoint(nought - 1))) nought--;
    if (isMathematical(point)) nought = point - ((point - 0x1d7ce) % 10);
    noughts.set(point, nought);
  }
  return String((point - nought) % 10);
}

const noughts = new Map<number, number>();

/** The mathematical digits stand in five sets of ten without a gap. */
const isMathematical = (point: number) => point >= 0x1d7ce && point <= 0x1d7ff;

/** What was typed as a whole, however it was typed: no capitals, accents, quotes, hyphens, or full stop at its end. */
export function foldPhrase(text: string): string {
  return foldWord(foldText(text))
    .replace(/['"]/gu, '')
    .replace(/[\s-]+/gu, ' ')
    .replace(/[\s.!?\u2026]+$/u, '')
    .trim();
}

/** A word without its accents and capitals. */
export function foldWord(word: string): string {
  const lower = word.toLowerCase();
  if (/^[\x20-\x7e]*$/u.test(lower)) return lower;
  return lower.normalize('NFD').replace(/\p{M}/gu, '').replaceAll('ß', 'ss');
}
