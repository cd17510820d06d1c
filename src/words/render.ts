// The one renderer: puts lines (a key and what fills it in) into the words of a language, for everyone who shows text.
import type { FluentVariable } from '@fluent/bundle';
import type { Line, LineArgument } from '../chat/facts.ts';
import { toFluentNumber } from './figures.ts';
import type { Wording } from './wording.ts';

/** A list is joined by the language's own habit. */
export type Argument = LineArgument | readonly (string | Line)[];

/** Each line on a line of its own; a line whose key is empty parts two paragraphs. */
export function render(lines: readonly Line[], wording: Wording): string {
  const paragraphs: string[][] = [[]];
  for (const line of lines) {
    if (line.key === '') paragraphs.push([]);
    else paragraphs.at(-1)?.push(label(line.key, line.with ?? {}, wording));
  }
  return paragraphs
    .filter((paragraph) => paragraph.length > 0)
    .map((paragraph) => paragraph.join('\n'))
    .join('\n\n');
}

/** The words of one key. What is missing is an error: a hole in a sentence could send a hand the wrong way. */
export function label(key: string, args: Readonly<Record<string, Argument>>, wording: Wording): string {
  const bundle = wording.bundleOf.get(key);
  const pattern = bundle?.getMessage(key)?.value;
  if (!bundle || !pattern) throw new Error(`There are no words for "${key}" in "${wording.language}".`);
  const variables: Record<string, FluentVariable> = {};
  for (const [name, argument] of Object.entries(args)) variables[name] = fillIn(argument, wording);
  const errors: Error[] = [];
  const text = bundle.formatPattern(pattern, variables, errors);
  if (errors[0]) throw new Error(`The words for "${key}" in "${wording.language}": ${errors[0].message}`);
  return text;
}

function fillIn(argument: Argument, wording: Wording): FluentVariable {
  if (isList(argument)) return wording.list.format(argument.map((entry) => wordsOf(entry, wording)));
  if (typeof argument === 'number') return toFluentNumber(argument);
  if (typeof argument === 'object' && 'value' in argument) return toFluentNumber(argument);
  return wordsOf(argument, wording);
}

function wordsOf(entry: string | Line, wording: Wording): string {
  return typeof entry === 'string' ? entry : label(entry.key, entry.with ?? {}, wording);
}

function isList(argument: Argument): argument is readonly (string | Line)[] {
  return Array.isArray(argument);
}
