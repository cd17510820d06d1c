// Holds the posterior against published results of Bayes' rule; each network is put as fault content, one fault for each joint state.
import { inferences } from 'bayesjs';
import { describe, expect, it } from 'vitest';
import { addWeights, likelihoods } from '../../src/diagnosis/likelihoods.ts';
import { normalise, posterior, priorsOf } from '../../src/diagnosis/posterior.ts';
import { type FaultContent, faultFileSchema } from '../../src/procedure/fault.ts';

/** The library's name for a row's result; as a plain key it would make the row look like a promise. */
const thenKey = 'then';

type Shares = Record<string, Record<string, number>>;

/** A world of joint states: each with its probability and, for each question, the chance of "yes". */
function world(states: { id: string; p: number; yes: Record<string, number> }[]): FaultContent {
  const questions = Object.keys(states[0]?.yes ?? {});
  return faultFileSchema.parse({
    faults: states.map(({ id, p, yes }) => ({
      id,
      row: null,
      layer: 'owner',
      prior: { complaint: 1000 * p, 'odd-reading': 1000 * p },
      answers: Object.fromEntries(
        questions.map((question) => [question, { yes: yes[question], no: 1 - (yes[question] ?? 0) }]),
      ) as Shares,
    })),
    // Owners never slip here: the published tables have no such noise.
    questions: questions.map((id) => ({ id, usual: { yes: 0.5, no: 0.5 }, slips: 0 })),
  });
}

/** The chance that a state has the property, given what was answered. */
function chance(
  content: FaultContent,
  given: Record<string, 'yes' | 'no'>,
  has: (id: string) => boolean,
): number {
  const weights = Object.entries(given).map(([question, answer]) =>
    likelihoods(content, { kind: 'answer', question, answer }),
  );
  const belief = posterior(content, priorsOf(content, 'complaint'), addWeights(...weights));
  return belief.causes.filter((cause) => has(cause.id)).reduce((sum, cause) => sum + cause.probability, 0);
}

const bits = (count: number) =>
  Array.from({ length: 2 ** count }, (_, n) => n.toString(2).padStart(count, '0'));
const on = (p: number, yes: boolean) => (yes ? p : 1 - p);

describe('the medical test', () => {
  const cases = [
    // Eddy's mammogram problem: 7.8 % (inputs seen, result from memory).
    { prior: 0.01, hit: 0.8, falseAlarm: 0.096, expected: 0.0776397516 },
    // Rice's textbook: 0.075 (math.stackexchange 4260398).
    { prior: 0.01, hit: 0.8, falseAlarm: 0.1, expected: 0.0747663551 },
    // Screening of 50 to 59: 0.29301854 (homeworksource 1082685, with 0.97620 for the healthy).
    { prior: 0.0238, hit: 0.85, falseAlarm: 0.05, expected: 0.29301854 },
  ];
  it.each(cases)('of those tested positive $expected are ill', ({ prior, hit, falseAlarm, expected }) => {
    const content = world([
      { id: 'ill', p: prior, yes: { test: hit } },
      { id: 'well', p: 1 - prior, yes: { test: falseAlarm } },
    ]);
    // Weights are kept in thousandths of a nat: three decimals.
    expect(chance(content, { test: 'yes' }, (id) => id === 'ill')).toBeCloseTo(expected, 3);
    const exact = normalise([Math.log(prior * hit), Math.log((1 - prior) * falseAlarm)])[0];
    expect(exact).toBeCloseTo(expected, 7);
  });
});

describe('the burglar alarm (tables: archive.org wikispaces copy; results: aimacode tests)', () => {
  const rings: Record<string, number> = { '11': 0.95, '10': 0.94, '01': 0.29, '00': 0.001 };
  const content = world(
    bits(3).map((id) => {
      const [burglar, quake, alarm] = [...id].map((bit) => bit === '1');
      const ring = rings[id.slice(0, 2)] ?? 0;
      return {
        id: `s${id}`,
        p: on(0.001, burglar === true) * on(0.002, quake === true) * on(ring, alarm === true),
        yes: { john: alarm ? 0.9 : 0.05, mary: alarm ? 0.7 : 0.01 },
      };
    }),
  );
  it('both neighbours call: a burglar at 0.284, an earthquake at 0.176', () => {
    const both = { john: 'yes', mary: 'yes' } as const;
    expect(chance(content, both, (id) => id[1] === '1')).toBeCloseTo(0.2841718, 3);
    expect(chance(content, both, (id) => id[2] === '1')).toBeCloseTo(0.1760668, 3);
  });
  it('agrees with a reference library by enumeration, whoever calls', () => {
    const cpt = (p: number) => ({ T: p, F: 1 - p });
    const node = (id: string, parents: string[], table: unknown) => ({
      id,
      states: ['T', 'F'],
      parents,
      cpt: table,
    });
    const network = {
      B: node('B', [], cpt(0.001)),
      E: node('E', [], cpt(0.002)),
      A: node(
        'A',
        ['B', 'E'],
        Object.entries(rings).map(([key, p]) => ({
          when: { B: key[0] === '1' ? 'T' : 'F', E: key[1] === '1' ? 'T' : 'F' },
          [thenKey]: cpt(p),
        })),
      ),
      J: node(
        'J',
        ['A'],
        [0.9, 0.05].map((p, i) => ({ when: { A: i === 0 ? 'T' : 'F' }, [thenKey]: cpt(p) })),
      ),
      M: node(
        'M',
        ['A'],
        [0.7, 0.01].map((p, i) => ({ when: { A: i === 0 ? 'T' : 'F' }, [thenKey]: cpt(p) })),
      ),
    };
    for (const john of ['yes', 'no'] as const) {
      for (const mary of ['yes', 'no'] as const) {
        const given = { J: john === 'yes' ? 'T' : 'F', M: mary === 'yes' ? 'T' : 'F' };
        // Enumeration: the library's default gives a wrong answer for two queried nodes.
        const expected = inferences.enumeration.infer(network as never, { B: 'T' }, given);
        expect(chance(content, { john, mary }, (id) => id[1] === '1')).toBeCloseTo(expected, 3);
      }
    }
  });
});

describe('the sprinkler (tables: github sullivankyle06/inference-and-causality-week1)', () => {
  const wet: Record<string, number> = { '11': 0.99, '10': 0.9, '01': 0.8, '00': 0 };
  const content = world(
    bits(2).map((id) => {
      const [sprinkler, rain] = [...id].map((bit) => bit === '1');
      return {
        id: `s${id}`,
        p: on(0.2, rain === true) * on(rain ? 0.01 : 0.4, sprinkler === true),
        yes: { wet: wet[id] ?? 0, sprinkler: sprinkler ? 1 : 0 },
      };
    }),
  );
  it('wet grass: rain at 891/2491 (0.3577, from memory)', () => {
    expect(chance(content, { wet: 'yes' }, (id) => id[2] === '1')).toBeCloseTo(891 / 2491, 3);
  });
  it('no sprinkler: rain at 0.2920 (readme of bayesjs)', () => {
    expect(chance(content, { sprinkler: 'no' }, (id) => id[2] === '1')).toBeCloseTo(0.2920353982, 3);
  });
});

describe('the chest clinic (tables: multibugs.org Asia; numbers computed from them)', () => {
  const content = world(
    bits(5).map((id) => {
      const [asia, smoker, tuberculosis, lung, bronchitis] = [...id].map((bit) => bit === '1') as [
        boolean,
        boolean,
        boolean,
        boolean,
        boolean,
      ];
      const either = tuberculosis || lung;
      const dyspnoea = either ? (bronchitis ? 0.9 : 0.7) : bronchitis ? 0.8 : 0.1;
      return {
        id: `s${id}`,
        p:
          on(0.01, asia) *
          on(0.5, smoker) *
          on(asia ? 0.05 : 0.01, tuberculosis) *
          on(smoker ? 0.1 : 0.01, lung) *
          on(smoker ? 0.6 : 0.3, bronchitis),
        yes: { asia: asia ? 1 : 0, dyspnoea, xray: either ? 0.98 : 0.05 },
      };
    }),
  );
  const given = { asia: 'yes', dyspnoea: 'yes' } as const;
  it.each([
    ['tuberculosis', 3, 0.087751],
    ['lung cancer', 4, 0.0995251],
    ['bronchitis', 5, 0.8114021],
    ['a smoker', 2, 0.6259199],
  ] as const)('back from Asia and short of breath: %s', (_, place, expected) => {
    expect(chance(content, given, (id) => id[place] === '1')).toBeCloseTo(expected, 3);
  });
  it('nothing known: the marginals', () => {
    expect(chance(content, {}, (id) => id[3] === '1')).toBeCloseTo(0.0104, 9);
    expect(chance(content, {}, (id) => id[4] === '1')).toBeCloseTo(0.055, 9);
    expect(chance(content, {}, (id) => id[3] === '1' || id[4] === '1')).toBeCloseTo(0.064828, 9);
  });
});
