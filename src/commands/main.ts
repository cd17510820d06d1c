// Runs the command that is named first on the command line, and ends with its exit status.
import { stdin, stdout } from 'node:process';

const commands: Record<string, { about: string; run: (args: string[]) => Promise<number> }> = {
  chat: {
    about: 'the local chat, for a person or (with --pipe) for another program',
    run: async (args) => (await import('./chat.ts')).chat(args),
  },
  bot: {
    about: 'Telegram and Discord, as .env says',
    run: async (args) => (await load('bot')).bot!(args),
  },
  interpret: {
    about: 'how messages are understood, a line each',
    run: async (args) => (await load('interpret')).interpret!(args, stdin, stdout),
  },
  check: {
    about: 'whether the content is sound',
    run: async (args) => (await import('./check.ts')).check(args, stdout),
  },
  doctor: {
    about: 'whether everything that the bot needs is there',
    run: async (args) => (await load('doctor')).doctor!(args),
  },
  report: {
    about: "what the workshop's cases and records say",
    run: async (args) => (await load('report')).report!(args),
  },
};

type Command = (...given: unknown[]) => Promise<number>;

async function load(name: string): Promise<Record<string, Command>> {
  return import(`./${name}.ts`);
}

function usage(named: string | undefined): string {
  const known = Object.entries(commands).map(([name, { about }]) => `  npm run ${name.padEnd(10)} ${about}`);
  const first = named === undefined ? 'Name a command.' : `There is no command "${named}".`;
  return [first, 'The commands are:', ...known, ''].join('\n');
}

// Whoever read our output has gone, as `head` does: there is nothing left to say.
process.stdout.on('error', () => process.exit(1));

const [name, ...args] = process.argv.slice(2);
const command = name === undefined ? undefined : commands[name];
if (command === undefined) {
  process.stderr.write(usage(name));
  process.exitCode = 64;
} else {
  try {
    process.exitCode = await command.run(args);
  } catch (error) {
    const sentence = error instanceof Error ? error.message : String(error);
    const stack = process.env.LOG_LEVEL === 'debug' && error instanceof Error ? `\n${error.stack}` : '';
    process.stderr.write(`${sentence}${stack}\n`);
    process.exitCode = 1;
  }
}
