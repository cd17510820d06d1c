// The measures, parts and actions that procedures are built from: the words the whole program shares with its content.
import type { Unit } from '../measurement/unit.ts';

/** Where the meter's leads sit for a measure; null where no meter is used. */
export type Probing = 'probe' | 'probe-supply' | 'probe-ground' | 'probe-battery' | null;

export interface MeasureKind {
  unit: Unit;
  probing: Probing;
  /** The control unit has to be awake for it, or the meter shows nothing of use. */
  awake: boolean;
}

const signal: MeasureKind = { unit: 'V', probing: 'probe', awake: true };
const byRuler: MeasureKind = { unit: 'mm', probing: null, awake: false };

export const measures = {
  'supply-voltage': { unit: 'V', probing: 'probe-supply', awake: true },
  'ground-drop': { unit: 'V', probing: 'probe-ground', awake: true },
  'battery-voltage': { unit: 'V', probing: 'probe-battery', awake: false },
  'charging-voltage': { unit: 'V', probing: 'probe-battery', awake: false },
  'signal-closed-stop': signal,
  'signal-idle': signal,
  'signal-fast-idle': signal,
  'signal-released': signal,
  'signal-wide-open': signal,
  'signal-sweep': signal,
  'signal-snapped': signal,
  'idle-speed': { unit: '1/min', probing: null, awake: false },
  'free-play': byRuler,
  'chain-slack': byRuler,
  'rider-sag': byRuler,
  'free-sag': byRuler,
  'tyre-pressure': { unit: 'kPa', probing: null, awake: false },
} as const satisfies Record<string, MeasureKind>;

export type Measure = keyof typeof measures;
export const measureIds = Object.keys(measures) as [Measure, ...Measure[]];

export type MoveUnit = 'turn' | 'click' | 'nudge' | 'mm';

export interface PartKind {
  /** The direction that counts as positive, and its opposite. */
  directions: readonly [
    positive: 'in' | 'clockwise' | 'more',
    negative: 'out' | 'counter-clockwise' | 'less',
  ];
  unit: MoveUnit;
}

export const parts = {
  'sensor-body': { directions: ['clockwise', 'counter-clockwise'], unit: 'nudge' },
  'upper-screw': { directions: ['in', 'out'], unit: 'nudge' },
  'lower-screw': { directions: ['in', 'out'], unit: 'nudge' },
  'idle-stop': { directions: ['in', 'out'], unit: 'turn' },
  'fast-idle': { directions: ['in', 'out'], unit: 'click' },
  cable: { directions: ['more', 'less'], unit: 'mm' },
  'chain-adjuster': { directions: ['in', 'out'], unit: 'turn' },
  'preload-collar': { directions: ['in', 'out'], unit: 'turn' },
} as const satisfies Record<string, PartKind>;

export type Part = keyof typeof parts;
export const partIds = Object.keys(parts) as [Part, ...Part[]];

export const actions = [
  'wake',
  'sleep',
  'probe',
  'probe-supply',
  'probe-ground',
  'probe-battery',
  'unprobe',
  'back-off:idle-stop',
  'back-off:fast-idle',
  'free-play:cable',
  'turn-bars',
  'mark:sensor-body',
  'restore:sensor-body',
  'loosen:sensor-screws',
  'tighten:sensor-screws',
  'open',
  'close',
  'snap',
  'engage:fast-idle',
  'release:fast-idle',
  'start-engine',
  'stop-engine',
  'check:leads',
  'check:meter',
  'check:cable',
  'check:screws',
] as const;

export type Action = (typeof actions)[number];

export const sensorKinds = ['potentiometer', 'contactless'] as const;
export type SensorKind = (typeof sensorKinds)[number];

/** The red flags: whoever says one of these is told what to do first, and gets a person. */
export const redFlags = [
  'throttle-sticks',
  'revs-hang',
  'engine-wont-stop',
  'fuel-leak',
  'smoke',
  'hot-leads',
  'pump-runs-on',
  'unwell',
  'injured',
] as const;

export type RedFlag = (typeof redFlags)[number];
