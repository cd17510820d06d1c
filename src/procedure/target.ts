// What a measure should show: the schema of a machine's targets, and the window that one comes to, for the conversation and for `check`.
import { z } from 'zod';
import type { Window } from '../measurement/window.ts';

/** Where a figure comes from, so that the desk can weigh it. */
const sourceSchema = z.enum(['manual', 'workshop', 'common-practice', 'owner']);

export const targetSchema = z
  .strictObject({
    /** The middle of the window and how far either way is still right … */
    centre: z.number().optional(),
    tolerance: z.number().positive().optional(),
    /** … or its limits, of which one may be missing … */
    low: z.number().optional(),
    high: z.number().optional(),
    /** … or within `tolerance` of the latest reading of another measure … */
    like: z.string().optional(),
    /** … or asked of the owner, who reads it in the machine's own manual; `between` bounds what can be right. */
    asked: z.strictObject({ between: z.tuple([z.number(), z.number()]) }).optional(),
    /** The window moves with the measured supply. */
    scales: z.boolean().default(false),
    /** Guarded acceptance: the limits are drawn in by the meter's own uncertainty. */
    guarded: z.boolean().default(false),
    source: sourceSchema,
    /** The page or note behind the source. */
    reference: z.string().optional(),
  })
  .superRefine((target, context) => {
    const ways = [
      target.centre !== undefined,
      target.low !== undefined || target.high !== undefined,
      target.like !== undefined,
      target.asked !== undefined,
    ].filter(Boolean).length;
    if (ways !== 1) {
      context.addIssue({
        code: 'custom',
        message:
          'give exactly one of: centre with tolerance; low and high; like with tolerance; asked with tolerance',
      });
    }
    if ((target.low === undefined && target.high === undefined) !== (target.tolerance !== undefined)) {
      context.addIssue({
        code: 'custom',
        message: 'tolerance goes with centre, like or asked, and with nothing else',
      });
    }
    if (target.low !== undefined && target.high !== undefined && target.low >= target.high) {
      context.addIssue({
        code: 'custom',
        message: `low (${target.low}) must be below high (${target.high})`,
      });
    }
  });

export type Target = z.infer<typeof targetSchema>;

/**
 * The window of a target before any scaling, in the measure's unit.
 * `reference` is the latest reading that a `like` target goes by, or the figure that the owner gave for an `asked` one;
 * null comes back where that is still missing.
 */
export function windowOf(target: Target, reference: number | null): Window | null {
  if (target.low !== undefined || target.high !== undefined) {
    return { low: target.low ?? null, high: target.high ?? null };
  }
  const middle = target.centre ?? reference;
  if (middle === null || middle === undefined || target.tolerance === undefined) return null;
  // Twelve decimals are far below any meter's digit, and take away what binary fractions add.
  const round = (value: number) => Number(value.toFixed(12));
  return { low: round(middle - target.tolerance), high: round(middle + target.tolerance) };
}
