// A motorcycle's throttle body, sensor and control unit as a simulation: drawn from a seed, each machine with ways of its own.
// Mechanical positions are in volts of signal at a supply of 5.00 V, so that every stop, click and shift adds up.
import { nominal } from './nominal.ts';
import type { Random } from './random.ts';
import { healthyWiring, type Wiring } from './wiring.ts';

export interface Screw {
  /** What tightening this screw adds to the signal, from slack to snug. */
  shift: number;
  /** 0 slack, 1 snug. */
  tight: number;
}

export interface Machine {
  wiring: Wiring;
  unit: {
    awake: boolean;
    /** Chance of falling asleep by itself before a reading. */
    sleepiness: number;
    /** Wakings that do nothing yet (kill switch, poor contact); Infinity never wakes. */
    wakesWasted: number;
  };
  sensor: {
    /** Signal of the closed plate that the body's place in its slots gives, screws slack. */
    body: number;
    low: number;
    high: number;
    clockwiseRaises: boolean;
    /** How far it jumps when a hand just overcomes its stiction. */
    nudge: number;
    /** Share of a screw's shift that stays when it is slackened again. */
    lasting: number;
    mark: number | null;
    /** How far it wanders by itself at each throttle movement when loose or worn on its shaft. */
    looseness: number;
    shaftSlack: number;
    slackNow: number;
    wornBelow: number | null;
    wornAt: { from: number; to: number } | null;
    /** Chance of a drop-out at a reading, from a corroded plug. */
    corrosion: number;
  };
  screws: { upper: Screw; lower: Screw };
  stop: {
    /** 0 where it just touches; negative turns are free of the plate. */
    turns: number;
    voltsPerTurn: number;
    /** How far the owner backs it off beyond touching. */
    deadBand: number;
    /** Back-offs that leave it bearing on the plate, as a hand on the wrong screw does. */
    backOffsWasted: number;
  };
  fastIdle: {
    clicks: number;
    click: number;
    base: number;
    engaged: boolean;
    /** Where it came to rest this time. */
    offset: number;
    sticksIn: boolean;
  };
  cable: {
    /** Opening that a tight cable holds with the bars straight. */
    tight: number;
    /** A look for free play does not find it; watching the reading does. */
    hidden: boolean;
    /** Travel lost at full throttle. */
    slack: number;
  };
  /** -1 full lock one way, 1 the other. */
  bars: number;
  carbon: number;
  /** A bent or wedged plate stays open by up to so much, another bit each time. */
  wedged: number;
  wedgedNow: number;
  /** Bars further over than this pull a chafed wire apart. */
  chafed: number;
  /** Opening that the hand on the grip asks for. */
  grip: number;
  wideOpening: number;
  /** Where the plate came to rest above its stop this time. */
  seat: number;
  engine: {
    running: boolean;
    warm: boolean;
    /** What heat adds to the signal. */
    heat: number;
    /** 1/min for each volt of opening: 10 mV is some 100 to 150 1/min. */
    slope: number;
    /** Warm opening that gives the nominal speed. */
    need: number;
  };
}

/** A machine that is set right; ranges are common practice, no source. */
export function drawMachine(random: Random): Machine {
  const supply = random.between(4.85, 5.1);
  const groundResistance = random.between(3, 20);
  const wiring = healthyWiring(supply * (1 + groundResistance / 5000), random.between(12.3, 13.0));
  wiring.groundResistance = groundResistance;
  const screw = (): Screw => ({ shift: random.sign() * random.between(0.003, 0.02), tight: 1 });
  const screws = { upper: screw(), lower: screw() };
  const closed = nominal.closed + random.between(-0.003, 0.003);
  const idleOpening = nominal.idle - nominal.closed + random.between(-0.003, 0.003);
  const voltsPerTurn = random.between(0.04, 0.12);
  const click = random.between(0.008, 0.014);
  const clicks = random.whole(6, 14);
  const heat = random.between(0.004, 0.012);
  const body = closed - screws.upper.shift - screws.lower.shift;
  return {
    wiring,
    unit: { awake: false, sleepiness: 0.012, wakesWasted: 0 },
    sensor: {
      body,
      low: body - random.between(0.13, 0.2),
      high: body + random.between(0.13, 0.2),
      clockwiseRaises: random.chance(0.5),
      nudge: random.between(0.004, 0.025),
      lasting: random.between(0.2, 0.6),
      mark: null,
      looseness: 0.012,
      shaftSlack: 0,
      slackNow: 0,
      wornBelow: null,
      wornAt: null,
      corrosion: 0,
    },
    screws,
    stop: {
      turns: idleOpening / voltsPerTurn,
      voltsPerTurn,
      deadBand: random.between(0, 4),
      backOffsWasted: 0,
    },
    fastIdle: {
      clicks,
      click,
      base: nominal.fastIdle - nominal.closed - clicks * click + random.between(-0.004, 0.004),
      engaged: false,
      offset: 0,
      sticksIn: false,
    },
    cable: { tight: 0, hidden: false, slack: 0 },
    bars: random.between(-0.3, 0.3),
    carbon: 0,
    wedged: 0,
    wedgedNow: 0,
    chafed: Infinity,
    grip: 0,
    wideOpening: nominal.wideOpen - nominal.closed + random.normal(0, 0.025),
    seat: 0,
    engine: {
      running: false,
      warm: false,
      heat,
      slope: random.between(10_000, 15_000),
      need: nominal.warmIdle - nominal.closed - heat + random.normal(0, 0.006),
    },
  };
}

/** How far the plate stands open, whatever holds it. */
export function opening(machine: Machine): number {
  const { stop, fastIdle, cable, carbon, grip, wideOpening } = machine;
  const held = Math.max(
    0,
    stop.turns * stop.voltsPerTurn,
    fastIdle.engaged ? fastIdle.base + fastIdle.clicks * fastIdle.click + fastIdle.offset : 0,
    cable.tight * (0.7 + 0.6 * Math.abs(machine.bars)),
    carbon,
    machine.wedgedNow,
  );
  return Math.max(held + machine.seat, Math.min(grip, wideOpening - cable.slack));
}

/** Where the wiper stands, as a fraction of the track. */
export function fraction(machine: Machine): number {
  const { sensor, screws, engine } = machine;
  const tightening = screws.upper.shift * screws.upper.tight + screws.lower.shift * screws.lower.tight;
  const heat = engine.warm ? engine.heat : 0;
  return (sensor.body + tightening + opening(machine) + sensor.slackNow + heat) / 5;
}

/** The plate comes to rest on its stop, never exactly as before. */
export function seat(machine: Machine, random: Random): void {
  machine.seat = Math.abs(random.normal(0, 0.0007));
}

/** The throttle has moved and closed again: nothing returns exactly, and what is loose goes its own way. */
export function settle(machine: Machine, random: Random): void {
  const { sensor, screws, fastIdle } = machine;
  seat(machine, random);
  if (machine.wedged > 0) machine.wedgedNow = machine.wedged * random.between(0.3, 1);
  if (fastIdle.engaged) fastIdle.offset = random.normal(0, 0.0012);
  if (sensor.shaftSlack > 0) sensor.slackNow = random.between(-sensor.shaftSlack, sensor.shaftSlack);
  if (Math.max(screws.upper.tight, screws.lower.tight) < 0.5) {
    const drifted = sensor.body + random.normal(0, sensor.looseness);
    sensor.body = Math.min(sensor.high, Math.max(sensor.low, drifted));
  }
}

/** Below so many 1/min the engine dies. Common practice, no source. */
const leastSpeed = 400;

/** What a tachometer without error shows. */
export function engineSpeed(machine: Machine): number {
  const { running, slope, need } = machine.engine;
  if (!running) return 0;
  const excess = opening(machine) - need;
  // Common practice, no source: far above idle the engine gains less for each further bit of opening.
  const speed =
    nominal.idleSpeed + slope * Math.min(excess, 0.05) + slope * 0.35 * Math.max(0, excess - 0.05);
  return speed < leastSpeed ? 0 : speed;
}
