// Tells which figures of a message are denied or taken back, and what takes their place.
import { isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Quantity } from './hear-quantities.ts';

/** "not 0.45": denied just in front of it. */
export function isDenied(
  pieces: readonly Piece[],
  { from }: Quantity,
  second: boolean,
  several: boolean,
): boolean {
  for (let at = from - 1; at >= Math.max(0, from - 3); at--) {
    const piece = pieces[at];
    // "0.54 no 0.45" takes back what was before it; "no es 0,45" denies what follows.
    if (isRole(piece, 'correction') && at === from - 1 && (second || !several)) return false;
    if (isRole(piece, 'negation') && !isRole(piece, 'not-negation', 'no-reading')) {
      return !isMark(pieces[at + 1], ',.');
    }
    if (!isRole(piece, 'article', 'plain', 'filler', 'label', 'hedge')) return false;
  }
  return false;
}

/** "Not jumping", "no longer moving", "springt nicht mehr". */
export function isWordDenied(pieces: readonly Piece[], at: number): boolean {
  const denies = (piece: Piece | undefined) => isRole(piece, 'negation') && !isRole(piece, 'not-negation');
  let before = at - 1;
  while (isRole(pieces[before], 'plain', 'filler', 'article') && !denies(pieces[before])) before--;
  return denies(pieces[before]) || denies(pieces[at + 1]);
}

/** "I put 0.64 but it was 0.46": what was typed before is taken back by what the meter showed. */
export function correctedByPast(
  pieces: readonly Piece[],
  quantities: readonly Quantity[],
): readonly Quantity[] | null {
  const [one, two] = quantities;
  if (quantities.length !== 2 || !one || !two) return null;
  // "Hab 0,64 geschrieben, war aber 0,46": the verb may stand behind.
  const behind = isRole(pieces[one.to], 'entered') ? 1 : 0;
  const entered = behind === 1 || pieces.slice(0, one.from).some((piece) => isRole(piece, 'entered'));
  const link = pieces.slice(one.to + behind, two.from);
  const takesBack = link.some((piece) => isRole(piece, 'past', 'but', 'correction'));
  return entered &&
    takesBack &&
    !link.some((piece) => isRole(piece, 'entered', 'now', 'or', 'elsewhen', 'wish'))
    ? [two]
    : null;
}

/** "0.64 but it was 0.46", "it was 0.46 and I typed 0.64", "0.36 or 0.63": either could be meant. */
export function isUndecided(pieces: readonly Piece[], quantities: readonly Quantity[]): boolean {
  return quantities.slice(1).some((quantity, index) => {
    const link = pieces.slice(quantities[index]!.to, quantity.from);
    const has = (...any: Parameters<typeof isRole>[1][]) => link.some((piece) => isRole(piece, ...any));
    const rest = pieces.slice(quantity.to);
    const earlier =
      rest.some((piece) => isRole(piece, 'elsewhen', 'wish', 'past')) ||
      has('elsewhen', 'wish', 'now', 'correction');
    const typed = pieces.slice(0, quantities[index]!.from).some((piece) => isRole(piece, 'entered'));
    return (
      (has('but') && has('past') && !earlier) || has('or', 'entered') || (typed && has('elsewhen', 'wish'))
    );
  });
}

/** "0.54, no, sorry": but "it can't be, no?" only asks to agree. */
export function endsTakenBack(pieces: readonly Piece[], kept: readonly Quantity[]): boolean {
  const at = pieces.findLastIndex(({ kind }) => kind !== 'mark');
  const last = pieces[at];
  if (!isRole(last, 'correction') || isRole(last, 'label', 'filler')) return false;
  if (!isRole(last, 'negation')) return true;
  const said = pieces
    .slice(kept.at(-1)!.to, at)
    .some((piece) => piece.kind === 'word' && !isRole(piece, 'correction', 'plain', 'filler'));
  return !said && !isMark(pieces[at + 1], '?');
}

/** "0.54, sorry, 0.45": what comes behind the last word that takes something back. */
export function lastWord(
  pieces: readonly Piece[],
  quantities: readonly Quantity[],
): { kept: readonly Quantity[]; corrected: boolean } {
  for (let at = pieces.length - 1; at >= 0; at--) {
    if (!isRole(pieces[at], 'correction')) continue;
    const after = quantities.filter(({ from }) => from > at);
    const before = quantities.filter(({ to }) => to <= at);
    if (after.length > 0 && before.length > 0) return { kept: after, corrected: true };
  }
  return { kept: quantities, corrected: false };
}
