// Writes plain values as JSON that comes out the same however they were put together, and names them by its hash; for snapshots.
import { createHash } from 'node:crypto';

/** By RFC 8785: entries sorted by the code units of their names, no white space, numbers as ECMAScript writes them. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((entry) => canonicalJson(entry ?? null)).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).filter(([, entry]) => entry !== undefined);
  entries.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([name, entry]) => `${JSON.stringify(name)}:${canonicalJson(entry)}`).join(',')}}`;
}

export function hashOf(json: string): string {
  return createHash('sha256').update(json).digest('hex');
}
