// The exit codes by which whoever supervises `npm run bot` can tell what to do; numbers as in sysexits.h where one fits.
import type { Fatal } from '../../adapters/wire/surroundings.ts';

export const exitCodes = {
  stopped: 0,
  /** Something in the program is wrong; starting again may help. */
  failed: 70,
  /** The database cannot be used: a full disk, another process, a newer schema. */
  database: 74,
  /** Another program fetches the same bot's updates; starting again later may help. */
  secondPoller: 75,
  /** The token is wrong or was revoked; starting again does not help. */
  revokedToken: 77,
  /** The settings, the content or the platform's own switches are wrong; starting again does not help. */
  configuration: 78,
} as const;

export const codeOfFatal: Record<Fatal, number> = {
  'revoked-token': exitCodes.revokedToken,
  'second-poller': exitCodes.secondPoller,
  'not-allowed': exitCodes.configuration,
};
