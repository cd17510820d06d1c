// Finds which words the program itself says, by reading its sources, for `check`: a list kept by hand would fall behind them.
import { readdir, readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import type { Need } from './check-words.ts';
import { lineStarts, placeAt } from './place-in-text.ts';

export interface Source {
  file: string;
  text: string;
}

export interface Spoken {
  /** Keys that are said literally: `line('held')`. */
  needs: Need[];
  /** Whether a key may be said: literally, or by a pattern as `caution-${id}`. */
  says(key: string): boolean;
}

const root = join(import.meta.dirname, '../..');

export async function readSources(): Promise<Source[]> {
  const entries = await Promise.all(
    ['src', 'adapters'].map((folder) =>
      readdir(join(root, folder), { recursive: true, withFileTypes: true }),
    ),
  );
  const files = entries
    .flat()
    .filter((entry) => entry.name.endsWith('.ts'))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)));
  return Promise.all(
    files.sort().map(async (file) => ({ file, text: await readFile(join(root, file), 'utf8') })),
  );
}

export function findSpoken(sources: readonly Source[]): Spoken {
  const calls = sources.flatMap(({ file, text }) => {
    const found = findCalls(text);
    const starts = found.length > 0 ? lineStarts(text) : [];
    return found.map((call) => ({ ...call, file, ...placeAt(starts, call.offset) }));
  });
  const literals = new Set(
    sources.flatMap(({ text }) =>
      Array.from(text.matchAll(/(['`])([a-z][a-z0-9-]*)\1/g), ([, , key]) => key!),
    ),
  );
  // A key may also be put together far from where it is said.
  const templates = sources.flatMap(({ text }) =>
    Array.from(text.matchAll(/`([a-z][a-z0-9-]*(?:\$\{[^}`]*\}[a-z0-9-]*)+)`/g), ([, template]) =>
      template!.replace(/\$\{[^}]*\}/g, '*'),
    ),
  );
  const patterns = [...calls.map(({ key }) => key), ...templates]
    .filter((key) => key.includes('*'))
    .map((key) => new RegExp(`^${key.replaceAll('*', '[a-z0-9-]+')}$`));
  return {
    needs: calls
      .filter(({ key }) => !key.includes('*'))
      .map(({ key, file, line, column, given }) => {
        return { key, file, line, column, who: 'what the program says here', ...(given ? { given } : {}) };
      }),
    says: (key) => literals.has(key) || patterns.some((pattern) => pattern.test(key)),
  };
}

export interface Call {
  /** With a star for each part that is put in. */
  key: string;
  offset: number;
  /** The names filled in, where they can be read off the call. */
  given: string[] | null;
}

/** The keys in calls of `line`, `label` and `say`; exported for its test. */
export function findCalls(source: string): Call[] {
  const calls: Call[] = [];
  for (const start of source.matchAll(/(?<![\w.]function )\b(?:line|label|say)\(\s*/g)) {
    const offset = start.index + start[0].length;
    const first = readExpression(source, offset);
    const given = namesGiven(source, first.end);
    for (const literal of first.literals) {
      if (/^[a-z][a-z0-9*-]*$/.test(literal)) calls.push({ key: literal, offset, given });
    }
  }
  return calls;
}

/** Reads up to the comma or bracket that ends an expression, and the texts that stand in it at its own level. */
function readExpression(source: string, from: number): { end: number; literals: string[] } {
  const literals: string[] = [];
  let depth = 0;
  let at = from;
  while (at < source.length) {
    const sign = source[at]!;
    if (sign === "'" || sign === '`') {
      const { end, text } = readLiteral(source, at);
      // What a condition compares with is not said.
      if (depth === 0 && !/[!=]=\s*$/.test(source.slice(Math.max(0, at - 5), at))) literals.push(text);
      at = end;
      continue;
    }
    if (depth === 0 && ',;)}]'.includes(sign)) break;
    if ('([{'.includes(sign)) depth += 1;
    if (')]}'.includes(sign)) depth -= 1;
    at += 1;
  }
  return { end: at, literals };
}

function readLiteral(source: string, from: number): { end: number; text: string } {
  const quote = source[from];
  let text = '';
  let at = from + 1;
  while (at < source.length && source[at] !== quote) {
    if (quote === '`' && source.startsWith('${', at)) {
      // What is put in may itself hold texts and brackets.
      at = readExpression(source, at + 2).end + 1;
      text += '*';
    } else {
      text += source[at];
      at += 1;
    }
  }
  return { end: at + 1, text };
}

/** The names in the object that follows the key; null where they cannot be read off. */
function namesGiven(source: string, from: number): string[] | null {
  if (source[from] === ')') return [];
  const open = /^,\s*\{/.exec(source.slice(from, from + 200));
  if (!open) return null;
  const names: string[] = [];
  let at = from + open[0].length;
  while (at < source.length) {
    const name = /^[\s,]*(?:([a-zA-Z]\w*)\s*(:)?|(\}))/.exec(source.slice(at, at + 200));
    if (!name) return null;
    if (name[3] === '}') return names;
    names.push(name[1]!);
    at += name[0].length;
    if (name[2]) at = readExpression(source, at).end;
  }
  return null;
}
