// What can be wrong with the power, and with whatever holds the throttle plate open.
import { type Fault, lasting } from './fault.ts';
import { nominal } from './nominal.ts';

export const powerAndPlate: readonly Fault[] = [
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
  {
    // It reads low at rest, and the unit browns out again and again while awake.
    ...lasting('battery-flat', null, 'power', (machine, random) => {
      machine.wiring.battery = random.between(10.6, 11.8);
      machine.unit.sleepiness = 0.12;
    }),
    // What was set by readings between two brown-outs is set.
    ruins: () => false,
  },
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
  lasting('plate-wedged', null, 'plate', (machine, random) => {
    machine.wedged = random.between(0.1, 0.2);
  }),
  {
    ...lasting('cable-slack', null, 'plate', (machine, random) => {
      machine.cable.slack = random.between(0.7, 1.3);
    }),
    // Taking up the free play may bring full throttle back.
    ruins: ({ machine }) => machine.cable.slack > 0.2,
  },
];
