// Starts a program that speaks the pipe contract, writes lines to it, reads what it answers, and kills it without warning.
import { type ChildProcess, spawn } from 'node:child_process';

/** A line of output, as far as the kill test looks into it. */
export interface Answer {
  id?: string;
  edit?: number;
  to?: string;
  case?: string;
  text?: string;
  choices?: { id: string }[];
  facts?: {
    ask?: { kind: string; question?: string; measure?: string; count?: number };
    case?: { id: string; state: string };
  };
  done?: number;
  error?: string;
}

export interface RunningProgram {
  write(line: object): void;
  /** The next whole line of output; null once the program has ended. */
  next(): Promise<Answer | null>;
  kill(): void;
  /** Ends the input, and resolves with the exit status. */
  end(): Promise<number | null>;
  ended: Promise<number | null>;
  errors(): string;
}

export function startProgram(command: string[], surroundings: Record<string, string>): RunningProgram {
  const child: ChildProcess = spawn(process.execPath, command, {
    stdio: ['pipe', 'pipe', 'pipe'],
    env: { ...process.env, ...surroundings },
  });
  const lines: string[] = [];
  let begun = '';
  let errors = '';
  let over = false;
  let wake = () => {};
  child.stdin?.on('error', () => {});
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    const pieces = (begun + text).split('\n');
    // What a killed program leaves of a line was never said.
    begun = pieces.pop() ?? '';
    lines.push(...pieces);
    wake();
  });
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    errors += text;
  });
  const ended = new Promise<number | null>((resolve) => {
    child.on('close', (status) => {
      over = true;
      wake();
      resolve(status);
    });
  });
  return {
    write: (line) => void child.stdin?.write(`${JSON.stringify(line)}\n`),
    async next() {
      while (lines.length === 0 && !over) {
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      }
      const line = lines.shift();
      return line === undefined ? null : JSON.parse(line);
    },
    kill: () => void child.kill('SIGKILL'),
    end: () => {
      child.stdin?.end();
      return ended;
    },
    ended,
    errors: () => errors,
  };
}
