// From values to places on a picture: a linear scale, round ticks, how far a scale reaches; for gauge, approach, strip and sweep.

export type Span = readonly [from: number, to: number];

export function linear(domain: Span, range: Span): (value: number) => number {
  const [from, to] = domain;
  const stretch = to === from ? 0 : (range[1] - range[0]) / (to - from);
  return (value) => (to === from ? (range[0] + range[1]) / 2 : range[0] + (value - from) * stretch);
}

/** A step of 1, 2 or 5 times a power of ten, as mantissa and power, so that ticks are built without adding up fractions. */
function roundStep(span: Span, count: number): { mantissa: number; power: number } {
  const wanted = (span[1] - span[0]) / Math.max(1, count);
  const power = Math.floor(Math.log10(wanted));
  const mantissa = wanted / 10 ** power;
  // The nearest of 1, 2, 5 and 10 on a logarithmic scale.
  if (mantissa >= Math.sqrt(50)) return { mantissa: 1, power: power + 1 };
  if (mantissa >= Math.sqrt(10)) return { mantissa: 5, power };
  if (mantissa >= Math.SQRT2) return { mantissa: 2, power };
  return { mantissa: 1, power };
}

/** About `count` round values within the span, with the digits that they need. */
export function ticks(span: Span, count: number): { values: number[]; digits: number } {
  if (!(span[1] > span[0])) return { values: [], digits: 0 };
  const { mantissa, power } = roundStep(span, count);
  const at = (index: number) =>
    power < 0 ? (index * mantissa) / 10 ** -power : index * mantissa * 10 ** power;
  const step = mantissa * 10 ** power;
  const first = Math.ceil(span[0] / step - 1e-9);
  const last = Math.floor(span[1] / step + 1e-9);
  const values = Array.from({ length: last - first + 1 }, (_, index) => at(first + index));
  return { values, digits: Math.max(0, -power) };
}

export interface Limits {
  low: number | null;
  high: number | null;
  target?: number | null | undefined;
}

/**
 * How far a scale reaches: the band with room on both sides, stretched to readings that lie near. A reading further
 * than six bands away is left off the scale, or the band would shrink to a line.
 */
export function reach(limits: Limits, readings: readonly number[], digits: number): Span {
  const fixed = [limits.low, limits.high, limits.target].filter((value) => typeof value === 'number');
  // "At most" is read from zero up.
  if (limits.low === null && limits.high !== null && limits.high > 0) fixed.push(0);
  const anchors = fixed.length > 0 ? fixed : readings.slice(-1);
  if (anchors.length === 0) return [0, 1];
  const bottom = Math.min(...anchors);
  const top = Math.max(...anchors);
  const width = top > bottom ? top - bottom : Math.max(Math.abs(top) / 10, 20 / 10 ** digits);
  const near = readings.filter((value) => value >= bottom - 6 * width && value <= top + 6 * width);
  const from = Math.min(bottom - 0.6 * width, ...near);
  const to = Math.max(top + 0.6 * width, ...near);
  const pad = (to - from) * 0.06;
  const nothingBelowZero = Math.min(bottom, ...near) >= 0;
  return [nothingBelowZero ? Math.max(0, from - pad) : from - pad, to + pad];
}

/**
 * Where labels go along a line so that none overlaps another and none leaves the line; `wanted` is in order of place.
 * Where they can't all fit, they stand evenly (and the caller has asked for too many).
 */
export function placeLabels(
  wanted: readonly { at: number; width: number }[],
  gap: number,
  [from, to]: Span,
): number[] {
  const places: number[] = [];
  let edge = from;
  for (const { at, width } of wanted) {
    const place = Math.max(at, edge + width / 2);
    places.push(place);
    edge = place + width / 2 + gap;
  }
  edge = to;
  for (let index = wanted.length - 1; index >= 0; index--) {
    const { width } = wanted[index]!;
    places[index] = Math.min(places[index]!, edge - width / 2);
    edge = places[index]! - width / 2 - gap;
  }
  return places;
}

/** The digits that limits are shown with: the reading's own, or more where a limit has more. */
export function limitDigits(limits: Limits, digits: number): number {
  const needed = [limits.low, limits.high, limits.target].map((limit) =>
    typeof limit === 'number' ? (String(Number(limit.toFixed(6))).split('.')[1]?.length ?? 0) : 0,
  );
  return Math.max(digits, ...needed);
}
