// Where the reading of a healthy machine would lie, set rightly or only not set yet; every prediction starts from this.
import type { Band, Observation } from './evidence.ts';

/** All values within `half` of `middle` are alike, and beyond they fall off with `spread`. */
export interface Plateau {
  share: number;
  middle: number;
  half: number;
  spread: number;
}

export interface Healthy {
  right: Plateau;
  /** Set rightly, and not set yet where that can be. */
  any: readonly Plateau[];
  supply: { middle: number; spread: number };
  /** The span of what a meter could show for such a measure at all. */
  scale: number;
}

/** The usual supply of a sensor, where it was not measured (common practice, no source). */
export const usualSupply = { middle: 4.98, spread: 0.07 };
export const usualReach = 0.25;

/** Half of the machines that come to be set are off. */
const shareOff = 0.5;

export function healthyAt(observation: Observation, band: Band): Healthy | null {
  const limits = bothLimits(band);
  if (limits === null) return null;
  const middle = (limits.low + limits.high) / 2;
  const half = (limits.high - limits.low) / 2;
  const right = {
    share: 1,
    middle,
    half,
    spread: Math.max(0.06 * half, 0.003 * Math.abs(middle), 0.002),
  };
  const reach = observation.reach ?? usualReach;
  return {
    right,
    any: observation.settable
      ? [
          { ...right, share: 1 - shareOff },
          { share: shareOff, middle, half: half + reach, spread: reach / 8 },
        ]
      : [right],
    supply:
      observation.supply === null
        ? usualSupply
        : { middle: observation.supply, spread: Math.max(0.004, 0.004 * observation.supply) },
    scale: Math.max(5, 1.5 * Math.abs(limits.high)),
  };
}

/** A band with one limit only is closed by how such figures usually lie (common practice, no source). */
function bothLimits(band: Band): { low: number; high: number } | null {
  if (band.low !== null) return { low: band.low, high: band.high ?? band.low * 1.1 };
  return band.high === null ? null : { low: 0, high: band.high };
}
