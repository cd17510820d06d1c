// Machines with nothing wrong but their setting, as most with a complaint are.
import type { Fault } from './fault.ts';
import type { Machine } from './machine.ts';
import type { Random } from './random.ts';

/** Turns a machine that is right into one that is not: the sensor, the idle stop or the clicks, or a sensor hidden by the stop. */
export function misSet(machine: Machine, random: Random): void {
  const { sensor, stop, fastIdle } = machine;
  const wrongBy = random.sign() * random.between(0.02, 0.1);
  const kind = random.pick(['sensor', 'sensor', 'sensor', 'stop', 'fast-idle', 'hidden', 'all']);
  if (kind === 'sensor' || kind === 'all') sensor.body += wrongBy;
  if (kind === 'stop' || kind === 'all') stop.turns += random.between(0.3, 1.2) * random.sign();
  if (kind === 'fast-idle' || kind === 'all') {
    fastIdle.clicks = Math.max(0, fastIdle.clicks + random.sign() * random.whole(3, 6));
  }
  if (kind === 'hidden') {
    // Low sensor, idle stop screwed in to suit: at idle it reads the same as a right one.
    sensor.body -= Math.abs(wrongBy) * 0.6;
    stop.turns += (Math.abs(wrongBy) * 0.6) / stop.voltsPerTurn;
  }
}

export const settings: readonly Fault[] = [
  {
    id: 'mis-index-high',
    row: '1',
    group: 'setting',
    mendedBy: [],
    byOwner: true,
    setsItself: true,
    install: ({ machine }, random) => {
      machine.sensor.body += random.between(0.03, 0.11);
    },
  },
  {
    id: 'mis-index-low',
    row: '1',
    group: 'setting',
    mendedBy: [],
    byOwner: true,
    setsItself: true,
    install: ({ machine }, random) => {
      machine.sensor.body -= random.between(0.03, 0.11);
    },
  },
];
