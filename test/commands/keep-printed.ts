// Keeps what a command prints, for the tests of commands.
import { Writable } from 'node:stream';

export async function keepPrinted(
  run: (output: Writable) => Promise<number>,
): Promise<{ status: number; printed: string }> {
  let printed = '';
  const output = new Writable({
    write(chunk, _, done) {
      printed += chunk;
      done();
    },
  });
  return { status: await run(output), printed };
}
