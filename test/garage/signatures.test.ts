// The simulated circuit, leads and plate against the published signatures of sensor faults.
import { expect, test } from 'vitest';
import { between, type Leads, pins } from './leads.ts';
import { drawMachine, type Machine } from './machine.ts';
import { createRandom } from './random.ts';
import { healthyWiring, potentials, type Wiring } from './wiring.ts';

/** The setting of the domain facts, table 1.2: supply 5.00 V, track 5 kΩ, wiper at 0.10, 0.50 and 0.90. */
const fractions = [0.1, 0.5, 0.9] as const;

function machineOfTheTable(change: Partial<Wiring> = {}): Machine {
  const machine = drawMachine(createRandom('table'));
  machine.wiring = { ...healthyWiring(5, 12.6), ...change };
  machine.screws.upper.shift = 0;
  machine.screws.lower.shift = 0;
  machine.sensor.body = 0.5;
  machine.stop.turns = -1;
  machine.wideOpening = 4;
  machine.unit.awake = true;
  return machine;
}

function shows(machine: Machine, fault: Leads['fault'] = 'none'): number[] {
  const leads: Leads = { at: 'signal', fault, slipping: 0 };
  return [0, 2, 99].map((grip) => {
    const found = between({ ...machine, grip }, leads, createRandom('look'));
    return (found.low + found.high) / 2;
  });
}

function expectVolts(seen: readonly number[], wanted: readonly number[]): void {
  for (const [i, value] of wanted.entries()) expect(seen[i]).toBeCloseTo(value, 3);
}

// Domain facts, table 1.2: values computed there from Ohm's law and the voltage divider, patterns common practice, no source.
test.each<[row: string, cause: string, wiring: Partial<Wiring>, fault: Leads['fault'], volts: number[]]>([
  ['0', 'healthy', {}, 'none', [0.5, 2.5, 4.5]],
  ['8', 'leads swapped at the meter', {}, 'swapped', [-0.5, -2.5, -4.5]],
  ['9', 'red probe on the supply wire', {}, 'red-on-supply', [5, 5, 5]],
  ['10', 'black on supply, red on signal', {}, 'black-on-supply', [-4.5, -2.5, -0.5]],
  ['10b', 'red on supply, black on signal', {}, 'red-on-supply-black-on-signal', [4.5, 2.5, 0.5]],
  ['11', 'sensor supply reversed', { reversed: true }, 'none', [4.5, 2.5, 0.5]],
  ['12', 'resistive ground, black at the sensor', { groundResistance: 500 }, 'none', [0.455, 2.273, 4.091]],
  ['13', 'open ground, black on the sensor’s own pin', { groundResistance: Infinity }, 'none', [0, 0, 0]],
  ['14', 'open supply', { supplyResistance: Infinity }, 'none', [0, 0, 0]],
  ['15', 'resistive supply', { supplyResistance: 500 }, 'none', [0.455, 2.273, 4.091]],
  ['17', 'low supply', { source: 4.5 }, 'none', [0.45, 2.25, 4.05]],
  ['18', 'open signal wire, seen from the sensor', { signalBroken: true }, 'none', [0.5, 2.5, 4.5]],
  ['20', 'signal shorted to ground', { short: 'to-ground' }, 'none', [0, 0, 0]],
  ['20', 'signal shorted to supply', { short: 'to-supply' }, 'none', [5, 5, 5]],
  ['26', 'battery wire probed', {}, 'red-on-battery-wire', [12.6, 12.6, 12.6]],
])('row %s, %s, shows what the table says', (_row, _cause, wiring, fault, volts) => {
  expectVolts(shows(machineOfTheTable(wiring), fault), volts);
});

test('row 1, a mis-indexed sensor is shifted by one constant', () => {
  const machine = machineOfTheTable();
  machine.sensor.body += 0.12;
  expectVolts(shows(machine), [0.62, 2.62, 4.62]);
});

test.each(['cable', 'fast-idle', 'carbon', 'stop'])(
  'rows 2 to 4, a plate held by its %s reads high closed and right wide open',
  (held) => {
    const machine = machineOfTheTable();
    if (held === 'cable')
      Object.assign(machine, { bars: 0.5, cable: { tight: 0.1, hidden: false, slack: 0 } });
    if (held === 'fast-idle')
      Object.assign(machine.fastIdle, { engaged: true, base: 0.05, clicks: 5, click: 0.01 });
    if (held === 'carbon') machine.carbon = 0.1;
    if (held === 'stop') Object.assign(machine.stop, { turns: 2, voltsPerTurn: 0.05 });
    expectVolts(shows(machine), [0.6, 2.5, 4.5]);
  },
);

test('row 12, with black at battery minus the whole signal is lifted by the drop in the ground wire', () => {
  const wiring = { ...healthyWiring(5, 12.6), groundResistance: 500 };
  expectVolts(
    fractions.map((fraction) => potentials(wiring, fraction, true).signal),
    [0.909, 2.727, 4.545],
  );
  expect(potentials(wiring, 0.1, true).ground).toBeCloseTo(0.455, 3);
});

test('row 13, with black at battery minus an open ground shows about the supply everywhere', () => {
  const wiring = { ...healthyWiring(5, 12.6), groundResistance: Infinity };
  expectVolts(
    fractions.map((fraction) => potentials(wiring, fraction, true).signal),
    [5, 5, 5],
  );
});

test('row 15, a resistive supply wire shows its loss at the sensor’s supply pin', () => {
  const wiring = { ...healthyWiring(5, 12.6), supplyResistance: 500 };
  expect(potentials(wiring, 0.1, true).supply).toBeCloseTo(4.545, 3);
});

test('row 16, a control unit that is not powered gives nothing on any pin', () => {
  const { supply, signal, ground } = potentials(healthyWiring(5, 12.6), 0.5, false);
  expect([supply, signal, ground]).toEqual([0, 0, 0]);
});

test('row 18, the control unit’s side of an open signal wire is pulled up to its supply', () => {
  expect(potentials({ ...healthyWiring(5, 12.6), signalBroken: true }, 0.1, true).unitSide).toBe(5);
});

test('row 19, leads that touch nothing float', () => {
  expect(pins('signal', 'not-touching')).toBeNull();
  const found = between(
    machineOfTheTable(),
    { at: 'signal', fault: 'not-touching', slipping: 0 },
    createRandom('x'),
  );
  expect(found.floating).toBe(true);
});

test('rows 5 and 6, a worn place wanders where it is worn and nowhere else', () => {
  const machine = machineOfTheTable();
  const leads: Leads = { at: 'signal', fault: 'none', slipping: 0 };
  const width = (grip: number) => {
    const found = between({ ...machine, grip }, leads, createRandom('w'));
    return found.high - found.low;
  };
  machine.sensor.wornBelow = 0.2;
  expect(width(0)).toBeGreaterThan(0.1);
  expect(width(2)).toBe(0);
  machine.sensor.wornBelow = null;
  machine.sensor.wornAt = { from: 1.9, to: 2.1 };
  expect(width(0)).toBe(0);
  expect(width(2)).toBeGreaterThan(0.1);
});

test('with the ratio of the published example, 4.50 V of supply makes 0.450 V of a tenth', () => {
  // Domain facts, section 1.1, "ratiometric": computed there.
  expect(potentials(healthyWiring(4.5, 12.6), 0.1, true).signal).toBeCloseTo(0.45, 9);
  expect(potentials(healthyWiring(5.25, 12.6), 0.1, true).signal).toBeCloseTo(0.525, 9);
});
