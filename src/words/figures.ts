// How a number is written in a text, for the renderer and the pictures: its digits as asked for, never grouped by thousands.
import { type FluentFunction, FluentNumber } from '@fluent/bundle';
import type { Figure } from '../chat/facts.ts';

/** A plain number shows the digits it has; a figure shows as many as it names. */
export function toFluentNumber(number: number | Figure): FluentNumber {
  if (typeof number === 'number') return new FluentNumber(number, howShown(0, 20));
  return new FluentNumber(number.value, howShown(number.digits, number.digits));
}

/** Takes the place of Fluent's own NUMBER, whose options would let a text show other digits than its facts. */
export const NUMBER: FluentFunction = ([number], options) => {
  if (!(number instanceof FluentNumber)) throw new TypeError('NUMBER takes a number');
  if (Object.keys(options).length > 0)
    throw new TypeError('NUMBER takes no options: the digits come from the figure');
  return number;
};

function howShown(fewest: number, most: number): Intl.NumberFormatOptions {
  return {
    useGrouping: false,
    minimumFractionDigits: fewest,
    maximumFractionDigits: most,
    // A reading of -0.0004 shown with three digits is 0.000, not -0.000.
    signDisplay: 'negative',
  };
}
