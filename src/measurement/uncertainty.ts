// How far a meter may be off, from its accuracy class; for verdicts.
import type { Value } from './heard.ts';

/** An accuracy class as meters state it: ±(percent of the reading + digits). */
export interface Meter {
  percent: number;
  digits: number;
}

/** What is assumed, and said to be assumed, of a meter whose class is not known. */
export const unknownMeter: Meter = { percent: 0.8, digits: 3 };

/** The greatest error that the class allows: a = p·|x| + n·δ. */
export function greatestError(reading: Value, meter: Meter): number {
  return (meter.percent / 100) * Math.abs(reading.value) + meter.digits * reading.resolution;
}

/**
 * The standard uncertainty u = a/√3: nothing is known of the error but its bounds (GUM 4.3.7).
 * The class already holds the step of the last digit, so δ²/12 is not added a second time.
 */
export function standardUncertainty(reading: Value, meter: Meter): number {
  return greatestError(reading, meter) / Math.sqrt(3);
}
