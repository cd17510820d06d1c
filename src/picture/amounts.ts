// Amounts and limits in words, the same in every picture: "¼ turn", "2 clicks", "0.345 to 0.355 V"; for all drawings.
import { z } from 'zod';
import type { Pen } from './pen.ts';
import { limitDigits } from './scale.ts';

export const figureSchema = z.number();
export const digitsSchema = z.number().int().min(0).max(6);
export const limitSchema = z.number().nullable();

export const moveSchema = z.object({
  direction: z.enum(['in', 'out', 'clockwise', 'counter-clockwise', 'more', 'less']),
  amount: z.number().positive(),
  unit: z.enum(['turn', 'click', 'nudge', 'mm']),
});

export type PicturedMove = z.infer<typeof moveSchema>;

const fractions: Record<number, string> = {
  0.125: '⅛',
  0.25: '¼',
  0.375: '⅜',
  0.5: '½',
  0.625: '⅝',
  0.75: '¾',
  0.875: '⅞',
};

/** A number of turns as a mechanic says it; sixteenths are written out. */
export function amountFigure(pen: Pen, amount: number): string {
  const whole = Math.floor(amount);
  const rest = amount - whole;
  if (rest === 0) return pen.figure(amount, 0);
  const fraction = fractions[rest] ?? (Number.isInteger(rest * 16) ? `${rest * 16}/16` : null);
  if (fraction === null)
    return pen.figure(amount, Number.isInteger(Number((amount * 10).toFixed(6))) ? 1 : 2);
  if (whole === 0) return fraction;
  return `${pen.figure(whole, 0)}${fraction.length > 1 ? ' ' : ''}${fraction}`;
}

export function amountWords(pen: Pen, move: Pick<PicturedMove, 'amount' | 'unit'>): string {
  // "½ turn", not "½ turns": up to one, the singular.
  const count = Math.max(move.amount, 1);
  const amount =
    move.unit === 'mm'
      ? pen.figure(move.amount, Number.isInteger(move.amount) ? 0 : 1)
      : amountFigure(pen, move.amount);
  return pen.say(`picture-amount-${move.unit}`, { count, amount });
}

/** "0.345 to 0.355 V", "at least 4.80 V", "at most 0.05 V"; null where there is no limit. */
export function limitWords(
  pen: Pen,
  limits: { low: number | null; high: number | null; digits: number; unit: string },
): string | null {
  const { low, high, unit } = limits;
  const digits = limitDigits(limits, limits.digits);
  if (low !== null && high !== null) {
    return pen.say('picture-between', { low: pen.figure(low, digits), high: pen.figure(high, digits), unit });
  }
  if (low !== null) return pen.say('picture-at-least', { low: pen.figure(low, digits), unit });
  if (high !== null) return pen.say('picture-at-most', { high: pen.figure(high, digits), unit });
  return null;
}
