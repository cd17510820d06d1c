// Makes what one person typed, and what they call themselves, safe to show to another; for everything that is passed on.

/** Signs that turn the reading direction around, and could make a line say something else than it does. */
const turning = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;
const control = /[\p{Cc}\u2028\u2029]/gu;
const longestQuote = 1_500;
const longestName = 32;

/** One short line without signs that steer; a name is never more than a name. */
export function quoteName(name: string | null, otherwise: string): string {
  const plain = (name ?? '')
    .replaceAll(/\s+/gu, ' ')
    .replaceAll(/[\p{Cc}\p{Cf}\p{Co}\p{Cn}]/gu, '')
    .trim();
  const short = [...plain].slice(0, longestName).join('').trim();
  return short === '' ? otherwise : short;
}

/** What somebody typed. Further lines are set in, so that none of them can pass for a line of the program's. */
export function quoteWords(text: string): string {
  const lines = text
    .replaceAll(turning, '')
    .split(/\r\n|[\n\r\u2028\u2029]/u)
    .map((line) => line.replaceAll(control, ' ').trimEnd())
    .filter((line) => line !== '');
  const quoted = lines.join('\n   ').trim();
  return quoted.length <= longestQuote
    ? quoted
    : `${[...quoted.slice(0, longestQuote)].slice(0, -1).join('')}…`;
}
