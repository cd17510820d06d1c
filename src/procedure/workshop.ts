// What the workshop says of itself: its name, language, opening hours and limits; for the desk, the tips and the first greeting.
import { z } from 'zod';
import { languageSchema, localisedSchema } from './localised.ts';

const timeSchema = z.string().regex(/^([01]\d|2[0-4]):[0-5]\d$/, 'a time of day is written as "08:30"');
const spanSchema = z.tuple([timeSchema, timeSchema]);

export const workshopSchema = z.strictObject({
  name: localisedSchema,
  language: languageSchema.default('en'),
  timeZone: z.string().default('UTC'),
  /** Opening spans by day; a day left out is closed. */
  hours: z.partialRecord(z.enum(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']), z.array(spanSchema)),
  holidays: z.array(z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'a day is written as "2026-12-25"')).default([]),
  /** How often the desk is reminded of a case that nobody has taken. */
  remindMinutes: z.number().int().positive().default(30),
  /** How long a finished chat's readings are kept. */
  keepDays: z.number().int().positive().default(365),
  /** An owner who has worked this long without getting to the end is offered a person. */
  enoughMinutes: z.number().int().min(60).default(120),
});

export type Workshop = z.infer<typeof workshopSchema>;
