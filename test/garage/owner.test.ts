// The simulated owner keeps the pipe contract: does first, then moves, then answers the last ask; and slips as often as it should.
import { describe, expect, test } from 'vitest';
import type { Facts } from '../../src/chat/facts.ts';
import { createOwner } from './owner.ts';
import { swapDigits, typeVolts } from './phrase.ts';
import type { OutputLine } from './pipe-line.ts';
import { drawScene, type Scene, type Slips } from './scene.ts';
import { readVolts } from './stand-in.ts';

const noSlips: Slips = { wrongSense: 0, falseDone: 0, swappedDigits: 0, mistyped: 0 };

function says(facts: Facts, choices: string[] = []): OutputLine {
  return { id: 'm', to: 'o', text: '', choices: choices.map((id) => ({ id, label: id })), facts };
}

/** On the stand, probed and awake, with a meter that shows three decimals and an owner without slips. */
function sceneOnTheStand(seed: string, slips = noSlips): Scene {
  const scene = drawScene(seed, { kind: 'mis-set' }, slips);
  Object.assign(scene.meter, { counts: 6000, autoRange: true, gain: 0, offset: 0, flicker: 0 });
  scene.machine.unit = { awake: true, sleepiness: 0, wakesWasted: 0 };
  scene.leads.at = 'signal';
  scene.habits.style = 'plain';
  return scene;
}

const asksIdle: Facts = { ask: { kind: 'reading', measure: 'signal-idle', unit: 'V' } };

test('actions come first, in order, then the move, and the reading is of what they left', () => {
  const scene = sceneOnTheStand('order');
  const before = scene.machine.stop.turns;
  const reply = createOwner(scene, 'o').reply([
    says({
      ...asksIdle,
      do: ['sleep', 'wake', 'back-off:idle-stop'],
      move: { part: 'idle-stop', direction: 'in', amount: 6, unit: 'turn' },
    }),
  ]);
  expect(scene.counted['idle-stop']).toBeCloseTo(before + scene.machine.stop.deadBand, 6);
  expect(scene.machine.stop.turns).toBeGreaterThan(0);
  expect(reply.sent!.truth).toBeGreaterThan(0);
});

test('an idle stop is turned until the meter shows the band, through its dead band', () => {
  for (let i = 0; i < 50; i++) {
    const scene = sceneOnTheStand(`until-${i}`);
    const owner = createOwner(scene, 'o');
    owner.reply([
      says({ do: ['back-off:idle-stop', 'back-off:fast-idle'], ask: { kind: 'confirm' } }, ['done']),
    ]);
    const closed = readVolts((owner.reply([says(asksIdle)]).line as { text: string }).text)!;
    const until = { low: closed + 0.08, high: closed + 0.1 };
    const move = { part: 'idle-stop', direction: 'in', amount: 1, unit: 'turn', until } as const;
    const typed = readVolts((owner.reply([says({ ...asksIdle, move })]).line as { text: string }).text)!;
    expect(typed).toBeGreaterThan(until.low - 0.006);
    expect(typed).toBeLessThan(until.high + 0.006);
  }
});

test('a sensor turned the way that leads away is left after little, and what shows is reported', () => {
  const scene = sceneOnTheStand('away');
  scene.machine.sensor.clockwiseRaises = true;
  const owner = createOwner(scene, 'o');
  const start = readVolts((owner.reply([says(asksIdle)]).line as { text: string }).text)!;
  const reply = owner.reply([
    says({
      ...asksIdle,
      do: ['loosen:sensor-screws'],
      move: {
        part: 'sensor-body',
        direction: 'clockwise',
        amount: 3,
        unit: 'nudge',
        until: { low: start - 0.1, high: start - 0.08 },
      },
    }),
  ]);
  const typed = readVolts((reply.line as { text: string }).text)!;
  expect(typed).toBeGreaterThan(start - 0.03);
  expect(typed).toBeLessThan(start + 0.12);
});

describe('answers', () => {
  test('the complaint is told as it is, other questions by their first choice', () => {
    const owner = createOwner(sceneOnTheStand('a'), 'o');
    const complaint = says({ ask: { kind: 'choice', question: 'complaint' } }, [
      'none',
      'runs-badly',
      'other',
    ]);
    expect(owner.reply([complaint]).line).toMatchObject({ choose: 'runs-badly' });
    const right = createOwner(drawScene('r', { kind: 'right' }), 'o');
    expect(right.reply([complaint]).line).toMatchObject({ choose: 'none' });
    const smoke = says({ ask: { kind: 'choice', question: 'any-smoke' } }, ['no-smoke', 'smoke']);
    expect(owner.reply([smoke]).line).toMatchObject({ choose: 'no-smoke' });
  });

  test('what changes when the bars are turned is told as it is', () => {
    const steady = says({ do: ['turn-bars'], ask: { kind: 'choice', question: 'bars' } }, [
      'steady',
      'changes',
    ]);
    const scene = sceneOnTheStand('bars');
    expect(createOwner(scene, 'o').reply([steady]).line).toMatchObject({ choose: 'steady' });
    scene.machine.cable.tight = 0.2;
    expect(createOwner(scene, 'o').reply([steady]).line).toMatchObject({ choose: 'changes' });
  });

  test('a reading played back is confirmed only where it is what was meant', () => {
    const scene = sceneOnTheStand('heard');
    const owner = createOwner(scene, 'o');
    const value = readVolts((owner.reply([says(asksIdle)]).line as { text: string }).text)!;
    const played = (heard: number) =>
      says({ heard: { value: heard, unit: 'V' }, ask: { kind: 'choice', question: 'heard' } }, ['yes', 'no']);
    expect(owner.reply([played(value)]).line).toMatchObject({ choose: 'yes' });
    expect(owner.reply([played(value * 10)]).line).toMatchObject({ choose: 'no' });
  });

  test('turns and clicks are counted truly, to a quarter turn', () => {
    const scene = sceneOnTheStand('count');
    const owner = createOwner(scene, 'o');
    const ask = { kind: 'count', part: 'fast-idle', unit: 'click' } as const;
    const clicks = scene.machine.fastIdle.clicks;
    expect(owner.reply([says({ do: ['back-off:fast-idle'], ask })]).line).toMatchObject({
      text: String(clicks),
    });
  });

  test('a manual’s figure is never read off the meter', () => {
    const owner = createOwner(sceneOnTheStand('target'), 'o');
    const ask = { kind: 'target', measure: 'signal-closed-stop', unit: 'V' } as const;
    expect(owner.reply([says({ ask }, ['skip'])]).line).toMatchObject({ text: '0.620 V' });
    const other = { kind: 'target', measure: 'signal-sweep', unit: 'V' } as const;
    expect(owner.reply([says({ ask: other }, ['skip'])]).line).toMatchObject({ choose: 'skip' });
  });

  test('the last ask of several messages is the one answered', () => {
    const owner = createOwner(sceneOnTheStand('last'), 'o');
    const first = says({ ask: { kind: 'choice', question: 'one' } }, ['a']);
    const second = says({ ask: { kind: 'choice', question: 'two' } }, ['b']);
    expect(owner.reply([first, second]).line).toMatchObject({ choose: 'b' });
  });

  test('told that the reading can’t decide, a manual meter is turned to three decimals', () => {
    const scene = sceneOnTheStand('coarse');
    Object.assign(scene.meter, { counts: 2000, autoRange: false, top: 20 });
    scene.habits.mindsTheRange = false;
    const owner = createOwner(scene, 'o');
    const text = () => (owner.reply([says(asksIdle)]).line as { text: string }).text;
    expect(text()).toMatch(/^0\.\d\d$/);
    const verdict = { result: 'unclear', measure: 'signal-idle', unit: 'V', low: 0.7, high: 0.72 } as const;
    const again = owner.reply([says({ ...asksIdle, verdict })]);
    expect((again.line as { text: string }).text).toMatch(/^0\.\d\d\d$/);
  });

  test('a sweep has as many values as asked for, rises to the middle, and returns', () => {
    const scene = sceneOnTheStand('sweep');
    const ask = { kind: 'readings', measure: 'signal-sweep', unit: 'V', count: 9 } as const;
    const values = (createOwner(scene, 'o').reply([says({ ask })]).line as { text: string }).text
      .split(/[ ,]+/)
      .map(Number);
    expect(values).toHaveLength(9);
    expect(values.indexOf(Math.max(...values))).toBe(4);
    expect(Math.abs(values[0]! - values[8]!)).toBeLessThan(0.01);
  });
});

test('one value in the styles that people type', () => {
  expect(typeVolts(0.348, 3, 'plain')).toBe('0.348');
  expect(typeVolts(0.348, 3, 'leading-dot')).toBe('.348 V');
  expect(typeVolts(0.348, 3, 'millivolts')).toBe('348 mV');
  expect(typeVolts(0.348, 3, 'comma')).toBe('0,348 v');
  expect(typeVolts(0.348, 3, 'bare')).toBe('348');
  expect(typeVolts(0.35, 2, 'bare')).toBe('0.35');
  expect(typeVolts(4.31, 2, 'millivolts')).toBe('4.31V');
  expect(swapDigits('0.348')).toBe('0.384');
  expect(swapDigits('0.344')).toBe('0.434');
  expect(swapDigits('0.00')).toBeNull();
});

describe('slips happen about as often as they should, and not at all when switched off', () => {
  const tries = 2000;
  /** Four standard deviations of a binomial share either way. */
  const about = (count: number, share: number) =>
    expect(Math.abs(count - tries * share)).toBeLessThan(4 * Math.sqrt(tries * share * (1 - share)) + 1);
  const count = (slips: Slips, facts: Facts, slipped: (scene: Scene) => boolean) =>
    Array.from({ length: tries }, (_, i) => {
      const scene = sceneOnTheStand(`slip-${i}`, slips);
      createOwner(scene, 'o').reply([says(facts, ['done'])]);
      return slipped(scene);
    }).filter(Boolean).length;

  test('one in twenty says done without doing', () => {
    const facts: Facts = { do: ['sleep'], ask: { kind: 'confirm' } };
    const lazy = (scene: Scene) => scene.machine.unit.awake;
    about(count({ ...noSlips, falseDone: 0.05 }, facts, lazy), 0.05);
    expect(count(noSlips, facts, lazy)).toBe(0);
  });

  test('one in ten turns a part the wrong way at first', () => {
    const move = { part: 'fast-idle', direction: 'in', amount: 2, unit: 'click' } as const;
    const wrong = (scene: Scene) => scene.slips.length > 0;
    about(count({ ...noSlips, wrongSense: 0.1 }, { ...asksIdle, move }, wrong), 0.1);
    expect(count(noSlips, { ...asksIdle, move }, wrong)).toBe(0);
  });

  test('two readings in a hundred have digits swapped', () => {
    const swapped = (scene: Scene) => scene.slips.some((slip) => slip.startsWith('swapped'));
    about(count({ ...noSlips, swappedDigits: 0.02 }, asksIdle, swapped), 0.02);
    expect(count(noSlips, asksIdle, swapped)).toBe(0);
  });
});
