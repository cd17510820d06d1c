// The sensor's three wires as a circuit: what each pin carries against battery minus, healthy or with a fault of the loom.

export type Pin = 'supply' | 'signal' | 'ground' | 'battery-plus' | 'battery-minus';

export interface Wiring {
  /** What the control unit gives out, in volts. */
  source: number;
  battery: number;
  /** The whole track of the sensor, in ohms. */
  track: number;
  /** Resistance in the ground and in the supply wire, in ohms; Infinity is a break. */
  groundResistance: number;
  supplyResistance: number;
  /** Both ends of the track exchanged in the connector: the signal then falls as the throttle opens. */
  reversed: boolean;
  short: 'none' | 'to-ground' | 'to-supply';
  /** A break between the sensor and the control unit; the sensor's own side still reads right. */
  signalBroken: boolean;
}

/** A loom in order. */
export function healthyWiring(source: number, battery: number): Wiring {
  return {
    source,
    battery,
    track: 5000,
    groundResistance: 0,
    supplyResistance: 0,
    reversed: false,
    short: 'none',
    signalBroken: false,
  };
}

/** Potentials against battery minus, the wiper standing at `fraction` of the track; `unitSide` is what the control unit sees. */
export function potentials(
  wiring: Wiring,
  fraction: number,
  awake: boolean,
): Record<Pin, number> & { unitSide: number } {
  const source = awake ? wiring.source : 0;
  let supply = source;
  let ground = 0;
  if (wiring.groundResistance === Infinity) {
    ground = source;
  } else if (wiring.supplyResistance === Infinity) {
    supply = 0;
  } else {
    const current = source / (wiring.supplyResistance + wiring.track + wiring.groundResistance);
    supply = source - current * wiring.supplyResistance;
    ground = current * wiring.groundResistance;
  }
  const wiper = Math.min(1, Math.max(0, wiring.reversed ? 1 - fraction : fraction));
  let signal = ground + wiper * (supply - ground);
  if (wiring.short === 'to-ground') signal = ground;
  if (wiring.short === 'to-supply') signal = supply;
  return {
    supply,
    ground,
    signal,
    'battery-plus': wiring.battery,
    'battery-minus': 0,
    // Common practice, no source: most units pull an open input up to their own supply.
    unitSide: wiring.signalBroken ? source : signal,
  };
}
