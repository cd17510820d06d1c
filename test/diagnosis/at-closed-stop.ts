// A reading at the closed stop of a 5 V sensor, as most tests of the diagnosis begin with; the figures are invented.
import type { Observation, Seen } from '../../src/diagnosis/evidence.ts';

export const value = (volts: number, resolution = 0.001): Seen => ({
  kind: 'value',
  value: volts,
  resolution,
});

export const closed = (seen: Seen, more: Partial<Observation> = {}): Observation => ({
  kind: 'observation',
  measure: 'signal-closed-stop',
  situation: 'closed',
  seen,
  expected: { low: 0.61, high: 0.63 },
  settable: true,
  supply: 5,
  ...more,
});
