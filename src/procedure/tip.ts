// What a workshop's file says of one tip for its channel: the job it is about, and when it may be posted; its words are Fluent, under tip-<id>.
import { z } from 'zod';
import { idSchema } from './identifier.ts';

const timeSchema = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time of day is written as "17:30"');

export const tipSchema = z.strictObject({
  id: idSchema,
  /** Of two tips that have rested equally long, the lowest comes first. */
  order: z.number().int().default(100),
  /** The job that its start button opens. */
  procedure: idSchema,
  machine: idSchema,
  /** Days and time of day, by the workshop's own clock, at which it may be posted. */
  days: z.array(z.enum(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'])).min(1),
  time: timeSchema,
  /** From when to when nothing is posted, also not what was missed and not by hand. */
  quiet: z.tuple([timeSchema, timeSchema]).default(['21:00', '08:00']),
  /** How long it stays away before it comes again. */
  restDays: z.number().int().min(7).default(7),
});

export type Tip = z.infer<typeof tipSchema>;
