// Walks one machine of the model garage through the readings of a set-up with nothing but the diagnosis, for its bench and tests.

import type { Band, Observation, Seen, Weights } from '../../src/diagnosis/evidence.ts';
import { addWeights, lastingWeights, likelihoods } from '../../src/diagnosis/likelihoods.ts';
import { nextCheck } from '../../src/diagnosis/next-check.ts';
import { plausible } from '../../src/diagnosis/plausible.ts';
import { type Belief, posterior, priorsOf } from '../../src/diagnosis/posterior.ts';
import type { FaultContent } from '../../src/procedure/fault.ts';
import { act, lookAtMeter, pose, sweep } from '../garage/hands.ts';
import type { Display } from '../garage/meter.ts';
import { nominal } from '../garage/nominal.ts';
import { createRandom, type Random } from '../garage/random.ts';
import type { Scene } from '../garage/scene.ts';

export interface Walk {
  end: 'all-plausible' | 'person' | 'endless';
  /** Beliefs at the first odd reading, and at the end or the call. */
  atFirst: Belief | null;
  atEnd: Belief | null;
  /** Everything that was asked for, in order. */
  asked: string[];
}

interface Stage {
  do: string[];
  measure: string;
  situation: string;
  band: (idle: number | null, supply: number | null) => Band;
  settable: boolean;
  after?: { action: string; expect: 'falls' | 'rises' | 'same' };
}

const around = (middle: number, half: number, supply: number | null): Band => {
  const scale = supply === null ? 1 : supply / 5;
  return { low: (middle - half) * scale, high: (middle + half) * scale };
};

const fixedBands: Record<string, Band> = {
  'battery-voltage': { low: 12.2, high: 13.2 },
  'supply-voltage': { low: 4.8, high: 5.2 },
  'ground-drop': { low: -0.02, high: 0.08 },
};

const fixed =
  (measure: string): (() => Band) =>
  () =>
    fixedBands[measure] ?? { low: null, high: null };

const stages: readonly Stage[] = [
  {
    do: ['release:fast-idle', 'free-play:cable', 'probe-battery'],
    measure: 'battery-voltage',
    situation: 'as-found',
    band: fixed('battery-voltage'),
    settable: false,
  },
  {
    do: ['probe-supply', 'wake'],
    measure: 'supply-voltage',
    situation: 'as-found',
    band: fixed('supply-voltage'),
    settable: false,
  },
  {
    do: ['sleep', 'probe', 'wake'],
    measure: 'signal-idle',
    situation: 'as-found',
    band: (_, supply) => around(nominal.idle, 0.02, supply),
    settable: true,
  },
  {
    do: ['snap'],
    measure: 'signal-snapped',
    situation: 'as-found',
    band: (idle) => ({ low: (idle ?? 0) - 0.012, high: (idle ?? 0) + 0.012 }),
    settable: false,
  },
  {
    do: ['open'],
    measure: 'signal-wide-open',
    situation: 'open',
    band: (_, supply) => around(nominal.wideOpen, 0.3, supply),
    settable: false,
  },
  {
    do: ['close'],
    measure: 'signal-sweep',
    situation: 'sweep',
    band: (idle) => ({ low: idle, high: nominal.wideOpen }),
    settable: false,
  },
  {
    do: ['back-off:fast-idle', 'back-off:idle-stop'],
    measure: 'signal-closed-stop',
    situation: 'closed',
    band: (_, supply) => around(nominal.closed, 0.01, supply),
    settable: true,
    after: { action: 'back-off:idle-stop', expect: 'falls' },
  },
];

export function walk(content: FaultContent, scene: Scene, limit = 40): Walk {
  const random = createRandom(`${scene.seed}/walk`);
  const hasRangeFault = scene.faults.some((fault) => fault.id === 'meter-range-low');
  if (!hasRangeFault) scene.meter.autoRange = true;
  const asked: string[] = [];
  let settled: Weights = {};
  let supply: number | null = null;
  let idle: number | null = null;
  let atFirst: Belief | null = null;
  const measured: string[] = [];

  for (const stage of stages) {
    for (const action of stage.do) act(scene, action, stage.measure, random);
    const observe = (situation = stage.situation): Observation => {
      const seen = readNow(scene, stage.measure, random);
      return {
        kind: 'observation',
        measure: stage.measure,
        situation,
        seen,
        expected: stage.band(idle, supply),
        settable: stage.settable,
        supply: stage.measure === 'supply-voltage' ? null : supply,
        ...(stage.after === undefined || idle === null
          ? {}
          : {
              previous: {
                seen: { kind: 'value' as const, value: idle, resolution: 0.001 },
                after: stage.after.action,
                expect: stage.after.expect,
              },
            }),
      };
    };
    let reading = observe();
    asked.push(stage.measure);
    let odd: Weights | null = null;
    let done: string[] = [...measured, stage.measure];
    while (plausible(reading) === 'implausible') {
      odd ??= likelihoods(content, reading);
      const belief = posterior(content, priorsOf(content, 'odd-reading'), addWeights(settled, odd));
      atFirst ??= belief;
      if (asked.length > limit) return { end: 'endless', atFirst, atEnd: belief, asked };
      const advice = nextCheck(content, belief, {
        done,
        lacking: [],
        bands: fixedBands,
        supply,
        settable: stage.settable,
      });
      if (advice.kind === 'call')
        return { end: 'person', atFirst, atEnd: belief, asked: [...asked, advice.reason] };
      asked.push(advice.check);
      done.push(advice.check);
      if (advice.ask.kind === 'go-on') break;
      if (advice.ask.kind === 'choice') {
        const jumps = scene.faults.some((fault) => fault.id === 'plug-corroded');
        const answer = jumps ? 'jumps' : 'steady';
        odd = addWeights(
          odd,
          likelihoods(content, { kind: 'answer', question: advice.ask.question, answer }),
        );
        continue;
      }
      const falseDone = random.chance(scene.habits.falseDone);
      for (const action of advice.do) {
        if (falseDone && action.startsWith('check:')) continue;
        act(scene, action, advice.ask.kind === 'reading' ? advice.ask.measure : stage.measure, random);
      }
      if (advice.ask.kind === 'reading') {
        const { measure } = advice.ask;
        odd = addWeights(
          odd,
          likelihoods(content, {
            kind: 'observation',
            measure,
            situation: advice.check,
            seen: readNow(scene, measure, random),
            expected: fixedBands[measure] ?? null,
            settable: false,
            supply: null,
          }),
        );
        const probing = stage.do.find((one) => one.startsWith('probe')) ?? 'probe';
        for (const action of advice.back) act(scene, action === 'probe' ? probing : action, measure, random);
        continue;
      }
      if (advice.check === 'look-at-screws' && stage.measure === 'signal-snapped') {
        // What was tightened has shifted: the reference is taken anew.
        const fresh = readNow(scene, 'signal-idle', random);
        if (fresh.kind === 'value') idle = fresh.value;
        act(scene, 'snap', stage.measure, random);
      }
      const again = observe();
      const result =
        plausible(again) === 'plausible'
          ? 'right'
          : sameSeen(reading.seen, again.seen)
            ? 'as-before'
            : 'changed';
      if (result === 'changed') {
        odd = addWeights(lastingWeights(content, odd), likelihoods(content, again));
        if (advice.check !== 'read-again') done = done.filter((one) => one !== advice.check);
      } else {
        const still = { seen: reading.seen, after: null, expect: 'same' as const };
        odd = addWeights(
          odd,
          likelihoods(content, { kind: 'tried', check: advice.check, result }),
          likelihoods(content, { ...again, previous: still }),
        );
      }
      reading = again;
    }
    settled = addWeights(settled, lastingWeights(content, likelihoods(content, reading)));
    measured.push(stage.measure);
    if (reading.seen.kind === 'value') {
      if (stage.measure === 'supply-voltage') supply = reading.seen.value;
      if (stage.measure === 'signal-idle') idle = reading.seen.value;
    }
  }
  return {
    end: 'all-plausible',
    atFirst,
    atEnd: posterior(content, priorsOf(content, 'odd-reading'), settled),
    asked,
  };
}

function readNow(scene: Scene, measure: string, random: Random): Seen {
  const { unit } = scene.machine;
  if (measure !== 'battery-voltage' && random.chance(unit.sleepiness)) unit.awake = false;
  if (measure === 'signal-sweep') {
    const { shown } = sweep(scene, 9, random);
    return {
      kind: 'series',
      values: shown.map((one) =>
        one.kind === 'number' ? one.value : one.kind === 'wandering' ? (one.low + one.high) / 2 : null,
      ),
      resolution: 0.01,
    };
  }
  pose(scene, measure, random);
  return toSeen(lookAtMeter(scene, random));
}

function toSeen(display: Display): Seen {
  switch (display.kind) {
    case 'number':
      return { kind: 'value', value: display.value, resolution: 10 ** -display.decimals };
    case 'wandering':
      return { kind: 'range', low: display.low, high: display.high, resolution: 10 ** -display.decimals };
    case 'overload':
      return { kind: 'overload' };
    case 'blank':
      return { kind: 'none' };
  }
}

function sameSeen(a: Seen, b: Seen): boolean {
  if (a.kind !== b.kind) return false;
  if (a.kind === 'value' && b.kind === 'value') {
    return Math.abs(a.value - b.value) <= 3 * Math.max(a.resolution, b.resolution) + 0.01 * Math.abs(a.value);
  }
  return true;
}
