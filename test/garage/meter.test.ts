// The simulated meter against makers' worked examples of accuracy, counts and overload.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Display,
  drawMeter,
  finestTop,
  look,
  type Meter,
  putRight,
  resolutionOf,
  statedError,
} from './meter.ts';
import { createRandom } from './random.ts';

function meterWith(change: Partial<Meter>): Meter {
  return { ...drawMeter(createRandom('m')), gain: 0, offset: 0, flicker: 0, weakBattery: 1, ...change };
}

function shown(meter: Meter, volts: number): Display {
  return look(meter, { low: volts, high: volts }, createRandom('look'));
}

// Domain facts, section 2: worked examples 1 to 4 of meter makers and shops, as published.
test.each([
  [2.0, 0.005, 3, 2000, 2, 0.013],
  [100.0, 0.01, 2, 2000, 200, 1.2],
  [1.755, 0.005, 1, 2000, 2, 0.0098],
  [120.0, 0.01, 3, 6000, 600, 1.5],
] as const)(
  '%f V at ±(%f + %i digits) on %i counts may be off by %s',
  (volts, share, digits, counts, top, error) => {
    const meter = meterWith({ counts, autoRange: false, top, share, digits });
    expect(statedError(meter, volts)).toBeCloseTo(error, 4);
  },
);

test('2000 counts end at 1.999 V with three decimals, and the next range shows two', () => {
  const meter = meterWith({ counts: 2000, autoRange: true });
  expect(shown(meter, 1.999)).toEqual({ kind: 'number', value: expect.closeTo(1.999, 6), decimals: 3 });
  expect(resolutionOf(meter, 2.0)).toBe(0.01);
  expect(finestTop(meter, 4.3)).toBe(20);
});

test.each([
  [4000, 3.9, 4],
  [4000, 4.3, 40],
  [6000, 4.3, 6],
  [6000, 12.6, 60],
] as const)('%i counts show %f V on their %i V range', (counts, volts, top) => {
  expect(finestTop(meterWith({ counts, autoRange: true }), volts)).toBe(top);
});

test('a manual 2 V range overloads at wide open; the 20 V range shows it with two decimals', () => {
  const meter = meterWith({ counts: 2000, autoRange: false, top: 2 });
  expect(shown(meter, 4.3)).toEqual({ kind: 'overload' });
  meter.top = 20;
  expect(shown(meter, 4.304)).toEqual({ kind: 'number', value: expect.closeTo(4.3, 9), decimals: 2 });
});

test('whatever it draws, a meter in order never leaves its stated class', () => {
  fc.assert(
    fc.property(fc.string(), fc.double({ min: -15, max: 15, noNaN: true }), (seed, volts) => {
      const random = createRandom(seed);
      const meter = drawMeter(random);
      meter.top = finestTop(meter, volts);
      const display = look(meter, { low: volts, high: volts }, random);
      // A value at the very end of a range may be pushed over it.
      if (display.kind !== 'number') return display.kind === 'overload';
      const coarser = 10 ** -display.decimals;
      const allowed = meter.share * Math.abs(volts) + meter.digits * coarser + 1e-9;
      return Math.abs(display.value - volts) <= Math.max(allowed, statedError(meter, volts) + 1e-9);
    }),
    { numRuns: 2000 },
  );
});

describe('a meter that is used wrongly', () => {
  test('held, it shows the same whatever comes', () => {
    const meter = meterWith({ counts: 6000, autoRange: true, hold: { on: true, frozen: null } });
    expect(shown(meter, 0.62)).toEqual(shown(meter, 4.3));
  });

  test('with REL it shows the difference, with MIN-MAX the highest so far', () => {
    const relative = shown(meterWith({ counts: 6000, autoRange: true, relative: 0.3 }), 0.62);
    expect(relative).toMatchObject({ value: expect.closeTo(0.32, 6) });
    const highest = meterWith({ counts: 6000, autoRange: true, highest: { seen: 0 } });
    shown(highest, 5);
    expect(shown(highest, 0.62)).toMatchObject({ value: expect.closeTo(5, 6) });
  });

  test('with the red lead in the current jack it shows nothing, asleep it is blank', () => {
    expect(shown(meterWith({ currentJack: true }), 5)).toMatchObject({ value: 0 });
    expect(shown(meterWith({ asleep: true }), 5)).toEqual({ kind: 'blank' });
  });

  test('a look at dial, buttons and jacks puts all of it right', () => {
    const meter = meterWith({
      counts: 2000,
      autoRange: false,
      top: 0.2,
      mode: 'ac',
      currentJack: true,
      relative: 1,
      weakBattery: 1.2,
      asleep: true,
      hold: { on: true, frozen: { kind: 'overload' } },
    });
    putRight(meter, 0.62);
    expect(shown(meter, 0.62)).toMatchObject({ kind: 'number', value: expect.closeTo(0.62, 6), decimals: 3 });
  });
});
