// The simulated owner's hands: carries out the contract's actions on machine, leads and meter, and works the grip.
import { between, type Place } from './leads.ts';
import { opening, settle } from './machine.ts';
import { type Display, look, putRight } from './meter.ts';
import type { Random } from './random.ts';
import type { Scene } from './scene.ts';
import * as parts from './turn-parts.ts';

/** One look at the meter. */
export function lookAtMeter(scene: Scene, random: Random): Display {
  return look(scene.meter, between(scene.machine, scene.leads, random), random);
}

/** Where the leads belong for a measure; null where it is not read on the meter. */
export function placeFor(measure: string): Place | null {
  if (measure.startsWith('signal-')) return 'signal';
  if (measure === 'supply-voltage') return 'supply';
  if (measure === 'ground-drop') return 'ground';
  if (measure === 'battery-voltage') return 'battery';
  return null;
}

/** `measure` is what is asked for in the same breath, so that a look at leads or dial puts them right for it. */
type Action = (scene: Scene, random: Random, measure: string | null) => void;

function put(at: Place): Action {
  return ({ leads }) => {
    leads.at = at;
  };
}

function tightenSensor({ machine, touched }: Scene, random: Random): void {
  if (Math.min(machine.screws.upper.tight, machine.screws.lower.tight) === 1) return;
  touched.add('sensor-screws');
  parts.tightenScrews(machine, random);
}

function closeGrip({ machine }: Scene, random: Random): void {
  machine.grip = 0;
  settle(machine, random);
}

const actions: Readonly<Record<string, Action>> = {
  probe: put('signal'),
  'probe-supply': put('supply'),
  'probe-ground': put('ground'),
  'probe-battery': put('battery'),
  unprobe: put('none'),
  wake: ({ machine: { unit } }) => {
    if (unit.wakesWasted > 0) unit.wakesWasted -= 1;
    else unit.awake = true;
  },
  sleep: ({ machine }) => {
    machine.unit.awake = machine.engine.running;
  },
  'back-off:idle-stop': ({ machine, touched, counted }, random) => {
    touched.add('idle-stop');
    counted['idle-stop'] = parts.backOffStop(machine, random);
  },
  'back-off:fast-idle': ({ machine, touched, counted }, random) => {
    touched.add('fast-idle');
    counted['fast-idle'] = parts.backOffFastIdle(machine, random);
  },
  'free-play:cable': ({ machine }, random) => parts.giveFreePlay(machine, random),
  'turn-bars': ({ machine }, random) => {
    machine.bars = random.between(-0.4, 0.4);
    settle(machine, random);
  },
  'mark:sensor-body': ({ machine }) => {
    machine.sensor.mark = machine.sensor.body;
  },
  'restore:sensor-body': ({ machine }, random) => {
    if (machine.sensor.mark === null || !parts.sensorIsFree(machine)) return;
    machine.sensor.body = machine.sensor.mark + random.normal(0, 0.004);
  },
  'loosen:sensor-screws': ({ machine, touched }, random) => {
    touched.add('sensor-screws');
    parts.loosenScrews(machine, random);
  },
  'tighten:sensor-screws': tightenSensor,
  'check:screws': tightenSensor,
  open: ({ machine }) => {
    machine.grip = 99;
  },
  close: closeGrip,
  snap: closeGrip,
  'engage:fast-idle': ({ machine }, random) => {
    machine.fastIdle.engaged = true;
    settle(machine, random);
  },
  'release:fast-idle': ({ machine }, random) => {
    machine.grip = 0;
    parts.releaseFastIdle(machine, random);
  },
  'start-engine': ({ machine }, random) => {
    machine.engine.running = true;
    machine.engine.warm = true;
    machine.unit.awake = machine.unit.wakesWasted !== Infinity;
    settle(machine, random);
  },
  'stop-engine': ({ machine }) => {
    machine.engine.running = false;
    machine.unit.awake = false;
  },
  'check:leads': ({ leads }, _random, measure) => {
    leads.fault = 'none';
    leads.slipping = 0;
    leads.at = (measure && placeFor(measure)) || (leads.at === 'none' ? 'signal' : leads.at);
  },
  'check:meter': ({ machine, leads, meter }, random) => putRight(meter, between(machine, leads, random).high),
  'check:cable': ({ machine }, random) => {
    machine.cable.tight = 0;
    machine.bars = random.between(-0.2, 0.2);
    settle(machine, random);
  },
};

/** Carries out one action of the contract's vocabulary. */
export function act(scene: Scene, name: string, measure: string | null, random: Random): void {
  const action = actions[name];
  if (action) action(scene, random, measure);
  else scene.unknown.add(name);
}

/** The hand's posture that a measure itself implies: full throttle is held while it is read, else the grip is let go. */
export function pose(scene: Scene, measure: string, random: Random): void {
  if (measure === 'signal-wide-open') scene.machine.grip = 99;
  else if (scene.machine.grip > 0) closeGrip(scene, random);
}

/** Takes the throttle through its steps and back, with the eye on the meter: what it showed, and whether it jumped. */
export function sweep(scene: Scene, count: number, random: Random): { shown: Display[]; jumped: boolean } {
  const { machine } = scene;
  const up = Math.ceil(count / 2);
  const shown: Display[] = [];
  for (let i = 0; i < count; i++) {
    const share = i < up ? i / Math.max(1, up - 1) : (count - 1 - i) / Math.max(1, count - up);
    const hand = share > 0 && share < 1 ? random.normal(0, 0.03) : 0;
    if (share === 0) closeGrip(scene, random);
    else machine.grip = share === 1 ? 99 : Math.max(0, share + hand) * machine.wideOpening;
    shown.push(lookAtMeter(scene, random));
  }
  closeGrip(scene, random);
  const { sensor } = machine;
  const worn = sensor.wornAt !== null || (sensor.wornBelow !== null && sensor.wornBelow > opening(machine));
  return { shown, jumped: machine.unit.awake && (worn || sensor.corrosion > 0.1) };
}
