// Plays what the README shows of pipe mode, and holds what comes out against what it prints there.
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { layOutMessage } from '../../adapters/console/lay-out-message.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { Play, type Said, shippedDecide } from '../conversation/play.ts';
import { shippedFigures, walk } from '../conversation/ready-owner.ts';
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

test('the set-up in the README is what the program says, as the terminal lays it out', async () => {
  const readme = await readFile(join(root, 'README.md'), 'utf8');
  const [, sample = ''] = /^From the middle of a set-up[^`]*`>`\.\n\n```text\n([^`]*)```/m.exec(readme) ?? [];
  const play = new Play(await shippedDecide());
  play.start('o1', 'throttle-sensor', 'fenmoor-450');
  play.choose('o1', 'runs-badly');
  const shows = {
    ...shippedFigures,
    'supply-voltage': '4.98',
    'signal-idle': '0.640',
    'as-found-idle': '0.640',
  };
  walk(play, 'o1', shows, (said) => said.facts.stage === 'baseline' && said.facts.ask?.kind === 'reading');
  const laid = [layOut(play.said.at(-1)!)];
  for (const typed of [...sample.matchAll(/^> (.*)$/gm)].map(([, line]) => line!)) {
    const said = typed === '1' ? play.choose('o1', 'done') : play.text('o1', typed);
    laid.push(`> ${typed}\n${said.map(layOut).join('\n\n')}`);
  }
  expect(laid.length).toBeGreaterThan(3);
  expect(`${laid.join('\n\n')}\n`, 'Mend: put what the program says into README.md.').toBe(sample);
});

function layOut({ text, choices, facts }: Said): string {
  const message = { to: { kind: 'owner' }, edit: 0, text, choices, facts } as unknown as OutgoingMessage;
  return layOutMessage(message, 80, null, (_, plain) => plain).text;
}
