// Reads one YAML file into plain values that still know where in the file they stand; for the loader and its checks.
import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  visit,
  type YAMLError,
} from 'yaml';
import type { Place, Problem } from './problem.ts';

export type Path = readonly PropertyKey[];

export interface YamlFile {
  file: string;
  value: unknown;
  /** Where the value at this path stands, or the nearest thing around it that is there. */
  placeOf(path: Path): Place;
  /** Where the last key of this path stands. */
  placeOfKey(path: Path): Place;
}

/** The file is null where it could not be read at all. */
export function readYaml(file: string, text: string): { yaml: YamlFile | null; problems: Problem[] } {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const placeAt = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  const problem = (offset: number, message: string, mend: string): Problem => {
    return { level: 'error', file, ...placeAt(offset), message, mend };
  };
  if (document.errors.length > 0) {
    const problems = document.errors.map((error) => problem(error.pos[0], sentence(error), mendOf(error)));
    return { yaml: null, problems };
  }
  if (document.contents === null) {
    return { yaml: null, problems: [problem(0, 'The file is empty.', 'Fill it in, or remove it.')] };
  }
  const commas = decimalCommas(document).map(({ offset, number }) =>
    problem(offset, `This number is written with a comma: ${number.join(',')}.`, pointMend(number)),
  );
  if (commas.length > 0) return { yaml: null, problems: commas };
  let value: unknown;
  try {
    value = document.toJS();
  } catch (error) {
    const mend = 'Write the entries out instead of repeating them by reference.';
    return { yaml: null, problems: [problem(0, `The file cannot be read: ${String(error)}.`, mend)] };
  }
  const resolved = (node: unknown) => (isAlias(node) ? node.resolve(document) : node);
  const find = (path: Path): { key: Node | null; node: Node | null } => {
    let key: Node | null = null;
    let node: Node | null = document.contents;
    for (const step of path) {
      const around = resolved(node);
      let inner: unknown = null;
      if (isMap(around)) {
        const pair = around.items.find(
          (item) => isScalar(item.key) && String(item.key.value) === String(step),
        );
        if (pair === undefined) break;
        key = pair.key as Node;
        inner = pair.value;
      } else if (isSeq(around)) {
        inner = around.items[Number(step)];
        if (inner === undefined) break;
        key = inner as Node;
      } else break;
      node = (inner as Node | null) ?? key;
    }
    return { key, node };
  };
  const placeOfNode = (node: Node | null) => placeAt(node?.range?.[0] ?? 0);
  return {
    yaml: {
      file,
      value,
      placeOf: (path) => placeOfNode(find(path).node),
      placeOfKey: (path) => placeOfNode(find(path).key),
    },
    problems: [],
  };
}

/** What is right instead of a number that was written with a comma. */
export const pointMend = (number: readonly string[]) => `Write ${number.join('.')}, with a point.`;

/** Between braces a comma ends an entry: "{ centre: 0,55 }" is a centre of 0 and an entry named 55, with nothing in it. */
function decimalCommas(document: Document): { offset: number; number: [string, string] }[] {
  const found: { offset: number; number: [string, string] }[] = [];
  visit(document, {
    Map(_, map) {
      for (const [index, { key, value }] of map.items.entries()) {
        const before = map.items[index - 1]?.value;
        if (!isScalar(key) || !isScalar(before) || (isScalar(value) && value.source)) continue;
        const number: [string, string] = [String(before.source), String(key.source)];
        if (/^-?\d+$/.test(number[0]) && /^\d+$/.test(number[1]))
          found.push({ offset: before.range?.[0] ?? 0, number });
      }
    },
  });
  return found;
}

function sentence(error: YAMLError): string {
  return `This is not YAML: ${error.message.replace(/\.?$/, '.')}`;
}

function mendOf(error: YAMLError): string {
  switch (error.code) {
    case 'DUPLICATE_KEY':
      return 'Keep one of the two entries with this name.';
    case 'TAB_AS_INDENT':
      return 'Indent with spaces, two for each step.';
    case 'BAD_INDENT':
      return 'Line this up with its neighbours, two spaces for each step.';
    case 'BAD_ALIAS':
      return 'Put the text in quotation marks, or write the entry out.';
    case 'BAD_SCALAR_START':
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return 'Put a text that holds a colon or a sign in quotation marks, and each entry on a line of its own.';
    default:
      return 'Look here and on the line above for a missing colon, bracket, quotation mark or space.';
  }
}
