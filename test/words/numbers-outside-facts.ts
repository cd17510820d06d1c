// Finds the numbers of a text that its facts do not hold, for every test of a conversation.
import type { Facts } from '../../src/chat/facts.ts';

const units = 'V|mV|mm|Nm|kPa|%|1/min|s|min|h|d';

/**
 * The numbers of the text, as written, that stand nowhere in the facts. Exempt, as the pipe contract has it, are digits
 * inside names, dates and times of day, and whatever the facts hold as a string: names, and words quoted from a person.
 */
export function numbersOutsideFacts(text: string, facts: Facts): string[] {
  const known = new Set<number>();
  const quoted: string[] = [];
  gather(facts, known, quoted);
  let rest = text;
  for (const string of quoted.sort((a, b) => b.length - a.length)) rest = rest.replace(alone(string), ' ');
  rest = rest.replace(/\b\d{4}-\d{2}-\d{2}\b|\b\d{1,2}:\d{2}\b/g, ' ').replaceAll('1/min', ' ');
  return wordsWithDigits(rest)
    .flatMap((word) => numbersIn(word))
    .filter((number) => !holds(known, readNumber(number)));
}

function gather(value: unknown, known: Set<number>, quoted: string[]): void {
  if (typeof value === 'number') known.add(value);
  else if (typeof value === 'string') {
    if (/\p{N}/u.test(value)) quoted.push(value);
  } else if (typeof value === 'object' && value !== null) {
    for (const inner of Object.values(value)) gather(inner, known, quoted);
  }
}

/** A pin called "1" is not the 1 of 1.5. */
const alone = (string: string) =>
  new RegExp(`(?<![\\p{N}][.,]?)${string.replace(/[\^$.*+?()[\]{}|]/g, '\\$&')}(?![.,]?\\p{N})`, 'gu');

const wordsWithDigits = (text: string) =>
  text.match(/[\p{L}\p{N}.,/·'’−-]*\p{N}[\p{L}\p{N}.,/·'’−-]*%?/gu) ?? [];

/** None where the word is a name; two where it is a range. */
function numbersIn(word: string): string[] {
  const bare = word
    .replace(/^[.,'’]+(?!\d)|[.,'’-]+$/g, '')
    .replace(new RegExp(`(?<=\\p{N})(${units})$`, 'u'), '');
  if (/\p{L}/u.test(bare)) return [];
  return bare.match(/(?<!\p{N})[-−]?[\p{N}.,/'’]+|\p{N}[\p{N}.,/'’]*/gu) ?? [];
}

/** A comma is read as a decimal one, so that thousands grouped by it are found out; ½ and its kin count as what they say. */
function readNumber(number: string): number {
  const plain = number.replace('−', '-').replace(',', '.');
  const fraction = /^(-?\d*)(\p{No})$/u.exec(plain);
  if (!fraction) return Number(plain);
  const [above, below] = fraction[2]!.normalize('NFKC').split('⁄').map(Number);
  return Number(fraction[1] || 0) + above! / below!;
}

/** Binary fractions may differ from what is written in the twelfth place. */
function holds(known: ReadonlySet<number>, value: number): boolean {
  return [...known].some((other) => Math.abs(other - value) < 1e-9);
}
