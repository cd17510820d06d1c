// What a workshop's file says of one machine: its sensor, connector, parts and targets; for the library and the conversation.
import { z } from 'zod';
import { idSchema } from './identifier.ts';
import { localisedSchema } from './localised.ts';
import { type Target, targetSchema } from './target.ts';
import { measureIds, type Part, partIds, sensorKinds } from './vocabulary.ts';

const colourSchema = z.enum([
  'black',
  'white',
  'grey',
  'brown',
  'red',
  'orange',
  'yellow',
  'green',
  'light-green',
  'blue',
  'light-blue',
  'violet',
  'pink',
]);

const pinSchema = z.strictObject({
  label: z.string().min(1).max(4),
  role: z.enum(['supply', 'signal', 'ground']).nullable(),
  /** The base colour, and the stripe where there is one; empty where the workshop does not know. */
  wire: z.array(colourSchema).max(2),
});

const partSchema = z.strictObject({
  where: localisedSchema,
  tool: localisedSchema.optional(),
  /** What one unit (turn, click, nudge) does to the reading, in volts, before anything was learned on the machine at hand. */
  perUnit: z.number().positive(),
  /** Which way raises the reading; `unknown` is tried out. */
  raises: z.enum(['in', 'out', 'clockwise', 'counter-clockwise', 'more', 'less', 'unknown']),
  /** Units that may pass before the part touches. */
  deadBand: z.number().nonnegative().default(0),
});

export const machineSchema = z.strictObject({
  id: idSchema,
  name: localisedSchema,
  /** The place in the menu; the lowest comes first. */
  order: z.number().int().default(100),
  /** `asked`: the machine is not known to the workshop, and the owner is asked. */
  throttle: z.enum(['cable', 'by-wire', 'asked']),
  sensor: z.strictObject({
    /** Faults that only one kind can have are not thought of with the other. */
    kind: z.enum(sensorKinds),
    adjustable: z.enum(['yes', 'no', 'asked']),
    nominalSupply: z.number().positive(),
    screwTorque: z.number().positive().optional(),
  }),
  battery: z.enum(['lead-acid', 'lithium', 'none']),
  /** What makes the control unit take up a new closed throttle. */
  relearn: z.strictObject({
    way: z.enum(['none', 'power-cycle', 'idle', 'workshop-tool']),
    seconds: z.number().int().nonnegative().default(10),
  }),
  /** How the control unit is woken with the engine off, in a sentence. */
  wake: localisedSchema,
  /** How long it may stay awake before the battery is cared for. */
  awakeMinutes: z.number().int().positive(),
  warmUpMinutes: z.number().int().positive(),
  connector: z.strictObject({
    where: localisedSchema,
    pins: z.array(pinSchema).min(2).max(8),
  }),
  parts: z.partialRecord(z.enum(partIds), partSchema),
  /** By measure, or by measure and situation: `signal-idle@static`. */
  targets: z.record(
    z
      .string()
      .regex(
        new RegExp(`^(${measureIds.join('|')})(@[a-z-]+)?$`),
        'a target is named by a measure, or by measure@situation',
      ),
    targetSchema,
  ),
  /** Procedures that this machine is offered for. */
  procedures: z.array(idSchema).min(1),
});

export type Machine = z.infer<typeof machineSchema>;
export type MachinePart = z.infer<typeof partSchema>;
export type WireColour = z.infer<typeof colourSchema>;

/** The target of a measure in a situation: the one for just that situation, else the measure's own. */
export function targetFor(machine: Machine, measure: string, situation: string | null): Target | undefined {
  return (
    (situation === null ? undefined : machine.targets[`${measure}@${situation}`]) ?? machine.targets[measure]
  );
}

export function partOf(machine: Machine, part: string): MachinePart | undefined {
  return machine.parts[part as Part];
}

/** The wire colours at the pin with this role, base colour first. */
export function wireOf(machine: Machine, role: 'supply' | 'signal' | 'ground'): WireColour[] {
  return machine.connector.pins.find((pin) => pin.role === role)?.wire ?? [];
}
