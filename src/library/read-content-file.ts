// Reads one file of content against its schema, for the loader: the checked value, or what is wrong with it and where.
import type { z } from 'zod';
import { explainIssue } from './explain-issue.ts';
import type { Problem } from './problem.ts';
import { readYaml, type YamlFile } from './read-yaml.ts';

/** A file whose form is right; what it says is checked against the other files afterwards. */
export interface ContentFile<T> extends Omit<YamlFile, 'value'> {
  value: T;
}

export function readContentFile<T>(
  file: string,
  text: string,
  schema: z.ZodType<T>,
): { read: ContentFile<T> | null; problems: Problem[] } {
  const { yaml, problems } = readYaml(file, text);
  if (yaml === null) return { read: null, problems };
  const parsed = schema.safeParse(yaml.value);
  if (parsed.success) return { read: { ...yaml, value: parsed.data }, problems };
  const explained = parsed.error.issues.flatMap((issue) => explainIssue(issue, schema, yaml.value));
  return {
    read: null,
    problems: explained.map(({ path, atKey, message, mend }) => {
      const place = atKey ? yaml.placeOfKey(path) : yaml.placeOf(path);
      return { level: 'error', file, ...place, message, mend };
    }),
  };
}
