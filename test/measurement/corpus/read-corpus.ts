// Reads the corpus of messages and compares what was heard with what a row says, for the tests and the bench.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Heard } from '../../../src/measurement/heard.ts';
import { type Unit, units } from '../../../src/measurement/unit.ts';

export const languages = ['en', 'es', 'de', 'fr', 'pt', 'it'] as const;

export interface Row {
  line: number;
  dangerous: boolean;
  unit: Unit;
  message: string;
  expected: string;
}

export function readCorpus(language: string): Row[] {
  const file = fileURLToPath(new URL(`./${language}.tsv`, import.meta.url));
  return readFileSync(file, 'utf8')
    .split('\n')
    .flatMap((text, index) => {
      if (text.trim() === '' || text.startsWith('#')) return [];
      const [mark, unit, message, expected] = text.split('\t');
      if (!expected || !(units as readonly string[]).includes(unit!) || !['!', '-'].includes(mark!)) {
        throw new Error(
          `${language}.tsv, line ${index + 1}: four columns are wanted: mark, unit, message, meaning`,
        );
      }
      return [
        {
          line: index + 1,
          dangerous: mark === '!',
          unit: unit as Unit,
          message: written(message!),
          expected,
        },
      ];
    });
}

const written = (text: string) =>
  text
    .replaceAll('\\n', '\n')
    .replace(/\\u([0-9a-f]{4})/giu, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));

/** What was heard, in the words of the fourth column. */
export function describe(heard: Heard): string {
  switch (heard.kind) {
    case 'reading':
      return `reading ${heard.value} ${heard.resolution}${heard.echo ? ' echo' : ''}`;
    case 'range':
      return `range ${heard.low} ${heard.high}`;
    case 'series':
      return `series ${heard.values.map((value) => value ?? 'OL').join(' ')}`;
    case 'word':
      return `word ${heard.word}`;
    case 'red-flag':
      return `flag ${heard.flag}`;
    case 'unclear':
      return `unclear ${heard.why}`;
    default:
      return heard.kind;
  }
}

/** "unclear" without a reason stands for any reason. */
export function isAsExpected(heard: Heard, expected: string): boolean {
  const said = describe(heard);
  return expected === 'unclear' ? heard.kind === 'unclear' : said === expected;
}
