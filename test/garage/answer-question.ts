// What the simulated owner answers to a question about the machine: what is true of it, seen or heard by a layman.
import { fraction, type Machine, opening } from './machine.ts';
import type { Random } from './random.ts';
import { potentials } from './wiring.ts';

interface Look {
  /** Whether the second, unhealthy answer is the true one. */
  unhealthy: (machine: Machine) => boolean;
  /** How often it is noticed where it is so, and thought so where it is not; common practice, no source. */
  noticed: number;
  mistaken: number;
}

/** By the question's id: the first choice is the healthy one, the second the other. */
const looks: Readonly<Record<string, Look>> = {
  // Where nothing comes on, nothing is seen; a unit may wake without a sound.
  'wake-signs': { unhealthy: ({ unit }) => unit.wakesWasted === Infinity, noticed: 0.92, mistaken: 0.12 },
  pump: { unhealthy: ({ unit }) => unit.wakesWasted === Infinity, noticed: 0.92, mistaken: 0.2 },
  wiggle: { unhealthy: ({ sensor }) => sensor.corrosion > 0, noticed: 0.7, mistaken: 0.07 },
  'lever-rest': { unhealthy: (machine) => opening(machine) > 0.05, noticed: 0.6, mistaken: 0.12 },
  // Unplugged, a wire that loses volts loses none: back near five volts, which is the first choice.
  'supply-unplugged': { unhealthy: stillOff, noticed: 0.9, mistaken: 0.1 },
};

/** One machine in four has no lamp; where there is one, hardly anybody misses it. */
const withoutLamp = 0.25;
const seesLamp = 0.95;

/** The choice taken; null where the question is not about what this model knows. */
export function answerQuestion(
  machine: Machine,
  question: string,
  ids: readonly string[],
  random: Random,
): string | null {
  const [first, second, third] = ids;
  if (question === 'fault-lamp') {
    if (random.chance(withoutLamp)) return third ?? first ?? null;
    return (seesFault(machine) && random.chance(seesLamp) ? second : first) ?? null;
  }
  const look = looks[question];
  if (!look) return null;
  return (random.chance(look.unhealthy(machine) ? look.noticed : look.mistaken) ? second : first) ?? null;
}

function stillOff({ wiring }: Machine): boolean {
  return wiring.source < 4.8 || wiring.source > 5.2;
}

/** Outside 0.2 to 4.8 V at its own side, a control unit stores a fault and lights its lamp (domain facts, section 1.3). */
function seesFault(machine: Machine): boolean {
  const { unitSide } = potentials(machine.wiring, fraction(machine), true);
  return unitSide < 0.2 || unitSide > 4.8;
}
