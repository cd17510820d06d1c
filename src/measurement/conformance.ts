// How likely a true value lies within its limits (JCGM 106:2012, clause 7); shown at the desk.
import type { Window } from './window.ts';

/** The chance that the true value is inside the window, the reading being normal about it with standard uncertainty u. */
export function conformanceProbability(value: number, u: number, window: Window): number {
  const from = window.low === null ? Number.NEGATIVE_INFINITY : (window.low - value) / u;
  const to = window.high === null ? Number.POSITIVE_INFINITY : (window.high - value) / u;
  // Above the middle both are near 1 and their difference would lose its digits: the mirror image is taken.
  return from > 0 ? normalCdf(-from) - normalCdf(-to) : normalCdf(to) - normalCdf(from);
}

/** The standard normal distribution function, to some 15 digits; its lower tail keeps its relative accuracy. */
export function normalCdf(z: number): number {
  if (z > 0) return 1 - normalCdf(-z);
  if (z < -40) return 0;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return z < -3 ? density * millsRatio(-z) : 0.5 - density * oddSeries(-z);
}

/** z + z³/3 + z⁵/(3·5) + …, which converges fast near the middle. */
function oddSeries(z: number): number {
  let term = z;
  let sum = z;
  for (let k = 3; term > sum * Number.EPSILON; k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return sum;
}

/** Laplace's continued fraction 1/(z + 1/(z + 2/(z + 3/…))), which converges fast in the tail. */
function millsRatio(z: number): number {
  let fraction = z;
  for (let k = 120; k >= 1; k -= 1) fraction = z + k / fraction;
  return 1 / fraction;
}
