// What a message says the meter shows: repeated where it was repaired or bare, sent back where it is none; for the owner's answers.

import type { Heard } from '../measurement/heard.ts';
import { askBack, askHeard } from './ask-back.ts';
import { awaitedOf } from './awaited.ts';
import { figure, unitOf, unitSaid } from './fill-in.ts';
import { carry, line } from './say.ts';
import { takeSeen } from './take-reading.ts';
import { benchOf, type Turn } from './turn.ts';
import { widestFlicker } from './verdict.ts';

export function hearReading(turn: Turn, heard: Heard, typed: string): void {
  const bench = benchOf(turn);
  const { setUp } = bench;
  if (heard.kind === 'unclear') {
    const meant = heard.meant?.[0];
    if (heard.why === 'bare-figure' && meant) {
      if (setUp.bareSettled === setUp.stage) {
        const unit = unitOf(awaitedOf(bench)?.measure ?? '');
        carry(turn, [
          line('heard-as', {
            typed: typed.trim(),
            value: figure(meant.value, meant.resolution),
            unit: unitSaid(unit),
          }),
        ]);
        return takeSeen(turn, { kind: 'value', ...meant }, typed);
      }
      setUp.heard = { ...meant, bare: true };
      return askHeard(turn, setUp.heard);
    }
    return askBack(turn, `unclear-${heard.why}`);
  }
  if (heard.kind === 'reading') {
    if (heard.echo) {
      setUp.heard = { value: heard.value, resolution: heard.resolution, bare: false };
      return askHeard(turn, setUp.heard);
    }
    return takeSeen(turn, { kind: 'value', value: heard.value, resolution: heard.resolution }, typed);
  }
  if (heard.kind === 'range') {
    return takeSeen(
      turn,
      { kind: 'range', low: heard.low, high: heard.high, resolution: heard.resolution },
      typed,
    );
  }
  if (heard.kind === 'overload') return takeSeen(turn, { kind: 'overload' }, typed);
  if (heard.kind === 'no-reading') return takeSeen(turn, { kind: 'none' }, typed);
  if (heard.kind === 'series') {
    if ((awaitedOf(bench)?.count ?? 1) > 1) {
      return takeSeen(turn, { kind: 'series', values: heard.values, resolution: heard.resolution }, typed);
    }
    // Repeats of one state: taken as a reading that moves between them.
    const values = heard.values.filter((value) => value !== null);
    if (values.length < heard.values.length || values.length === 0)
      return askBack(turn, 'unclear-one-number');
    const [low, high] = [Math.min(...values), Math.max(...values)];
    if (high - low > widestFlicker * 3) return askBack(turn, 'unclear-one-number');
    return takeSeen(turn, { kind: 'range', low, high, resolution: heard.resolution }, typed);
  }
  askBack(turn, 'unclear-nothing-understood');
}

export function confirmHeard(turn: Turn, yes: boolean): void {
  const { setUp } = benchOf(turn);
  const { heard } = setUp;
  setUp.heard = null;
  if (!heard || !yes) return askBack(turn, 'send-again');
  if (heard.bare) setUp.bareSettled = setUp.stage;
  takeSeen(turn, { kind: 'value', value: heard.value, resolution: heard.resolution }, `${heard.value}`, true);
}
