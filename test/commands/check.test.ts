// Holds `check` to sound content, and to what it says of content that is not.
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { check } from '../../src/commands/check.ts';
import { contentFolder } from '../../src/commands/content-folder.ts';
import { keepPrinted } from './keep-printed.ts';

const run = (...args: string[]) => keepPrinted((output) => check(args, output));

test('the content that ships with the program is sound', async () => {
  const { status, printed } = await run();
  const errors = printed.split('\n').filter((line) => line !== '' && !line.includes('  Warning: '));
  expect(errors).toEqual([expect.stringMatching(/^The content is sound: /)]);
  expect(status).toBe(0);
});

test('the folder is the one named, else by CONTENT_DIR, else by the file of settings, else the one that ships', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'settings-'));
  try {
    const file = join(folder, '.env');
    expect(resolve(contentFolder(undefined, {}, file))).toBe(join(import.meta.dirname, '../../content'));
    await writeFile(file, 'DATA_DIR=elsewhere\nCONTENT_DIR=/from/the/file\n');
    expect(contentFolder(undefined, {}, file)).toBe('/from/the/file');
    expect(contentFolder(undefined, { CONTENT_DIR: '/from/outside' }, file)).toBe('/from/outside');
    expect(contentFolder('/named', { CONTENT_DIR: '/from/outside' }, file)).toBe('/named');
  } finally {
    await rm(folder, { recursive: true });
  }
});

test('a folder that is not there is one line', async () => {
  expect(await run('--content', '/nonexistent')).toEqual({
    status: 1,
    printed:
      '/nonexistent  There is no such folder. Mend: Name a folder with workshop.yaml, machines/, procedures/ and words/ in it.\n',
  });
});

test('an empty folder is refused, each thing in a line with its place and mend, and the count at the end', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'content-'));
  try {
    const { status, printed } = await run('--content', folder);
    const lines = printed.trimEnd().split('\n');
    expect(status).toBe(1);
    expect(lines.at(-1)).toMatch(
      /^\d+ things have to be put right before the program starts on this content\.$/,
    );
    for (const line of lines.slice(0, -1)) expect(line).toMatch(/^\S+:\d+:\d+ {2}.+ Mend: .+[.?]$/);
    expect(printed).toContain(`${join(folder, 'workshop.yaml')}:1:1  This file is missing.`);
  } finally {
    await rm(folder, { recursive: true });
  }
});
