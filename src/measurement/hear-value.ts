// Brings one quantity into the unit of the stage, and says when a figure could be two things there.

import { type Decimal, shiftBy, toNumber } from './hear-numerals.ts';
import type { Quantity } from './hear-quantities.ts';
import type { UnclearWhy, Value } from './heard.ts';
import type { Unit } from './unit.ts';
import { type TypedUnit, worthOf } from './unit-factors.ts';

export type Taken =
  | { kind: 'value'; value: number; resolution: number; echo: boolean; bare: boolean }
  | { kind: 'unclear'; why: UnclearWhy; meant?: Value[] };

/** What can be meant in a garage: outside of it a figure is read the other way, or asked about. */
const plausible: Record<Unit, readonly [low: number, high: number]> = {
  V: [0.02, 60],
  '1/min': [100, 20_000],
  mm: [0.05, 1200],
  kPa: [5, 3000],
  Nm: [0.2, 400],
  '%': [0.1, 100],
};

/** In volts, a bare whole number above this is no voltage of a motorcycle. */
const highestBare = 16;

const unclear = (why: UnclearWhy, meant: Value[] = []): Taken =>
  meant.length > 0 ? { kind: 'unclear', why, meant } : { kind: 'unclear', why };

/** `unit`: as typed, or taken over from a neighbour; null where the stage has to tell. */
export function takeValue(
  quantity: Quantity,
  unit: TypedUnit | null,
  asked: Unit,
  decimals: readonly string[],
): Taken {
  const { number } = quantity;
  if (number === null || number.malformed) return unclear('malformed-number');
  if (quantity.doubtfulSign) return unclear('sign-or-bullet');
  const typed = unit ?? unitOfFraction(quantity, asked);
  if (typed !== null && worthOf(typed).unit !== asked) return unclear('wrong-quantity');
  const choice = number.juxtaposed
    ? joinSpoken(number.juxtaposed, typed, asked)
    : chooseReading(quantity, typed, asked, decimals);
  if (choice.kind === 'unclear') return choice;
  const decimal = { ...choice.decimal, negative: quantity.negative };
  const { value, resolution } = convert(decimal, typed ?? asked, number.denominator);
  const echo = quantity.echo || choice.echo || quantity.hedged;
  const taken: Taken = { kind: 'value', value, resolution, echo, bare: typed === null && number.whole };
  return typed === null
    ? checkBare(taken, decimal, quantity, asked)
    : checkTyped(taken, decimal, typed, asked);
}

/** An eighth of something in millimetres is an eighth of an inch; a bare half could be either. */
function unitOfFraction({ number }: Quantity, asked: Unit): TypedUnit | null {
  return asked === 'mm' && number?.denominator && number.denominator >= 8 && number.denominator !== 10
    ? 'in'
    : null;
}

type Choice = { kind: 'decimal'; decimal: Decimal; echo: boolean } | Extract<Taken, { kind: 'unclear' }>;

function chooseReading(
  { number }: Quantity,
  typed: TypedUnit | null,
  asked: Unit,
  decimals: readonly string[],
): Choice {
  const { numeral } = number!;
  if (numeral === null) return { kind: 'decimal', decimal: number!.decimal!, echo: false };
  const { decimal, grouped, mark } = numeral;
  const unit = typed ?? asked;
  if (decimal === null || grouped === null) {
    const only = (decimal ?? grouped)!;
    return { kind: 'decimal', decimal: only, echo: mark === "'" };
  }
  const fits = (read: Decimal) => {
    const size = convert(read, unit, null).value;
    return size >= plausible[asked][0] && size <= plausible[asked][1];
  };
  const own = mark !== null && decimals.includes(mark);
  const literal = { kind: 'decimal', decimal, echo: mark === "'" } as const;
  const asGroups = { kind: 'decimal', decimal: grouped, echo: false } as const;
  if (mark === "'") return fits(grouped) ? asGroups : literal;
  if (fits(decimal) && !fits(grouped)) return literal;
  if (fits(grouped) && !fits(decimal)) {
    // "1.487 mV" where the dot is the decimal mark says one thing and can hardly mean it.
    const odd = typed !== null && typed !== '1/min' && own;
    return odd
      ? (unclear('two-meanings', [worthAs(grouped, unit), worthAs(decimal, unit)]) as Choice)
      : asGroups;
  }
  if (own) return literal;
  return unclear('two-meanings', [worthAs(decimal, unit), worthAs(grouped, unit)]) as Choice;
}

const worthAs = (decimal: Decimal, unit: TypedUnit): Value => convert(decimal, unit, null);

/** Powers of ten are shifted in the digits; other factors are multiplied and cut to what a double holds surely. */
export function convert(decimal: Decimal, unit: TypedUnit, denominator: number | null): Value {
  const { power, factor } = worthOf(unit);
  const shifted = shiftBy(decimal, power ?? 0);
  const times = (size: number) => (factor === undefined ? size : Number((size * factor).toPrecision(12)));
  const value = times(toNumber(shifted));
  if (denominator !== null && factor !== undefined) return { value, resolution: times(1 / denominator) };
  return { value, resolution: times(Number(`1e${shifted.place}`)) };
}

/** Several numbers said in one breath: digit by digit, "nineteen fifty", "twelve six". */
function joinSpoken(parts: readonly Decimal[], typed: TypedUnit | null, asked: Unit): Choice {
  const values = parts.map(({ digits }) => Number(digits));
  const joined = (digits: string, place = 0): Decimal => ({ digits, exp: 0, place, negative: false });
  const decimal = (read: Decimal, echo: boolean): Choice => ({ kind: 'decimal', decimal: read, echo });
  if (values.every((value) => value < 10))
    return decimal(joined(values.join('')), typed === null && asked === 'V');
  const [one = 0, two = 0, three] = values;
  const scaled = typed === 'mV' || asked === '1/min';
  if (scaled && values.length === 2 && two >= 10 && two < 100 && one < 100 && (one >= 10 || typed === 'mV')) {
    return decimal(joined(`${one}${two}`, parts[1]!.place), typed === 'mV');
  }
  if (scaled && values.length === 3 && one >= 10 && one < 100 && two === 0 && three! < 10) {
    return decimal(joined(values.join('')), typed === 'mV');
  }
  if (
    asked === 'V' &&
    typed !== 'mV' &&
    values.length === 2 &&
    one >= 10 &&
    one < 20 &&
    two < 10 &&
    two > 0
  ) {
    return decimal({ digits: `${one}${two}`, exp: -1, place: -1, negative: false }, true);
  }
  if (asked === 'V' && typed === null && values.length === 2 && one < 10 && two >= 10 && two < 100) {
    const meant = [-3, -2].map((exp) => ({
      value: Number(`${one}${two}e${exp}`),
      resolution: Number(`1e${exp}`),
    }));
    return unclear('two-meanings', meant) as Choice;
  }
  return unclear('two-meanings') as Choice;
}

function checkBare(
  taken: Extract<Taken, { kind: 'value' }>,
  decimal: Decimal,
  quantity: Quantity,
  asked: Unit,
): Taken {
  const { value } = taken;
  const size = Math.abs(value);
  const whole = quantity.number!.whole;
  // "three quarters" of what? "12 1/2" is plain.
  if (quantity.number!.denominator && (asked === 'mm' || size < 1)) return unclear('two-meanings');
  switch (asked) {
    case 'V': {
      if (whole && quantity.number!.juxtaposed && decimal.exp === 0) return bareVolts(taken);
      if (whole && (size === 1 || quantity.hedged)) return bareVolts(taken);
      return size > highestBare ? bareVolts(taken) : taken;
    }
    case '1/min':
      if (value === 0) return taken;
      if (size < 20 && value > 0) {
        const meant = { value: Number((value * 1000).toPrecision(12)), resolution: taken.resolution * 1000 };
        return unclear('bare-figure', [meant]);
      }
      return size < 100 || value < 0 || size > 20_000 ? unclear('bare-figure') : taken;
    case 'kPa':
      if (value > 0 && value < 60) {
        const psi = convert(decimal, 'psi', null);
        const bar = convert(decimal, 'bar', null);
        return unclear('bare-figure', value < 8 ? [bar] : [psi]);
      }
      return taken;
    default:
      return taken;
  }
}

/** "348": as millivolts, where that is a voltage of a sensor. */
function bareVolts({ value }: { value: number }): Taken {
  const meant = value > highestBare && value < 16_000 ? [Number((value / 1000).toPrecision(12))] : [];
  return unclear(
    'bare-figure',
    meant.map((volts) => ({ value: volts, resolution: Number.isInteger(value) ? 0.001 : 0.0001 })),
  );
}

function checkTyped(
  taken: Extract<Taken, { kind: 'value' }>,
  decimal: Decimal,
  typed: TypedUnit,
  asked: Unit,
): Taken {
  const size = Math.abs(taken.value);
  if (asked === 'V' && size > plausible.V[1]) {
    const millivolts = typed === 'V' ? [convert(decimal, 'mV', null)] : [];
    return unclear('two-meanings', millivolts);
  }
  if (typed === 'm' && size > plausible.mm[1]) return unclear('two-meanings', [convert(decimal, 'mm', null)]);
  if (asked === '1/min' && size > 0 && size < 20) return unclear('two-meanings');
  if (size > 20 * plausible[asked][1]) return unclear('two-meanings');
  return taken;
}
