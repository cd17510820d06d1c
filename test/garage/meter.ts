// A handheld meter as a simulation: counts and ranges, an error of its own within its class, flicker, and what a wrong dial shows.
import type { Random } from './random.ts';

export type MeterMode = 'dc' | 'ac' | 'ohms';

export interface Meter {
  counts: 2000 | 4000 | 6000;
  autoRange: boolean;
  /** Top of the range in use, nominally, in volts; of no matter with auto range. */
  top: number;
  mode: MeterMode;
  /** Accuracy class: share of the reading and digits. */
  share: number;
  digits: number;
  /** This meter's own part of that: a gain that never changes, and an offset in digits. */
  gain: number;
  offset: number;
  /** Chance that the last digit is one off. */
  flicker: number;
  /** Shows a lone 1 at the left for an overload, as cheap meters do. */
  loneOne: boolean;
  hold: { on: boolean; frozen: Display | null };
  /** What REL takes away from each reading; null where it is off. */
  relative: number | null;
  /** The highest so far, where MIN-MAX shows it; null where it is off. */
  highest: { seen: number } | null;
  currentJack: boolean;
  /** Low battery: everything reads so many times too high; 1 is healthy. */
  weakBattery: number;
  asleep: boolean;
}

export type Display =
  | { kind: 'number'; value: number; decimals: number }
  | { kind: 'wandering'; low: number; high: number; decimals: number }
  | { kind: 'overload' }
  | { kind: 'blank' };

/** What is between the leads: volts, how far they wander, or nothing at all. */
export type Between = { low: number; high: number; floating?: boolean };

/** Ranges and accuracy as handheld meters have them: domain facts, section 2. */
export function drawMeter(random: Random): Meter {
  const [counts, autoRange] = random.pick([
    [2000, false],
    [2000, false],
    [2000, true],
    [4000, true],
    [6000, true],
    [6000, true],
  ] as const);
  const [share, digits] = random.pick([
    [0.005, 1],
    [0.005, 2],
    [0.005, 3],
    [0.007, 1],
    [0.008, 1],
    [0.008, 3],
  ] as const);
  return {
    counts,
    autoRange,
    top: counts / 100,
    mode: 'dc',
    share,
    digits,
    gain: random.between(-share, share),
    offset: random.whole(-(digits - 1), digits - 1),
    flicker: 0.2,
    loneOne: counts === 2000 && random.chance(0.5),
    hold: { on: false, frozen: null },
    relative: null,
    highest: null,
    currentJack: false,
    weakBattery: 1,
    asleep: false,
  };
}

/** The range that shows the most decimals and still holds the value: 0.2, 2, 20 V … for 2000 counts. */
export function finestTop(meter: Meter, volts: number): number {
  let top = meter.counts / 1000;
  // Each range ends one count short of its name: 1.999 on the 2 V range.
  while (Math.abs(volts) > top * (1 - 1 / meter.counts)) top *= 10;
  return top;
}

export function resolutionOf(meter: Meter, volts: number): number {
  return (meter.autoRange ? finestTop(meter, volts) : meter.top) / meter.counts;
}

/** The most by which this meter may be off at this value, by its class. */
export function statedError(meter: Meter, volts: number): number {
  return meter.share * Math.abs(volts) + meter.digits * resolutionOf(meter, volts);
}

/** Looks at the meter; the same volts may show another last digit the next moment. */
export function look(meter: Meter, between: Between, random: Random): Display {
  if (meter.asleep) return { kind: 'blank' };
  if (meter.hold.on && meter.hold.frozen) return meter.hold.frozen;
  const display = measured(meter, between, random);
  if (meter.hold.on) meter.hold.frozen = display;
  return display;
}

function measured(meter: Meter, between: Between, random: Random): Display {
  const middle = (between.low + between.high) / 2;
  if (meter.mode === 'ohms') {
    if (random.chance(0.5)) return { kind: 'overload' };
    return { kind: 'wandering', low: random.between(0.1, 0.6), high: random.between(0.8, 1.6), decimals: 3 };
  }
  // Direct voltage on the AC range: nothing, or a figure that means nothing.
  if (meter.mode === 'ac') return rounded(meter, random.chance(0.7) ? 0 : middle * 2.2, random);
  if (meter.currentJack) return rounded(meter, 0, random);
  if (between.floating) {
    const decimals = decimalsOf(resolutionOf(meter, 0.01));
    return { kind: 'wandering', low: 0.001, high: 0.001 + random.between(0.01, 0.05), decimals };
  }
  if (between.high - between.low > 0.012) {
    const decimals = decimalsOf(resolutionOf(meter, between.high));
    return { kind: 'wandering', low: between.low, high: between.high, decimals };
  }
  if (meter.highest) {
    meter.highest.seen = Math.max(meter.highest.seen, middle);
    return rounded(meter, meter.highest.seen, random);
  }
  return rounded(meter, middle - (meter.relative ?? 0), random);
}

function rounded(meter: Meter, volts: number, random: Random): Display {
  const resolution = resolutionOf(meter, volts);
  const noise = random.chance(meter.flicker) && meter.digits > 1 ? random.sign() : 0;
  const offset = Math.max(1 - meter.digits, Math.min(meter.digits - 1, meter.offset + noise));
  const counted = Math.round((volts * (1 + meter.gain) * meter.weakBattery) / resolution) + offset;
  const value = volts === 0 && meter.digits === 1 ? 0 : counted * resolution;
  const top = meter.autoRange ? finestTop(meter, volts) : meter.top;
  if (Math.abs(value) > top * (1 - 1 / meter.counts) + resolution / 2) {
    if (meter.autoRange && top < 1000) {
      const coarser = resolution * 10;
      return { kind: 'number', value: Math.round(value / coarser) * coarser, decimals: decimalsOf(coarser) };
    }
    return { kind: 'overload' };
  }
  return { kind: 'number', value, decimals: decimalsOf(resolution) };
}

function decimalsOf(resolution: number): number {
  return Math.max(0, Math.round(-Math.log10(resolution)));
}

/** What a look at dial, jacks and buttons puts right: direct voltage, the range that suits, nothing held or taken away. */
export function putRight(meter: Meter, volts: number): void {
  meter.mode = 'dc';
  meter.currentJack = false;
  meter.hold = { on: false, frozen: null };
  meter.relative = null;
  meter.highest = null;
  meter.weakBattery = 1;
  meter.asleep = false;
  meter.top = finestTop(meter, volts);
}
