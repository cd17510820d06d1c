// Starts the program in pipe mode and speaks the contract with it, one line at a time.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Engine, InputLine, OutputLine } from './pipe-line.ts';

const root = join(import.meta.dirname, '..', '..');

/** A throw-away database, a frozen clock; `command` is another program that keeps the contract. */
export function openPipe(command?: readonly string[]): Engine {
  const folder = mkdtempSync(join(tmpdir(), 'garage-'));
  const [program, ...args] = command ?? ['npm', 'run', '--silent', 'chat', '--', '--pipe'];
  const child = spawn(program!, [...args, '--data', folder, '--now', '2026-01-05T09:00:00Z'], {
    cwd: root,
    stdio: ['pipe', 'pipe', 'inherit'],
  });

  let sent = 0;
  let rest = '';
  let collected: OutputLine[] = [];
  let waiting: { resolve: (lines: OutputLine[]) => void; reject: (error: Error) => void } | null = null;
  let over: Error | null = null;

  child.stdout.setEncoding('utf8');
  child.stdout.on('data', (chunk: string) => {
    const pieces = (rest + chunk).split('\n');
    rest = pieces.pop()!;
    for (const piece of pieces) if (piece) take(piece);
  });
  child.on('error', stop);
  child.on('exit', (code, signal) => stop(new Error(`the program ended (${signal ?? code})`)));
  // A program that dies while a line is under way is told of by its exit.
  child.stdin.on('error', () => {});

  function stop(error: Error): void {
    over = error;
    waiting?.reject(error);
    waiting = null;
  }

  function take(text: string): void {
    const parsed: OutputLine | { done: number } | { error: string; line: number } = JSON.parse(text);
    if ('error' in parsed) {
      stop(new Error(`line ${parsed.line}: ${parsed.error}`));
    } else if (!('done' in parsed)) {
      collected.push(parsed);
    } else if (parsed.done !== sent) {
      stop(new Error(`done ${parsed.done} for line ${sent}`));
    } else {
      waiting?.resolve(collected);
      waiting = null;
      collected = [];
    }
  }

  return {
    send(line: InputLine): Promise<OutputLine[]> {
      return new Promise((resolve, reject) => {
        if (over) return reject(over);
        waiting = { resolve, reject };
        sent += 1;
        child.stdin.write(`${JSON.stringify(line)}\n`);
      });
    },
    async close(): Promise<void> {
      if (!over) {
        await new Promise<void>((resolve) => {
          child.once('exit', () => resolve());
          child.stdin.end();
        });
      }
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** The same contract over a plain function. */
export function overFunction(take: (line: InputLine) => OutputLine[] | Promise<OutputLine[]>): Engine {
  return { send: async (line) => take(line), close: async () => {} };
}
