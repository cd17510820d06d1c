// What a workshop's file says of one procedure: its stages, what each asks and what follows; for the library and the conversation.
import { z } from 'zod';
import { conditionSchema } from './condition.ts';
import { idSchema } from './identifier.ts';
import { localisedSchema } from './localised.ts';
import { actions, measureIds, partIds, redFlags } from './vocabulary.ts';

/** What follows from an answer, or from a reading that is not right and that nothing at this stage can adjust. */
const outcomeSchema = z.union([
  z.strictObject({ go: idSchema }),
  /** A person is called; the id names the reason in the words. */
  z.strictObject({ call: idSchema }),
  z.strictObject({ flag: z.enum(redFlags) }),
  /** From here on the machine is looked at, not adjusted; the id names the reason in the words. */
  z.strictObject({ checkOnly: idSchema }),
  /** The answer counts as something seen, and the cause is looked for. */
  z.strictObject({ diagnose: z.literal(true) }),
]);

const askSchema = z.union([
  z.strictObject({ confirm: z.literal(true) }),
  z.strictObject({
    question: idSchema,
    /** The ordinary, healthy answer first. */
    answers: z
      .array(z.strictObject({ id: idSchema, outcome: outcomeSchema.optional() }))
      .min(2)
      .max(6),
  }),
  z.strictObject({
    reading: z.enum(measureIds),
    /** Which target counts, and what the diagnosis makes of it: as-found, closed, static, warm, engaged, released, snapped, open. */
    at: idSchema.optional(),
  }),
  z.strictObject({
    readings: z.enum(measureIds),
    at: idSchema.optional(),
    count: z.number().int().min(3).max(15),
  }),
  z.strictObject({ count: z.enum(partIds) }),
  z.strictObject({ target: z.enum(measureIds), at: idSchema.optional() }),
]);

const adjustSchema = z.strictObject({
  part: z.enum(partIds),
  /** What frees the part before it is turned and fixes it afterwards; each may shift the reading. */
  free: z.enum(actions).optional(),
  fix: z.enum(actions).optional(),
  /** The part is known to be off: it is turned before the first reading. */
  turnFirst: z.boolean().default(false),
  /** Cautions to be acknowledged before the first turn only. */
  cautions: z.array(idSchema).default([]),
});

const stageSchema = z.strictObject({
  id: idSchema,
  /** A part of the job begins here, as owners are told it. */
  section: idSchema.optional(),
  /** All of these must hold, else the stage is passed over. */
  when: z.array(conditionSchema).default([]),
  cautions: z.array(idSchema).default([]),
  do: z.array(z.enum(actions)).default([]),
  ask: askSchema.optional(),
  adjust: adjustSchema.optional(),
  /** A reading out of its limits is only noted here. */
  noteOnly: z.boolean().default(false),
  /** What follows from a reading out of its limits; without it the cause is looked for. */
  failing: outcomeSchema.optional(),
  /** An item of the list that blocks the starting of the engine. */
  startList: z.boolean().default(false),
  /** What the set-up has come to; the stage asks nothing. */
  conclude: z.enum(['left-alone']).optional(),
  next: idSchema.optional(),
  /** The drawing that goes with the stage's first message. */
  picture: z.enum(['connector', 'part']).optional(),
  /** Which part the picture shows. */
  shows: z.enum(partIds).optional(),
});

export const procedureSchema = z.strictObject({
  id: idSchema,
  name: localisedSchema,
  order: z.number().int().default(100),
  /** Withdrawn as wrong: open set-ups go on in the procedure named here, at the stage of the same id, or at the desk. */
  withdrawn: z.strictObject({ why: localisedSchema, instead: idSchema.optional() }).optional(),
  stages: z.array(stageSchema).min(1),
});

export type Procedure = z.infer<typeof procedureSchema>;
export type Stage = z.infer<typeof stageSchema>;
export type Outcome = z.infer<typeof outcomeSchema>;

export function stageOf(procedure: Procedure, id: string): Stage | undefined {
  return procedure.stages.find((stage) => stage.id === id);
}

/** Which part of the job a stage belongs to, and which of how many that is; null where the procedure tells of none. */
export function sectionOf(
  procedure: Procedure,
  stage: Stage,
): { id: string; part: number; parts: number } | null {
  const { stages } = procedure;
  const sections = stages.flatMap(({ section }) => section ?? []);
  const begun = stages.slice(0, stages.indexOf(stage) + 1).flatMap(({ section }) => section ?? []);
  const id = begun.at(-1);
  return id === undefined ? null : { id, part: begun.length, parts: sections.length };
}

/** The stage that stands after this one when nothing else is said; null after the last. */
export function stageAfter(procedure: Procedure, stage: Stage): Stage | null {
  if (stage.next !== undefined) return stageOf(procedure, stage.next) ?? null;
  return stageBelow(procedure, stage);
}

/** The stage that stands below this one in the file. */
export function stageBelow(procedure: Procedure, stage: Stage): Stage | null {
  return procedure.stages[procedure.stages.indexOf(stage) + 1] ?? null;
}
