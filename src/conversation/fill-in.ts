// What the words of stages, actions and asks are filled in with: places, wires, tools and figures of the machine at hand.
import type { LineArgument } from '../chat/facts.ts';
import { inLanguage } from '../procedure/localised.ts';
import type { Machine } from '../procedure/machine.ts';
import { wireOf } from '../procedure/machine.ts';
import { type Measure, measures } from '../procedure/vocabulary.ts';
import { line } from './say.ts';

/** A wire by its colours: plain, striped, or by its role where the colours are not known. */
function wireLine(machine: Machine, role: 'supply' | 'signal' | 'ground'): LineArgument {
  const [base, stripe] = wireOf(machine, role);
  if (base === undefined) return line(`wire-${role}`);
  if (stripe === undefined) return line('wire-plain', { colour: line(`colour-${base}`) });
  return line('wire-striped', { colour: line(`colour-${base}`), stripe: line(`colour-${stripe}`) });
}

export function machineFillIn(machine: Machine, language: string): Record<string, LineArgument> {
  return {
    machine: inLanguage(machine.name, language),
    wake: inLanguage(machine.wake, language),
    connector: inLanguage(machine.connector.where, language),
    supply: wireLine(machine, 'supply'),
    signal: wireLine(machine, 'signal'),
    ground: wireLine(machine, 'ground'),
    minutes: machine.warmUpMinutes,
    seconds: machine.relearn.seconds,
  };
}

export function partFillIn(machine: Machine, part: string, language: string): Record<string, LineArgument> {
  const own = machine.parts[part as keyof Machine['parts']];
  return {
    part: line(`part-${part}`),
    where: own ? inLanguage(own.where, language) : '',
    tool: own?.tool ? inLanguage(own.tool, language) : line('tool-any'),
  };
}

export const unitOf = (measure: string): string => measures[measure as Measure].unit;

/** The unit as it is written in a sentence; engine speed has a sign of its own in every language. */
export const unitSaid = (unit: string): LineArgument => (unit === '1/min' ? line('unit-per-minute') : unit);

/** The digits after the point that a reading with this resolution shows. */
export function digitsOf(resolution: number): number {
  return Math.max(0, Math.min(6, -Math.floor(Math.log10(resolution) + 1e-9)));
}

export const figure = (value: number, resolution: number) => ({ value, digits: digitsOf(resolution) });
