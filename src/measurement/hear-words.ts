// Knows the words that steer a conversation, as whole messages only, with slang and slips of one letter.

import { hearAsk, isSelf } from './hear-asks.ts';
import type { Token } from './hear-tokens.ts';
import type { Heard, SteeringWord } from './heard.ts';
import type { Lexicon } from './lexicon.ts';
import { longestMatch, type Match, type PhraseTrie } from './phrase-trie.ts';

/** No command is longer than this; a longer message is a story. */
const mostTokens = 12;
const mostForgiven = 6;

export function hearWord(tokens: readonly Token[], lexicons: readonly Lexicon[]): Heard | null {
  const spoken = tokens.filter(({ kind }) => kind !== 'mark');
  const said = spoken.length > 0 ? spoken : tokens;
  if (said.length === 0 || said.length > mostTokens) return null;
  const found = new Set<SteeringWord>();
  let at = 0;
  while (at < said.length) {
    const match = matchWord(said, at, lexicons);
    if (match !== null) {
      if (match.found === 'human' && isSelf(said, at, lexicons)) return null;
      found.add(match.found);
      at += match.length;
      continue;
    }
    const filler = fillerAt(said, at, lexicons);
    if (filler === 0) return hearAsk(said, lexicons);
    at += filler;
  }
  if (found.size === 0) return hearAsk(said, lexicons);
  const paused = tokens.some(({ kind, text }) => kind === 'mark' && ',.;!-\n'.includes(text));
  const word = together(found, paused);
  return word === null ? { kind: 'unclear', why: 'two-meanings' } : { kind: 'word', word };
}

/** What several words in one message come to: "ok, done" is done; "yes no" is nothing. */
function together(found: ReadonlySet<SteeringWord>, paused: boolean): SteeringWord | null {
  const words = new Set(found);
  if (words.has('yes') && words.has('no')) return null;
  if (words.size > 1) words.delete('yes');
  if (words.size > 1 && (paused || words.has('pause') || words.has('back'))) {
    if (!words.has('done')) words.delete('no');
  }
  if (words.has('human')) words.delete('help');
  if (words.has('stop')) for (const milder of ['pause', 'help'] as const) words.delete(milder);
  if (words.has('done')) words.delete('help');
  return words.size === 1 ? [...words][0]! : null;
}

function matchWord(
  said: readonly Token[],
  at: number,
  lexicons: readonly Lexicon[],
): Match<SteeringWord> | null {
  let best: Match<SteeringWord> | null = null;
  for (const { words } of lexicons) {
    const match = longestMatch(words, said, at);
    if (match !== null && (best === null || match.length > best.length)) best = match;
  }
  if (best !== null) return best;
  if (said[at]!.kind !== 'word' || !mayHaveSlips(said)) return null;
  return withoutSlip(said[at]!.text, lexicons) ?? phraseWithSlip(said, at, lexicons);
}

/** Slips are forgiven in short messages without a figure. */
const mayHaveSlips = (said: readonly Token[]) =>
  said.length <= mostForgiven && said.every(({ kind }) => kind === 'word');

function fillerAt(said: readonly Token[], at: number, lexicons: readonly Lexicon[]): number {
  let longest = 0;
  for (const { meanings } of lexicons) {
    const match = longestMatch(meanings, said, at);
    if (match === null || match.length <= longest) continue;
    if (match.found.roles.has('filler') || match.found.roles.has('beside')) longest = match.length;
  }
  if (longest > 0) return longest;
  const { text } = said[at]!;
  if (/^\p{Extended_Pictographic}/u.test(text)) return 1;
  const known = lexicons.some(({ meanings, flags }) => meanings.next.has(text) || flags.next.has(text));
  if (known || text.length < 5 || text.length > longestSlip || !mayHaveSlips(said)) return 0;
  for (const { longFillers } of lexicons) {
    for (const filler of longFillers) if (isSlip(text, filler)) return 1;
  }
  return 0;
}

const longestSlip = 16;

function withoutSlip(text: string, lexicons: readonly Lexicon[]): Match<SteeringWord> | null {
  const drawnOut = /(.)\1\1/u.test(text);
  for (const lexicon of lexicons) {
    const { words, meanings, longWords } = lexicon;
    if (drawnOut) {
      for (const letters of ['$1', '$1$1']) {
        const short = text.replace(/(.)\1{2,}/gu, letters);
        const match = longestMatch(words, [{ text: short }], 0);
        if (match !== null) return match;
      }
    }
    // A word of danger is never a slip of another.
    if (meanings.next.has(text) || lexicon.flags.next.has(text)) return null;
    const small = withoutEnding(text, lexicon);
    if (small !== null) return small;
    if (text.length < 3 || text.length > longestSlip) continue;
    let near: SteeringWord | null = null;
    for (const [long, word] of longWords) {
      if (!isSlip(text, long)) continue;
      if (near !== null && near !== word) return null;
      near = word;
    }
    if (near !== null) return { found: near, length: 1 };
  }
  return null;
}

/** "J'ai besion d'aide": one word of a phrase that is none, and nearly the one wanted there. */
function phraseWithSlip(
  said: readonly Token[],
  at: number,
  lexicons: readonly Lexicon[],
): Match<SteeringWord> | null {
  for (const { words } of lexicons) {
    let node = words;
    let slips = 0;
    for (let i = at; i < said.length; i++) {
      const { text } = said[i]!;
      let next = node.next.get(text);
      if (next === undefined && slips === 0 && text.length >= 4 && !isKnown(text, lexicons)) {
        next = nearBranch(node, text);
        slips++;
      }
      if (next === undefined) break;
      node = next;
      if (i === said.length - 1 && slips > 0 && node.found !== null)
        return { found: node.found, length: i - at + 1 };
    }
  }
  return null;
}

function nearBranch(node: PhraseTrie<SteeringWord>, text: string): PhraseTrie<SteeringWord> | undefined {
  for (const [word, branch] of node.next) {
    if (
      word[0] === text[0] &&
      word.length >= 4 &&
      Math.abs(word.length - text.length) <= 2 &&
      isSlip(text, word)
    ) {
      return branch;
    }
  }
  return undefined;
}

const isKnown = (text: string, lexicons: readonly Lexicon[]) =>
  lexicons.some(({ meanings, flags, words }) => [meanings, flags, words].some(({ next }) => next.has(text)));

/** "Prontinho", "listito": the small form of a word. */
function withoutEnding(text: string, { diminutives, words }: Lexicon): Match<SteeringWord> | null {
  for (const ending of diminutives) {
    if (!text.endsWith(ending) || text.length < ending.length + 3) continue;
    const stem = text.slice(0, -ending.length);
    for (const end of ['', 'o', 'a', 'e']) {
      const match = longestMatch(words, [{ text: stem + end }], 0);
      if (match !== null) return match;
    }
  }
  return null;
}

/** One slip, never in the first letter; in words of eight letters and more two. */
function isSlip(typed: string, word: string): boolean {
  if (typed[0] !== word[0] || Math.abs(typed.length - word.length) > 2) return false;
  return isOneSlip(typed, word) || (word.length >= 8 && isWithin(typed, word, 2));
}

/** Whether so many letters struck wrong, lost, added, or exchanged with the next, make the one of the other (Damerau 1964). */
function isWithin(typed: string, word: string, slips: number): boolean {
  let i = 0;
  while (i < typed.length && typed[i] === word[i]) i++;
  const [rest, wanted] = [typed.slice(i), word.slice(i)];
  if (rest === wanted) return true;
  if (slips === 0 || Math.abs(rest.length - wanted.length) > slips) return false;
  const exchanged = rest.length > 1 && rest[0] === wanted[1] && rest[1] === wanted[0];
  return (
    (exchanged && isWithin(rest.slice(2), wanted.slice(2), slips - 1)) ||
    isWithin(rest.slice(1), wanted.slice(1), slips - 1) ||
    isWithin(rest.slice(1), wanted, slips - 1) ||
    isWithin(rest, wanted.slice(1), slips - 1)
  );
}

/** Two letters exchanged, one doubled, lost or added; in words of five letters and more also one struck wrong. Never the first. */
function isOneSlip(typed: string, word: string): boolean {
  const longer = typed.length - word.length;
  if (Math.abs(longer) > 1 || typed[0] !== word[0]) return false;
  let i = 0;
  while (i < typed.length && typed[i] === word[i]) i++;
  if (longer === 1) return typed.slice(i + 1) === word.slice(i);
  if (longer === -1) return typed.slice(i) === word.slice(i + 1);
  if (typed[i] === word[i + 1] && typed[i + 1] === word[i] && typed.slice(i + 2) === word.slice(i + 2))
    return true;
  return word.length >= 5 && typed.slice(i + 1) === word.slice(i + 1);
}
