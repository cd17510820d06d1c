// Puts every block of the guide for workshops that names a file into a copy of the content, and has it checked.
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { readLexicon } from '../../src/commands/interpret.ts';
import { loadContent } from '../../src/library/load-content.ts';
import { formatProblem } from '../../src/library/problem.ts';
import { hear } from '../../src/measurement/hear.ts';
import { actions, measureIds, partIds, redFlags } from '../../src/procedure/vocabulary.ts';

const root = join(import.meta.dirname, '../..');

interface Block {
  /** Below the content folder. */
  file: string;
  /** How it goes in where it is not the whole file. */
  where: string | null;
  text: string;
}

const guide = readFileSync(join(root, 'content/guide/authoring.md'), 'utf8');
const blocks: Block[] = [
  ...guide.matchAll(/^```\w+\n# content\/(?<file>\S+?)(?:, (?<where>.+))?\n(?<text>[\s\S]*?)^```$/gm),
].map(({ groups }) => ({ file: groups!.file!, where: groups!.where ?? null, text: groups!.text! }));

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-guide-'));
  cpSync(join(root, 'content'), folder, { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true }));

const read = (file: string) => readFileSync(join(folder, file), 'utf8');
function write(file: string, text: string): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), text);
}

function putIn({ file, where, text }: Block): void {
  if (where === null) return write(file, text);
  if (where === 'at its end') return write(file, `${read(file)}\n${text}`);
  const above = /^above the stage "(.+)"$/.exec(where)?.[1];
  const line = `  - id: ${above}\n`;
  if (above === undefined || !read(file).includes(line)) throw new Error(`The guide says "${where}".`);
  write(file, read(file).replace(line, `${text}\n${line}`));
}

/** As the guide says: what a new fault is given is taken from the unknown cause. */
function takePriorFromUnknown(): void {
  const given = blocks
    .filter(({ file }) => file.startsWith('faults/'))
    .flatMap(({ text }) => parse(text).faults as { prior: Record<string, number> }[]);
  const file = 'faults/well-or-unknown.yaml';
  const content = parse(read(file));
  const unknown = content.faults.find((fault: { id: string }) => fault.id === 'unknown');
  for (const { prior } of given) for (const set in prior) unknown.prior[set] -= prior[set]!;
  write(file, stringify(content));
}

async function errors(): Promise<string[]> {
  const { problems } = await loadContent(folder);
  return problems.filter(({ level }) => level === 'error').map(formatProblem);
}

test('a workshop, a machine, a stage, a fault and a lexicon written as the guide says are sound content', async () => {
  expect(new Set(blocks.map(({ file }) => file.split('/')[0]))).toEqual(
    new Set(['workshop.yaml', 'machines', 'procedures', 'words', 'faults']),
  );
  const shipped = await errors();
  for (const block of blocks) putIn(block);
  takePriorFromUnknown();
  expect((await errors()).filter((error) => !shipped.includes(error))).toEqual([]);
});

test.each<[string, object]>([
  ['0,348', { kind: 'reading', value: 0.348 }],
  ['nul komma drie vier acht', { kind: 'reading', value: 0.348 }],
  ['ongeveer 0,35', { kind: 'reading', value: 0.35, echo: true }],
  ['springt tussen 0,34 en 0,36', { kind: 'range', low: 0.34, high: 0.36 }],
  ['driehonderdvijftig millivolt', { kind: 'reading', value: 0.35 }],
  ['achtendertig millivolt', { kind: 'reading', value: 0.038 }],
  ['buiten bereik', { kind: 'overload' }],
  ['de meter toont niets', { kind: 'no-reading' }],
  ['klaar', { kind: 'word', word: 'done' }],
  ['nog eens', { kind: 'word', word: 'repeat' }],
  ['er drupt benzine', { kind: 'red-flag', flag: 'fuel-leak' }],
  ['het gas blijft hangen', { kind: 'red-flag', flag: 'throttle-sticks' }],
  ['er is geen rook', { kind: 'unclear' }],
])('the Dutch lexicon of the guide hears %j', async (typed, heard) => {
  for (const block of blocks.filter(({ file }) => file.startsWith('words/nl/'))) putIn(block);
  const lexicons = [await readLexicon(folder, 'nl'), await readLexicon(folder, 'en')];
  expect(hear(typed, 'V', lexicons)).toMatchObject(heard);
});

test('a draft of a language is only warned of, file by file; taken for whole it is refused', async () => {
  for (const block of blocks.filter(({ file }) => file.startsWith('words/nl/'))) putIn(block);
  const { problems } = await loadContent(folder);
  const dutch = problems.filter(({ file }) => file.includes('words/nl'));
  expect(dutch.map(({ level }) => level)).toEqual(['warning', 'warning']);
  write('words/nl/lexicon.yaml', read('words/nl/lexicon.yaml').replace('draft: true\n', ''));
  expect((await errors()).length).toBeGreaterThan(50);
});

test('a stage without its words is found out', async () => {
  for (const block of blocks.filter(({ file }) => file.startsWith('procedures/'))) putIn(block);
  expect(await errors()).not.toEqual([]);
});

test('every field, and every word that content is made of, stands in the guide', () => {
  const sources = ['machine', 'procedure', 'target', 'fault', 'workshop', 'lexicon'].map((name) =>
    readFileSync(join(root, `src/procedure/${name}.ts`), 'utf8'),
  );
  const named = (pattern: RegExp) =>
    sources.flatMap((text) => [...text.matchAll(pattern)].map(([, name]) => name!));
  const fields = named(/\b(\w+): (?:z\b|\w*[sS]chema\b)/g);
  const kinds = named(/z\.literal\('([a-z-]+)'\)/g);
  expect(new Set(fields).size).toBeGreaterThan(50);
  expect(new Set(kinds).size).toBeGreaterThan(20);
  const words = new Set([...fields, ...kinds, ...actions, ...measureIds, ...partIds, ...redFlags]);
  expect([...words].filter((word) => !new RegExp(`(?<![\\w-])${word}(?![\\w-])`).test(guide))).toEqual([]);
});
