// What evidence does to the weights: order, absence, noise, repeats, what passes and what lasts.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Evidence, Seen, Weights } from '../../src/diagnosis/evidence.ts';
import { hypothesesOf } from '../../src/diagnosis/hypothesis.ts';
import { addWeights, lastingWeights, likelihoods, weightsOfPast } from '../../src/diagnosis/likelihoods.ts';
import { posterior, priorsFromCases, priorsOf } from '../../src/diagnosis/posterior.ts';
import { closed, value } from './at-closed-stop.ts';
import { shippedFaults as content } from './shipped-faults.ts';

const odd = priorsOf(content, 'odd-reading');
const chance = (weights: Weights, id: string) =>
  posterior(content, odd, weights).causes.find((cause) => cause.id === id)?.probability ?? 0;

const seen: fc.Arbitrary<Seen> = fc.oneof(
  fc.double({ min: -6, max: 15, noNaN: true }).map((volts) => value(volts)),
  fc.constantFrom<Seen>({ kind: 'overload' }, { kind: 'none' }),
  fc
    .tuple(fc.double({ min: 0, max: 5, noNaN: true }), fc.double({ min: 0, max: 2, noNaN: true }))
    .map(([low, width]): Seen => ({ kind: 'range', low, high: low + width, resolution: 0.001 })),
  fc
    .array(fc.option(fc.double({ min: 0, max: 5, noNaN: true })), { minLength: 2, maxLength: 9 })
    .map((values): Seen => ({ kind: 'series', values, resolution: 0.01 })),
);
const evidence: fc.Arbitrary<Evidence> = fc.oneof(
  fc
    .tuple(seen, fc.constantFrom('signal-closed-stop', 'supply-voltage', 'ground-drop', 'idle-speed'))
    .map(([what, measure]) => closed(what, { measure })),
  fc.constantFrom<Evidence>(
    { kind: 'answer', question: 'wiggle', answer: 'jumps' },
    { kind: 'answer', question: 'bore', answer: 'dirty' },
    { kind: 'tried', check: 'look-at-leads', result: 'as-before' },
    { kind: 'tried', check: 'wake-again', result: 'changed' },
  ),
);

describe('evidence', () => {
  it('counts the same in any order, to the last digit', () => {
    fc.assert(
      fc.property(fc.array(evidence, { minLength: 2, maxLength: 12 }), (all) => {
        const forwards = addWeights(...all.map((one) => likelihoods(content, one)));
        const backwards = addWeights(...[...all].reverse().map((one) => likelihoods(content, one)));
        for (const id of new Set([...Object.keys(forwards), ...Object.keys(backwards)])) {
          expect(forwards[id] ?? 0).toBe(backwards[id] ?? 0);
        }
      }),
    );
  });

  it('never rules a cause out for good, and chances stay chances', () => {
    fc.assert(
      fc.property(fc.array(evidence, { maxLength: 20 }), (all) => {
        const weights = addWeights(...all.map((one) => likelihoods(content, one)));
        for (const weight of Object.values(weights)) expect(Number.isInteger(weight)).toBe(true);
        const { hypotheses } = posterior(content, odd, weights);
        const sum = hypotheses.reduce((total, one) => total + one.probability, 0);
        expect(sum).toBeCloseTo(1, 9);
      }),
    );
  });

  it('says nothing where nothing is known: no band, another question, a check of old, "don’t know"', () => {
    expect(likelihoods(content, closed(value(0), { expected: null }))).toEqual({});
    expect(likelihoods(content, closed(value(0), { expected: { low: null, high: null } }))).toEqual({});
    expect(likelihoods(content, { kind: 'answer', question: 'gone', answer: 'yes' })).toEqual({});
    expect(likelihoods(content, { kind: 'answer', question: 'wiggle', answer: 'dont-know' })).toEqual({});
    expect(likelihoods(content, { kind: 'tried', check: 'gone', result: 'right' })).toEqual({});
  });

  it('of no kind gives back the priors', () => {
    expect(chance({}, 'unit-asleep')).toBeGreaterThan(0.1);
    expect(posterior(content, priorsOf(content, 'complaint'), {}).causes[0]?.id).toBe('sensor-mis-set');
  });

  it('given wrongly once does not drown what the readings say', () => {
    const jumping = likelihoods(content, closed({ kind: 'range', low: 0.3, high: 0.6, resolution: 0.001 }));
    const denied = likelihoods(content, { kind: 'answer', question: 'wiggle', answer: 'steady' });
    const before = chance(jumping, 'corroded-plug');
    const after = chance(addWeights(jumping, denied), 'corroded-plug');
    expect(after).toBeLessThan(before);
    expect(after).toBeGreaterThan(before / 4);
  });

  it('a check that did nothing speaks against what it would have mended, though not for good', () => {
    const five = likelihoods(content, closed(value(5)));
    const looked = likelihoods(content, { kind: 'tried', check: 'look-at-leads', result: 'as-before' });
    expect(chance(five, 'red-on-supply')).toBeGreaterThan(0.6);
    expect(chance(addWeights(five, looked), 'red-on-supply')).toBeLessThan(0.5);
    expect(chance(addWeights(five, looked), 'red-on-supply')).toBeGreaterThan(0.05);
  });

  it('the same reading sent again only says that it stood still', () => {
    const again = closed(value(0.3), { previous: { seen: value(0.3), after: null, expect: 'same' } });
    const weights = likelihoods(content, again);
    expect(Math.abs(weights['tight-cable'] ?? 0)).toBeLessThan(300);
    expect(weights['worn-track-near-idle'] ?? 0).toBeLessThan(-300);
  });

  it('a reading in order speaks later against what lasts, and not against what comes and goes', () => {
    const supply = closed(value(5), {
      measure: 'supply-voltage',
      expected: { low: 4.8, high: 5.2 },
      settable: false,
    });
    const weights = lastingWeights(content, likelihoods(content, supply));
    expect(weights['open-supply']).toBeLessThan(-3000);
    expect(weights['unit-asleep'] ?? 0).toBe(0);
    expect(weights['leads-swapped'] ?? 0).toBe(0);
    // Of a pair, what lasts in it.
    expect(weights['leads-swapped+meter-range'] ?? 0).toBe(0);
  });

  it('a reading taken twice is no slip of the pen: what does not explain it falls far behind', () => {
    const far = closed(value(0.78), { settable: false });
    const once = likelihoods(content, far);
    const twice = likelihoods(content, { ...far, sure: true });
    const lead = (weights: Weights) => (weights['fast-idle-on'] ?? 0) - (weights['valve-clearance'] ?? 0);
    expect(lead(twice)).toBeGreaterThan(lead(once) + 2000);
  });

  it('where only the move counts, it does not matter where the reading stands', () => {
    const snapped = (from: number, to: number) =>
      likelihoods(
        content,
        closed(value(to), { previous: { seen: value(from), after: 'snap', expect: 'same', alone: true } }),
      );
    expect(snapped(0.62, 0.65)['shaft-play']).toBe(snapped(0.72, 0.75)['shaft-play']);
    expect(snapped(0.62, 0.65)['shaft-play']).toBeGreaterThan(2000);
    expect(snapped(0.62, 0.62)['shaft-play']).toBeLessThan(-1000);
  });

  it('what was seen to by the way is likely gone, and nothing else is touched', () => {
    const weights = likelihoods(content, { kind: 'seen-to', check: 'look-at-cable' });
    expect(weights['tight-cable']).toBeLessThan(-1500);
    expect(weights['carbon-in-bore'] ?? 0).toBe(0);
    expect(weights['nothing-wrong'] ?? 0).toBe(0);
    // Leads are moved again: that they were looked at once says nothing of later.
    expect(likelihoods(content, { kind: 'seen-to', check: 'look-at-leads' })).toEqual({});
    expect(likelihoods(content, { kind: 'seen-to', check: 'gone' })).toEqual({});
  });

  it('an odd reading that is gone accuses what flickers, the more the oftener, and not what would still show', () => {
    const jumping = closed({ kind: 'range', low: 0.3, high: 0.6, resolution: 0.001 });
    const past = weightsOfPast(content, likelihoods(content, jumping));
    expect(past['corroded-plug']).toBeGreaterThan(0);
    expect(past['corroded-plug']).toBeLessThan(likelihoods(content, jumping)['corroded-plug'] ?? 0);
    const minus = weightsOfPast(content, likelihoods(content, closed(value(-0.6))));
    expect(minus['sensor-reversed'] ?? 0).toBe(0);
    // Swapped leads explain it better than a plug.
    expect(minus['corroded-plug'] ?? 0).toBeLessThanOrEqual(0);
    expect(weightsOfPast(content, {})).toEqual({});
  });

  it('two causes at once are laid over each other: swapped leads on a meter of 2 V range', () => {
    // A signal of 2.5 V reads minus 2.5 V with leads swapped, which the 2 V range still shows as over.
    const pair = hypothesesOf(content).find((one) => one.id === 'red-on-supply+meter-range');
    const weights = likelihoods(content, closed({ kind: 'overload' }));
    expect(pair?.causes.map((cause) => cause.id)).toEqual(['red-on-supply', 'meter-range']);
    expect(weights['red-on-supply+meter-range']).toBeGreaterThan((weights['red-on-supply'] ?? 0) + 2000);
    expect(weights['red-on-supply+meter-range']).toBeGreaterThan(weights['meter-range'] ?? 0);
  });
});

describe('priors', () => {
  it('add up to one, for complaints and for odd readings', () => {
    for (const set of ['complaint', 'odd-reading'] as const) {
      const sum = Object.values(priorsOf(content, set)).reduce((total, one) => total + one, 0);
      expect(sum).toBeCloseTo(1, 12);
    }
  });

  it('move with the workshop’s closed cases as a Dirichlet’s mean does: (worth·share + n)/(worth + all)', () => {
    const before = odd['tight-cable'] ?? 0;
    const after = priorsFromCases(content, 'odd-reading', { 'tight-cable': 30, 'unit-asleep': 20 });
    expect(after['tight-cable']).toBeCloseTo((200 * before + 30) / 250, 12);
    expect(after['leads-swapped']).toBeCloseTo((200 * (odd['leads-swapped'] ?? 0)) / 250, 12);
  });
});
