// Which check is asked for: the commonest paths, tools, what was answered, look-alikes, and when a person is called.
import { describe, expect, it } from 'vitest';
import type { Observation, Seen, Tried } from '../../src/diagnosis/evidence.ts';
import { addWeights, likelihoods } from '../../src/diagnosis/likelihoods.ts';
import { type Advice, nextCheck, type Situation } from '../../src/diagnosis/next-check.ts';
import { plausible } from '../../src/diagnosis/plausible.ts';
import { posterior, priorsOf } from '../../src/diagnosis/posterior.ts';
import { tailOf, unexplained } from '../../src/diagnosis/unexplained.ts';
import { closed, value } from './at-closed-stop.ts';
import { shippedFaults as content } from './shipped-faults.ts';

const bands = {
  'ground-drop': { low: -0.02, high: 0.08 },
  'supply-voltage': { low: 4.8, high: 5.2 },
  'battery-voltage': { low: 12.2, high: 13.2 },
};
const usual: Situation = {
  done: ['battery-voltage', 'supply-voltage'],
  lacking: [],
  bands,
  supply: 5,
  settable: true,
};

const supply = (seen: Seen) =>
  closed(seen, {
    measure: 'supply-voltage',
    expected: bands['supply-voltage'],
    settable: false,
    supply: null,
  });
const backedOff = (before: number) => ({
  previous: { seen: value(before), after: 'back-off:idle-stop', expect: 'falls' as const },
});

function advise(readings: Observation[], situation = usual, tried: Tried[] = []): Advice {
  const weights = addWeights(...[...readings, ...tried].map((one) => likelihoods(content, one)));
  return nextCheck(content, posterior(content, priorsOf(content, 'odd-reading'), weights), situation);
}

describe('the first question to an odd reading', () => {
  it.each([
    ['0.00 where it has just read right', closed(value(0)), 'wake-again', 'unit-asleep'],
    ['a negative figure', closed(value(-0.62)), 'look-at-leads', 'leads-swapped'],
    ['the supply’s figure at the closed stop', closed(value(5.0)), 'look-at-leads', 'red-on-supply'],
    ['supply less signal', closed(value(4.38)), 'look-at-leads', 'red-on-supply-black-on-signal'],
    ['signal less supply', closed(value(-4.38)), 'look-at-leads', 'black-on-supply'],
    ['battery volts', closed(value(12.7, 0.01)), 'look-at-leads', 'battery-wire-probed'],
    ['an overload at the closed stop', closed({ kind: 'overload' }), 'look-at-meter', 'meter-range'],
    ['a blank meter', closed({ kind: 'none' }), 'look-at-meter', 'meter-auto-off'],
    [
      'a drift near nothing',
      closed({ kind: 'range', low: 0.001, high: 0.03, resolution: 0.001 }),
      'look-at-leads',
      'probe-not-touching',
    ],
    [
      'no move after the stop was backed off',
      closed(value(0.71), backedOff(0.71)),
      'back-off-again',
      'stop-not-backed-off',
    ],
  ] as [string, Observation, string, string][])('%s', (_, reading, check, cause) => {
    expect(plausible(reading)).toBe('implausible');
    expect(advise([reading])).toMatchObject({ kind: 'check', check, cause });
  });

  it('a low supply at the sensor asks for ground drop, and says how to get there and back', () => {
    expect(advise([supply(value(4.46))], { ...usual, settable: false, supply: null })).toMatchObject({
      check: 'measure-ground-drop',
      do: ['sleep', 'probe-ground', 'wake'],
      back: ['sleep', 'probe', 'wake'],
      ask: { kind: 'reading', measure: 'ground-drop' },
    });
  });
});

describe('a check', () => {
  it('is never asked for again once answered, nor where a tool is missing', () => {
    const wander = closed({ kind: 'range', low: 0.3, high: 0.62, resolution: 0.001 });
    const done = [...usual.done];
    for (let step = 0; step < 30; step += 1) {
      const advice = advise([wander], { ...usual, done });
      if (advice.kind === 'call') return;
      if (advice.ask.kind === 'choice') expect(done).not.toContain(advice.ask.question);
      if (advice.ask.kind === 'reading') expect(done).not.toContain(advice.ask.measure);
      expect(done.filter((one) => one === advice.check).length).toBeLessThan(2);
      done.push(advice.check, advice.ask.kind === 'choice' ? advice.ask.question : advice.check);
    }
    expect.unreachable('it never came to an end');
  });

  it('that needs a tool the owner lacks is left out', () => {
    const withTool = {
      ...content,
      checks: content.checks.map((check) =>
        check.id === 'look-at-meter' ? { ...check, tools: ['spare-fuse'] } : check,
      ),
    };
    const weights = likelihoods(withTool, closed({ kind: 'overload' }));
    const belief = posterior(withTool, priorsOf(withTool, 'odd-reading'), weights);
    expect(nextCheck(withTool, belief, usual)).toMatchObject({ check: 'look-at-meter' });
    expect(nextCheck(withTool, belief, { ...usual, lacking: ['spare-fuse'] })).not.toMatchObject({
      check: 'look-at-meter',
    });
  });

  it('for the desk is never given to an owner', () => {
    const desk = content.checks.filter((check) => check.for === 'desk').map((check) => check.id);
    for (const volts of [-5, 0, 0.3, 0.62, 1.5, 5, 12]) {
      const advice = advise([closed(value(volts))]);
      if (advice.kind === 'check') expect(desk).not.toContain(advice.check);
    }
  });
});

describe('a person is called', () => {
  const tried = (check: string): Tried => ({ kind: 'tried', check, result: 'as-before' });
  const sweepBroken: Observation = closed(
    { kind: 'series', values: [0.71, 1.5, 0.3, 2.9, 4.3, 3, 2, 1.2, 0.71], resolution: 0.01 },
    { measure: 'signal-sweep', situation: 'sweep', expected: { low: 0.71, high: 4.3 }, settable: false },
  );

  it('for a worn track, at once or after one look', () => {
    const advice = advise([sweepBroken, sweepBroken], {
      ...usual,
      done: [...usual.done, 'read-again', 'back-off-again'],
      settable: false,
    });
    expect(advice).toMatchObject({ kind: 'call', cause: 'worn-track-elsewhere' });
  });

  const dead = [
    supply(value(0)),
    closed(value(0), { measure: 'ground-drop', expected: bands['ground-drop'], settable: false }),
  ];
  const checks = ['wake-again', 'look-at-leads', 'look-at-meter', 'read-again'];

  it('not before it was asked whether anything comes alive: a supply wire that is open lets the rest wake', () => {
    const done = [...usual.done, ...checks, ...checks, 'ground-drop'];
    const advice = advise(dead, { ...usual, settable: false, done }, [...checks, ...checks].map(tried));
    expect(advice).toMatchObject({ kind: 'check', ask: { kind: 'choice', question: 'wake-signs' } });
  });

  it('with the look-alikes named, where no reading tells them apart', () => {
    const questions = ['wake-signs', 'supply-unplugged', 'lever-rest', 'wiggle'];
    const done = [...usual.done, ...checks, ...checks, 'ground-drop', ...questions];
    const advice = advise(dead, { ...usual, settable: false, done }, [...checks, ...checks].map(tried));
    expect(advice).toMatchObject({ kind: 'call', reason: 'look-alike' });
    if (advice.kind === 'call')
      expect(advice.causes).toEqual(expect.arrayContaining(['no-power', 'open-supply']));
  });

  it('when nothing that is known explains the readings', () => {
    const mad = [
      closed(value(-9.1)),
      closed(value(7.7), { measure: 'supply-voltage', expected: bands['supply-voltage'] }),
      closed(value(3.3, 0.01), { measure: 'ground-drop', expected: bands['ground-drop'] }),
    ];
    const weights = addWeights(...mad.map((one) => likelihoods(content, one)));
    const belief = posterior(content, priorsOf(content, 'odd-reading'), weights);
    expect(unexplained(belief, mad)).toBe(true);
    const done = [...usual.done, 'ground-drop'];
    let advice = nextCheck(content, belief, { ...usual, done });
    for (let step = 0; step < 20 && advice.kind === 'check'; step += 1) {
      done.push(advice.check, advice.check);
      advice = nextCheck(content, belief, { ...usual, done });
    }
    expect(advice).toMatchObject({ kind: 'call', reason: 'unknown-cause' });
  });

  it.each([
    ['healthy', [closed(value(0.62))]],
    ['asleep', [closed(value(0)), supply(value(0))]],
    ['swapped', [closed(value(-0.62)), supply(value(-5))]],
    ['broken sweep', [sweepBroken]],
  ] as [string, Observation[]][])('but not while a known cause explains them: %s', (_, readings) => {
    const weights = addWeights(...readings.map((one) => likelihoods(content, one)));
    const belief = posterior(content, priorsOf(content, 'odd-reading'), weights);
    expect(unexplained(belief, readings)).toBe(false);
  });

  it('a reading’s tail is a chance', () => {
    const belief = posterior(content, priorsOf(content, 'odd-reading'), {});
    for (const { hypothesis } of belief.hypotheses) {
      for (const seen of [value(0), value(0.62), value(5), { kind: 'overload' } as Seen, sweepBroken.seen]) {
        const tail = tailOf(hypothesis, { ...sweepBroken, seen });
        expect(tail).toBeGreaterThanOrEqual(0);
        expect(tail).toBeLessThanOrEqual(1 + 1e-9);
      }
    }
  });
});

describe('a single reading', () => {
  const band = { low: 0.61, high: 0.63 };
  it.each([
    ['in the band', closed(value(0.62)), 'plausible'],
    ['only not set yet', closed(value(0.44)), 'plausible'],
    ['further off than a machine is set', closed(value(1.1)), 'implausible'],
    ['nothing', closed(value(0)), 'implausible'],
    ['negative', closed(value(-0.62)), 'implausible'],
    ['the supply', closed(value(5)), 'implausible'],
    ['more than any sensor gets', closed(value(5.6)), 'implausible'],
    ['wandering', closed({ kind: 'range', low: 0.4, high: 0.62, resolution: 0.001 }), 'implausible'],
    [
      'flickering in the last digits',
      closed({ kind: 'range', low: 0.618, high: 0.622, resolution: 0.001 }),
      'plausible',
    ],
    [
      'just as far to and fro as one reading may move',
      closed({ kind: 'range', low: 0.61, high: 0.63, resolution: 0.001 }),
      'plausible',
    ],
    ['an overload', closed({ kind: 'overload' }), 'implausible'],
    ['blank', closed({ kind: 'none' }), 'implausible'],
    [
      'still where it stood before the stop was backed off',
      closed(value(0.71), backedOff(0.711)),
      'implausible',
    ],
    ['lower once the stop was backed off', closed(value(0.62), backedOff(0.71)), 'plausible'],
    ['higher once the stop was backed off', closed(value(0.8), backedOff(0.71)), 'implausible'],
    [
      'out of a band that nothing is set for',
      closed(value(0.65), { settable: false, expected: band }),
      'implausible',
    ],
    ['of a measure nobody has a band for', closed(value(3), { expected: null }), 'plausible'],
    [
      'a rising sweep',
      closed({ kind: 'series', values: [0.7, 2, 4.3, 2, 0.7], resolution: 0.01 }),
      'plausible',
    ],
    [
      'a falling sweep',
      closed({ kind: 'series', values: [4.3, 2, 0.7, 2, 4.3], resolution: 0.01 }),
      'implausible',
    ],
    [
      'a sweep over the range’s end near wide open',
      closed({ kind: 'series', values: [0.7, 1.4, null, 1.5, 0.7], resolution: 0.001 }),
      'plausible',
    ],
    [
      'a sweep with a hole',
      closed({ kind: 'series', values: [0.7, 0.02, 4.3, 2, 0.7], resolution: 0.01 }),
      'implausible',
    ],
  ] as [string, Observation, string][])('%s: %s', (_, reading, expected) => {
    expect(plausible(reading)).toBe(expected);
  });
});
