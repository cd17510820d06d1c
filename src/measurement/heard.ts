// What one message was understood to say, before any conversation gives it a meaning; made by `hear`, used by the conversation.
import type { Unit } from './unit.ts';

/** The words that steer a conversation. They count only as whole messages. */
export const steeringWords = [
  'yes',
  'no',
  'done',
  'back',
  'repeat',
  'help',
  'human',
  'stop',
  'pause',
] as const;

export type SteeringWord = (typeof steeringWords)[number];

/** Why a message could not be understood; each has a sentence in the words of every language. */
export type UnclearWhy =
  | 'nothing-understood'
  | 'two-meanings'
  | 'bare-figure'
  | 'wrong-quantity'
  | 'malformed-number'
  | 'sign-or-bullet'
  | 'bound-only'
  | 'refers-back'
  | 'too-long';

/** A value with the worth of its last digit, both in `unit`. */
export interface Value {
  value: number;
  resolution: number;
}

export type Heard =
  /** One value. `echo`: it was repaired or hedged on the way, so it is repeated before it counts. */
  | ({ kind: 'reading'; unit: Unit; echo?: true } & Value)
  /** A reading that moves between two values, or is known only to lie between them. */
  | { kind: 'range'; low: number; high: number; unit: Unit; resolution: number; echo?: true }
  /** Several values in the order typed; null where the meter showed an overload. */
  | { kind: 'series'; values: (number | null)[]; unit: Unit; resolution: number; echo?: true }
  | { kind: 'overload' }
  | { kind: 'no-reading' }
  | { kind: 'word'; word: SteeringWord }
  /** `flag` is the id of a red flag in content. */
  | { kind: 'red-flag'; flag: string }
  /** `meant`: what it could have been, likeliest first, to be offered as buttons. */
  | { kind: 'unclear'; why: UnclearWhy; meant?: Value[] };
