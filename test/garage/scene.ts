// One simulated case: a machine, a meter with its leads, and an owner's habits, all drawn from one seed, with faults put in.
import type { Fault } from './fault.ts';
import { faultById } from './faults.ts';
import type { Leads } from './leads.ts';
import { drawMachine, type Machine } from './machine.ts';
import { drawMeter, type Meter } from './meter.ts';
import { misSet } from './mis-set.ts';
import { type Style, styles } from './phrase.ts';
import { createRandom, type Random } from './random.ts';

/** Shares of slips; each can be switched off by 0. */
export interface Habits {
  style: Style;
  wrongSense: number;
  falseDone: number;
  swappedDigits: number;
  mistyped: number;
  /** Turns the dial to the range that suits before being told so. */
  mindsTheRange: boolean;
}

export interface Scene {
  seed: string;
  machine: Machine;
  meter: Meter;
  leads: Leads;
  habits: Habits;
  complaint: boolean;
  faults: Fault[];
  /** Turns and clicks counted at the latest back-off. */
  counted: Record<string, number>;
  /** Parts with a screw or knob that were turned at all. */
  touched: Set<string>;
  turned: Set<string>;
  /** The engine should be running, as far as the owner was told. */
  toldToStart: boolean;
  /** Actions and parts that no contract names. */
  unknown: Set<string>;
  /** What the owner did wrong, in words, for the story. */
  slips: string[];
}

/** What kind of case: a machine that is right, one that is mis-set, or faults by their ids (on a mis-set machine). */
export type Plan = { kind: 'right' } | { kind: 'mis-set' } | { kind: 'faults'; ids: string[] };

export interface Slips {
  wrongSense: number;
  falseDone: number;
  swappedDigits: number;
  mistyped: number;
}

export const usualSlips: Slips = { wrongSense: 0.1, falseDone: 0.05, swappedDigits: 0.02, mistyped: 0.01 };

export function drawScene(seed: string, plan: Plan, slips: Slips = usualSlips): Scene {
  const random = createRandom(seed);
  const machine = drawMachine(random.fork('machine'));
  const meter = drawMeter(random.fork('meter'));
  const habit: Random = random.fork('habits');
  const scene: Scene = {
    seed,
    machine,
    meter,
    leads: { at: 'none', fault: 'none', slipping: 0 },
    habits: { style: habit.pick(styles), ...slips, mindsTheRange: habit.chance(0.6) },
    complaint: plan.kind !== 'right',
    faults: [],
    counted: {},
    touched: new Set(),
    turned: new Set(),
    toldToStart: false,
    unknown: new Set(),
    slips: [],
  };
  if (plan.kind === 'right') return scene;
  const faults = plan.kind === 'faults' ? plan.ids.map(faultById) : [];
  if (!faults.some((fault) => fault.setsItself)) misSet(machine, random.fork('mis-set'));
  for (const fault of faults) fault.install(scene, random.fork(fault.id));
  scene.faults = faults;
  return scene;
}
