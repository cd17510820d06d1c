// Subjects of every drawing, ordinary and hostile ones, with invented values; for the contact sheet and the tests.
import type { ApproachSubject } from '../../src/picture/draw-approach.ts';
import type { CausesSubject } from '../../src/picture/draw-causes.ts';
import type { ConnectorSubject } from '../../src/picture/draw-connector.ts';
import type { GaugeSubject } from '../../src/picture/draw-gauge.ts';
import type { PartMoveSubject } from '../../src/picture/draw-part.ts';
import type { RecordCardSubject } from '../../src/picture/draw-record.ts';
import type { StripSubject } from '../../src/picture/draw-strip.ts';
import type { SweepSubject } from '../../src/picture/draw-sweep.ts';
import type { WorkshopFigureSubject } from '../../src/picture/draw-workshop.ts';
import type { DrawingName } from '../../src/picture/drawings.ts';

export interface Sample {
  name: string;
  drawing: DrawingName;
  language: string;
  subject: unknown;
}

const long =
  'A name far too long for any picture, with <b>markup</b> & "quotes", 🏍️ and a bell\u0007 in it, again and again';

const closed: GaugeSubject = {
  label: 'Signal, throttle on its closed stop',
  unit: 'V',
  value: 0.621,
  digits: 3,
  low: 0.615,
  high: 0.625,
  target: 0.62,
  uncertainty: 0.008,
  result: 'pass',
};

const gauges: Record<string, GaugeSubject> = {
  pass: closed,
  'too-low': { ...closed, value: 0.598, result: 'adjust' },
  'too-high-far': { ...closed, value: 2.31, result: 'adjust' },
  'below-the-scale': { ...closed, value: -4.98, result: 'implausible' },
  unclear: { ...closed, label: 'Signal at idle', value: 0.6, digits: 1, uncertainty: 0.3, result: 'unclear' },
  wandering: { ...closed, value: 0.65, spread: 0.06, uncertainty: null, result: 'adjust' },
  'no-figure': { ...closed, value: null, result: 'implausible' },
  'one-sided': {
    ...closed,
    label: 'Ground drop',
    value: 0.012,
    low: null,
    high: 0.05,
    target: null,
    uncertainty: 0.003,
  },
  'no-limits': { ...closed, label: 'Signal as found', low: null, high: null, target: null },
  speed: {
    label: 'Idle speed, warm',
    unit: '1/min',
    value: 1890,
    digits: 0,
    low: 1700,
    high: 1800,
    target: 1750,
    uncertainty: 10,
    result: 'adjust',
  },
  'long-name': { ...closed, label: long, unit: 'V' },
};

const approach: ApproachSubject = {
  label: 'Idle stop, static',
  unit: 'V',
  digits: 3,
  low: 0.705,
  high: 0.715,
  target: 0.71,
  readings: [
    { value: 0.655 },
    { value: 0.655, move: { direction: 'in', amount: 0.5, unit: 'turn' } },
    { value: 0.689, move: { direction: 'in', amount: 0.25, unit: 'turn' } },
    { value: 0.723, move: { direction: 'in', amount: 0.25, unit: 'turn' } },
    { value: 0.711, move: { direction: 'out', amount: 0.125, unit: 'turn' } },
  ],
  result: 'pass',
};

const wobble = (count: number, middle: number, size: number) =>
  Array.from({ length: count }, (_, index) =>
    Number((middle + size * Math.sin(index * 1.7) * (1 - index / (count + 1))).toFixed(3)),
  );

const approaches: Record<string, ApproachSubject> = {
  five: approach,
  one: { ...approach, readings: approach.readings.slice(0, 1), result: 'adjust' },
  none: { ...approach, readings: [], result: null },
  clicks: {
    ...approach,
    label: 'Fast idle, engaged',
    low: 0.85,
    high: 0.87,
    target: 0.86,
    readings: [
      { value: 0.801 },
      { value: null, move: { direction: 'in', amount: 4, unit: 'click' } },
      { value: 0.842, move: { direction: 'in', amount: 3, unit: 'click' }, struck: true },
      { value: 0.881, move: { direction: 'clockwise', amount: 12, unit: 'nudge' } },
      { value: 0.872, move: { direction: 'counter-clockwise', amount: 1, unit: 'nudge' } },
      { value: 0.869, move: { direction: 'less', amount: 1.5, unit: 'mm' } },
      { value: 0.861, move: { direction: 'out', amount: 1, unit: 'click' } },
    ],
  },
  'off-scale': {
    ...approach,
    readings: [
      { value: 0.702 },
      { value: 4.98 },
      { value: 0, move: { direction: 'in', amount: 1.25, unit: 'turn' } },
    ],
    result: 'implausible',
  },
  'two-hundred': {
    ...approach,
    readings: wobble(200, 0.71, 0.05).map((value) => ({
      value,
      move: { direction: 'in' as const, amount: 0.25, unit: 'turn' as const },
    })),
  },
};

const stage = (
  label: string,
  low: number | null,
  high: number | null,
  readings: (number | null)[],
  result: StripSubject['stages'][number]['result'],
  unit = 'V',
  digits = 3,
) => ({ label, unit, digits, low, high, readings, result });

const stages = [
  stage('Sensor supply', 4.85, 5.1, [4.98], 'pass'),
  stage('Ground drop', null, 0.05, [0.012], 'pass'),
  stage('Signal as found', null, null, [0.598], null),
  stage('Closed stop', 0.615, 0.625, [0.598, 0.633, 0.627, 0.621], 'pass'),
  stage('Idle, static', 0.705, 0.715, [0.655, 0.655, 0.689, 0.723, 0.711], 'pass'),
  stage('Fast idle', 0.85, 0.87, [0.801, 0.842], 'adjust'),
  stage('After release', 0.706, 0.716, [1.42], 'implausible'),
  stage('Wide open', 3.9, 4.5, [], null),
];

const strips: Record<string, StripSubject> = {
  'eight-stages': { title: 'Throttle sensor', stages },
  'fifteen-stages': {
    title: 'Throttle sensor',
    stages: [
      ...stages,
      stage('Snapped shut', 0.706, 0.716, [null], 'unclear'),
      stage('Idle speed, warm', 1700, 1800, [1610, 1740], 'pass', '1/min', 0),
      ...stages.slice(0, 5),
    ],
  },
  'long-names': { title: long, stages: stages.map((entry) => ({ ...entry, label: long })) },
  none: { title: 'Throttle sensor', stages: [] },
};

const sweep: SweepSubject = {
  label: 'Sweep',
  unit: 'V',
  digits: 2,
  up: [0.71, 1.55, 2.42, 3.4, 4.3],
  down: [3.6, 2.7, 1.4, 0.71],
  faults: [],
  result: 'pass',
};

const sweeps: Record<string, SweepSubject> = {
  right: sweep,
  'drop-out': {
    ...sweep,
    up: [0.71, 1.55, 0.02, 3.4, 4.3],
    faults: [{ kind: 'drop-out', where: 0.5 }],
    result: 'implausible',
  },
  'dead-spot': {
    ...sweep,
    up: [0.71, 1.55, 1.55, 3.4, null],
    down: [null, 2.7, 1.4, 0.79],
    faults: [
      { kind: 'dead-spot', where: 0.42 },
      { kind: 'no-return', where: 0 },
      { kind: 'not-wide-open', where: 1 },
    ],
    result: 'adjust',
  },
  none: { ...sweep, up: [], down: [], result: null },
  one: { ...sweep, up: [0.71], down: [], result: 'unclear' },
  'two-hundred': {
    ...sweep,
    up: Array.from({ length: 100 }, (_, index) => Number((0.71 + index * 0.036).toFixed(2))),
    down: Array.from({ length: 100 }, (_, index) => Number((4.27 - index * 0.0359).toFixed(2))),
  },
};

const connector: ConnectorSubject = {
  title: 'Throttle sensor plug',
  pins: [
    { label: '1', role: 'supply', colours: ['red', 'yellow'] },
    { label: '2', role: 'signal', colours: ['light-blue'] },
    { label: '3', role: 'ground', colours: ['black', 'white'] },
  ],
  rows: 1,
  red: 1,
  black: 2,
  latch: 'up',
};

const plain = (label: string, ...colours: ConnectorSubject['pins'][number]['colours']) => ({
  label,
  role: null,
  colours,
});

const connectors: Record<string, ConnectorSubject> = {
  'three-pins': connector,
  'supply-probed': { ...connector, red: 0, latch: null },
  'six-in-a-row': {
    ...connector,
    pins: [plain('A', 'green', 'yellow'), ...connector.pins, plain('E', 'brown'), plain('F', 'white', 'red')],
    red: 2,
    black: 3,
    latch: 'down',
  },
  'six-in-two-rows': {
    ...connector,
    rows: 2,
    pins: [
      plain('1', 'green', 'yellow'),
      plain('2', 'orange'),
      { label: '3', role: 'signal', colours: ['violet', 'pink'] },
      { label: '4', role: 'supply', colours: ['red'] },
      plain('5', 'brown'),
      { label: '6', role: 'ground', colours: ['grey', 'light-green'] },
    ],
    red: 2,
    black: 5,
    latch: null,
  },
  'colour-unknown': {
    pins: [
      { label: '?', role: 'supply', colours: [] },
      { label: '?', role: 'signal', colours: ['light-blue'] },
      { label: '?', role: 'ground', colours: [] },
    ],
    red: 1,
    black: 2,
  },
  'battery-minus': { ...connector, red: 2, black: null, latch: null },
};

const part: PartMoveSubject = {
  part: 'idle-stop',
  move: { direction: 'in', amount: 0.25, unit: 'turn' },
  where: 'Left side of the throttle body, behind the fuel hose',
  until: { low: 0.705, high: 0.715, digits: 3, unit: 'V' },
  effect: 'raises',
};

const parts: Record<string, PartMoveSubject> = {
  screw: part,
  'screw-upside-down': {
    ...part,
    move: { direction: 'out', amount: 1.5, unit: 'turn' },
    upsideDown: true,
    effect: 'lowers',
  },
  'screw-pointed-out': { part: 'idle-stop', where: part.where },
  knob: {
    part: 'fast-idle',
    move: { direction: 'in', amount: 3, unit: 'click' },
    effect: 'raises',
    where: 'Right side, under the tank',
  },
  sensor: {
    part: 'sensor-body',
    move: { direction: 'counter-clockwise', amount: 1, unit: 'nudge' },
    where: 'On the right end of the throttle shaft',
    until: { low: 0.615, high: 0.625, digits: 3, unit: 'V' },
  },
  collar: { part: 'preload-collar', move: { direction: 'in', amount: 2, unit: 'turn' }, turn: 'clockwise' },
  'collar-sense-unknown': { part: 'preload-collar', move: { direction: 'in', amount: 2, unit: 'turn' } },
  cable: {
    part: 'cable',
    move: { direction: 'more', amount: 2, unit: 'mm' },
    where: 'At the grip, under the rubber sleeve',
  },
  'long-name': { ...part, title: long, where: long, upsideDown: true },
};

const causes: CausesSubject = {
  title: 'Causes · case c3',
  rows: [
    {
      name: 'Sensor screws loose',
      probability: 0.62,
      evidence: [
        { text: 'reading moves when pushed', speaks: 'for' },
        { text: 'supply right', speaks: 'for' },
        { text: 'returns the same', speaks: 'against' },
      ],
    },
    { name: 'Cable too tight', probability: 0.21, evidence: [{ text: 'rises at full lock', speaks: 'for' }] },
    { name: 'Idle stop not backed off', probability: 0.11, evidence: [] },
    {
      name: 'Nothing we know of',
      probability: 0.04,
      evidence: [{ text: 'all checks passed', speaks: 'for' }],
    },
    { name: 'Worn track', probability: 0.015, evidence: [] },
    { name: 'Low supply', probability: 0.005, evidence: [] },
  ],
};

const causeSheets: Record<string, CausesSubject> = {
  six: causes,
  one: { ...causes, rows: causes.rows.slice(0, 1) },
  none: { ...causes, rows: [] },
  'long-names': {
    title: long,
    rows: causes.rows.map((row) => ({
      ...row,
      name: long,
      evidence: [{ text: long, speaks: 'against' as const }, ...row.evidence],
    })),
  },
};

const values = [
  { label: 'Closed stop', value: 0.621, unit: 'V', digits: 3, low: 0.615, high: 0.625 },
  { label: 'Idle, static', value: 0.711, unit: 'V', digits: 3, low: 0.705, high: 0.715 },
  { label: 'Idle, warm', value: 0.742, unit: 'V', digits: 3, low: 0.725, high: 0.76 },
  { label: 'Fast idle', value: 0.861, unit: 'V', digits: 3, low: 0.85, high: 0.87 },
  { label: 'Idle speed, warm', value: 1740, unit: '1/min', digits: 0, low: 1700, high: 1800 },
];

const record: RecordCardSubject = {
  title: 'Throttle sensor',
  machine: 'Heron 400',
  workshop: 'Alder Lane Motor Works',
  date: '2026-03-14',
  result: 'set',
  values,
  code: 'K7-3QF',
};

const records: Record<string, RecordCardSubject> = {
  set: record,
  'eight-values': {
    ...record,
    result: 'right-as-found',
    values: [
      ...values,
      { label: 'Sensor supply', value: 4.98, unit: 'V', digits: 2, low: 4.8, high: null },
      { label: 'Ground drop', value: 0.012, unit: 'V', digits: 3, low: null, high: 0.05 },
      { label: 'Wide open', value: 4.31, unit: 'V', digits: 2, low: 3.9, high: 4.5 },
    ],
  },
  accepted: { ...record, result: 'accepted', acceptedBy: 'M. Rowan', values: values.slice(0, 2) },
  'not-set': { ...record, result: 'not-set', values: [], code: null },
  'long-names': {
    ...record,
    title: long,
    machine: long,
    workshop: long,
    acceptedBy: long,
    values: [...values, ...values, ...values].map((entry) => ({ ...entry, label: long })),
    code: 'K7-3QF-9XW-22A',
  },
};

const figures: Record<string, WorkshopFigureSubject> = {
  stops: {
    kind: 'stops',
    title: 'Where owners stop',
    rows: [
      ['Tools and safety', 64, 3],
      ['Supply', 61, 6],
      ['Signal as found', 55, 1],
      ['Stops backed off', 54, 9],
      ['Closed stop', 45, 12],
      ['Idle, static', 33, 2],
      ['Fast idle', 31, 0],
      ['Sweep', 31, 1],
      ['Start and warm idle', 30, 4],
    ].map(([label, reached, stopped]) => ({
      label: String(label),
      reached: Number(reached),
      stopped: Number(stopped),
    })),
  },
  times: {
    kind: 'times',
    title: 'Time by stage',
    rows: [
      ['Tools and safety', 4, 7, 12],
      ['Supply', 3, 5, 9],
      ['Closed stop', 9, 16, 38],
      ['Idle, static', 5, 8, 14],
      ['Fast idle', 3, 5, 8],
      ['Start and warm idle', 14, 18, 25],
    ].map(([label, quarter, median, threeQuarters]) => ({
      label: String(label),
      quarter: Number(quarter),
      median: Number(median),
      threeQuarters: Number(threeQuarters),
    })),
  },
  months: {
    kind: 'months',
    title: 'Causes by month',
    months: ['2025-10', '2025-11', '2025-12', '2026-01', '2026-02', '2026-03'],
    rows: [
      { label: 'Sensor screws loose', counts: [2, 3, 1, 4, 6, 11] },
      { label: 'Cable too tight', counts: [1, 0, 0, 2, 3, 2] },
      { label: 'Leads on the wrong pins', counts: [4, 2, 5, 3, 9, 7] },
      { label: 'Worn track', counts: [0, 0, 1, 0, 0, 1] },
    ],
  },
  'months-none': { kind: 'months', title: 'Causes by month', months: [], rows: [] },
  'long-names': {
    kind: 'stops',
    title: long,
    rows: Array.from({ length: 14 }, () => ({ label: long, reached: 12345, stopped: 1234 })),
  },
};

const named = (drawing: DrawingName, subjects: Record<string, unknown>, language = 'en'): Sample[] =>
  Object.entries(subjects).map(([name, subject]) => ({
    name: `${drawing}-${name}`,
    drawing,
    language,
    subject,
  }));

export const samples: readonly Sample[] = [
  ...named('gauge', gauges),
  ...named('approach', approaches),
  ...named('strip', strips),
  ...named('sweep', sweeps),
  ...named('connector', connectors),
  ...named('part', parts),
  ...named('causes', causeSheets),
  ...named('record', records),
  ...named('workshop', figures),
  ...named(
    'gauge',
    { 'in-german': { ...closed, label: 'Signal am geschlossenen Anschlag', value: 0.598, result: 'adjust' } },
    'de',
  ),
  ...named('connector', { 'in-german': { ...connector, title: undefined } }, 'de'),
  ...named(
    'part',
    { 'in-french': { ...part, where: 'À gauche du corps de papillon, derrière la durite' } },
    'fr',
  ),
  ...named(
    'part',
    {
      'in-german': {
        ...part,
        upsideDown: true,
        move: { direction: 'out', amount: 0.5, unit: 'turn' },
        where: 'Links am Drosselklappenkörper',
      },
    },
    'de',
  ),
  ...named('approach', { 'in-italian': { ...approach, label: 'Fermo del minimo, da fermo' } }, 'it'),
  ...named('record', { 'in-portuguese': { ...record, title: 'Sensor do acelerador' } }, 'pt'),
  ...named(
    'sweep',
    {
      'in-spanish': {
        ...sweep,
        label: 'Barrido',
        faults: [{ kind: 'drop-out', where: 0.5 }],
        result: 'implausible',
      },
    },
    'es',
  ),
  // Greek and Cyrillic names, a language without words of its own, a right-to-left override and half a pair.
  ...named(
    'gauge',
    { 'of-strange-names': { ...closed, label: 'Κινητήρας \u202eДвигатель\ud83d 摩托' } },
    'uk',
  ),
];

export function sampleNamed(name: string): Sample {
  const sample = samples.find((entry) => entry.name === name);
  if (!sample) throw new Error(`no sample "${name}"`);
  return sample;
}
