// Finds red flags in a message: a clause that has a word of each slot of a pattern, and neither denies nor excuses it.
import { isMark, isRole, type Piece } from './hear-pieces.ts';
import type { Token } from './hear-tokens.ts';
import type { FlagSlot, Lexicon, PatternTables } from './lexicon.ts';
import { longestMatch } from './phrase-trie.ts';

/** So many words may lie between the first and the last word of a flag. */
const widest = 8;
/** A denial counts so many words before the first, and behind the last. */
const before = 5;
const behind = 2;
/** What stands soon behind is parted from it by so many words at most. */
const soon = 2;

interface Hit {
  from: number;
  to: number;
}

/** "It climbs and does not come down": a denial behind "and" looks ahead only. */
interface Denial extends Hit {
  ahead: boolean;
}

interface Clause {
  from: number;
  to: number;
  denials: Denial[];
  /** Of denials, and of "won't" and "refuses": a flag that has one of these of its own is no longer denied by another. */
  negative: Hit[];
  supposed: number;
}

const clauseFrom = (at: number): Clause => ({
  from: at,
  to: at,
  denials: [],
  negative: [],
  supposed: Number.POSITIVE_INFINITY,
});

export function hearFlag(
  tokens: readonly Token[],
  pieces: readonly Piece[],
  lexicons: readonly Lexicon[],
): string | null {
  let clauses: Clause[] | null = null;
  for (const lexicon of lexicons) {
    if (!hasAny(tokens, lexicon)) continue;
    clauses ??= clausesOf(pieces);
    for (const clause of clauses) {
      const flag = flagIn(clause, tokens, lexicon);
      if (flag !== null) return flag;
    }
  }
  return null;
}

/** From here on an engine that is let go should come down. */
const highSpeed = 2500;

/** "4000", "4.000", "4k", "5 mil". */
function isHighSpeed(tokens: readonly Token[], at: number, { meanings }: Lexicon): boolean {
  const { kind, text } = tokens[at]!;
  if (kind !== 'numeral') return false;
  if (/^\d{1,2}[.,']?\d{3}$/u.test(text)) return Number(text.replace(/\D/gu, '')) >= highSpeed;
  const next = tokens[at + 1]?.text ?? '';
  const thousands = meanings.next.get(next)?.found?.multiplier === 1000 || next === '000' || next === '500';
  return thousands && /^(?:[3-9]|1\d)$/u.test(text);
}

/** The slots that the words at a place fill, each with how many words it takes. */
export function slotsAt(
  tokens: readonly Token[],
  at: number,
  end: number,
  lexicon: PatternTables,
): [readonly FlagSlot[], number][] {
  const found: [readonly FlagSlot[], number][] = [];
  const match = longestMatch(lexicon.flags, tokens, at);
  if (match !== null && at + match.length <= end) found.push([match.found, match.length]);
  if (match !== null && match.length > 1) {
    const short = lexicon.flags.next.get(tokens[at]!.text)?.found;
    if (short) found.push([short, 1]);
  }
  const { text } = tokens[at]!;
  for (const { prefix, slot } of lexicon.flagPrefixes.get(text.slice(0, 3)) ?? []) {
    if (text.startsWith(prefix)) found.push([[slot], 1]);
  }
  return found;
}

function hasAny(tokens: readonly Token[], lexicon: Lexicon): boolean {
  return tokens.some(
    (token, at) => token.kind === 'word' && slotsAt(tokens, at, tokens.length, lexicon).length > 0,
  );
}

function clausesOf(pieces: readonly Piece[]): Clause[] {
  const clauses: Clause[] = [];
  let clause = clauseFrom(0);
  for (const [index, piece] of pieces.entries()) {
    const end = piece.at + piece.length;
    // "Fuel on the floor, it drips": what goes on about the same thing is one clause.
    const goesOn = isMark(piece, ',') && isRole(pieces[index + 1], 'pronoun');
    const spacedDash = isMark(piece, '-') && !piece.glued;
    if ((isMark(piece, '.,;!?:\n()—') && !goesOn) || spacedDash || isRole(piece, 'but')) {
      clause.to = piece.at;
      // "Smoke? No."
      if (isMark(piece, '?') && isRole(pieces[index + 1], 'negation')) clause.supposed = clause.from;
      clauses.push(clause);
      // "But" may be part of a pattern.
      clause = clauseFrom(isRole(piece, 'but') ? piece.at : end);
    } else if (isRole(piece, 'negation')) {
      clause.denials.push({ from: piece.at, to: end, ahead: isRole(pieces[index - 1], 'joiner') });
    } else if (isRole(piece, 'hypothetical')) {
      clause.supposed = Math.min(clause.supposed, piece.at);
    }
    if (isRole(piece, 'negation', 'not-negation', 'refusal'))
      clause.negative.push({ from: piece.at, to: end });
    clause.to = Math.max(clause.to, end);
  }
  clauses.push(clause);
  return clauses.filter(({ from, to }) => to > from);
}

function flagIn(clause: Clause, tokens: readonly Token[], lexicon: Lexicon): string | null {
  const latest = new Map<number, (Hit | undefined)[]>();
  const whole = new Map<number, Hit[]>();
  for (let at = clause.from; at < clause.to; at++) {
    const filled = slotsAt(tokens, at, clause.to, lexicon);
    if (isHighSpeed(tokens, at, lexicon)) filled.push([lexicon.speedSlots, 1]);
    for (const [slots, length] of filled) {
      for (const { pattern, slot } of slots) {
        const hits = latest.get(pattern) ?? [];
        if (lexicon.patterns[pattern]!.follows.has(slot)) {
          const previous = hits[slot - 1];
          if (previous === undefined || previous.to > at || at - previous.to > soon) continue;
        }
        hits[slot] = { from: at, to: at + length };
        latest.set(pattern, hits);
        const needed = hits.slice(0, lexicon.patterns[pattern]!.slots).filter((hit) => hit !== undefined);
        if (needed.length < lexicon.patterns[pattern]!.slots || whole.has(pattern)) continue;
        if (at - Math.min(...needed.map(({ from }) => from)) <= widest) whole.set(pattern, needed);
      }
    }
  }
  // "The lead is burning hot": the flag that accounts for more of the words.
  const weight = (hits: readonly Hit[]) => hits.reduce((sum, { from, to }) => sum + to - from, 0);
  for (const [pattern, hits] of [...whole].sort(([, a], [, b]) => weight(b) - weight(a))) {
    const { flag, unless } = lexicon.patterns[pattern]!;
    if (latest.get(pattern)?.[unless] === undefined && !isDenied(clause, hits)) return flag;
  }
  return null;
}

function isDenied({ denials, negative, supposed }: Clause, hits: readonly Hit[]): boolean {
  const first = Math.min(...hits.map(({ from }) => from));
  const last = Math.max(...hits.map(({ to }) => to));
  if (supposed < last) return true;
  const within = (hit: Hit) => (denial: Hit) => denial.from >= hit.from && denial.from < hit.to;
  if (hits.some((hit) => negative.some(within(hit)))) return false;
  return denials.some(({ from, to, ahead }) => {
    if (ahead && from >= last) return false;
    const own = hits.some((hit) => from >= hit.from && from < hit.to);
    return !own && from >= first - before && to <= last + behind;
  });
}
