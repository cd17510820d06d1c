// `npm run interpret`: reads one message a line, and says in one JSON object a line what each was understood to mean.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { parseArgs } from 'node:util';
import { parse } from 'yaml';
import { hear } from '../measurement/hear.ts';
import { type Lexicon, prepareLexicon } from '../measurement/lexicon.ts';
import { type Unit, units } from '../measurement/unit.ts';
import { lexiconSchema } from '../procedure/lexicon.ts';

export async function interpret(args: string[], input: Readable, output: Writable): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      unit: { type: 'string' },
      locale: { type: 'string', default: 'en' },
      content: { type: 'string', default: 'content' },
    },
  });
  if (!isUnit(values.unit)) throw new Error(`--unit is missing or unknown: give one of ${units.join(', ')}.`);
  const asked = values.unit;
  const language = values.locale.slice(0, 2).toLowerCase();
  const languages = language === 'en' ? ['en'] : [language, 'en'];
  const lexicons = await Promise.all(languages.map((name) => readLexicon(values.content, name)));
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
  const file = join(content, 'words', language, 'lexicon.yaml');
  const read = lexiconSchema.safeParse(parse(await readFile(file, 'utf8')));
  if (!read.success) {
    const [first] = read.error.issues;
    throw new Error(`${file}: ${first?.path.join('.')}: ${first?.message}`);
  }
  return prepareLexicon(read.data);
}

function isUnit(name: string | undefined): name is Unit {
  return (units as readonly string[]).includes(name ?? '');
}
