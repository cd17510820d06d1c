// `npm run interpret`: reads one message a line, and says in one JSON object a line what each was understood to mean.
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { parseArgs } from 'node:util';
import { type LexiconEntries, lexiconFile } from '../library/load-lexicons.ts';
import { formatProblem } from '../library/problem.ts';
import { readContentFile } from '../library/read-content-file.ts';
import { languagesIn, readText } from '../library/read-folder.ts';
import { hear } from '../measurement/hear.ts';
import { type Lexicon, prepareLexicon } from '../measurement/lexicon.ts';
import { type Unit, units } from '../measurement/unit.ts';
import { lexiconSchema } from '../procedure/lexicon.ts';
import { contentFolder } from './content-folder.ts';

export async function interpret(args: string[], input: Readable, output: Writable): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      unit: { type: 'string' },
      locale: { type: 'string', default: 'en' },
      content: { type: 'string' },
    },
  });
  if (!isUnit(values.unit)) throw new Error(`--unit is missing or unknown: give one of ${units.join(', ')}.`);
  const asked = values.unit;
  const language = values.locale.slice(0, 2).toLowerCase();
  const languages = language === 'en' ? ['en'] : [language, 'en'];
  const content = contentFolder(values.content);
  const lexicons = await Promise.all(languages.map((name) => readLexicon(content, name)));
  const answer = (line: string) => output.write(`${JSON.stringify(hear(line, asked, lexicons))}\n`);
  input.setEncoding('utf8');
  let rest = '';
  for await (const chunk of input) {
    const lines = (rest + chunk).split('\n');
    rest = lines.pop()!;
    for (const line of lines) answer(line);
  }
  if (rest !== '') answer(rest);
  return 0;
}

export async function readLexicon(content: string, language: string): Promise<Lexicon> {
  const words = join(content, 'words');
  const file = join(words, language, lexiconFile);
  const { text, problem } = await readText(file);
  if (text === null) {
    const known = (await languagesIn(words)).join(', ') || 'none';
    throw new Error(`${formatProblem(problem)}\nThe languages in ${words} are: ${known}.`);
  }
  const { read, problems } = readContentFile<LexiconEntries>(file, text, lexiconSchema);
  if (read === null) throw new Error(problems.map(formatProblem).join('\n'));
  return prepareLexicon(read.value);
}

function isUnit(name: string | undefined): name is Unit {
  return (units as readonly string[]).includes(name ?? '');
}
