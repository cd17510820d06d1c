// Runs the command that is named first on the command line, and ends with its exit status.
import { stdin, stdout } from 'node:process';
import { type CommandName, helpFor, isCommand, usage } from './command-list.ts';

const commands: Record<CommandName, (args: string[]) => Promise<number>> = {
  chat: async (args) => (await import('./chat.ts')).chat(args),
  bot: async (args) => (await import('./bot.ts')).bot(args),
  interpret: async (args) => (await import('./interpret.ts')).interpret(args, stdin, stdout),
  check: async (args) => (await import('./check.ts')).check(args, stdout),
  doctor: async (args) => (await import('./doctor.ts')).doctor(args),
  report: async (args) => (await import('./report.ts')).report(args, stdout),
};

// Whoever read our output has gone, as `head` does: there is nothing left to say.
stdout.on('error', () => process.exit(1));

const wrongUse = 64;
const [name, ...args] = process.argv.slice(2);
if (!isCommand(name)) {
  process.stderr.write(usage(name));
  process.exitCode = wrongUse;
} else if (args.includes('--help') || args.includes('-h')) {
  stdout.write(helpFor(name));
} else {
  try {
    process.exitCode = await commands[name](args);
  } catch (error) {
    const sentence = error instanceof Error ? error.message : String(error);
    const stack = process.env.LOG_LEVEL === 'debug' && error instanceof Error ? `\n${error.stack}` : '';
    process.stderr.write(`${sentence}${stack}\n`);
    const isMistyped =
      error instanceof Error && 'code' in error && `${error.code}`.startsWith('ERR_PARSE_ARGS');
    if (isMistyped) process.stderr.write(`\n${helpFor(name)}`);
    process.exitCode = isMistyped ? wrongUse : 1;
  }
}
