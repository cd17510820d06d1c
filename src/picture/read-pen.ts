// Makes the pen of a language from the word and font files; for the worker, and for tests that draw without it.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { label } from '../words/render.ts';
import { fallbackLanguage, prepareWording } from '../words/wording.ts';
import { readGlyphWidths } from './glyph-widths.ts';
import { makePen, type Pen } from './pen.ts';

const file = 'pictures.ftl';
const shipped = fileURLToPath(new URL('../../content/words/', import.meta.url));
const fonts = fileURLToPath(new URL('../../content/fonts/', import.meta.url));

export const fontFiles = [join(fonts, 'DejaVuSans.ttf'), join(fonts, 'DejaVuSans-Bold.ttf')] as const;

/** Hands out the pen of a language. A workshop's own words come first, then the shipped ones, then English. */
export function penReader(words: string): (language: string) => Pen {
  const [regular, bold] = [
    readGlyphWidths(readFileSync(fontFiles[0])),
    readGlyphWidths(readFileSync(fontFiles[1])),
  ];
  const pens = new Map<string, Pen>();
  return (language) => {
    // The language becomes part of a path.
    const known = /^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(language) ? language : fallbackLanguage;
    let pen = pens.get(known);
    if (!pen) {
      const own = readWords(words, known);
      const spoken = own === null ? fallbackLanguage : known;
      const files = { [spoken]: { [file]: own ?? readWords(words, fallbackLanguage) ?? '' } };
      const wording = prepareWording(spoken, files);
      pen = makePen(spoken, (key, args = {}) => label(key, args, wording), { regular, bold });
      pens.set(known, pen);
    }
    return pen;
  };
}

function readWords(words: string, language: string): string | null {
  for (const folder of [words, shipped]) {
    const path = join(folder, language, file);
    if (existsSync(path)) return readFileSync(path, 'utf8');
  }
  return null;
}
