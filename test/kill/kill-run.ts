// Plays the same lines twice, once undisturbed and once with the program killed again and again, and tells what both said.
import type { Answer, RunningProgram } from './drive-program.ts';
import { seededRandom } from './random.ts';

export type Line = Record<string, unknown> & { id: string };

export interface Said {
  /** Every message in the order in which it was first said. */
  messages: Answer[];
  /** Messages that were said again, after a kill. */
  again: Answer[];
  /** Lines that were answered with an error. */
  errors: string[];
  kills: number;
  /** How long a line took, in ms, in the middle of all. */
  usualMs: number;
}

/** What to say next, from everything that was said so far; null ends the play. */
export type NextLine = (heard: readonly Answer[]) => Line | null;

export async function playUndisturbed(
  program: RunningProgram,
  nextLine: NextLine,
): Promise<Said & { lines: Line[] }> {
  const lines: Line[] = [];
  const messages: Answer[] = [];
  const errors: string[] = [];
  const times: number[] = [];
  for (let line = nextLine(messages); line !== null; line = nextLine(messages)) {
    lines.push(line);
    const began = performance.now();
    program.write(line);
    for (;;) {
      const answer = await program.next();
      if (answer === null)
        throw new Error(`the program ended at line ${JSON.stringify(line)}: ${program.errors()}`);
      if (answer.done !== undefined) break;
      if (answer.error !== undefined) errors.push(answer.error);
      else messages.push(answer);
    }
    times.push(performance.now() - began);
  }
  const status = await program.end();
  if (status !== 0) throw new Error(`exit status ${status}: ${program.errors()}`);
  return {
    lines,
    messages,
    again: [],
    errors,
    kills: 0,
    usualMs: times.sort((a, b) => a - b)[times.length >> 1] ?? 0,
  };
}

export async function playWithKills(options: {
  start: () => RunningProgram;
  lines: readonly Line[];
  kills: number;
  seed: number;
  usualMs: number;
}): Promise<Said> {
  const { start, lines, kills, seed, usualMs } = options;
  const random = seededRandom(seed);
  const killedAt = pickLines(lines.length, kills, random);
  const said = new Map<string, string>();
  const result: Said = { messages: [], again: [], errors: [], kills: 0, usualMs };
  let program = start();

  function take(answer: Answer): void {
    if (answer.error !== undefined && answer.error !== nothingSaid) result.errors.push(answer.error);
    if (answer.id === undefined) return;
    const name = `${answer.id}/${answer.edit ?? 0}`;
    const text = JSON.stringify(answer);
    const before = said.get(name);
    if (before === undefined) {
      said.set(name, text);
      result.messages.push(answer);
    } else if (before === text) {
      result.again.push(answer);
    } else {
      throw new Error(`message ${name} was said again, and differs:\n${before}\n${text}`);
    }
  }

  /** Until the program has answered so many lines, or has ended. */
  async function listen(until: number): Promise<'done' | 'ended'> {
    for (;;) {
      const answer = await program.next();
      if (answer === null) return 'ended';
      take(answer);
      if (answer.done !== undefined && answer.done >= until) return 'done';
    }
  }

  async function killAndStartAnew(): Promise<void> {
    program.kill();
    result.kills += 1;
    await listen(Number.POSITIVE_INFINITY);
    program = start();
  }

  let answeredHere = 0;
  async function say(line: object): Promise<void> {
    program.write(line);
    answeredHere += 1;
    if ((await listen(answeredHere)) === 'ended') {
      throw new Error(`the program ended by itself at ${JSON.stringify(line)}: ${program.errors()}`);
    }
  }

  for (const [index, line] of lines.entries()) {
    for (let left = killedAt.get(index) ?? 0; left > 0; left -= 1) {
      const whileStarting = answeredHere === 0 && random() < 0.3;
      // A line that is nothing is answered as soon as the program is up.
      if (answeredHere === 0 && !whileStarting) await say({});
      program.write(line);
      await pause(random() * (whileStarting ? 300 : usualMs * 1.5));
      await killAndStartAnew();
      answeredHere = 0;
    }
    await say(line);
  }
  const status = await program.end();
  if (status !== 0) throw new Error(`exit status ${status}: ${program.errors()}`);
  return result;
}

/** What `{}` is answered with. */
const nothingSaid = '"from" names who says this';

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

/** How often to kill at each line; now and then twice in a row. */
function pickLines(lines: number, kills: number, random: () => number): Map<number, number> {
  const picked = new Map<number, number>();
  for (let left = kills; left > 0; left -= 1) {
    const index = Math.floor(random() * lines);
    picked.set(index, (picked.get(index) ?? 0) + 1);
  }
  return picked;
}
