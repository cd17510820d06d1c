// How the simulated owner types what the meter shows: in a style of their own, with the slips that gloves and haste bring.
import type { Display } from './meter.ts';
import type { Random } from './random.ts';

export const styles = ['plain', 'leading-dot', 'millivolts', 'comma', 'bare', 'sentence'] as const;
export type Style = (typeof styles)[number];

/** What the meter showed, whatever the fingers made of it: the owner knows it again when it is played back. */
export interface Meant {
  low: number;
  high: number;
}

export interface Typed {
  text: string;
  meant: Meant | null;
  slip: 'swapped' | 'mistyped' | null;
}

/** 0.348 in the owner's style; `decimals` are the meter's. */
export function typeVolts(value: number, decimals: number, style: Style): string {
  const plain = value.toFixed(decimals);
  const small = Math.abs(value) < 1 && Math.abs(value) >= 0.1;
  switch (style) {
    case 'leading-dot':
      return `${plain.replace(/^(-?)0\./, '$1.')} V`;
    case 'millivolts':
      return decimals >= 3 ? `${Math.round(value * 1000)} mV` : `${plain}V`;
    case 'comma':
      return `${plain.replace('.', ',')} v`;
    case 'bare':
      return decimals === 3 && small && value > 0 ? String(Math.round(value * 1000)) : plain;
    case 'sentence':
      return `it shows ${plain} V`;
    case 'plain':
      return plain;
  }
}

/** Two neighbouring digits exchanged, the last ones that differ; null where no exchange would change it. */
export function swapDigits(plain: string): string | null {
  for (let i = plain.length - 1; i > 0; i--) {
    const [left, right] = [plain[i - 1]!, plain[i]!];
    if (/\d/.test(left) && /\d/.test(right) && left !== right) {
      return plain.slice(0, i - 1) + right + left + plain.slice(i + 1);
    }
  }
  return null;
}

export function typeDisplay(
  display: Display,
  style: Style,
  slips: { swappedDigits: number; mistyped: number },
  loneOne: boolean,
  random: Random,
): Typed {
  switch (display.kind) {
    case 'blank':
      return {
        text: random.pick(['meter shows nothing', 'the screen is blank', 'no reading']),
        meant: null,
        slip: null,
      };
    case 'overload':
      return {
        text: loneOne ? 'just a 1 on the left' : random.pick(['OL', '0L', 'O.L']),
        meant: null,
        slip: null,
      };
    case 'wandering': {
      const [low, high] = [display.low.toFixed(display.decimals), display.high.toFixed(display.decimals)];
      return { text: `jumps between ${low} and ${high}`, meant: display, slip: null };
    }
    case 'number':
      return typeNumber(display.value, display.decimals, style, slips, random);
  }
}

function typeNumber(
  value: number,
  decimals: number,
  style: Style,
  slips: { swappedDigits: number; mistyped: number },
  random: Random,
): Typed {
  const meant = { low: value, high: value };
  const text = typeVolts(value, decimals, style);
  const digits = swapDigits(value.toFixed(decimals));
  const swapped = digits === null ? null : typeVolts(Number(digits), decimals, style);
  if (swapped !== null && random.chance(slips.swappedDigits))
    return { text: swapped, meant, slip: 'swapped' };
  if (random.chance(slips.mistyped)) {
    // A letter for a nought, or a slip that is seen in time and put right in the same breath.
    const slipped =
      swapped !== null && random.chance(0.5) ? `${swapped}, sorry, ${text}` : text.replace(/0(?=[.,])/, 'o');
    return { text: slipped, meant, slip: slipped === text ? null : 'mistyped' };
  }
  return { text, meant, slip: null };
}
