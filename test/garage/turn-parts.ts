// What turning a part does to the simulated machine: the sensor in its slots, its screws, the idle stop, the clicks, the cable.
import { type Machine, seat, settle } from './machine.ts';
import type { Random } from './random.ts';

/** Above this the screws hold the sensor, whatever the hand does. */
const holds = 0.6;

export function sensorIsFree(machine: Machine): boolean {
  return Math.max(machine.screws.upper.tight, machine.screws.lower.tight) < holds;
}

/** One least movement; stiction makes each of another length. False where screws or slots allow none. */
export function nudgeSensor(machine: Machine, clockwise: boolean, random: Random): boolean {
  if (!sensorIsFree(machine)) return false;
  const { sensor } = machine;
  const raises = clockwise === sensor.clockwiseRaises;
  const wanted = sensor.body + (raises ? 1 : -1) * sensor.nudge * random.between(0.4, 1.2);
  const reached = Math.min(sensor.high, Math.max(sensor.low, wanted));
  const moved = Math.abs(reached - sensor.body) > 1e-9;
  sensor.body = reached;
  return moved;
}

/** Turns a screw to so tight; what it did to the sensor's place partly stays when it is slackened. */
export function turnScrew(machine: Machine, which: 'upper' | 'lower', tight: number, random: Random): void {
  const screw = machine.screws[which];
  const target = Math.min(1, Math.max(0, tight));
  const change = target - screw.tight;
  if (change > 0) machine.sensor.body += screw.shift * change * random.normal(0, 0.08);
  else machine.sensor.body -= screw.shift * change * machine.sensor.lasting;
  screw.tight = target;
}

export function loosenScrews(machine: Machine, random: Random): void {
  for (const which of ['upper', 'lower'] as const) {
    if (machine.screws[which].tight > 0.1) turnScrew(machine, which, 0.1, random);
  }
}

export function tightenScrews(machine: Machine, random: Random): void {
  for (const which of ['upper', 'lower'] as const) turnScrew(machine, which, 1, random);
}

export function turnStop(machine: Machine, turns: number, random: Random): void {
  machine.stop.turns += turns;
  seat(machine, random);
}

/** Turns the stop out until nothing bears, and says how many turns the owner counted. */
export function backOffStop(machine: Machine, random: Random): number {
  const { stop } = machine;
  const before = stop.turns;
  if (stop.backOffsWasted > 0) {
    stop.backOffsWasted -= 1;
    return Math.round(random.between(1, 2) * 4) / 4;
  }
  if (before > -stop.deadBand) turnStop(machine, -stop.deadBand - before, random);
  return Math.max(0, before - stop.turns);
}

export function turnFastIdle(machine: Machine, clicks: number, random: Random): void {
  machine.fastIdle.clicks = Math.min(40, Math.max(0, machine.fastIdle.clicks + clicks));
  settle(machine, random);
}

export function releaseFastIdle(machine: Machine, random: Random): void {
  if (!machine.fastIdle.sticksIn) machine.fastIdle.engaged = false;
  settle(machine, random);
}

/** Takes the knob back to its first click and out, and says how many clicks the owner counted. */
export function backOffFastIdle(machine: Machine, random: Random): number {
  const counted = machine.fastIdle.clicks;
  machine.fastIdle.clicks = 0;
  // Right out it bears on nothing, also where it would not spring out by itself.
  machine.fastIdle.engaged = false;
  settle(machine, random);
  return counted;
}

/** More free play slackens; each millimetre is some 40 mV of plate. Common practice, no source. */
export function adjustCable(machine: Machine, millimetresMore: number, random: Random): void {
  const { cable } = machine;
  const change = millimetresMore * 0.04;
  if (change > 0) {
    const spare = Math.max(0, change - cable.tight);
    cable.tight = Math.max(0, cable.tight - change);
    cable.slack += spare * 2;
  } else {
    cable.slack = Math.max(0, cable.slack + change * 4);
  }
  settle(machine, random);
}

/** Looks for free play by feel and gives the cable some where it has none. */
export function giveFreePlay(machine: Machine, random: Random): void {
  if (!machine.cable.hidden) machine.cable.tight = 0;
  settle(machine, random);
}
