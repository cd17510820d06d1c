// Plays what the README shows of pipe mode, and holds what comes out against what it prints there.
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { playPipe } from './play-pipe.ts';

const root = join(import.meta.dirname, '../..');

interface Line {
  text?: string;
  choices?: { id: string; label: string }[];
  facts?: Record<string, unknown>;
}

let folder: string;
let shown: Line[];
let real: Line[];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'gaugehand-look-'));
  const readme = await readFile(join(root, 'README.md'), 'utf8');
  const [, sent = '', printed = ''] =
    /```json\n([^`]*)```\n\nOut [^`]*`lines`[^`]*```json\n([^`]*)```/.exec(readme) ?? [];
  const parse = (text: string) =>
    text
      .trim()
      .split('\n')
      .map((line): Line => JSON.parse(line));
  shown = parse(printed);
  const now = /--now (\S+)\]/.exec(readme)?.[1] ?? '';
  real = parse(await playPipe(sent, ['--data', folder, '--now', now]));
}, 60_000);

afterAll(() => rm(folder, { recursive: true }));

/** As the README cuts it: texts behind their beginning, choices behind the first two, `lines` altogether. */
function cutLike(line: Line, like: Line | undefined): Line {
  const begun = like?.text?.endsWith('…') ? like.text.slice(0, -1) : null;
  return {
    ...line,
    ...(begun !== null && line.text?.startsWith(begun) ? { text: `${begun}…` } : {}),
    ...(line.choices ? { choices: line.choices.slice(0, 2) } : {}),
    ...(line.facts ? { facts: { ...line.facts, lines: [] } } : {}),
  };
}

describe('the look at pipe mode in the README', () => {
  test('is what the program prints', () => {
    expect(shown.length).toBeGreaterThan(5);
    expect(
      real.map((line, index) => cutLike(line, shown[index])),
      'Mend: put what the program prints into README.md, under "Pipe mode".',
    ).toEqual(shown);
  });

  test('names the case that a person called in a fresh folder gets', async () => {
    const other = await mkdtemp(join(tmpdir(), 'gaugehand-look-'));
    try {
      const out = await playPipe('{"from":"o1","text":"person"}\n', ['--data', other]);
      const id = /"case":\{"id":"([\d-]+)"/.exec(out)?.[1];
      expect(await readFile(join(root, 'README.md'), 'utf8')).toContain(`\`desk ${id}: /take\``);
    } finally {
      await rm(other, { recursive: true });
    }
  });
});
