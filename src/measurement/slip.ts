// Whether two figures differ by a slip of the fingers, two digits changed places, rather than by what was measured; for readings taken twice.
import { fromCounts, toCounts } from './counts.ts';

/** 0.748 and 0.784, at one resolution: alike but for two neighbours that stand the other way round. */
export function digitsSwapped(a: number, b: number, resolution: number): boolean {
  const [first, second] = [a, b].map((value) => String(Math.abs(Math.round(toCounts(value, resolution)))));
  if (first === undefined || second === undefined) return false;
  const width = Math.max(first.length, second.length);
  const [left, right] = [first.padStart(width, '0'), second.padStart(width, '0')];
  const apart = [...left].flatMap((digit, place) => (digit === right[place] ? [] : [place]));
  const [one, other] = apart;
  if (apart.length !== 2 || one === undefined || other !== one + 1) return false;
  return left[one] === right[other] && left[other] === right[one];
}

/** What was meant if two neighbouring digits of this figure changed places. */
export function swapsOf(value: number, resolution: number): number[] {
  const digits = String(Math.abs(Math.round(toCounts(value, resolution))));
  return [...digits].slice(1).flatMap((digit, place) => {
    const before = digits[place] ?? '';
    if (before === digit) return [];
    const swapped = `${digits.slice(0, place)}${digit}${before}${digits.slice(place + 2)}`;
    return [fromCounts(Math.sign(value) * Number(swapped), resolution)];
  });
}
