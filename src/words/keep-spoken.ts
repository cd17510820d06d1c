// Leaves of each line's fill-ins what its words make use of, for whoever stores a message: a stage is offered far more than it says.
import type { Line, LineArgument } from '../chat/facts.ts';
import type { Wording } from './wording.ts';

/** By wording and key; a wording never changes. */
const known = new WeakMap<Wording, Map<string, ReadonlySet<string>>>();

export function keepSpoken(lines: readonly Line[], wording: Wording): Line[] {
  return lines.map((line) => keepOfLine(line, wording));
}

function keepOfLine(line: Line, wording: Wording): Line {
  if (!line.with) return line;
  const spoken = variablesOf(line.key, wording);
  const kept = Object.entries(line.with)
    .filter(([name]) => spoken.has(name))
    .map(([name, argument]) => [name, isLine(argument) ? keepOfLine(argument, wording) : argument]);
  return kept.length === 0 ? { key: line.key } : { key: line.key, with: Object.fromEntries(kept) };
}

const isLine = (argument: LineArgument): argument is Line =>
  typeof argument === 'object' && 'key' in argument;

/** The variables that the words of a key are filled in with, those of messages they refer to among them. */
export function variablesOf(key: string, wording: Wording): ReadonlySet<string> {
  const ofWording = known.get(wording) ?? new Map<string, ReadonlySet<string>>();
  known.set(wording, ofWording);
  const before = ofWording.get(key);
  if (before) return before;
  const found = new Set<string>();
  // A ring of references ends at the second visit.
  ofWording.set(key, found);
  gather(wording.bundleOf.get(key)?.getMessage(key)?.value, found, wording);
  return found;
}

/** Goes through a pattern as the bundle holds it: texts, and expressions told apart by `type`. */
function gather(pattern: unknown, found: Set<string>, wording: Wording): void {
  if (Array.isArray(pattern)) {
    for (const element of pattern) gather(element, found, wording);
  } else if (typeof pattern === 'object' && pattern !== null) {
    const { type, name } = pattern as { type?: string; name?: string };
    if (type === 'var' && name !== undefined) found.add(name);
    else if (type === 'mesg' && name !== undefined) {
      for (const one of variablesOf(name, wording)) found.add(one);
    }
    for (const inner of Object.values(pattern)) gather(inner, found, wording);
  }
}
