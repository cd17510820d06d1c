// The simulated machine against what is known of such machines; magnitudes are common practice, no source, where nothing is named.
import { describe, expect, test } from 'vitest';
import { drawMachine, engineSpeed, type Machine, opening, settle } from './machine.ts';
import { nominal } from './nominal.ts';
import { createRandom } from './random.ts';
import { trueValue } from './truth.ts';
import * as parts from './turn-parts.ts';

/** Fresh ones for each test, since tests turn parts. */
function drawMany(count: number) {
  return Array.from({ length: count }, (_, i) => {
    const random = createRandom(`machine-${i}`);
    return { machine: drawMachine(random), random };
  });
}

test('the same seed gives the same machine, another seed another', () => {
  expect(drawMachine(createRandom('a'))).toEqual(drawMachine(createRandom('a')));
  expect(drawMachine(createRandom('a'))).not.toEqual(drawMachine(createRandom('b')));
});

test('machines lie in the ranges that were asked for, and differ', () => {
  const drawn = drawMany(400);
  const spread = (pick: (one: Machine) => number) => {
    const values = drawn.map(({ machine }) => pick(machine));
    return [Math.min(...values), Math.max(...values)] as const;
  };
  const within = ([low, high]: readonly [number, number], from: number, to: number) => {
    expect(low).toBeGreaterThanOrEqual(from);
    expect(high).toBeLessThanOrEqual(to);
    // Nearly all of the range is used.
    expect(high - low).toBeGreaterThan(0.8 * (to - from));
  };
  within(
    spread((one) => trueValue(one, 'supply-voltage', true)!),
    4.849,
    5.101,
  );
  within(
    spread((one) => one.sensor.nudge),
    0.004,
    0.025,
  );
  within(
    spread((one) => Math.abs(one.screws.upper.shift)),
    0.003,
    0.02,
  );
  within(
    spread((one) => one.stop.deadBand),
    0,
    4,
  );
  within(
    spread((one) => one.fastIdle.click),
    0.008,
    0.014,
  );
  within(
    spread((one) => one.engine.slope / 100),
    100,
    150,
  );
  expect(drawn.some(({ machine }) => machine.sensor.clockwiseRaises)).toBe(true);
  expect(drawn.some(({ machine }) => !machine.sensor.clockwiseRaises)).toBe(true);
});

test('a machine as drawn is right: every target met once the supply is allowed for', () => {
  for (const { machine } of drawMany(400)) {
    const scale = trueValue(machine, 'supply-voltage', true)! / 5;
    const near = (measure: string, wanted: number, by: number) =>
      expect(Math.abs(trueValue(machine, measure, false)! / scale - wanted)).toBeLessThan(by);
    near('signal-closed-stop', nominal.closed, 0.004);
    near('signal-idle', nominal.idle, 0.008);
    near('signal-fast-idle', nominal.fastIdle, 0.009);
    near('signal-wide-open', nominal.wideOpen, 0.15);
  }
});

describe('turning parts', () => {
  test('a tight sensor does not turn; loose, each sense moves the signal its own way, never past the slots', () => {
    for (const { machine, random } of drawMany(100)) {
      expect(parts.nudgeSensor(machine, true, random)).toBe(false);
      parts.loosenScrews(machine, random);
      const before = machine.sensor.body;
      parts.nudgeSensor(machine, true, random);
      expect(machine.sensor.body > before).toBe(machine.sensor.clockwiseRaises);
      for (let i = 0; i < 200; i++) parts.nudgeSensor(machine, true, random);
      expect(machine.sensor.body).toBe(
        machine.sensor.clockwiseRaises ? machine.sensor.high : machine.sensor.low,
      );
      expect(parts.nudgeSensor(machine, true, random)).toBe(false);
    }
  });

  test('tightening shifts the reading by about what the two screws bring, and part of it stays when slackened', () => {
    for (const { machine, random } of drawMany(100)) {
      const signal = () => trueValue(machine, 'signal-closed-stop', false)!;
      parts.loosenScrews(machine, random);
      const loose = signal();
      parts.tightenScrews(machine, random);
      const { upper, lower } = machine.screws;
      const wanted = 0.9 * (upper.shift + lower.shift);
      expect(Math.abs(signal() - loose - wanted)).toBeLessThan(0.012);
      const body = machine.sensor.body;
      parts.loosenScrews(machine, random);
      const stays = machine.sensor.body - body;
      expect(stays).toBeCloseTo(wanted * machine.sensor.lasting, 6);
    }
  });

  test('an idle stop backed off leaves the plate closed, turns freely before it touches, and then opens evenly', () => {
    for (const { machine, random } of drawMany(100)) {
      const counted = parts.backOffStop(machine, random);
      expect(counted).toBeGreaterThan(0);
      const closed = opening(machine);
      parts.turnStop(machine, machine.stop.deadBand, random);
      expect(Math.abs(opening(machine) - closed)).toBeLessThan(0.005);
      parts.turnStop(machine, 1, random);
      expect(Math.abs(opening(machine) - machine.stop.voltsPerTurn)).toBeLessThan(0.006);
    }
  });

  test('the fast idle keeps its clicks when released, loses them when backed off, and never returns exactly', () => {
    const { machine, random } = drawMany(1)[0]!;
    const clicks = machine.fastIdle.clicks;
    const engaged = Array.from({ length: 20 }, () => {
      machine.fastIdle.engaged = true;
      settle(machine, random);
      const stands = opening(machine);
      parts.releaseFastIdle(machine, random);
      return stands;
    });
    expect(new Set(engaged).size).toBeGreaterThan(10);
    expect(Math.max(...engaged) - Math.min(...engaged)).toBeLessThan(0.012);
    expect(machine.fastIdle.clicks).toBe(clicks);
    expect(parts.backOffFastIdle(machine, random)).toBe(clicks);
    expect(machine.fastIdle.clicks).toBe(0);
  });
});

test('ten millivolts of idle stop are some 100 to 150 1/min, and a warm machine at its warm signal idles right', () => {
  for (const { machine } of drawMany(100)) {
    machine.engine.running = true;
    machine.stop.turns = machine.engine.need / machine.stop.voltsPerTurn;
    machine.seat = 0;
    const speed = engineSpeed(machine);
    expect(speed).toBeCloseTo(nominal.idleSpeed, 3);
    machine.stop.turns -= 0.01 / machine.stop.voltsPerTurn;
    const gained = speed - engineSpeed(machine);
    expect(gained).toBeGreaterThan(99);
    expect(gained).toBeLessThan(151);
  }
});

test('the warm idle signal is higher than the static one', () => {
  for (const { machine } of drawMany(100)) {
    const cold = trueValue(machine, 'signal-idle', false)!;
    const warm = trueValue({ ...machine, engine: { ...machine.engine, warm: true } }, 'signal-idle', false)!;
    expect(warm).toBeGreaterThan(cold);
  }
});
