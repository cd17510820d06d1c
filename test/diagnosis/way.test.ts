// What each kind of predictor makes of a healthy signal and a supply, and two of them one after the other.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { healthyWay, layOver, type Way, waysOf } from '../../src/diagnosis/way.ts';
import { faultFileSchema, type Predictor } from '../../src/procedure/fault.ts';

/** As content writes it, with what content may leave out. */
function predictor(written: object): Predictor {
  const fault = { id: 'a', row: null, layer: 'meter', prior: { complaint: 1, 'odd-reading': 1 } };
  const file = faultFileSchema.parse({ faults: [{ ...fault, shows: [{ on: ['x'], as: [written] }] }] });
  return file.faults[0]!.shows[0]!.as[0]!;
}
const ways = (written: object, supplyMeasured = false) => waysOf(predictor(written), supplyMeasured);
const figure = (way: Way, signal: number, supply: number) =>
  way.signal * signal + way.supply * supply + way.offset;

// A signal of 0.50 V closed and 4.50 V open at a supply of 5.00 V. Leads laid the other way round give the difference the
// other way round (Kirchhoff's second law); the rest is what the predictor's own words say.
describe('where the reading lies, closed and open, and whether it follows the throttle', () => {
  test.each<[object, number, number, number]>([
    [{ kind: 'same' }, 0.5, 4.5, 1],
    [{ kind: 'right' }, 0.5, 4.5, 1],
    [{ kind: 'mis-set', give: 0.1 }, 0.5, 4.5, 1],
    [{ kind: 'shifted', by: 0.2 }, 0.7, 4.7, 1],
    [{ kind: 'scaled', by: 0.9 }, 0.45, 4.05, 1],
    [{ kind: 'scaled', by: -0.5 }, -0.25, -2.25, -1],
    [{ kind: 'follows-supply', by: 0.9 }, 0.45, 4.05, 1],
    [{ kind: 'negated' }, -0.5, -4.5, -1],
    [{ kind: 'constant', at: 0.02 }, 0.02, 0.02, 0],
    [{ kind: 'supply' }, 5, 5, 0],
    [{ kind: 'negative-supply' }, -5, -5, 0],
    [{ kind: 'supply-minus' }, 4.5, 0.5, -1],
    [{ kind: 'less-supply' }, -4.5, -0.5, 1],
    [{ kind: 'wandering', width: 0.3 }, 0.5, 4.5, 1],
    [{ kind: 'wandering', width: 0.3, at: 0.1 }, 0.1, 0.1, 0],
    [{ kind: 'drop-out' }, 0, 0, 0],
    [{ kind: 'drop-out', to: 0.04 }, 0.04, 0.04, 0],
    [{ kind: 'over-range', above: 2 }, 0.5, 4.5, 1],
    [{ kind: 'coarse', digit: 0.1 }, 0.5, 4.5, 1],
    [{ kind: 'bar-angle', by: 0.1 }, 0.55, 4.55, 1],
    [{ kind: 'frozen', give: 0.1 }, 0.5, 4.5, 0],
  ])('%j: %d V, %d V, %d', (written, closed, open, follows) => {
    for (const way of ways(written)) {
      expect(figure(way, 0.5, 5)).toBeCloseTo(closed, 12);
      expect(figure(way, 4.5, 5)).toBeCloseTo(open, 12);
      expect(way.follows).toBe(follows);
      expect(way.form).toBe('number');
    }
  });

  test('scaled as the supply is: once that was measured, nothing is left to see', () => {
    const [way] = ways({ kind: 'follows-supply', by: 0.9, give: 0.1, spread: 0.1 }, true);
    expect(way).toEqual(healthyWay[0]);
  });

  test('anything between two figures', () => {
    const [way] = ways({ kind: 'anything', from: 1, to: 4 });
    expect([figure(way!, 0.5, 5), way!.give, way!.follows]).toEqual([2.5, 1.5, 1]);
  });
});

test.each<[object, Partial<Way>]>([
  [
    { kind: 'same', spread: 0.1 },
    { spread: 0.1, right: false },
  ],
  [
    { kind: 'right', spread: 0.1 },
    { spread: 0.1, right: true },
  ],
  [
    { kind: 'mis-set', give: 0.1 },
    { give: 0.1, right: true },
  ],
  [
    { kind: 'shifted', by: 0.2, give: 0.1, spread: 0.3 },
    { give: 0.1, spread: 0.3, giveOfSignal: 0 },
  ],
  // Of what grows with the signal, the give grows with it.
  [
    { kind: 'scaled', by: 0.9, give: 0.1, spread: 0.3 },
    { giveOfSignal: 0.1, spread: 0.3, give: 0 },
  ],
  [
    { kind: 'follows-supply', by: 0.9, give: 0.1, spread: 0.3 },
    { giveOfSignal: 0.1, spread: 0.3, give: 0 },
  ],
  [
    { kind: 'constant', at: 1, give: 0.1, spread: 0.3 },
    { give: 0.1, spread: 0.3, broken: false },
  ],
  [{ kind: 'negated', spread: 0.3 }, { spread: 0.3 }],
  [{ kind: 'supply', spread: 0.3 }, { spread: 0.3 }],
  [{ kind: 'negative-supply', spread: 0.3 }, { spread: 0.3 }],
  [{ kind: 'supply-minus', spread: 0.3 }, { spread: 0.3 }],
  [{ kind: 'less-supply', spread: 0.3 }, { spread: 0.3 }],
  [
    { kind: 'wandering', width: 0.3 },
    { wander: 0.3, broken: false },
  ],
  [
    { kind: 'wandering', width: 0.3, at: 1 },
    { wander: 0.3, broken: false },
  ],
  [
    { kind: 'drop-out', spread: 0.3 },
    { broken: true, spread: 0.3 },
  ],
  [{ kind: 'over-range', above: 2 }, { above: 2 }],
  [{ kind: 'coarse', digit: 0.1 }, { digit: 0.1 }],
  [{ kind: 'frozen', give: 0.1 }, { give: 0.1 }],
  [{ kind: 'overload' }, { form: 'overload', follows: 0 }],
  [{ kind: 'blank' }, { form: 'blank', follows: 0 }],
])('%j is %j', (written, expected) => {
  expect(ways(written)).toMatchObject([expected]);
  expect(ways({ ...written, share: 0.25 })).toMatchObject([{ ...expected, share: 0.25 }]);
});

test('raised by up to a tenth of a volt as the bars stand: mostly somewhere up to that, seldom on the move', () => {
  const [still, moving] = ways({ kind: 'bar-angle', by: 0.1, share: 0.5 });
  expect(still!.share + moving!.share).toBeCloseTo(0.5, 12);
  expect(still!.share).toBeGreaterThan(moving!.share);
  expect([still!.offset - still!.give, still!.offset + still!.give]).toEqual([0, 0.1]);
  expect([still!.wander, moving!.wander]).toEqual([0, 0.1]);
});

const number = fc.double({ min: -3, max: 3, noNaN: true });
const size = fc.double({ min: 0, max: 1, noNaN: true });
const someWay: fc.Arbitrary<Way> = fc.record({
  share: size,
  form: fc.constant('number' as const),
  signal: number,
  supply: number,
  offset: number,
  give: size,
  giveOfSignal: size,
  spread: size,
  follows: fc.constantFrom(-1, 0, 1),
  wander: size,
  broken: fc.boolean(),
  above: fc.constantFrom(2, 20, Number.POSITIVE_INFINITY),
  digit: fc.constantFrom(0, 0.01, 0.1),
  right: fc.boolean(),
});

describe('two faults at once', () => {
  test('the second acts on what the first one left', () => {
    fc.assert(
      fc.property(someWay, someWay, number, number, (first, second, signal, supply) => {
        const [both] = layOver([first], [second]);
        expect(figure(both!, signal, supply)).toBeCloseTo(
          figure(second, figure(first, signal, supply), supply),
          9,
        );
        expect(both!.share).toBeCloseTo(first.share * second.share, 12);
        expect(both!.follows).toBeCloseTo(first.follows * second.follows, 12);
        // Half-widths are stretched and add; standard deviations are stretched and add by their squares (GUM 5.1.2).
        const stretch = Math.abs(second.signal);
        expect(both!.give).toBeCloseTo(stretch * first.give + second.give, 12);
        expect(both!.spread ** 2).toBeCloseTo((stretch * first.spread) ** 2 + second.spread ** 2, 12);
        expect(both!.wander).toBeCloseTo(stretch * first.wander + second.wander, 12);
        expect(both!.giveOfSignal).toBeCloseTo(
          stretch * first.giveOfSignal + second.giveOfSignal * Math.abs(first.signal),
          12,
        );
        expect(both!.broken).toBe(first.broken || second.broken);
        expect(both!.right).toBe(first.right && second.right);
        expect(both!.above).toBe(Math.min(first.above, second.above));
        expect(both!.digit).toBe(Math.max(first.digit, second.digit));
      }),
    );
  });

  test('what shows no figure hides the other, whichever acts first', () => {
    const number = ways({ kind: 'constant', at: 1, share: 0.5 });
    for (const kind of ['overload', 'blank']) {
      const none = ways({ kind, share: 0.4 });
      expect(layOver(number, none)).toMatchObject([{ form: kind, share: 0.2 }]);
      expect(layOver(none, number)).toMatchObject([{ form: kind, share: 0.2 }]);
    }
  });

  test('every way of the one meets every way of the other', () => {
    const first = [...ways({ kind: 'same', share: 0.6 }), ...ways({ kind: 'blank', share: 0.4 })];
    const second = [...ways({ kind: 'negated', share: 0.7 }), ...ways({ kind: 'same', share: 0.3 })];
    const shares = layOver(first, second).map(({ share }) => share);
    expect(shares).toHaveLength(4);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });
});
