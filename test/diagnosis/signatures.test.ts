// Each row of the signature table of the domain (closed, half, wide open at a supply of 5.00 V), given to the shipped content.
// The volts are computed from a 5 kΩ track with the wiper at 0.10, 0.50 and 0.90; the patterns are common practice, no source.
import { describe, expect, it } from 'vitest';
import type { Observation, Seen } from '../../src/diagnosis/evidence.ts';
import { addWeights, likelihoods } from '../../src/diagnosis/likelihoods.ts';
import { showTheSame } from '../../src/diagnosis/look-alike.ts';
import { posterior, priorsOf } from '../../src/diagnosis/posterior.ts';
import { shippedFaults } from './shipped-faults.ts';

const value = (volts: number, resolution = 0.001): Seen => ({ kind: 'value', value: volts, resolution });

function at(
  measure: string,
  situation: string,
  middle: number,
  half: number,
  seen: Seen,
  settable = false,
): Observation {
  const expected = { low: middle - half, high: middle + half };
  return { kind: 'observation', measure, situation, seen, expected, settable, supply: null };
}

/** The three readings of the table, and what else the row's own test brings. */
function signature(closed: Seen, half: Seen, open: Seen, ...more: Observation[]): Observation[] {
  return [
    at('signal-closed-stop', 'closed', 0.5, 0.01, closed, true),
    at('signal-half-open', 'half', 2.5, 0.2, half),
    at('signal-wide-open', 'open', 4.5, 0.1, open),
    ...more,
  ];
}

const volts = (closed: number, half: number, open: number, ...more: Observation[]) =>
  signature(value(closed), value(half), value(open, 0.01), ...more);

const supply = (seen: Seen) => at('supply-voltage', 'as-found', 5, 0.2, seen);
const ground = (seen: Seen) => at('ground-drop', 'measure-ground-drop', 0.03, 0.05, seen);
const sweep = (values: (number | null)[]): Observation => ({
  ...at('signal-sweep', 'sweep', 2.5, 2, { kind: 'series', values, resolution: 0.01 }),
});
const unmoved = (volt: number, before: number, after = 'back-off:idle-stop'): Observation => ({
  ...at('signal-closed-stop', 'closed', 0.5, 0.01, value(volt), true),
  previous: { seen: value(before), after, expect: 'falls' },
});
const overload: Seen = { kind: 'overload' };

const rows: [row: string, what: string, readings: Observation[]][] = [
  ['0', 'healthy', volts(0.5, 2.5, 4.5, supply(value(5)))],
  ['1', 'all shifted by one constant', volts(0.62, 2.62, 4.62, supply(value(5)))],
  [
    '2',
    'closed high, the rest right, and no move when the stop is backed off',
    [
      unmoved(0.66, 0.66),
      at('signal-idle', 'as-found', 0.59, 0.02, value(0.66), true),
      at('signal-released', 'static', 0.59, 0.01, value(0.62)),
    ],
  ],
  [
    '3',
    'closed high by the knob’s step',
    [
      at('signal-idle', 'as-found', 0.59, 0.01, value(0.745)),
      unmoved(0.745, 0.745),
      at('signal-snapped', 'as-found', 0.59, 0.01, value(0.74)),
    ],
  ],
  ['4', 'closed high, falls only when the stop is really backed off', [unmoved(0.59, 0.59)]],
  [
    '5',
    'closed jumps, the rest fine',
    [
      at(
        'signal-closed-stop',
        'closed',
        0.5,
        0.01,
        { kind: 'range', low: 0.2, high: 0.55, resolution: 0.001 },
        true,
      ),
      at('signal-wide-open', 'open', 4.5, 0.1, value(4.5, 0.01)),
      supply(value(5)),
    ],
  ],
  [
    '6',
    'a step at one angle',
    [...volts(0.5, 2.5, 4.5, supply(value(5))), sweep([0.5, 1.5, 0.7, 3.4, 4.5, 3.5, 2.4, 1.4, 0.5])],
  ],
  [
    '7',
    'does not come back after a snap',
    [
      at('signal-idle', 'static', 0.59, 0.01, value(0.59)),
      at('signal-snapped', 'static', 0.59, 0.01, value(0.635)),
      at('signal-snapped', 'static', 0.59, 0.01, value(0.555)),
    ],
  ],
  ['8', 'leads swapped', volts(-0.5, -2.5, -4.5)],
  ['9', 'red on the supply wire', volts(5, 5, 5)],
  ['10', 'red on signal, black on supply', volts(-4.5, -2.5, -0.5)],
  ['10b', 'red on supply, black on signal', volts(4.5, 2.5, 0.5)],
  ['11', 'supply and ground swapped in the plug, and the leads looked at', volts(4.5, 2.5, 0.5)],
  [
    '12',
    'resistive ground, black on the ground pin',
    volts(0.455, 2.273, 4.091, supply(value(4.545)), ground(value(0.455))),
  ],
  ['13', 'open ground, black on the ground pin', volts(0, 0, 0, supply(value(0)), ground(value(4.9)))],
  ['14', 'open supply', volts(0, 0, 0, supply(value(0)), ground(value(0)))],
  ['15', 'resistive supply', volts(0.455, 2.273, 4.091, supply(value(4.545)), ground(value(0)))],
  ['16', 'unit asleep', volts(0, 0, 0, supply(value(0)))],
  ['17', 'supply out', volts(0.55, 2.75, 4.95, supply(value(5.5)), ground(value(0)))],
  ['18', 'open signal wire: normal at the sensor', volts(0.5, 2.5, 4.5, supply(value(5)))],
  [
    '19',
    'pin not touching',
    signature({ kind: 'range', low: 0.001, high: 0.03, resolution: 0.001 }, value(0.004), value(0.012)),
  ],
  ['20', 'signal shorted to supply, and the leads looked at', volts(5, 5, 5, supply(value(5)))],
  ['21', 'meter on AC', volts(1.1, 5.5, 9.9)],
  ['22', 'meter on the 2 V range', signature(value(0.5), overload, overload)],
  [
    '23',
    'meter on ohms',
    signature(overload, { kind: 'range', low: 0.4, high: 1.3, resolution: 0.001 }, overload),
  ],
  [
    '24',
    'weak battery in the meter',
    volts(0.6, 3, 5.4, supply(value(6)), at('battery-voltage', 'as-found', 12.7, 0.5, value(15.2, 0.01))),
  ],
  [
    '25',
    'red in the current jack',
    volts(0, 0, 0, at('battery-voltage', 'as-found', 12.7, 0.5, value(0)), supply(value(0))),
  ],
  ['26', 'battery wire probed', volts(12.6, 12.6, 12.6)],
];

/** What the row's own discriminating check has already ruled out. */
const lookedAt: Record<string, string[]> = {
  '11': ['look-at-leads', 'look-at-leads'],
  '20': ['look-at-leads', 'look-at-leads', 'look-at-meter'],
};

/** Rows whose three readings are another row's too, and what they are then taken for first. */
const sameReadings: Record<string, string> = {
  // A sensor-side reading is normal with an open signal wire: only the unit's side tells.
  '18': '0',
  // Supply low at the sensor, ground drop right: the unit's own supply or the wire to it.
  '15': '17',
  // All of it 0: asleep is commonest by far; after a wake that changes nothing, no power and an open wire stay alike.
  '14': '16',
};

describe('the signature table', () => {
  it.each(rows)('row %s: %s', (row, _, readings) => {
    const tried = (lookedAt[row] ?? []).map((check) =>
      likelihoods(shippedFaults, { kind: 'tried', check, result: 'as-before' }),
    );
    const weights = addWeights(...readings.map((reading) => likelihoods(shippedFaults, reading)), ...tried);
    // A machine that is well or only off its mark comes with a complaint, not with an odd reading.
    const priors = priorsOf(shippedFaults, row === '0' || row === '1' ? 'complaint' : 'odd-reading');
    const { causes } = posterior(shippedFaults, priors, weights);
    const expected = sameReadings[row] ?? row;
    expect(
      causes[0]?.row,
      causes
        .slice(0, 4)
        .map((cause) => `${cause.id} ${cause.probability.toFixed(3)}`)
        .join(', '),
    ).toBe(expected);
    if (row !== '18') expect(causes.slice(0, 6).map((cause) => cause.row)).toContain(row);
  });

  it('every row of the table is some fault’s', () => {
    const known = new Set(shippedFaults.faults.map((fault) => fault.row));
    for (const [row] of rows) expect(known, row).toContain(row);
  });

  it.each([
    ['supply-low', 'resistive-supply', true],
    ['no-power', 'open-supply', true],
    ['resistive-ground', 'resistive-supply', false],
    ['open-ground', 'open-supply', false],
    ['leads-swapped', 'sensor-reversed', false],
  ] as const)('%s and %s show the same everywhere: %s', (a, b, same) => {
    expect(showTheSame(shippedFaults, a, b)).toBe(same);
  });
});
