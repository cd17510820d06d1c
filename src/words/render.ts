// The one renderer: puts lines (a key and what fills it in) into the words of a language, for everyone who shows text.
import type { FluentVariable } from '@fluent/bundle';
import type { Line, LineArgument } from '../chat/facts.ts';
import { toFluentNumber } from './figures.ts';
import type { Wording } from './wording.ts';

export type Arguments = Readonly<Record<string, LineArgument | readonly string[]>>;

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
export function label(key: string, args: Arguments, wording: Wording): string {
  const bundle = wording.bundleOf.get(key);
  const pattern = bundle?.getMessage(key)?.value;
  if (!bundle || !pattern) throw new Error(`There are no words for "${key}" in "${wording.language}".`);
  const errors: Error[] = [];
  const text = bundle.formatPattern(pattern, toVariables(args, wording), errors);
  if (errors[0]) throw new Error(`The words for "${key}" in "${wording.language}": ${errors[0].message}`);
  return text;
}

function toVariables(args: Arguments, wording: Wording): Record<string, FluentVariable> {
  return Object.fromEntries(Object.entries(args).map(([name, value]) => [name, toVariable(value, wording)]));
}

function toVariable(value: LineArgument | readonly string[], wording: Wording): FluentVariable {
  if (typeof value === 'string') return value;
  if (isList(value)) return wording.list.format(value);
  if (typeof value === 'object' && 'key' in value) return label(value.key, value.with ?? {}, wording);
  return toFluentNumber(value);
}

function isList(value: LineArgument | readonly string[]): value is readonly string[] {
  return Array.isArray(value);
}
