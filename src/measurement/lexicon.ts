// What a language's lexicon says, and the form of it that `hear` looks words up in, prepared once.

import { foldPhrase, foldText, foldWord } from './hear-fold.ts';
import { tokenise } from './hear-tokens.ts';
import type { SteeringWord } from './heard.ts';
import { addPhrase, emptyTrie, type PhraseTrie } from './phrase-trie.ts';
import type { TypedUnit } from './unit-factors.ts';

/** What a phrase can do in a message about readings; the lexicon lists the phrases of each. */
export const roles = [
  'point',
  'inner-point',
  'joiner',
  'units-first',
  'and-half',
  'article',
  'minus',
  'hedge',
  'between',
  'to',
  'or',
  'plus-minus',
  'wanders',
  'entered',
  'twice',
  'extreme',
  'rated',
  'attempt',
  'refusal',
  'figure-word',
  'self',
  'shows',
  'behind-unit',
  'correction',
  'change',
  'bound',
  'bound-behind',
  'same',
  'elsewhen',
  'wish',
  'past',
  'now',
  'negation',
  'not-negation',
  'hypothetical',
  'but',
  'pronoun',
  'overload',
  'overload-alone',
  'no-reading',
  'no-reading-alone',
  'left-side',
  'screen',
  'label',
  'counted',
  'dial',
  'other-quantity',
  'filler',
  'beside',
  'plain',
] as const;

export type Role = (typeof roles)[number];

/** A lexicon as its file says it: lists of phrases, a person of that language can extend each. */
export interface LexiconEntries {
  language: string;
  /** The decimal marks in use, the usual one first. */
  decimals: readonly ('.' | ',')[];
  /** Numbers are written as one word, as "zweiundfuenfzig". */
  compounds: boolean;
  words: Readonly<Record<SteeringWord, readonly string[]>>;
  /** By command: whole messages that give it. */
  commands?: Readonly<Record<string, readonly string[] | undefined>> | undefined;
  numbers: Readonly<Record<string, readonly string[]>>;
  /** By number: words that dictation writes for it, as "for" among digits. */
  soundsLike?: Readonly<Record<string, readonly string[]>> | undefined;
  /** Numbers whose unit part may go up to 19, as "soixante-dix-neuf". */
  upToNineteen: readonly number[];
  multipliers: Readonly<Record<string, readonly string[]>>;
  /** By denominator. */
  fractions: Readonly<Record<string, readonly string[]>>;
  units: Readonly<Partial<Record<TypedUnit, readonly string[]>>>;
  phrases: Readonly<Partial<Record<Role, readonly string[]>>>;
  /** Endings that make a word small and dear, as "-inho"; a steering word may wear one. */
  diminutives?: readonly string[] | undefined;
  /** By flag: patterns of slots, as "throttle | grip + stuck | stick*"; `>` instead of `+`: soon after it. `unless` words excuse the clause. */
  redFlags: Readonly<Record<string, { when: readonly string[]; unless?: readonly string[] | undefined }>>;
  /** By steering word: patterns of slots that ask for it in a short message, as "talk | speak + person | someone". */
  asks?: Readonly<Partial<Record<SteeringWord, readonly string[]>>> | undefined;
}

/** What one phrase means; several of these at once, where a word has several uses. */
export interface Meaning {
  roles: ReadonlySet<Role>;
  number: number | null;
  /** The digit that it is only among other digits. */
  soundsLike: number | null;
  multiplier: number | null;
  fraction: number | null;
  unit: TypedUnit | null;
  /** Where a name is short for two units, as "milis". */
  otherUnit: TypedUnit | null;
}

/** One slot of one red-flag pattern that a phrase fills. */
export interface FlagSlot {
  pattern: number;
  slot: number;
}

interface FlagPattern {
  flag: string;
  slots: number;
  /** The slots that stand soon behind the one before. */
  follows: ReadonlySet<number>;
  unless: number;
}

interface FlagPrefix {
  prefix: string;
  slot: FlagSlot;
}

export interface PatternTables {
  flags: PhraseTrie<FlagSlot[]>;
  /** Beginnings of words, listed with a star, by their first three letters. */
  flagPrefixes: ReadonlyMap<string, readonly FlagPrefix[]>;
  /** The slots that a high engine speed fills, listed as `#`. */
  speedSlots: readonly FlagSlot[];
  patterns: readonly FlagPattern[];
}

export interface Lexicon extends PatternTables {
  language: string;
  decimals: readonly string[];
  upToNineteen: ReadonlySet<number>;
  meanings: PhraseTrie<Meaning>;
  /** Number words that may stand inside a longer word; null where the language writes them apart. */
  compounds: ReadonlyMap<string, Meaning> | null;
  /** Commands by the folded words that give them. */
  commands: ReadonlyMap<string, string>;
  words: PhraseTrie<SteeringWord>;
  /** Whole words of four letters and more, for slips of one letter. */
  longWords: ReadonlyMap<string, SteeringWord>;
  /** Likewise what may stand beside them. */
  longFillers: ReadonlySet<string>;
  diminutives: readonly string[];
  asks: PatternTables;
}

export const noMeaning: Meaning = {
  roles: new Set(),
  number: null,
  soundsLike: null,
  multiplier: null,
  fraction: null,
  unit: null,
  otherUnit: null,
};

function bothMeanings(a: Meaning, b: Meaning): Meaning {
  return {
    roles: new Set([...a.roles, ...b.roles]),
    number: a.number ?? b.number,
    soundsLike: a.soundsLike ?? b.soundsLike,
    multiplier: a.multiplier ?? b.multiplier,
    fraction: a.fraction ?? b.fraction,
    unit: a.unit ?? b.unit,
    otherUnit: a.otherUnit ?? (a.unit !== null && b.unit !== a.unit ? b.unit : null),
  };
}

function phraseWords(phrase: string): string[] {
  return tokenise(foldText(phrase)).map(({ text }) => text);
}

/** Turns the lists into look-ups. Do it once: a call of `hear` is then cheap. */
export function prepareLexicon(entries: LexiconEntries): Lexicon {
  const meanings = emptyTrie<Meaning>();
  const compounds = new Map<string, Meaning>();
  const add = (phrases: readonly string[] | undefined, meaning: Partial<Meaning>, inCompounds = false) => {
    for (const phrase of phrases ?? []) {
      const words = phraseWords(phrase);
      const whole = { ...noMeaning, ...meaning };
      addPhrase(meanings, words, whole, bothMeanings);
      if (inCompounds && words.length === 1) {
        const known = compounds.get(words[0]!);
        compounds.set(words[0]!, known ? bothMeanings(known, whole) : whole);
      }
    }
  };
  for (const [value, phrases] of Object.entries(entries.numbers))
    add(phrases, { number: Number(value) }, true);
  for (const [value, phrases] of Object.entries(entries.soundsLike ?? {}))
    add(phrases, { soundsLike: Number(value) });
  for (const [value, phrases] of Object.entries(entries.multipliers)) {
    add(phrases, { multiplier: Number(value) }, true);
  }
  for (const [value, phrases] of Object.entries(entries.fractions))
    add(phrases, { fraction: Number(value) }, true);
  for (const [unit, phrases] of Object.entries(entries.units)) add(phrases, { unit: unit as TypedUnit });
  for (const role of roles) {
    add(
      entries.phrases[role],
      { roles: new Set([role]) },
      role === 'units-first' || role === 'and-half' || role === 'point',
    );
  }
  const { words, longWords } = prepareWords(entries);
  return {
    language: entries.language,
    decimals: entries.decimals,
    upToNineteen: new Set(entries.upToNineteen),
    meanings,
    compounds: entries.compounds ? compounds : null,
    commands: prepareCommands(entries),
    words,
    longWords,
    longFillers: new Set(
      (entries.phrases.filler ?? []).map(foldWord).filter((word) => /^\p{L}{5,}$/u.test(word)),
    ),
    diminutives: (entries.diminutives ?? []).map((ending) => foldWord(ending)),
    ...preparePatterns(entries.redFlags),
    asks: preparePatterns(
      Object.fromEntries(Object.entries(entries.asks ?? {}).map(([word, when]) => [word, { when }])),
    ),
  };
}

function prepareCommands({ commands = {} }: LexiconEntries): Lexicon['commands'] {
  const all = Object.entries(commands).flatMap(([command, said]) =>
    (said ?? []).map((phrase) => [foldPhrase(phrase), command] as const),
  );
  return new Map(all);
}

function prepareWords({ words }: LexiconEntries): Pick<Lexicon, 'words' | 'longWords'> {
  const trie = emptyTrie<SteeringWord>();
  const longWords = new Map<string, SteeringWord>();
  for (const [word, phrases] of Object.entries(words) as [SteeringWord, readonly string[]][]) {
    for (const phrase of phrases) {
      const parts = phraseWords(phrase);
      addPhrase(trie, parts, word);
      if (parts.length === 1 && parts[0]!.length >= 4) longWords.set(parts[0]!, word);
    }
  }
  return { words: trie, longWords };
}

function preparePatterns(listed: LexiconEntries['redFlags']): PatternTables {
  const flags = emptyTrie<FlagSlot[]>();
  const flagPrefixes = new Map<string, FlagPrefix[]>();
  const patterns: FlagPattern[] = [];
  const speedSlots: FlagSlot[] = [];
  const put = (alternative: string, slot: FlagSlot) => {
    if (alternative === '#') {
      speedSlots.push(slot);
      return;
    }
    const words = phraseWords(alternative.replace(/\*$/u, ''));
    if (alternative.endsWith('*') && words.length === 1) {
      const key = words[0]!.slice(0, 3);
      flagPrefixes.set(key, [...(flagPrefixes.get(key) ?? []), { prefix: words[0]!, slot }]);
    } else {
      addPhrase(flags, words, [slot], (a, b) => [...a, ...b]);
    }
  };
  const alternatives = (slot: string) => slot.split('|').map((text) => text.trim());
  for (const [flag, { when, unless }] of Object.entries(listed)) {
    for (const line of when) {
      const pattern = patterns.length;
      const slots = line.split(/ [+>] /u);
      const signs = line.match(/ [+>] /gu) ?? [];
      const follows = new Set(signs.flatMap((sign, index) => (sign === ' > ' ? [index + 1] : [])));
      slots.forEach((slot, index) => {
        for (const alternative of alternatives(slot)) put(alternative, { pattern, slot: index });
      });
      for (const alternative of (unless ?? []).flatMap(alternatives))
        put(alternative, { pattern, slot: slots.length });
      patterns.push({ flag, slots: slots.length, follows, unless: slots.length });
    }
  }
  return { flags, flagPrefixes, speedSlots, patterns };
}
