// Which of a sensor's two screws to nip up next, a nudge at a time, so that the reading stays where it belongs; for the conversation.
import type { Learned } from './learn-part.ts';

export interface Screw {
  id: string;
  learned: Learned;
  /** Nudges turned in so far. */
  turnedIn: number;
}

/** Alternating, so that neither gets far ahead; among equals the one whose pull brings the reading nearer to the aim. */
export function chooseScrew(screws: readonly Screw[], reading: number, aim: number): Screw | null {
  const loosest = Math.min(...screws.map((screw) => screw.turnedIn));
  const missAfter = (screw: Screw) => Math.abs(reading + screw.learned.sense * screw.learned.perUnit - aim);
  const next = screws
    .filter((screw) => screw.turnedIn === loosest)
    .reduce<Screw | null>(
      (best, screw) => (best && missAfter(best) <= missAfter(screw) ? best : screw),
      null,
    );
  return next;
}
