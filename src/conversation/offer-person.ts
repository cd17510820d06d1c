// Offers a person to an owner who has worked for longer than the workshop thinks good for anybody, once in a set-up; after all else is said.
import { isOpen } from '../desk/case.ts';
import { line, say } from './say.ts';
import type { Turn } from './turn.ts';

/** Silence of an hour (ms) and more is a break, not work. */
const breakMs = 3_600_000;

/** Counts the time since the owner's last message as work, unless it was a break. */
export function countWork({ state: { setUp }, scene: { now } }: Turn): void {
  if (!setUp) return;
  const gap = now - setUp.touchedAt;
  if (gap > 0 && gap < breakMs) setUp.workedMs += gap;
  setUp.touchedAt = now;
}

export function offerPerson(turn: Turn): void {
  const { setUp, case: one } = turn.state;
  const enough = turn.scene.current.workshop.enoughMinutes;
  if (!setUp || setUp.offered || setUp.held || setUp.paused || isOpen(one)) return;
  if (setUp.workedMs < enough * 60_000) return;
  // Nobody is talked to while the engine runs or a hand is on the sensor.
  if (setUp.rig.engine === 'running' || setUp.rig.sensor === 'loose') return;
  setUp.offered = true;
  say(turn, { lines: [line('enough', { minutes: Math.floor(setUp.workedMs / 60_000) })] });
}
