// The program's face from outside: a process, lines in, lines out, exit status.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';

const program = join(import.meta.dirname, '..', '..', 'kill', 'counting-program.ts');
const now = ['--now', '2026-01-05T09:00:00Z'];
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-pipe-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

interface Ran {
  status: number | null;
  out: string[];
  errors: string;
}

function start(args: string[]) {
  return spawn(process.execPath, [program, '--data', join(folder, 'data'), ...args], {
    env: { ...process.env, DATABASE_URL: '', LANG: 'de_DE.UTF-8', LC_ALL: '' },
  });
}

function run(args: string[], input: string): Promise<Ran> {
  const child = start(args);
  let out = '';
  let errors = '';
  child.stdout.setEncoding('utf8').on('data', (text) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text) => {
    errors += text;
  });
  child.stdin.end(input);
  return new Promise((resolve) => {
    child.on('close', (status) => resolve({ status, out: out.split('\n').slice(0, -1), errors }));
  });
}

const lines = (...objects: (object | string)[]) =>
  objects.map((line) => `${typeof line === 'string' ? line : JSON.stringify(line)}\n`).join('');
const told = ({ out }: Ran) =>
  out.map((line) => {
    const { done, error, to, text } = JSON.parse(line);
    return done === undefined ? `${to ?? 'line'}: ${text ?? error}` : done;
  });

describe('the program’s face', () => {
  test('answers each line with what it caused, then its number, blank and wrong lines too', async () => {
    const ran = await run(
      ['--pipe', ...now],
      lines({ from: 'o1', text: 'a' }, '', 'nonsense', { from: 'o1', text: 'case' }, { advance: '1h' }),
    );
    expect(ran).toMatchObject({ status: 0, errors: '' });
    expect(told(ran)).toEqual([
      'o1: 1: a',
      1,
      2,
      'line: this line is not JSON',
      3,
      'o1: 2: case',
      'o1: 2 is even',
      'desk: o1: case',
      4,
      5,
    ]);
    expect(JSON.parse(ran.out[0]!)).toEqual({
      id: 'c1-1',
      to: 'o1',
      text: '1: a',
      choices: [{ id: 'done', label: 'Done' }],
      picture: null,
      facts: {},
    });
    expect(JSON.parse(ran.out[3]!)).toEqual({ error: 'this line is not JSON', line: 3 });
    expect(JSON.parse(ran.out[7]!)).toMatchObject({ to: 'desk', case: '1.2' });
  });

  test('says the same on the same input, byte for byte', async () => {
    const input = lines(
      { from: 'o1', text: 'a' },
      { from: 's', role: 'staff', text: 'b' },
      { from: 'o2', text: 'remind' },
      { advance: '2h' },
    );
    const first = await run(['--pipe', ...now], input);
    rmSync(join(folder, 'data'), { recursive: true });
    expect(await run(['--pipe', ...now], input)).toEqual(first);
  });

  test('goes on where it stopped, counts lines anew, and takes a line with a known id once', async () => {
    await run(['--pipe', ...now], lines({ from: 'o1', text: 'a', id: '1' }));
    const ran = await run(
      ['--pipe', ...now],
      lines({ from: 'o1', text: 'a', id: '1' }, { from: 'o1', text: 'b', id: '2' }),
    );
    expect(told(ran)).toEqual([1, 'o1: 2: b', 'o1: 2 is even', 2]);
  });

  test('moves the clock only where it is frozen', async () => {
    const ran = await run(['--pipe'], lines({ advance: '1h' }));
    expect(told(ran)).toEqual(['line: the clock is the real one: start with --now to move it', 1]);
    expect(ran.status).toBe(0);
  });

  test('does what falls due on the way of the clock, before the line is done', async () => {
    const ran = await run(
      ['--pipe', ...now],
      lines({ from: 'o1', text: 'remind' }, { advance: '59m' }, { advance: '1m' }),
    );
    expect(told(ran)).toEqual(['o1: 1: remind', 1, 2, 'tips: reminder 1 for console:o1', 3]);
  });

  test('goes on after a line that cannot be taken, and says why on standard error only', async () => {
    const ran = await run(
      ['--pipe', ...now],
      lines({ from: 'o1', text: 'throw' }, { from: 'o1', text: 'a' }),
    );
    expect(told(ran)).toEqual(['line: this could not be taken; the log says why', 1, 'o1: 1: a', 2]);
    expect(ran.errors).toContain('this message cannot be decided');
    expect(ran.status).toBe(0);
  });

  test.each([
    ['an option that there is none of', ['--nonsense'], /nonsense/],
    ['an instant that is none', ['--now', 'tomorrow'], /"tomorrow" is no instant/],
  ])('ends with a sentence on %s', async (_, args, sentence) => {
    const ran = await run(['--pipe', ...args], '');
    expect(ran.status).not.toBe(0);
    expect(ran.out).toEqual([]);
    expect(ran.errors).toMatch(sentence);
  });

  test('ends with a sentence where the database is damaged', async () => {
    await run(['--pipe', ...now], lines({ from: 'o1', text: 'a' }));
    writeFileSync(join(folder, 'data', 'gaugehand.db'), 'this is no database');
    const ran = await run(['--pipe', ...now], lines({ from: 'o1', text: 'a' }));
    expect(ran.status).not.toBe(0);
    expect(ran.errors).toMatch(/damaged/);
  });
});

describe('a signal to stop', () => {
  test.each([
    ['SIGTERM', 'the program’s face', ['--pipe'], '{"from":"o1","text":"a"}\n', '{"done":1}'],
    ['SIGINT', 'the program’s face', ['--pipe', ...now], '{"from":"o1","text":"a"}\n', '{"done":1}'],
    ['SIGTERM', 'a person’s face', [], 'hello\n', '2 is even'],
    ['SIGINT', 'a person’s face', [], 'hello\n', '2 is even'],
  ] as const)('%s ends %s in order, with its input still open', async (signal, _, args, input, awaited) => {
    const child = start([...args]);
    child.stdin.write(input);
    let [out, errors] = ['', ''];
    child.stderr.on('data', (text) => {
      errors += text;
    });
    child.stdout.on('data', (text) => {
      if (out.includes(awaited)) return;
      out += text;
      if (out.includes(awaited)) child.kill(signal);
    });
    const ended = await new Promise((resolve) => child.on('close', (...how) => resolve(how)));
    expect({ ended, errors }).toEqual({ ended: [0, null], errors: '' });
    expect(out).toContain(awaited);
  });
});

describe('a person’s face on a pipe', () => {
  test('greets, shows choices by number without colour, takes them, and ends with the input', async () => {
    const ran = await run([], 'hello\n1\n\n#9\ndesk: who?\n');
    expect(ran.status).toBe(0);
    expect(ran.out.join('\n')).not.toContain('\u001b');
    expect(ran.out.filter(Boolean)).toEqual([
      '  1: start',
      '  1  Done',
      '  2: hello',
      '  1  Done',
      '  2 is even',
      '  1  Done',
      '  3: chose done',
      '  1  Done',
      '  There is no choice with that number.',
      'desk | desk heard who?; open:',
      'desk | #1  Done',
    ]);
  });

  test('keeps a last line without an end', async () => {
    const ran = await run([], 'hello');
    expect(ran.out).toContain('  2: hello');
  });
});
