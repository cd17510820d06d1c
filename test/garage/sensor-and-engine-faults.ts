// What can be wrong with the sensor, its wires, and an engine whose volts are right.
import { type Fault, lasting } from './fault.ts';

export const sensorAndWiring: readonly Fault[] = [
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
  lasting('loom-chafed', null, 'wiring', (machine, random) => {
    machine.chafed = random.between(0.1, 0.2);
  }),
  lasting('drifts-when-hot', null, 'sensor', (machine, random) => {
    machine.engine.heat += random.between(0.09, 0.15);
  }),
  lasting('plug-corroded', null, 'wiring', (machine, random) => {
    machine.sensor.corrosion = random.between(0.35, 0.7);
  }),
];

/** Volts right, engine wrong: nothing that the sensor may be turned for. Whether speed or signal is out, the values tell. */
export const engineWrong: readonly Fault[] = [
  lasting('signal-broken', '18', 'engine', (machine, random) => {
    // The sensor's own side reads right; the unit, which sees an open wire, falls back on a figure of its own.
    machine.wiring.signalBroken = true;
    machine.engine.need += random.between(0.058, 0.07);
  }),
  lasting('air-leak', null, 'engine', (machine, random) => {
    machine.engine.need -= random.between(0.06, 0.075);
  }),
  lasting('dirty-bore-or-valves', null, 'engine', (machine, random) => {
    machine.engine.need += random.between(0.058, 0.07);
  }),
].map((fault) => ({ ...fault, ruins: () => false }));
