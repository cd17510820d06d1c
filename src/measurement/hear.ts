// Understands one message of a person: a red flag, a word that steers, a reading, or why it is none. It knows no language: lexicons do.

import { hearFigures } from './hear-figures.ts';
import { hearFlag } from './hear-flags.ts';
import { foldText } from './hear-fold.ts';
import { readPieces } from './hear-pieces.ts';
import { tokenise } from './hear-tokens.ts';
import { hearWord } from './hear-words.ts';
import type { Heard } from './heard.ts';
import type { Lexicon } from './lexicon.ts';
import type { Unit } from './unit.ts';

/** Longer than this is no message about one reading. */
const longest = 4096;

/** `asked` is the unit of the reading that is awaited, null where none is; the owner's language comes first in `lexicons`. */
export function hear(text: string, asked: Unit | null, lexicons: readonly Lexicon[]): Heard {
  if (text.length > longest) return { kind: 'unclear', why: 'too-long' };
  const folded = foldText(text);
  // One sign can stand for many letters; nobody writes so.
  if (folded.length > 2 * longest) return { kind: 'unclear', why: 'too-long' };
  const tokens = tokenise(folded);
  const pieces = readPieces(tokens, lexicons);
  const flag = hearFlag(tokens, pieces, lexicons);
  if (flag !== null) return { kind: 'red-flag', flag };
  const word = hearWord(tokens, lexicons);
  if (word !== null) return word;
  return hearFigures(pieces, asked, lexicons);
}
