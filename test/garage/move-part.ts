// The simulated owner turns a part as advised, watching the meter where a band is given; a first turn may go the wrong way.
import type { Direction, MoveFact } from '../../src/chat/facts.ts';
import { lookAtMeter } from './hands.ts';
import { engineSpeed } from './machine.ts';
import type { Random } from './random.ts';
import type { Scene } from './scene.ts';
import * as parts from './turn-parts.ts';

const opposite: Record<Direction, Direction> = {
  in: 'out',
  out: 'in',
  clockwise: 'counter-clockwise',
  'counter-clockwise': 'clockwise',
  more: 'less',
  less: 'more',
};

/** The least turn of a screw that a hand makes on purpose, in turns. */
const leastTurn = 0.04;

export function movePart(scene: Scene, advised: MoveFact, measure: string | null, random: Random): void {
  const first = !scene.turned.has(advised.part);
  scene.turned.add(advised.part);
  scene.touched.add(advised.part);
  const wrong = first && random.chance(scene.habits.wrongSense);
  const direction = wrong ? opposite[advised.direction] : advised.direction;
  if (wrong) scene.slips.push(`turned ${advised.part} ${direction} instead of ${advised.direction}`);

  const { machine } = scene;
  const positive = direction === 'in' || direction === 'clockwise' || direction === 'more';
  const sign = positive ? 1 : -1;
  const band = wrong ? null : (advised.until ?? null);
  const amount = advised.amount * random.between(0.9, 1.1);
  switch (advised.part) {
    case 'sensor-body':
      if (random.chance(scene.leads.slipping)) scene.leads.fault = 'not-touching';
      turnWatching(scene, band, wrong, measure, random, {
        step: (forward) => parts.nudgeSensor(machine, positive === forward, random),
        blind: Math.max(1, Math.round(advised.amount)),
        most: Math.max(12, Math.round(advised.amount * 3)),
        letGo: () => {
          if (parts.sensorIsFree(machine)) machine.sensor.body += random.normal(0, 0.0015);
        },
      });
      break;
    case 'idle-stop':
      turnWatching(scene, band, wrong, measure, random, {
        step: (forward) => {
          parts.turnStop(machine, positive === forward ? leastTurn : -leastTurn, random);
          return true;
        },
        blind: Math.max(1, Math.round(amount / leastTurn)),
        // It may turn freely for some turns before it touches.
        most: Math.round((advised.amount + 5) / leastTurn),
        letGo: () => parts.turnStop(machine, random.normal(0, 0.01), random),
      });
      break;
    case 'upper-screw':
    case 'lower-screw': {
      const which = advised.part === 'upper-screw' ? 'upper' : 'lower';
      const tight = machine.screws[which].tight + sign * 0.25 * Math.round(advised.amount);
      parts.turnScrew(machine, which, tight, random);
      break;
    }
    case 'fast-idle':
      parts.turnFastIdle(machine, sign * Math.round(advised.amount), random);
      break;
    case 'cable':
      parts.adjustCable(machine, sign * amount, random);
      break;
    default:
      scene.unknown.add(advised.part);
  }
}

interface Turning {
  /** One least step, onward or back; false where nothing moves. */
  step: (forward: boolean) => boolean;
  /** Steps to turn where nothing is watched. */
  blind: number;
  most: number;
  letGo: () => void;
}

/** Turns until the band shows, then lets go; gives up where it goes the wrong way, or where the meter shows nothing of use. */
function turnWatching(
  scene: Scene,
  band: { low: number; high: number } | null,
  wrong: boolean,
  measure: string | null,
  random: Random,
  turning: Turning,
): void {
  const shown = (): number | null => {
    if (measure === 'idle-speed') return engineSpeed(scene.machine);
    const display = lookAtMeter(scene, random);
    return display.kind === 'number' && Math.abs(display.value) > 0.02 ? display.value : null;
  };
  if (!band) {
    // Whoever turns the wrong way on a running engine hears it at once, and stops.
    const heard = scene.machine.engine.running ? engineSpeed(scene.machine) : null;
    for (let i = 0; i < turning.blind; i++) {
      turning.step(true);
      if (wrong && heard !== null && Math.abs(engineSpeed(scene.machine) - heard) > 150) break;
    }
    turning.letGo();
    return;
  }
  // A good hand aims for the middle, not for the first edge.
  const width = band.high - band.low;
  const aimed = { low: band.low + width * 0.2, high: band.high - width * 0.2 };
  const start = shown();
  if (start === null) return;
  const fromBelow = start < aimed.low;
  let forward = true;
  let turnsBack = 0;
  for (let i = 0; i < turning.most; i++) {
    const now = shown();
    if (now === null) return;
    if (now >= aimed.low && now <= aimed.high) break;
    const past = now < aimed.low !== fromBelow;
    const away = fromBelow ? start - now : now - start;
    if (!past && away > Math.max(width, Math.abs(start) * 0.05)) break;
    // Past the band: a little back, then onward again; a hand tries that a few times.
    if (past === forward) {
      forward = !forward;
      if (++turnsBack > 6) break;
    }
    if (!turning.step(forward)) break;
  }
  turning.letGo();
}
