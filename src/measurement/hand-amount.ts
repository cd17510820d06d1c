// The amounts that a hand can turn: sixteenths of a turn to a quarter, then quarters, halves, wholes; whole clicks and nudges.

export type MoveUnit = 'turn' | 'click' | 'nudge' | 'mm';

export interface Hand {
  smallest: number;
  largest: number;
}

/** What a hand does at a time (common practice, no source). */
export const hands: Record<MoveUnit, Hand> = {
  turn: { smallest: 1 / 16, largest: 2 },
  click: { smallest: 1, largest: 12 },
  nudge: { smallest: 1, largest: 6 },
  mm: { smallest: 0.5, largest: 3 },
};

/** The nearest amount that a hand can do; the smaller of two equally near. */
export function handAmount(unit: MoveUnit, amount: number, hand: Hand): number {
  const bounded = Math.min(hand.largest, Math.max(hand.smallest, amount));
  const step = unit === 'turn' ? turnStep(bounded) : hand.smallest;
  const rounded = Math.ceil(bounded / step - 0.5 - 1e-9) * step;
  return Number(Math.min(hand.largest, Math.max(hand.smallest, rounded)).toPrecision(12));
}

function turnStep(turns: number): number {
  if (turns <= 0.25) return 1 / 16;
  if (turns <= 1) return 1 / 4;
  return turns <= 2 ? 1 / 2 : 1;
}
