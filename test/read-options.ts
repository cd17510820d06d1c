// Reads the options of a command for developers: whoever mistypes one gets a sentence and the usage, not a stack of calls.
import { type ParseArgsConfig, parseArgs } from 'node:util';

const wrongUse = 64;

/** Ends the process where an option is not known. */
export function readOptions<T extends ParseArgsConfig>(config: T, usage: string) {
  try {
    return parseArgs(config);
  } catch (error) {
    return refuse(error instanceof Error ? error.message : String(error), usage);
  }
}

export function refuse(why: string, usage: string): never {
  process.stderr.write(`${why.replace(/\.?$/, '.')}\n${usage}\n`);
  process.exit(wrongUse);
}
