// Values as whole counts of a display's last digit, so that no verdict hangs on binary fractions.

/** Far above what binary fractions add, far below what a limit can mean. */
const dust = 1e-6;

/** A whole number wherever only binary fractions keep it from being one. */
export function toCounts(value: number, resolution: number): number {
  const counts = value / resolution;
  const whole = Math.round(counts);
  return Math.abs(counts - whole) < dust ? whole + 0 : counts;
}

export function fromCounts(counts: number, resolution: number): number {
  return tidy(counts * resolution) + 0;
}

/** Drops what binary fractions add: 3 × 0.001 is 0.003. */
export function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
