// Says in words what a schema allows at a place, for the mend of a problem.
import { z } from 'zod';
import type { $ZodType, $ZodTypes } from 'zod/v4/core';
import type { Path } from './read-yaml.ts';

const wrappers = new Set(['optional', 'default', 'prefault', 'nullable', 'nonoptional', 'readonly', 'catch']);

/** Takes off what only says that a value may be left out. */
function unwrap(schema: $ZodType): $ZodTypes {
  const def = (schema as $ZodTypes)._zod.def;
  if (wrappers.has(def.type)) return unwrap((def as { innerType: $ZodType }).innerType);
  if (def.type === 'lazy') return unwrap(def.getter());
  if (def.type === 'pipe') return unwrap(def.in);
  return schema as $ZodTypes;
}

function mayBeNull(schema: $ZodType): boolean {
  const def = (schema as $ZodTypes)._zod.def;
  return (
    def.type === 'nullable' ||
    (wrappers.has(def.type) && mayBeNull((def as { innerType: $ZodType }).innerType))
  );
}

/** The schemas that may stand at a path: several where a union leaves it open. */
export function schemasAt(schema: $ZodType, path: Path): $ZodTypes[] {
  const plain = unwrap(schema);
  const def = plain._zod.def;
  if (path.length === 0 && mayBeNull(schema)) return [...schemasAt(plain, []), z.null() as $ZodTypes];
  if (def.type === 'union') return def.options.flatMap((option) => schemasAt(option, path));
  const [step, ...rest] = path;
  if (step === undefined) return [plain];
  const inner = innerSchema(plain, step);
  return inner ? schemasAt(inner, rest) : [];
}

function innerSchema(schema: $ZodTypes, step: PropertyKey): $ZodType | undefined {
  const def = schema._zod.def;
  if (def.type === 'object') return def.shape[String(step)];
  if (def.type === 'record') return def.valueType;
  if (def.type === 'array') return def.element;
  if (def.type === 'tuple') return def.items[Number(step)];
  return undefined;
}

/** The names of the entries that may stand at a path. */
export function keysAt(schema: $ZodType, path: Path): string[] {
  return [...new Set(schemasAt(schema, path).flatMap(keysOf))];
}

function keysOf(schema: $ZodTypes): string[] {
  const def = schema._zod.def;
  if (def.type === 'object') return Object.keys(def.shape);
  if (def.type !== 'record') return [];
  const key = unwrap(def.keyType)._zod.def;
  return key.type === 'enum' ? Object.values(key.entries).map(String) : [];
}

/** As "a number", "one of: in, out" or "an entry with go". */
export function describe(schemas: readonly $ZodType[]): string {
  const ways = [...new Set(schemas.map((schema) => describeOne(unwrap(schema))))];
  return ways.length > 0 ? ways.join(', or ') : 'something else';
}

function describeOne(schema: $ZodTypes): string {
  const def = schema._zod.def;
  switch (def.type) {
    case 'string':
      return 'a text';
    case 'number':
      return (def as { format?: string }).format || def.checks?.some(isWhole) ? 'a whole number' : 'a number';
    case 'boolean':
      return 'true or false';
    case 'enum':
      return `one of: ${Object.values(def.entries).map(quoteMark).join(', ')}`;
    case 'literal':
      return def.values.map(String).join(' or ');
    case 'array':
      return `a list ${listed(unwrap(def.element))}`;
    case 'tuple':
      return `a list of ${def.items.length}`;
    case 'object':
      return `an entry with ${neededKeys(def.shape).join(', ') || Object.keys(def.shape).join(' or ')}`;
    case 'record':
      return `${describe([def.valueType])} for each of ${keysOf(schema).join(', ') || 'your own names'}`;
    case 'union':
      return describe(def.options);
    case 'null':
      return 'null';
    default:
      return 'something else';
  }
}

/** What a list is made of: "of texts", "out of: red, green", or "in which each is …". */
function listed(schema: $ZodTypes): string {
  const { type } = schema._zod.def;
  if (type === 'string' || type === 'number') return `of ${describeOne(schema).replace(/^an? /, '')}s`;
  if (type === 'enum') return describeOne(schema).replace(/^one of/, 'out of');
  return `in which each is ${describeOne(schema)}`;
}

/** A mark by itself would be lost among the commas of a list. */
const quoteMark = (value: string | number) => (/^[,.]$/.test(`${value}`) ? `"${value}"` : value);

function isWhole(check: { _zod: { def: unknown } }): boolean {
  return (check._zod.def as { format?: string }).format === 'safeint';
}

function neededKeys(shape: Readonly<Record<string, $ZodType>>): string[] {
  return Object.keys(shape).filter((key) => (shape[key] as $ZodTypes)._zod.optin === undefined);
}
