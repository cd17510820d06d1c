// Gives lines to the real program in pipe mode and returns all that it prints, for the tests of the documents.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';

const program = join(import.meta.dirname, '../../src/start.mjs');

export async function playPipe(lines: string, options: readonly string[]): Promise<string> {
  const { DATABASE_URL: _, CONTENT_DIR: __, ...env } = process.env;
  const child = spawn(process.execPath, [program, 'chat', '--pipe', ...options], {
    env,
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  let printed = '';
  child.stdout.setEncoding('utf8').on('data', (more) => (printed += more));
  child.stdin.end(lines);
  const [status] = await once(child, 'close');
  if (status !== 0) throw new Error(`The program ended with ${status}.`);
  return printed;
}
