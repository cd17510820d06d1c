// Knows the words that steer a conversation, as whole messages only, with slang and slips of one letter.

import type { Token } from './hear-tokens.ts';
import type { Heard, SteeringWord } from './heard.ts';
import type { Lexicon } from './lexicon.ts';
import { longestMatch, type Match } from './phrase-trie.ts';

/** No command is longer than this; a longer message is a story. */
const mostTokens = 12;

export function hearWord(tokens: readonly Token[], lexicons: readonly Lexicon[]): Heard | null {
  const spoken = tokens.filter(({ kind }) => kind !== 'mark');
  const said = spoken.length > 0 ? spoken : tokens;
  if (said.length === 0 || said.length > mostTokens) return null;
  const found = new Set<SteeringWord>();
  let at = 0;
  while (at < said.length) {
    const match = matchWord(said, at, lexicons);
    if (match !== null) {
      found.add(match.found);
      at += match.length;
      continue;
    }
    const filler = fillerAt(said, at, lexicons);
    if (filler === 0) return null;
    at += filler;
  }
  if (found.size === 0) return null;
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
  const { text, kind } = said[at]!;
  if (kind !== 'word' || said.length > 3) return null;
  return withoutSlip(text, lexicons);
}

function fillerAt(said: readonly Token[], at: number, lexicons: readonly Lexicon[]): number {
  let longest = 0;
  for (const { meanings } of lexicons) {
    const match = longestMatch(meanings, said, at);
    if (match?.found.roles.has('filler') && match.length > longest) longest = match.length;
  }
  return longest;
}

function withoutSlip(text: string, lexicons: readonly Lexicon[]): Match<SteeringWord> | null {
  const drawnOut = /(.)\1\1/u.test(text);
  for (const { words, meanings, longWords } of lexicons) {
    if (drawnOut) {
      for (const letters of ['$1', '$1$1']) {
        const short = text.replace(/(.)\1{2,}/gu, letters);
        const match = longestMatch(words, [{ text: short }], 0);
        if (match !== null) return match;
      }
    }
    if (meanings.next.has(text)) return null;
    if (text.length < 3 || text.length > 16) continue;
    let near: SteeringWord | null = null;
    for (const [long, word] of longWords) {
      if (!isOneSlip(text, long)) continue;
      if (near !== null && near !== word) return null;
      near = word;
    }
    if (near !== null) return { found: near, length: 1 };
  }
  return null;
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
