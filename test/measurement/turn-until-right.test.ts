import { describe, expect, test } from 'vitest';
import { hands } from '../../src/measurement/hand-amount.ts';
import type { Prior } from '../../src/measurement/learn-part.ts';
import {
  type Draw,
  drawFrom,
  type Ended,
  type Loop,
  type Model,
  ordinarySlips,
  summarise,
  turnUntilRight,
} from './simulate-loop.ts';

// The ranges of nudges, clicks, dead bands and shifts below are common practice, no source.
const runs = 2000;
const noSlips = { wrongFirst: 0, falseDone: 0, swapped: 0 };

function sensorBody(draw: Draw, start: number): Model & { sense: number } {
  const nudge = draw.between(0.004, 0.025);
  const sense = draw.chance(0.5) ? 1 : -1;
  const lowEnd = start - 0.3;
  let volts = start;
  return {
    sense,
    volts: () => volts,
    turn: (units) => {
      // Stiction: a nudge is never the same twice.
      for (let left = Math.abs(units); left > 0; left -= 1) {
        const by = Math.min(1, left) * nudge * draw.between(0.4, 1.3);
        volts = Math.min(start + 0.3, Math.max(lowEnd, volts + Math.sign(units) * sense * by));
      }
    },
  };
}

function idleStop(draw: Draw, closed: number): Model {
  const perTurn = draw.between(0.04, 0.12);
  let turns = -draw.between(0, 4);
  return {
    volts: () => closed + Math.max(0, turns) * perTurn,
    turn: (units) => {
      turns += units * draw.between(0.9, 1.1);
    },
  };
}

function fastIdle(draw: Draw, base: number): Model {
  const click = draw.between(0.008, 0.014);
  let clicks = 0;
  let rest = 0;
  return {
    volts: () => base + clicks * click + rest,
    turn: (units) => {
      clicks += Math.round(units);
      rest = draw.normal(0.0012);
    },
  };
}

const bodyPrior: Prior = { perUnit: 0.012, sense: 0 };
const stopPrior: Prior = { perUnit: 0.06, sense: 1, deadBand: 0.5 };
const knobPrior: Prior = { perUnit: 0.011, sense: 1 };

function simulate(
  make: (draw: Draw) => Omit<Loop, 'draw' | 'slips' | 'asksAgain'>,
  slips = ordinarySlips,
  asksAgain = true,
) {
  const ended: Ended[] = [];
  for (let seed = 1; seed <= runs; seed += 1) {
    const draw = drawFrom(seed);
    ended.push(turnUntilRight({ ...make(draw), draw, slips, asksAgain }));
  }
  return summarise(ended);
}

const sensor = (watching: number | null, half: number) => (draw: Draw) => ({
  model: sensorBody(draw, 0.62 + (draw.chance(0.5) ? 1 : -1) * draw.between(0.02, 0.15)),
  prior: bodyPrior,
  unit: 'nudge' as const,
  hand: hands.nudge,
  window: { low: 0.62 - half, high: 0.62 + half },
  watching,
});
const stop = (watching: number | null) => (draw: Draw) => ({
  model: idleStop(draw, 0.62),
  prior: stopPrior,
  unit: 'turn' as const,
  hand: hands.turn,
  window: { low: 0.7, high: 0.72 },
  watching,
});
const knob = (draw: Draw) => ({
  model: fastIdle(draw, 0.86 - draw.between(0.04, 0.18)),
  prior: knobPrior,
  unit: 'click' as const,
  hand: hands.click,
  window: { low: 0.84, high: 0.88 },
  watching: null,
});

describe('a loop of readings and moves, on two thousand machines each', () => {
  test.each([
    ['sensor, sense unknown, turned by the meter', sensor(0.25, 0.01), 4, 0.98],
    ['sensor, sense unknown, turned by the meter, half the window', sensor(0.25, 0.005), 4, 0.97],
    ['idle stop, turned by the meter', stop(0.04), 4, 0.98],
    ['idle stop, turned blind through its dead band', stop(null), 5, 0.95],
    ['fast idle by clicks', knob, 4, 0.98],
  ])('%s', (name, make, median, within) => {
    const figures = simulate(make);
    console.info(name, figures);
    expect(figures.median).toBeLessThanOrEqual(median);
    expect(figures.within - figures.falsely).toBeGreaterThanOrEqual(within);
    expect(figures.endless).toBe(0);
  });

  test('a sensor turned blind by whole nudges comes in too, or is said to be too coarse', () => {
    const figures = simulate(sensor(null, 0.01));
    console.info('sensor, blind', figures);
    expect(figures.within).toBeGreaterThanOrEqual(0.9);
    expect(figures.endless).toBe(0);
  });

  test.each([
    ['wrong first sense', { ...noSlips, wrongFirst: 1 }, 5],
    ['one move in ten not done', { ...noSlips, falseDone: 0.1 }, 4],
    ['one reading in ten swapped', { ...noSlips, swapped: 0.1 }, 4],
  ])('%s does not derail the sensor loop', (name, slips, median) => {
    const figures = simulate(sensor(0.25, 0.01), slips);
    console.info(name, figures);
    expect(figures.median).toBeLessThanOrEqual(median);
    expect(figures.within).toBeGreaterThanOrEqual(0.95);
  });
});
