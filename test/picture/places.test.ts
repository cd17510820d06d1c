// Holds what drawings put where: the sense of a turn, steps of a sweep, readings in order, pins of a plug.
import { scaleLinear, scalePoint } from 'd3-scale';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeReadings } from '../../src/picture/draw-approach.ts';
import { placePins } from '../../src/picture/draw-connector.ts';
import { arrowDegrees, type PartMoveSubject, senseOf } from '../../src/picture/draw-part.ts';
import { placeSweep } from '../../src/picture/draw-sweep.ts';
import { onCircle } from '../../src/picture/svg.ts';

describe('the sense of a turn, seen facing the part', () => {
  const inQuarter = { direction: 'in', amount: 0.25, unit: 'turn' } as const;
  // A right-hand thread goes in clockwise: common practice, no source.
  test.each<[string, PartMoveSubject, string | null]>([
    ['an idle stop in', { part: 'idle-stop', move: inQuarter }, 'clockwise'],
    [
      'an idle stop out',
      { part: 'idle-stop', move: { ...inQuarter, direction: 'out' } },
      'counter-clockwise',
    ],
    [
      'a sensor as it says',
      { part: 'sensor-body', move: { direction: 'clockwise', amount: 1, unit: 'nudge' } },
      'clockwise',
    ],
    [
      'a left-hand thread, as content says',
      { part: 'idle-stop', move: inQuarter, turn: 'counter-clockwise' },
      'counter-clockwise',
    ],
    ['a sense that must not be said', { part: 'idle-stop', move: inQuarter, turn: null }, null],
    ['a collar that nobody knows', { part: 'preload-collar', move: inQuarter }, null],
    ['a cable', { part: 'cable', move: { direction: 'more', amount: 2, unit: 'mm' } }, null],
    ['a part only pointed out', { part: 'idle-stop' }, null],
  ])('%s', (_, subject, sense) => {
    expect(senseOf(subject)).toBe(sense);
    expect(Math.sign(arrowDegrees(subject))).toBe(sense === null ? 0 : sense === 'clockwise' ? 1 : -1);
  });

  test.each([
    [0.25, 90],
    [0.5, 180],
    [0.75, 270],
    [2, 330],
    [0.0625, 40],
  ])('%d of a turn reaches over %d degrees', (amount, degrees) => {
    expect(arrowDegrees({ part: 'idle-stop', move: { ...inQuarter, amount } })).toBe(degrees);
  });

  test('clockwise goes from twelve over three o’clock, on a picture whose heights grow downwards', () => {
    expect(onCircle(0, 0, 10, 0)).toEqual([0, -10]);
    expect(onCircle(0, 0, 10, 90)).toEqual([10, 0]);
    expect(onCircle(0, 0, 10, 180)).toEqual([0, 10]);
  });
});

describe('a sweep', () => {
  test('stands where a scale of the library would put its steps, and comes back to where it began', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 100 }), fc.integer({ min: 1, max: 100 }), (up, down) => {
        const placed = placeSweep({ up: Array(up).fill(1), down: Array(down).fill(1) });
        const [closed, open] = [placed.up[0]!.x, placed.up.at(-1)!.x];
        const opening = scaleLinear([0, up - 1], [closed, open]);
        const closing = scaleLinear([0, down], [open, closed]);
        for (const [index, { x }] of placed.up.entries()) expect(x).toBeCloseTo(opening(index), 6);
        for (const [index, { x }] of placed.down.entries()) expect(x).toBeCloseTo(closing(index + 1), 6);
        expect(placed.down.at(-1)!.x).toBeCloseTo(closed, 6);
      }),
    );
  });
});

describe('an approach', () => {
  test('stands in order, and evenly while all have room', () => {
    for (const count of [2, 3, 6]) {
      const places = placeReadings(count);
      const evenly = scalePoint(places.keys(), [places[0]!, places.at(-1)!]);
      for (const [index, x] of places.entries()) expect(x).toBeCloseTo(evenly(index)!, 6);
    }
    for (const count of [7, 30, 200]) {
      const places = placeReadings(count);
      expect(places).toHaveLength(count);
      expect(places).toEqual(places.toSorted((a, b) => a - b));
      // The latest five keep room for their figures.
      expect(places.at(-1)! - places.at(-2)!).toBeGreaterThan(100);
    }
  });

  test('a single reading stands in the middle, and none needs no place', () => {
    expect(placeReadings(1)).toHaveLength(1);
    expect(placeReadings(0)).toEqual([]);
  });
});

test('pins never touch, from one to sixteen, in one row or two', () => {
  for (const rows of [1, 2] as const) {
    for (let count = 1; count <= 8 * rows; count++) {
      const { places, pitch } = placePins(count, rows);
      const radius = Math.min(26, pitch * 0.4);
      for (const [index, a] of places.entries()) {
        for (const b of places.slice(index + 1)) {
          expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(2 * radius);
        }
      }
      // The first pin is the upper left one.
      expect(places[0]!.y).toBe(Math.min(...places.map(({ y }) => y)));
    }
  }
});
