// What a fault of the model garage is, and the common ways to build one; magnitudes are common practice, no source.
import type { Machine } from './machine.ts';
import type { Random } from './random.ts';
import type { Scene } from './scene.ts';

export interface Fault {
  id: string;
  row: string | null;
  group: 'setting' | 'leads' | 'meter' | 'power' | 'plate' | 'sensor' | 'wiring' | 'engine';
  /** Actions that mend it; empty where an owner can't. */
  mendedBy: readonly string[];
  /** True where the set-up itself puts it right or an action above does, without a person. */
  byOwner: boolean;
  /** True where the machine itself brings its mis-setting, and none is drawn beside it. */
  setsItself?: boolean;
  install(scene: Scene, random: Random): void;
  /** A set-up declared right while this holds is wrong, whatever the readings were. */
  ruins?(scene: Scene): boolean;
}

/** A fault that no action of the contract mends: only a person ends it. */
export function lasting(
  id: string,
  row: string | null,
  group: Fault['group'],
  install: (machine: Machine, random: Random) => void,
): Fault {
  return {
    id,
    row,
    group,
    mendedBy: [],
    byOwner: false,
    install: (scene, random) => install(scene.machine, random),
    ruins: () => true,
  };
}
