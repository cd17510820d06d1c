// Reads one whole number in words, of any language, for the reader of numbers.
import { isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Habits } from './spoken-number.ts';

export interface Cardinal {
  value: number;
  place: number;
  to: number;
}

/** One whole number in words: "dreihundert acht und vierzig", "quatre-vingt-dix-neuf". */
export function readCardinal(pieces: readonly Piece[], from: number, habits: Habits): Cardinal | null {
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
    } else if (multiplier !== null && (last === 'thousand' ? multiplier === 100 : group > 0 || !took)) {
      if (multiplier === 100 && last === 'hundred') break;
      // "Mil cuatrocientas y mil quinientas" is two numbers.
      if (multiplier >= 1000 && (total > 0 || joined === 1)) break;
      // "k", and "grand" where it may be praise, count only what stands before them.
      if (!took && (piece!.text.length < 2 || isRole(piece, 'filler'))) break;
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

/** What a word counts. */
export function numberOf(piece: Piece | undefined): number | null {
  const number = piece?.meaning.number ?? null;
  return Number.isInteger(number) ? number : null;
}

/** "zwei und fuenfzig": the tens behind the units. */
function tensBefore(pieces: readonly Piece[], at: number): Cardinal | null {
  if (!isRole(pieces[at + 1], 'units-first')) return null;
  const tens = numberOf(pieces[at + 2]);
  return tens !== null && tens >= 20 && tens < 100 && tens % 10 === 0
    ? { value: tens, place: 1, to: at + 3 }
    : null;
}
