// Reads every import of a source text, for the test of the architecture.

export interface Import {
  /** What is imported, as written; null where it is only known when it runs. */
  from: string | null;
  /** Types only: nothing of it is left when the program runs. */
  typesOnly: boolean;
}

export function withoutComments(source: string): string {
  // A line comment never follows a colon here: that would be an address in a text.
  return source.replace(/\/\*[\s\S]*?\*\//g, ' ').replace(/(^|[^:'"`\\])\/\/.*$/gm, '$1');
}

export function readImports(source: string): Import[] {
  const text = withoutComments(source);
  const found: Import[] = [];
  for (const [, kind, clause, from] of text.matchAll(
    /^\s*(import|export)\b([^;'"`]*?)\bfrom\s*['"]([^'"]+)['"]/gm,
  )) {
    found.push({ from: from!, typesOnly: isTypesOnly(kind!, clause!) });
  }
  for (const [, from] of text.matchAll(/^\s*import\s*['"]([^'"]+)['"]/gm))
    found.push({ from: from!, typesOnly: false });
  for (const [, argument] of text.matchAll(/\b(?:import|require)\s*\(\s*([^)]*)\)/g)) {
    const literal = /^['"]([^'"]+)['"]/.exec(argument!);
    found.push({ from: literal?.[1] ?? null, typesOnly: false });
  }
  if (/\bcreateRequire\b|\bgetBuiltinModule\b/.test(text)) found.push({ from: null, typesOnly: false });
  return found;
}

function isTypesOnly(kind: string, clause: string): boolean {
  if (/^\s*type\b/.test(clause)) return true;
  const names = /^\s*\{([^}]*)\}\s*$/.exec(clause)?.[1];
  const parts =
    names
      ?.split(',')
      .map((name) => name.trim())
      .filter((name) => name !== '') ?? [];
  return kind === 'import' && parts.length > 0 && parts.every((name) => name.startsWith('type '));
}
