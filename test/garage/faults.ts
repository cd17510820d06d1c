// Every fault that the model garage can build into a machine, a meter or its leads, with its physics and what mends it.
// Row numbers are those of the domain facts, table 1.2; the physics follows its signatures, magnitudes are common practice, no source.

import type { LeadFault } from './leads.ts';
import type { Machine } from './machine.ts';
import { nominal } from './nominal.ts';
import type { Random } from './random.ts';
import type { Scene } from './scene.ts';

export interface Fault {
  id: string;
  row: string | null;
  group: 'setting' | 'leads' | 'meter' | 'power' | 'plate' | 'sensor' | 'wiring' | 'engine';
  /** Actions that mend it; empty where an owner can't. */
  mendedBy: readonly string[];
  /** True where the set-up itself puts it right or an action above does, without a person. */
  byOwner: boolean;
  /** True where the machine itself brings its mis-setting, and none is drawn beside it. */
  setsItself?: boolean;
  install(scene: Scene, random: Random): void;
  /** A set-up declared right while this holds is wrong, whatever the readings were. */
  ruins?(scene: Scene): boolean;
}

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

function leadFault(id: string, row: string | null, fault: LeadFault): Fault {
  return {
    id,
    row,
    group: 'leads',
    mendedBy: ['check:leads'],
    byOwner: true,
    install: (scene) => {
      scene.leads.fault = fault;
    },
  };
}

function meterFault(id: string, row: string | null, install: (scene: Scene, random: Random) => void): Fault {
  return { id, row, group: 'meter', mendedBy: ['check:meter'], byOwner: true, install };
}

function lasting(
  id: string,
  row: string | null,
  group: Fault['group'],
  install: (machine: Machine, random: Random) => void,
): Fault {
  return {
    id,
    row,
    group,
    mendedBy: [],
    byOwner: false,
    install: (scene, random) => install(scene.machine, random),
    ruins: () => true,
  };
}

const leadsAndMeter: readonly Fault[] = [
  leadFault('leads-swapped', '8', 'swapped'),
  leadFault('red-on-supply', '9', 'red-on-supply'),
  leadFault('black-on-supply', '10', 'black-on-supply'),
  leadFault('red-on-supply-black-on-signal', '10b', 'red-on-supply-black-on-signal'),
  leadFault('red-on-ground-black-on-supply', null, 'red-on-ground-black-on-supply'),
  leadFault('leads-on-one-pin', null, 'one-pin'),
  leadFault('lead-not-touching', '19', 'not-touching'),
  leadFault('battery-wire-probed', '26', 'red-on-battery-wire'),
  {
    ...leadFault('pin-slips', '19', 'none'),
    install: (scene) => {
      scene.leads.slipping = 0.5;
    },
  },
  meterFault('meter-on-ac', '21', ({ meter }) => {
    meter.mode = 'ac';
  }),
  meterFault('meter-on-ohms', '23', ({ meter }) => {
    meter.mode = 'ohms';
  }),
  meterFault('meter-range-low', '22', (scene, random) => {
    scene.meter.autoRange = false;
    scene.meter.top = scene.meter.counts / (random.chance(0.5) ? 10_000 : 1_000);
    scene.habits.mindsTheRange = false;
  }),
  meterFault('meter-range-coarse', null, (scene) => {
    scene.meter.counts = 2000;
    scene.meter.autoRange = false;
    scene.meter.top = 20;
    scene.habits.mindsTheRange = false;
  }),
  meterFault('meter-battery-weak', '24', ({ meter }, random) => {
    meter.weakBattery = random.between(1.08, 1.3);
  }),
  meterFault('red-in-current-jack', '25', ({ meter }) => {
    meter.currentJack = true;
  }),
  meterFault('meter-hold', null, ({ meter }) => {
    meter.hold.on = true;
  }),
  meterFault('meter-relative', null, ({ meter }, random) => {
    meter.relative = random.between(0.15, 0.6);
  }),
  meterFault('meter-min-max', null, ({ meter }) => {
    meter.highest = { seen: 0 };
  }),
  meterFault('meter-auto-off', null, ({ meter }) => {
    meter.asleep = true;
  }),
];

const powerAndPlate: readonly Fault[] = [
  {
    id: 'falls-asleep',
    row: '16',
    group: 'power',
    mendedBy: ['wake'],
    byOwner: true,
    install: ({ machine }, random) => {
      machine.unit.sleepiness = random.between(0.08, 0.2);
    },
  },
  {
    id: 'first-wake-fails',
    row: '16',
    group: 'power',
    mendedBy: ['wake'],
    byOwner: true,
    install: ({ machine }) => {
      machine.unit.wakesWasted = 1;
    },
  },
  lasting('never-powered', '16', 'power', (machine) => {
    machine.unit.wakesWasted = Infinity;
  }),
  lasting('supply-low', '17', 'power', (machine, random) => {
    machine.wiring.source = random.between(4.2, 4.65);
  }),
  lasting('supply-high', '17', 'power', (machine, random) => {
    machine.wiring.source = random.between(5.3, 5.7);
  }),
  lasting('battery-flat', null, 'power', (machine, random) => {
    machine.wiring.battery = random.between(10.6, 11.8);
  }),
  {
    id: 'cable-tight',
    row: '2',
    group: 'plate',
    mendedBy: ['free-play:cable', 'check:cable'],
    byOwner: true,
    install: ({ machine }, random) => {
      machine.cable.tight = random.between(0.11, 0.16);
      machine.cable.hidden = random.chance(0.6);
    },
    ruins: ({ machine }) => machine.cable.tight > 0.005,
  },
  {
    id: 'fast-idle-on',
    row: '3',
    group: 'plate',
    mendedBy: ['release:fast-idle', 'back-off:fast-idle'],
    byOwner: true,
    install: ({ machine }) => {
      machine.fastIdle.engaged = true;
    },
    ruins: ({ machine }) => machine.fastIdle.engaged,
  },
  {
    id: 'stop-not-backed-off',
    row: '4',
    group: 'plate',
    mendedBy: ['back-off:idle-stop'],
    byOwner: true,
    install: ({ machine }) => {
      machine.stop.backOffsWasted = 1;
    },
  },
  lasting('carbon-in-bore', '4', 'plate', (machine, random) => {
    const idle = machine.stop.turns * machine.stop.voltsPerTurn;
    machine.carbon = Math.max(idle, nominal.idle - nominal.closed) + random.between(0.01, 0.06);
  }),
  lasting('knob-stays-in', '3', 'plate', (machine) => {
    machine.fastIdle.sticksIn = true;
  }),
  lasting('cable-slack', null, 'plate', (machine, random) => {
    machine.cable.slack = random.between(0.7, 1.3);
  }),
];

const sensorAndWiring: readonly Fault[] = [
  lasting('worn-near-idle', '5', 'sensor', (machine, random) => {
    machine.sensor.wornBelow = random.between(0.12, 0.35);
  }),
  lasting('worn-elsewhere', '6', 'sensor', (machine, random) => {
    const from = random.between(0.6, 2.2);
    machine.sensor.wornAt = { from, to: from + random.between(0.1, 0.4) };
  }),
  {
    id: 'screws-loose',
    row: '7',
    group: 'sensor',
    mendedBy: ['check:screws', 'tighten:sensor-screws'],
    byOwner: true,
    install: ({ machine }, random) => {
      machine.screws.upper.tight = 0.1;
      machine.screws.lower.tight = 0.1;
      machine.sensor.looseness = random.between(0.015, 0.04);
    },
  },
  lasting('shaft-slack', '7', 'sensor', (machine, random) => {
    machine.sensor.shaftSlack = random.between(0.025, 0.06);
  }),
  {
    ...lasting('slots-at-end', '1', 'sensor', (machine, random) => {
      const { sensor } = machine;
      const room = random.between(0.02, 0.08);
      if (random.chance(0.5)) {
        sensor.low = sensor.body + room;
        sensor.high = sensor.low + 0.3;
        sensor.body = sensor.low + random.between(0, 0.05);
      } else {
        sensor.high = sensor.body - room;
        sensor.low = sensor.high - 0.3;
        sensor.body = sensor.high - random.between(0, 0.05);
      }
    }),
    setsItself: true,
    ruins: () => false,
  },
  {
    ...lasting('tang-on-wrong-side', null, 'sensor', (machine, random) => {
      const off = random.sign() > 0 ? random.between(0.9, 1.4) : -random.between(0.5, 0.58);
      machine.sensor.body += off;
      machine.sensor.low += off;
      machine.sensor.high += off;
    }),
    ruins: () => false,
  },
  lasting('sensor-reversed', '11', 'wiring', (machine) => {
    machine.wiring.reversed = true;
  }),
  lasting('ground-resistive', '12', 'wiring', (machine, random) => {
    machine.wiring.groundResistance = random.between(350, 900);
  }),
  lasting('ground-open', '13', 'wiring', (machine) => {
    machine.wiring.groundResistance = Infinity;
  }),
  lasting('supply-open', '14', 'wiring', (machine) => {
    machine.wiring.supplyResistance = Infinity;
  }),
  lasting('supply-resistive', '15', 'wiring', (machine, random) => {
    machine.wiring.supplyResistance = random.between(350, 900);
  }),
  lasting('signal-shorted-to-ground', '20', 'wiring', (machine) => {
    machine.wiring.short = 'to-ground';
  }),
  lasting('signal-shorted-to-supply', '20', 'wiring', (machine) => {
    machine.wiring.short = 'to-supply';
  }),
  lasting('plug-corroded', null, 'wiring', (machine, random) => {
    machine.sensor.corrosion = random.between(0.35, 0.7);
  }),
];

/** Volts right, engine wrong: nothing that the sensor may be turned for. */
const engineWrong: readonly Fault[] = [
  lasting('air-leak', null, 'engine', (machine, random) => {
    machine.engine.need -= random.between(0.06, 0.075);
  }),
  lasting('dirty-bore-or-valves', null, 'engine', (machine, random) => {
    machine.engine.need += random.between(0.07, 0.11);
  }),
];

const settings: readonly Fault[] = [
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

export const faults: readonly Fault[] = [
  ...settings,
  ...leadsAndMeter,
  ...powerAndPlate,
  ...sensorAndWiring,
  ...engineWrong,
];

export function faultById(id: string): Fault {
  const found = faults.find((fault) => fault.id === id);
  if (!found) throw new Error(`no fault "${id}"; known are ${faults.map((fault) => fault.id).join(', ')}`);
  return found;
}
