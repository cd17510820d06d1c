// Decides what the numbers of a message come to: one reading, a range, a series, an overload, none, or a reason to ask back.

import { isSequence, labelled, looseEnds } from './hear-clauses.ts';
import { hearLoneOne, hearNone } from './hear-no-figure.ts';
import { type Sorted, sortQuantities } from './hear-others.ts';
import {
  areExtremes,
  isBroken,
  isMixed,
  isPlusMinus,
  isRangeOfMeter,
  isStateLabel,
  scaledBy,
} from './hear-pairs.ts';
import { hasUse, isMark, isRole, type Piece } from './hear-pieces.ts';
import { findQuantities, mostQuantities, type Quantity } from './hear-quantities.ts';
import { isWordDenied } from './hear-taken-back.ts';
import { convert, type Taken, takeValue } from './hear-value.ts';
import type { Heard, UnclearWhy, Value } from './heard.ts';
import type { Lexicon } from './lexicon.ts';
import type { Unit } from './unit.ts';
import { type TypedUnit, worthOf } from './unit-factors.ts';

const unclear = (why: UnclearWhy): Heard => ({ kind: 'unclear', why });

export function hearFigures(
  pieces: readonly Piece[],
  asked: Unit | null,
  lexicons: readonly Lexicon[],
): Heard {
  const own = lexicons[0];
  if (own === undefined) return unclear('nothing-understood');
  const lone = hearLoneOne(pieces);
  if (lone !== null) return lone;
  const found = joinThousands(pieces, findQuantities(pieces, own, asked === 'mm' || asked === null), asked);
  if (found.length > mostQuantities) return unclear('two-meanings');
  clearBullets(pieces, found);
  for (const quantity of found) {
    if (asked === null || quantity.unit === null || worthOf(quantity.unit).unit === asked) continue;
    const other = quantity.otherUnit;
    if (other === null || worthOf(other).unit !== asked) quantity.foreign = true;
    else {
      quantity.unit = other;
      quantity.echo = true;
    }
  }
  const numbers = found.filter(({ overload }) => !overload);
  const sorted = sortQuantities(pieces, numbers, found);
  if (sorted.kept.length === 0) return hearNone(pieces, sorted, found);
  const unit = asked ?? unitNamed(sorted.kept);
  if (unit === null) return unclear('nothing-understood');
  return new Figures(pieces, sorted, unit, own.decimals).hear();
}

/** A dash in front of each line is a bullet. */
function clearBullets(pieces: readonly Piece[], found: readonly Quantity[]): void {
  const listed = ({ doubtfulSign, from }: Quantity) =>
    doubtfulSign && (from === 0 || isMark(pieces[from - 1], '\n'));
  if (found.length >= 2 && found.every(listed)) for (const quantity of found) quantity.doubtfulSign = false;
}

/** No reading is awaited: a number says by its unit what it is. */
function unitNamed(quantities: readonly Quantity[]): Unit | null {
  const named = quantities.find(({ unit }) => unit !== null)?.unit;
  return named ? worthOf(named).unit : null;
}

/** "1 900", "1 300-1 400": groups of three parted by a space, where that is one figure of the stage. */
function joinThousands(pieces: readonly Piece[], found: readonly Quantity[], asked: Unit | null): Quantity[] {
  const joined: Quantity[] = [];
  for (const two of found) {
    const one = joined.at(-1);
    const head = one && one.unit === null && one.to === two.from ? pieces[one.to - 1]! : null;
    const tail = pieces[two.from];
    const fits = asked === '1/min' || two.unit === 'mV';
    const parted =
      head?.kind === 'numeral' &&
      /^[1-9]\d?$/u.test(head.text) &&
      tail?.kind === 'numeral' &&
      /^\d{3}(?:[.,]\d+)?$/u.test(tail.text);
    if (!fits || !parted || isRole(pieces[one!.from - 1], 'counted')) {
      joined.push(two);
      continue;
    }
    const [whole, fraction = ''] = tail.text.split(/[.,]/u);
    const exp = -fraction.length;
    const decimal = { digits: head.text + whole + fraction, exp, place: exp, negative: false };
    const number = { ...two.number!, numeral: null, decimal, whole: true };
    joined[joined.length - 1] = { ...one!, ...two, negative: one!.negative, from: one!.from, number };
  }
  return joined;
}

class Figures {
  readonly #pieces: readonly Piece[];
  readonly #sorted: Sorted;
  readonly #asked: Unit;
  readonly #decimals: readonly string[];

  constructor(pieces: readonly Piece[], sorted: Sorted, asked: Unit, decimals: readonly string[]) {
    this.#pieces = pieces;
    this.#sorted = sorted;
    this.#asked = asked;
    this.#decimals = decimals;
  }

  hear(): Heard {
    const { kept } = this.#sorted;
    if (this.#sorted.trailingCorrection || this.#sorted.undecided || this.#sorted.unclaimed)
      return unclear('two-meanings');
    if (kept.every(({ overload }) => overload)) return { kind: 'overload' };
    if (kept.length === 1) return this.#one(kept[0]!);
    return this.#several(kept);
  }

  #unitOf(quantity: Quantity): TypedUnit | null {
    if (quantity.unit !== null) return quantity.unit;
    const { all } = this.#sorted;
    const at = all.indexOf(quantity);
    const named = ({ unit, foreign }: Quantity) => unit !== null && !foreign;
    return (all.slice(at + 1).find(named) ?? all.slice(0, Math.max(at, 0)).findLast(named))?.unit ?? null;
  }

  #take(quantity: Quantity): Taken {
    return takeValue(quantity, this.#unitOf(quantity), this.#asked, this.#decimals);
  }

  #one(quantity: Quantity): Heard {
    const taken = this.#take(quantity);
    if (taken.kind === 'unclear') return taken;
    if (quantity.bound) return unclear('bound-only');
    if (this.#wanders() || this.#says('no-reading', 'overload')) return unclear('two-meanings');
    if (taken.bare && this.#asked === 'V' && this.#tellsMore(quantity)) return unclear('bare-figure');
    return this.#reading(taken);
  }

  /** A bare "2" in a sentence about something else is no voltage. */
  #tellsMore(quantity: Quantity): boolean {
    return this.#pieces.some((piece, at) => {
      if (at >= quantity.from && at < quantity.to) return false;
      return piece.kind === 'code' || (piece.kind === 'word' && !hasUse(piece) && !piece.sign);
    });
  }

  #reading({ value, resolution, echo }: Value & { echo: boolean }): Heard {
    const reading = { kind: 'reading', value, unit: this.#asked, resolution } as const;
    return echo || this.#sorted.corrected ? { ...reading, echo: true } : reading;
  }

  #says(...any: Parameters<typeof isRole>[1][]): boolean {
    return this.#pieces.some((piece) => isRole(piece, ...any));
  }

  #wanders(): boolean {
    return this.#pieces.some((piece, at) => isRole(piece, 'wanders') && !isWordDenied(this.#pieces, at));
  }

  #several(all: readonly Quantity[]): Heard {
    let kept = all;
    const links = kept.slice(1).map((quantity, index) => this.#pieces.slice(kept[index]!.to, quantity.from));
    if (isRangeOfMeter(kept, links)) return { kind: 'overload' };
    if (isMixed(kept) || (kept.some(({ overload }) => overload) && this.#wanders()))
      return unclear('two-meanings');
    kept = isStateLabel(this.#pieces, kept);
    kept = scaledBy(kept, links);
    const values = kept.map((quantity) => (quantity.overload ? null : this.#take(quantity)));
    const numbers = values.filter((value) => value?.kind === 'value');
    const spread = this.#spread(kept, values[0], links);
    if (spread !== null) return spread;
    const pair = kept.length === 2 && numbers.length === 2;
    if (pair) {
      const range = this.#range(kept, numbers as Extract<Taken, { kind: 'value' }>[], links[0]!);
      if (range !== null) return range;
    }
    const limits = pair ? this.#limits(kept, numbers) : null;
    if (limits !== null) return limits;
    if (pair && areExtremes(this.#pieces, kept)) return this.#span(numbers);
    const odd = values.find((value) => value?.kind === 'unclear');
    if (odd) return { kind: 'unclear', why: odd.why };
    if (
      links.flat().some((piece) => isRole(piece, 'or')) ||
      kept.some(({ bound }) => bound) ||
      isBroken(kept)
    )
      return unclear('two-meanings');
    // "0.35, maybe 0.36", "0.35? 0.36?"
    if (pair && kept[1]!.hedged && !labelled(this.#pieces, kept, this.#sorted.all))
      return unclear('two-meanings');
    if (this.#wanders()) return this.#span(numbers);
    if (this.#says('attempt') && kept.length === 2) return unclear('two-meanings');
    if (this.#says('entered') && !labelled(this.#pieces, kept, this.#sorted.all))
      return unclear('two-meanings');
    const listed = links.every((link) => looseEnds(link)) || isSequence(kept, links);
    if (!listed && !labelled(this.#pieces, kept, this.#sorted.all)) return unclear('two-meanings');
    if (pair && links[0]!.some((piece) => isMark(piece, '→'))) return unclear('two-meanings');
    return this.#series(values as (Extract<Taken, { kind: 'value' }> | null)[]);
  }

  #range(
    kept: readonly Quantity[],
    [one, two]: Extract<Taken, { kind: 'value' }>[],
    link: readonly Piece[],
  ): Heard | null {
    const [first, second] = kept as [Quantity, Quantity];
    const before = this.#pieces.slice(Math.max(0, first.from - 3), first.from);
    const between = before.some((piece) => isRole(piece, 'between'));
    const solid = link.filter(
      (piece) => !isRole(piece, 'article', 'plain', 'filler') || isRole(piece, 'to', 'joiner'),
    );
    if (between && solid.length === 1 && isRole(solid[0], 'joiner', 'to')) return this.#span([one!, two!]);
    if (this.#wanders() && !this.#says('or')) return this.#span([one!, two!]);
    // German "zu 0,46 auf 4,31": shut and open.
    const states = isRole(solid[0], 'label') && before.some((piece) => isRole(piece, 'label'));
    const linked = !states && solid.length === 1 && (isRole(solid[0], 'to') || isMark(solid[0], '-~…'));
    const typed = kept.every(({ number }) => number?.numeral && !number.whole);
    const dots = typed && solid.length >= 2 && solid.every((piece) => isMark(piece, '.'));
    if (!linked && !dots) {
      // "0.39 -0.41": a range with a careless gap, or a negative reading?
      const sign = link.length === 0 && second.negative && !first.negative;
      return sign ? unclear('sign-or-bullet') : null;
    }
    if (this.#says('change', 'past')) return unclear('two-meanings');
    return one!.value < two!.value ? this.#span([one!, two!]) : unclear('two-meanings');
  }

  /** "Min 0.34 max 0.37": one limit in front of each, and not the same one. */
  #limits(kept: readonly Quantity[], numbers: readonly (Taken | null)[]): Heard | null {
    if (this.#says('or') || !kept.every(({ bound }) => bound)) return null;
    const [one, two] = kept.map(({ from, to }) => {
      const [front, behind] = [this.#pieces[from]!, this.#pieces[to - 1]!];
      return isRole(front, 'bound') || front.kind === 'mark' ? front.text : behind.text;
    });
    const span = one === two ? null : this.#span(numbers);
    return span?.kind === 'range' ? { ...span, echo: true } : null;
  }

  /** "1450 ± 50": what follows is a width, so it may be small. */
  #spread(
    kept: readonly Quantity[],
    middle: Taken | null | undefined,
    links: readonly Piece[][],
  ): Heard | null {
    const width = kept[1]?.number;
    const typed = width?.numeral?.decimal ?? width?.decimal;
    if (kept.length !== 2 || middle?.kind !== 'value' || !typed || !isPlusMinus(links[0]!)) return null;
    const half = convert(typed, this.#unitOf(kept[1]!) ?? this.#asked, null);
    const resolution = Math.max(middle.resolution, half.resolution);
    return this.#rangeOf(
      rounded(middle.value - half.value),
      rounded(middle.value + half.value),
      resolution,
      middle.echo,
    );
  }

  #span(taken: readonly (Taken | null)[]): Heard {
    const known = taken.filter((value) => value?.kind === 'value');
    const values = known.map(({ value }) => value);
    const resolution = Math.max(...known.map((value) => value.resolution));
    return this.#rangeOf(
      Math.min(...values),
      Math.max(...values),
      resolution,
      known.some(({ echo }) => echo),
    );
  }

  #rangeOf(low: number, high: number, resolution: number, echo: boolean): Heard {
    const range = { kind: 'range', low, high, unit: this.#asked, resolution } as const;
    return echo ? { ...range, echo: true } : range;
  }

  #series(taken: readonly (Extract<Taken, { kind: 'value' }> | null)[]): Heard {
    const known = taken.filter((value) => value !== null);
    const series = {
      kind: 'series',
      values: taken.map((value) => value?.value ?? null),
      unit: this.#asked,
      resolution: Math.max(...known.map(({ resolution }) => resolution)),
    } as const;
    return known.some(({ echo }) => echo) || this.#sorted.corrected ? { ...series, echo: true } : series;
  }
}

const rounded = (value: number) => Number(value.toPrecision(12));
