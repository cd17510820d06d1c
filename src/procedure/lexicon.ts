// What a language's lexicon file may say, for the loader and for whoever edits one.
import { z } from 'zod';
import { steeringWords } from '../measurement/heard.ts';
import { roles } from '../measurement/lexicon.ts';
import { typedUnits } from '../measurement/unit-factors.ts';
import { languageSchema } from './localised.ts';
import { redFlags } from './vocabulary.ts';

/** What whole messages do besides steering: an owner's one, then those of the desk. */
const commands = [
  'erase',
  'take',
  'take-over',
  'pass',
  'ask',
  'check',
  'accept',
  'jump',
  'clear',
  'give-back',
  'close',
  'note',
  'job',
  'card',
  'record',
  'help',
  'cases',
  'find',
  'closed-today',
  'open-again',
] as const;

const phrases = z.array(z.string().min(1)).readonly();
const byNumber = z.record(z.string().regex(/^\d+(?:\.5)?$/, 'a whole number, or one and a half'), phrases);

export const lexiconSchema = z.strictObject({
  language: languageSchema,
  /** The language is not whole yet: what it lacks is shown in English, and `check` only says so. */
  draft: z.boolean().default(false),
  decimals: z.array(z.enum(['.', ','])).min(1),
  compounds: z.boolean().default(false),
  diminutives: phrases.optional(),
  words: z.record(z.enum(steeringWords), phrases),
  commands: z.partialRecord(z.enum(commands), phrases).default({}),
  numbers: byNumber,
  soundsLike: byNumber.optional(),
  upToNineteen: z.array(z.number().int()).default([]),
  multipliers: byNumber,
  fractions: byNumber,
  units: z.partialRecord(z.enum(typedUnits), phrases),
  phrases: z.partialRecord(z.enum(roles), phrases),
  asks: z.partialRecord(z.enum(steeringWords), phrases).optional(),
  redFlags: z.record(z.enum(redFlags), z.strictObject({ when: phrases, unless: phrases.optional() })),
});
