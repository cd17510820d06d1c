// Turns what the schema refused into a sentence and its mend, for the loader; zod's own words are for programmers.
import type { $ZodIssue, $ZodIssueInvalidUnion, $ZodType } from 'zod/v4/core';
import { describe, keysAt, schemasAt } from './describe-schema.ts';
import { type Path, pointMend } from './read-yaml.ts';
import { nearest } from './suggest.ts';

export interface Explanation {
  path: Path;
  /** The name of the entry is at fault, not what stands in it. */
  atKey: boolean;
  message: string;
  mend: string;
}

/** `issue` came from parsing `value` with `schema`; both are asked what stands there and what may. */
export function explainIssue(issue: $ZodIssue, schema: $ZodType, value: unknown): Explanation[] {
  const { path } = issue;
  const found = valueAt(value, path);
  const name = nameOf(path, value);
  const allowed = () => `Write ${describe(schemasAt(schema, path))}.`;
  const wrong = (message: string, mend: string): Explanation[] => [{ path, atKey: false, message, mend }];

  if (found === undefined && path.length > 0 && issue.code !== 'invalid_key') {
    const mend = `Add "${String(path.at(-1))}": ${describe(schemasAt(schema, path))}.`;
    return wrong(`${name} is missing.`, mend);
  }
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownKey([...path, key], keysAt(schema, path), value));
    case 'invalid_key': {
      const known = keysAt(schema, path.slice(0, -1));
      const [why] = issue.issues;
      if (known.length === 0 && why) {
        const mend = `${capital(why.message)}.`;
        return [{ path, atKey: true, message: `${name} has a name that does not fit.`, mend }];
      }
      return [unknownKey(path, known, value)];
    }
    case 'invalid_value': {
      const near = nearest(String(found), issue.values.map(String));
      return wrong(`${name} cannot be ${show(found)}.`, near ? `Did you mean "${near}"?` : allowed());
    }
    case 'invalid_union':
      return explainUnion(issue, schema, value);
    case 'too_big':
    case 'too_small':
      return wrong(`${name} does not fit: ${show(found)}.`, `${sizeMend(issue)}.`);
    case 'invalid_type': {
      const comma = issue.expected === 'number' ? /^(-?\d+),(\d+)$/.exec(String(found)) : null;
      return wrong(`${name} should not be ${show(found)}.`, comma ? pointMend(comma.slice(1)) : allowed());
    }
    case 'custom': {
      const mend = issue.params?.mend;
      if (typeof mend === 'string') return wrong(issue.message, mend);
      return wrong(`${name} does not hold together.`, `${capital(issue.message)}.`);
    }
    default:
      return wrong(`${name} does not fit: ${show(found)}.`, `${capital(issue.message)}.`);
  }
}

/** A union is explained by the form that was most probably meant: the one with the fewest names out of place. */
function explainUnion(issue: $ZodIssueInvalidUnion, schema: $ZodType, value: unknown): Explanation[] {
  const forms = issue.errors.map((errors) => ({
    errors,
    outOfPlace: errors.reduce((sum, error) => sum + misplaced(error, valueAt(value, issue.path)), 0),
  }));
  const best = Math.min(...forms.map((form) => form.outOfPlace));
  const meant = forms.filter((form) => form.outOfPlace === best);
  if (best < 1 && meant.length === 1 && meant[0]) {
    return meant[0].errors.flatMap((error) => {
      const inner = { ...error, path: [...issue.path, ...error.path] } as $ZodIssue;
      return explainIssue(inner, schema, value);
    });
  }
  const { path } = issue;
  const found = valueAt(value, path);
  const known = keysAt(schema, path);
  const strange =
    typeof found === 'object' && found !== null
      ? Object.keys(found).filter((key) => !known.includes(key))
      : [];
  if (strange.some((key) => nearest(key, known)))
    return strange.map((key) => unknownKey([...path, key], known, value));
  const message = `${nameOf(path, value)} is in none of the forms that fit here: ${show(found)}.`;
  return [{ path, atKey: false, message, mend: `Write ${describe(schemasAt(schema, path))}.` }];
}

function misplaced(issue: $ZodIssue, around: unknown): number {
  if (issue.code === 'unrecognized_keys' && issue.path.length === 0) return issue.keys.length;
  if (issue.path.length === 0) return 1;
  const missing = issue.path.length === 1 && valueAt(around, issue.path) === undefined;
  return missing ? 1 : 0;
}

function unknownKey(path: Path, known: readonly string[], value: unknown): Explanation {
  const key = String(path.at(-1));
  const near = nearest(key, known);
  const mend = near ? `Did you mean "${near}"?` : `Take it out, or use one of: ${known.join(', ')}.`;
  return { path, atKey: true, message: `${nameOf(path, value)} is not known here.`, mend };
}

function sizeMend(issue: $ZodIssue & { code: 'too_big' | 'too_small' }): string {
  const [bound, edge] =
    issue.code === 'too_big'
      ? [issue.maximum, 'at most']
      : [issue.minimum, issue.inclusive === false ? 'more than' : 'at least'];
  if (!issue.message.startsWith('Too ')) return capital(issue.message);
  const what = { string: ' characters', array: ' entries' }[issue.origin as string] ?? '';
  return `Give ${edge} ${bound}${what}`;
}

function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (inner, step) =>
      typeof inner === 'object' && inner !== null ? (inner as Record<PropertyKey, unknown>)[step] : undefined,
    value,
  );
}

/** As "stages › baseline › ask": an entry of a list goes by its id, else by its number counted from one. */
function nameOf(path: Path, value: unknown): string {
  if (path.length === 0) return 'The file';
  const names = path.map((step, index) => {
    if (typeof step !== 'number') return String(step);
    const entry = valueAt(value, path.slice(0, index + 1)) as { id?: unknown } | undefined;
    return typeof entry?.id === 'string' ? entry.id : String(step + 1);
  });
  return `"${names.join(' › ')}"`;
}

function show(value: unknown): string {
  if (value === null) return 'empty';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return `an entry with ${Object.keys(value).join(', ') || 'nothing in it'}`;
  if (typeof value === 'string') return value === '' ? 'an empty text' : `the text "${value}"`;
  return String(value);
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
