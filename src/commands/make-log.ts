// The log of the bot: one JSON object a line on standard output, without tokens and without what anybody wrote.
import { pino } from 'pino';
import type { Log } from '../../adapters/wire/surroundings.ts';

/** Everything is written by hand-picked fields; that no token slips in with them is made sure of here. */
export function makeLog(level: string, secrets: readonly string[]): Log {
  const hide = (line: string) => secrets.reduce((shown, secret) => shown.replaceAll(secret, '[token]'), line);
  return pino(
    { level, base: null, formatters: { level: (label) => ({ level: label }) } },
    { write: (line: string) => void process.stdout.write(hide(line)) },
  );
}
