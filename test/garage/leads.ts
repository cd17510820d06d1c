// Where the meter's two leads sit on the simulated machine, rightly or not, and what is between them.
import { fraction, type Machine, opening } from './machine.ts';
import type { Between } from './meter.ts';
import type { Random } from './random.ts';
import { type Pin, potentials } from './wiring.ts';

export type Place = 'none' | 'signal' | 'supply' | 'ground' | 'battery';

export type LeadFault =
  | 'none'
  | 'swapped'
  | 'red-on-supply'
  | 'black-on-supply'
  | 'red-on-supply-black-on-signal'
  | 'red-on-ground-black-on-supply'
  | 'one-pin'
  | 'not-touching'
  | 'red-on-battery-wire';

export interface Leads {
  at: Place;
  fault: LeadFault;
  /** Chance that a pin slips off while the sensor is turned. */
  slipping: number;
}

const places: Record<Exclude<Place, 'none'>, readonly [Pin, Pin]> = {
  signal: ['signal', 'ground'],
  supply: ['supply', 'ground'],
  ground: ['ground', 'battery-minus'],
  battery: ['battery-plus', 'battery-minus'],
};

/** The pins of red and black; null where a lead hangs free. A fault concerns the sensor's plug, not the battery's poles. */
export function pins(at: Place, fault: LeadFault): readonly [Pin, Pin] | null {
  if (at === 'none') return null;
  const [red, black] = places[at];
  if (fault === 'swapped') return [black, red];
  if (at === 'battery') return [red, black];
  switch (fault) {
    case 'not-touching':
      return null;
    case 'one-pin':
      return [red, red];
    case 'red-on-battery-wire':
      return ['battery-plus', black];
    case 'red-on-supply':
      return at === 'signal' ? ['supply', black] : [red, black];
    case 'black-on-supply':
      return at === 'signal' ? [red, 'supply'] : [red, black];
    case 'red-on-supply-black-on-signal':
      return at === 'signal' ? ['supply', 'signal'] : [red, black];
    case 'red-on-ground-black-on-supply':
      return at === 'supply' ? ['ground', 'supply'] : [red, black];
    case 'none':
      return [red, black];
  }
}

/** What a meter without error would find there now, wandering where the track or the plug is worn. */
export function between(machine: Machine, leads: Leads, random: Random): Between {
  const at = pins(leads.at, leads.fault);
  if (!at) return { low: 0, high: 0, floating: true };
  const volts = potentials(machine.wiring, fraction(machine), machine.unit.awake);
  const difference = volts[at[0]] - volts[at[1]];
  if (!machine.unit.awake || !at.includes('signal')) return { low: difference, high: difference };

  const { sensor } = machine;
  const stands = opening(machine);
  const worn =
    (sensor.wornBelow !== null && stands < sensor.wornBelow) ||
    (sensor.wornAt !== null && stands > sensor.wornAt.from && stands < sensor.wornAt.to);
  if (worn) {
    const wiper = volts.signal - volts.ground;
    const lost = wiper * random.between(0.3, 0.95);
    const spike = random.chance(0.3) ? random.between(0.02, 0.2) : 0;
    return { low: difference - lost, high: difference + spike };
  }
  if (random.chance(sensor.corrosion) || Math.abs(machine.bars) > machine.chafed) {
    return { low: difference * random.between(0, 0.5), high: difference };
  }
  return { low: difference, high: difference };
}
