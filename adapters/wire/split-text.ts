// Cuts a text that is longer than a platform's limit where a reader would pause, for every adapter that sends messages.

/** `size` is what the platform counts; a longer piece never has a smaller size. */
export function splitText(text: string, limit: number, size: (piece: string) => number = lengthOf): string[] {
  return splitByLimits(text, () => limit, size);
}

/** As above, with a limit of its own for each piece, counted from 0: a caption is shorter than what follows it. */
export function splitByLimits(
  text: string,
  limitOf: (piece: number) => number,
  size: (piece: string) => number = lengthOf,
): string[] {
  const pieces: string[] = [];
  let rest = text.trim();
  while (rest.length > 0) {
    const cut = findCut(rest, limitOf(pieces.length), size);
    pieces.push(rest.slice(0, cut).trimEnd());
    rest = rest.slice(cut).trimStart();
  }
  return pieces;
}

const lengthOf = (piece: string) => piece.length;

const pauses = [/[.!?…]["'”’)\]]*\s+/gu, /\n+/gu, /\s+/gu];

function findCut(text: string, limit: number, size: (piece: string) => number): number {
  if (size(text) <= limit) return text.length;
  const most = longestFitting(text, limit, size);
  for (const pause of pauses) {
    const end = lastEnd(pause, text, most);
    if (end > 0) return end;
  }
  return most;
}

/** The end of the last match whose visible part still fits; the blanks behind a sentence fall away at the cut. */
function lastEnd(pause: RegExp, text: string, most: number): number {
  let last = 0;
  for (const match of text.matchAll(pause)) {
    const seen = match.index + match[0].trimEnd().length;
    if (seen > most) break;
    if (seen > 0) last = match.index + match[0].length;
  }
  return last;
}

function longestFitting(text: string, limit: number, size: (piece: string) => number): number {
  let fits = 1;
  let above = text.length;
  while (above - fits > 1) {
    const middle = Math.floor((fits + above) / 2);
    if (size(text.slice(0, middle)) <= limit) fits = middle;
    else above = middle;
  }
  const splitsPair = isHighSurrogate(text.charCodeAt(fits - 1));
  return splitsPair && fits > 1 ? fits - 1 : fits;
}

const isHighSurrogate = (unit: number) => unit >= 0xd800 && unit <= 0xdbff;
