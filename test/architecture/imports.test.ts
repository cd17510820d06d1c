import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Allowed, allowed, core } from './allowed-imports.ts';
import { readImports, withoutComments } from './read-imports.ts';

/** What to do about each list that should be empty. */
const mend = {
  imports:
    'Mend: move the code to a folder that may import it, or hand it in from one that may; where the architecture itself is to change, in test/architecture/allowed-imports.ts. A new folder needs a row of its own there.',
  adapters:
    'Mend: let src/commands hand in what is needed; an adapter is known to the rest by src/chat/adapter.ts only.',
  rings: 'Mend: move what both files need into a file of its own that both import.',
  impure:
    'Mend: have the shell (src/inbox, src/outbox, src/commands) hand in the instant, the figure or what was loaded.',
};

const root = join(import.meta.dirname, '../..');

const sources = ['src', 'adapters'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|mjs|js|cjs|mts|cts)$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name))),
);

const read = (file: string) => readFileSync(join(root, file), 'utf8');

/** `src/store/sqlite/x.ts` belongs to `src/store`. */
const folderOf = (file: string) => dirname(file).split('/').slice(0, 2).join('/');

const covers = (list: readonly string[], name: string) =>
  list.some((entry) => (entry.endsWith('*') ? name.startsWith(entry.slice(0, -1)) : name === entry));

/** What is wrong with the imports of a source, as if it stood in that file. */
function wrongImports(
  file: string,
  source: string,
  rules: Readonly<Record<string, Allowed>> = allowed,
): string[] {
  const folder = folderOf(file);
  const may = rules[folder];
  if (!may) return [`${file}: the folder ${folder} is in no table`];
  return readImports(source).flatMap(({ from, typesOnly }) => {
    if (from === null) return [`${file}: imports what is only known when it runs`];
    if (!from.startsWith('.'))
      return covers(may.packages, from) ? [] : [`${file}: ${folder} may not import ${from}`];
    const target = folderOf(join(dirname(file), from));
    if (target === folder || covers(may.ours, target)) return [];
    if (typesOnly && covers(may.types ?? [], target)) return [];
    return [
      `${file}: ${folder} may not import ${from}${covers(may.types ?? [], target) ? ' but for its types' : ''}`,
    ];
  });
}

test('every folder imports only what the architecture lets it', () => {
  expect(sources.length).toBeGreaterThan(50);
  expect(
    sources.flatMap((file) => wrongImports(file, read(file))),
    mend.imports,
  ).toEqual([]);
});

test('no source imports the adapters but the commands, which wire everything', () => {
  for (const [folder, { ours }] of Object.entries(allowed)) {
    if (!folder.startsWith('src/') || folder === 'src/commands') continue;
    expect(
      ours.filter((name) => name.startsWith('adapters')),
      mend.adapters,
    ).toEqual([]);
  }
});

test('nothing of ours goes round in a ring from folder to folder', () => {
  const reaches = (from: string, seen = new Set<string>()): Set<string> => {
    for (const next of allowed[from]?.ours ?? []) {
      if (seen.has(next)) continue;
      seen.add(next);
      reaches(next, seen);
    }
    return seen;
  };
  for (const folder of Object.keys(allowed)) expect(reaches(folder)).not.toContain(folder);
});

test('no file leads back to itself: a message goes one way through the code', () => {
  const leadsTo = new Map(
    sources.map((file) => [
      file,
      readImports(read(file)).flatMap(({ from, typesOnly }) =>
        typesOnly || !from?.startsWith('.') ? [] : [join(dirname(file), from)],
      ),
    ]),
  );
  expect(ringsOf(leadsTo), mend.rings).toEqual([]);
  const ring = new Map([
    ['a.ts', ['b.ts']],
    ['b.ts', ['c.ts']],
    ['c.ts', ['b.ts']],
  ]);
  expect(ringsOf(ring)).toEqual(['b.ts > c.ts > b.ts']);
});

/** Every way from a file back to itself, as names joined by arrows; each file is gone through once. */
function ringsOf(leadsTo: ReadonlyMap<string, readonly string[]>): string[] {
  const rings: string[] = [];
  const settled = new Set<string>();
  const follow = (file: string, way: readonly string[]): void => {
    if (way.includes(file)) rings.push([...way.slice(way.indexOf(file)), file].join(' > '));
    if (settled.has(file) || way.includes(file)) return;
    for (const next of leadsTo.get(file) ?? []) follow(next, [...way, file]);
    settled.add(file);
  };
  for (const file of leadsTo.keys()) follow(file, []);
  return rings;
}

describe('the reading of imports', () => {
  test.each<[string, string[]]>([
    ["import { z } from 'zod';", ['zod']],
    ["import type { Unit } from '../measurement/unit.ts';", ['type ../measurement/unit.ts']],
    ["import { type A, type B } from './a.ts';", ['type ./a.ts']],
    ["import { type A, b } from './a.ts';", ['./a.ts']],
    ["import {\n  a,\n  b,\n} from './a.ts';", ['./a.ts']],
    ["import * as fs from 'node:fs';", ['node:fs']],
    ["import './side-effect.ts';", ['./side-effect.ts']],
    ["export { a } from './a.ts';", ['./a.ts']],
    ["export * from './a.ts';", ['./a.ts']],
    ["export type { A } from './a.ts';", ['type ./a.ts']],
    ["const a = await import('./a.ts');", ['./a.ts']],
    ["const a = await import(name + '.ts');", ['unknown']],
    ["const fs = require('fs');", ['fs']],
    ['const require = createRequire(import.meta.url);', ['unknown']],
    ["// import { z } from 'zod';\n/* import './a.ts'; */", []],
    ['const a = 1;\nexport const from = a;', []],
  ])('finds in %j: %j', (source, found) => {
    const shown = readImports(source).map(
      ({ from, typesOnly }) => `${typesOnly ? 'type ' : ''}${from ?? 'unknown'}`,
    );
    expect(shown).toEqual(found);
  });
});

describe('the test of imports', () => {
  test.each([
    ['src/measurement/judge.ts', "import { z } from 'zod';", 'src/measurement may not import zod'],
    [
      'src/measurement/judge.ts',
      "import type { Stage } from '../procedure/procedure.ts';",
      'may not import ../procedure',
    ],
    [
      'src/conversation/turn.ts',
      "import { readFile } from 'node:fs/promises';",
      'may not import node:fs/promises',
    ],
    [
      'src/conversation/turn.ts',
      "import { label } from '../words/render.ts';",
      'may not import ../words/render.ts',
    ],
    ['src/chat/facts.ts', "import { units } from '../measurement/unit.ts';", 'but for its types'],
    [
      'src/inbox/receive.ts',
      "import { bot } from '../../adapters/telegram/bot.ts';",
      'may not import ../../adapters',
    ],
    [
      'adapters/telegram/send.ts',
      "import { x } from '../discord/send.ts';",
      'may not import ../discord/send.ts',
    ],
    [
      'adapters/telegram/send.ts',
      "import { x } from '../../src/store/store.ts';",
      'may not import ../../src/store',
    ],
    ['src/store/open.ts', 'await import(name);', 'only known when it runs'],
    ['src/elsewhere/a.ts', '', 'is in no table'],
  ])('fails %s on %s', (file, source, why) => {
    expect(wrongImports(file, source).join('\n')).toContain(why);
  });
});

const impure: readonly [string, RegExp][] = [
  [
    'waits',
    /\bawait\b|\basync\b|\bnew Promise\b|\bPromise\.|\bsetTimeout\b|\bsetInterval\b|\bqueueMicrotask\b/,
  ],
  ['reads the clock', /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.|\bDate\(\s*\)|\bTemporal\.Now\b/],
  ['throws dice', /\bMath\.random\b|\bcrypto\.|\brandomUUID\b|\bgetRandomValues\b/],
  ['writes a log', /\bconsole\.|\blogger\b/],
  ['reaches outside', /\bprocess\.\w|\bfetch\(|\bglobalThis\b|\bimport\.meta\b/],
];

const impurities = (source: string) =>
  impure.filter(([, pattern]) => pattern.test(withoutComments(source))).map(([what]) => what);

test('the core is pure: no file of it waits, reads a clock, throws dice, logs or reaches outside', () => {
  const files = sources.filter((file) => core.includes(folderOf(file)));
  expect(files.length).toBeGreaterThan(20);
  expect(
    files.flatMap((file) => impurities(read(file)).map((what) => `${file} ${what}`)),
    mend.impure,
  ).toEqual([]);
});

test.each([
  ['const now = Date.now();', ['reads the clock']],
  ['const now = new Date();', ['reads the clock']],
  ['const then = new Date(at);', []],
  ['const x = Math.random();', ['throws dice']],
  ['export async function f() { await g(); }', ['waits']],
  ["console.log('here');", ['writes a log']],
  ['const home = process.env.HOME;', ['reaches outside']],
  ['// await nothing, and process.env stays outside', []],
])('%j: %j', (source, what) => {
  expect(impurities(source)).toEqual(what);
});
