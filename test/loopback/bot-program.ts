// Runs `npm run bot` as a process of its own, to be killed and started again; for tests of the whole program.
import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');

export interface BotProgram {
  /** All that it logged and said so far, over all its lives. */
  output(): string;
  start(): void;
  /** As a power cut. */
  kill(): Promise<void>;
  /** As a supervisor stops it; resolves to the exit code. */
  stop(): Promise<number | null>;
  /** The exit code, once it has ended by itself. */
  ended(): Promise<number | null>;
}

export function makeBotProgram(environment: Record<string, string>, args: string[] = []): BotProgram {
  let child: ChildProcess | null = null;
  let output = '';

  const ended = async () => {
    const running = child;
    if (!running || running.exitCode !== null || running.signalCode !== null)
      return running?.exitCode ?? null;
    return new Promise<number | null>((resolve) => running.once('exit', (code) => resolve(code)));
  };

  return {
    output: () => output,
    start() {
      const node = join(root, 'node_modules/.bin/node');
      const { PATH = '', HOME = '', TMPDIR = '/tmp' } = process.env;
      child = spawn(node, ['src/start.mjs', 'bot', ...args], {
        cwd: root,
        env: { PATH, HOME, TMPDIR, LOG_LEVEL: 'info', ...environment },
        stdio: ['ignore', 'pipe', 'pipe'],
      });
      for (const stream of [child.stdout, child.stderr]) {
        stream?.setEncoding('utf8').on('data', (text: string) => {
          output += text;
        });
      }
    },
    async kill() {
      const gone = ended();
      child?.kill('SIGKILL');
      await gone;
    },
    async stop() {
      const gone = ended();
      child?.kill('SIGTERM');
      return gone;
    },
    ended,
  };
}
