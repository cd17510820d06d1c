// Holds the README, the developers' guide and its drawing against the repository, so that none of them is only remembered.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { allowed } from '../architecture/allowed-imports.ts';
import { readImports } from '../architecture/read-imports.ts';

const root = join(import.meta.dirname, '../..');
const read = (file: string) => readFileSync(join(root, file), 'utf8');
const folderOf = (file: string) => dirname(file).split('/').slice(0, 2).join('/');
/** `src/store` and `adapters/console` as the drawing names them. */
const short = (folder: string) => folder.split('/').at(-1)!;

const drawn = [...read('DEVELOPERS.md').matchAll(/^ {2}(\w+) --> (\w+)$/gm)].map(
  ([, from, to]) => [from!, to!] as const,
);

function reach(edges: readonly (readonly [string, string])[], from: string, seen = new Set<string>()) {
  for (const [start, end] of edges) {
    if (start !== from || seen.has(end)) continue;
    seen.add(end);
    reach(edges, end, seen);
  }
  return seen;
}

function importsBetweenFolders(): [string, string, string][] {
  const files = ['src', 'adapters'].flatMap((top) =>
    readdirSync(join(root, top), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
      .map((entry) => relative(root, join(entry.parentPath, entry.name))),
  );
  return files.flatMap((file) =>
    readImports(read(file))
      .flatMap(({ from }) => (from?.startsWith('.') ? folderOf(join(dirname(file), from)) : []))
      .filter((target) => target !== folderOf(file))
      .map((target): [string, string, string] => [short(folderOf(file)), short(target), file]),
  );
}

describe('the drawing of folders', () => {
  test('shows every import from folder to folder', () => {
    expect(importsBetweenFolders().length).toBeGreaterThan(100);
    const missing = importsBetweenFolders().filter(([from, to]) => !reach(drawn, from).has(to));
    expect(
      missing,
      'Mend: draw the arrow in DEVELOPERS.md, under "The shape", or do without the import.',
    ).toEqual([]);
  });

  test('shows nothing that is not allowed, and leaves no folder out', () => {
    const covers = (list: readonly string[], folder: string) =>
      list.some((entry) => (entry.endsWith('*') ? folder.startsWith(entry.slice(0, -1)) : entry === folder));
    const folders = Object.keys(allowed).filter((folder) => folder !== 'src');
    const named = new Map(folders.map((folder) => [short(folder), folder]));
    const wrong = drawn.filter(([from, to]) => {
      const may = allowed[named.get(from) ?? ''];
      return !may || !covers([...may.ours, ...(may.types ?? [])], named.get(to) ?? '');
    });
    expect(
      wrong,
      'Mend: take the arrow out of DEVELOPERS.md, or allow it in test/architecture/allowed-imports.ts.',
    ).toEqual([]);
    expect(
      new Set(drawn.flat()),
      'Mend: the drawing in DEVELOPERS.md has each folder of test/architecture/allowed-imports.ts, and no other.',
    ).toEqual(new Set(named.keys()));
  });
});

const documents = [
  'README.md',
  'DEVELOPERS.md',
  'SECURITY.md',
  ...readdirSync(join(root, 'content/guide'))
    .filter((name) => name.endsWith('.md'))
    .map((name) => `content/guide/${name}`),
];

describe.each(documents)('%s', (document) => {
  test('names only files that are there', () => {
    const paths = [...read(document).matchAll(/`((?:src|adapters|test|content)\/[\w./-]+)`/g)].map(
      ([, path]) => path!,
    );
    const links = [...read(document).matchAll(/\]\((?!https?:)([^)#]+)\)/g)].map(([, link]) =>
      join(dirname(document), link!),
    );
    // The guides show files that a workshop, or whoever adds an adapter, is to write.
    const shown = /tolbeck|our-own|xx$|\/x\/?$/;
    expect([...paths, ...links].filter((path) => !shown.test(path) && !existsSync(join(root, path)))).toEqual(
      [],
    );
  });

  test('names files by themselves only where there is one of that name', () => {
    const there = ['src', 'adapters', 'test', 'content'].flatMap((top) =>
      readdirSync(join(root, top), { recursive: true }).map((path) => basename(String(path))),
    );
    const named = [...read(document).matchAll(/`([\w-]+\.(?:ts|ftl))`/g)].map(([, name]) => name!);
    const strange = named.filter((name) => !there.includes(name));
    expect(strange, 'Mend: name the file as it is called now.').toEqual([]);
  });

  test('names only npm scripts that are there', () => {
    const { scripts } = JSON.parse(read('package.json'));
    const named = [...read(document).matchAll(/npm run (?:--silent )?(\w+)/g)].map(([, name]) => name!);
    expect(named.filter((name) => scripts[name] === undefined)).toEqual([]);
  });
});

test('the README names every command, every package that the program runs on, and every setting of the bot', () => {
  const readme = read('README.md');
  const { scripts, dependencies } = JSON.parse(read('package.json'));
  const ours = ['start', 'test', 'types', 'lint', 'format', 'mutate'];
  const commands = Object.keys(scripts).filter((name) => !ours.includes(name));
  const settings = [...read('src/commands/read-environment.ts').matchAll(/^ {2}([A-Z_]+): /gm)]
    .map(([, name]) => name!)
    .filter((name) => !name.endsWith('_API_ROOT'));
  settings.push('CONTENT_DIR');
  expect(settings.length).toBeGreaterThan(5);
  expect(commands.filter((name) => !readme.includes(`npm run ${name}`))).toEqual([]);
  expect(Object.keys(dependencies).filter((name) => !readme.includes(`| \`${name}\` |`))).toEqual([]);
  expect(settings.filter((name) => !readme.includes(`\`${name}\``))).toEqual([]);
  const example = read('.env.example');
  expect(settings.filter((name) => !new RegExp(`^${name}=`, 'm').test(example))).toEqual([]);
});

test('the README leads to every guide and every file that a workshop runs the bot by', () => {
  const readme = read('README.md');
  const guides = readdirSync(join(root, 'content/guide')).map((name) => `content/guide/${name}`);
  const files = [...guides, 'compose.yaml', 'Dockerfile', '.env.example', 'NOTICE'];
  expect(files.filter((file) => !new RegExp(`\\]\\(${file}[)#]`).test(readme))).toEqual([]);
});

test('NOTICE names every package that the program runs on, under the licence that the package says', () => {
  const notice = read('NOTICE');
  const { dependencies } = JSON.parse(read('package.json'));
  const wrong = Object.keys(dependencies).filter((name) => {
    const { license } = JSON.parse(read(`node_modules/${name}/package.json`));
    // A licence begins its line behind two blanks; its packages may go on below, further in.
    const entry = notice.split(/\n(?= {2}\S)/).find((one) => one.startsWith(`  ${license} `));
    return !entry?.split(/[\s,]+/).includes(name);
  });
  expect(wrong, 'Mend: name it in NOTICE.').toEqual([]);
});
