// When a stage applies: the small language of conditions in a procedure, and its one reading; for the conversation and for `check`.
import { z } from 'zod';
import { idSchema } from './identifier.ts';

const answersSchema = z.union([idSchema, z.array(idSchema).min(1)]);

export type Condition =
  /** What the owner answered to a question. */
  | { answer: string; is: string | string[] }
  /** A stage was gone through and its reading was within limits (or it was confirmed). */
  | { passed: string }
  /** The owner has turned this part. */
  | { touched: string }
  /** A property of the machine, by name: throttle, adjustable, battery, relearn. */
  | { machine: 'throttle' | 'adjustable' | 'battery' | 'relearn'; is: string | string[] }
  /** Only looked at, never adjusted. */
  | { checkOnly: boolean }
  /** What the set-up has come to so far. */
  | { finding: 'none' | 'left-alone' }
  | { not: Condition }
  | { any: Condition[] };

export const conditionSchema: z.ZodType<Condition> = z.lazy(() =>
  z.union([
    z.strictObject({ answer: idSchema, is: answersSchema }),
    z.strictObject({ passed: idSchema }),
    z.strictObject({ touched: idSchema }),
    z.strictObject({ machine: z.enum(['throttle', 'adjustable', 'battery', 'relearn']), is: answersSchema }),
    z.strictObject({ checkOnly: z.boolean() }),
    z.strictObject({ finding: z.enum(['none', 'left-alone']) }),
    z.strictObject({ not: conditionSchema }),
    z.strictObject({ any: z.array(conditionSchema).min(1) }),
  ]),
);

/** What conditions are held against. */
export interface Circumstances {
  answers: Readonly<Record<string, string>>;
  passed: Readonly<Record<string, unknown>>;
  touched: readonly string[];
  machine: { throttle: string; adjustable: string; battery: string; relearn: string };
  checkOnly: boolean;
  finding: 'left-alone' | null;
}

const among = (value: string | undefined, is: string | string[]): boolean =>
  value !== undefined && (typeof is === 'string' ? value === is : is.includes(value));

/** Whether one condition holds. */
export function holds(condition: Condition, now: Circumstances): boolean {
  if ('answer' in condition) return among(now.answers[condition.answer], condition.is);
  if ('passed' in condition) return now.passed[condition.passed] !== undefined;
  if ('touched' in condition) return now.touched.includes(condition.touched);
  if ('machine' in condition) return among(now.machine[condition.machine], condition.is);
  if ('checkOnly' in condition) return now.checkOnly === condition.checkOnly;
  if ('finding' in condition) return (now.finding ?? 'none') === condition.finding;
  if ('not' in condition) return !holds(condition.not, now);
  return condition.any.some((one) => holds(one, now));
}
