// Turns a predictor of content into a line over the healthy signal and the supply, so that two causes can be laid over each other.
import type { Predictor } from '../procedure/fault.ts';

/** One of the ways in which a reading may come out: signal·x + supply·S + offset, within `give`, with `spread`. */
export interface Way {
  share: number;
  form: 'number' | 'overload' | 'blank';
  signal: number;
  supply: number;
  offset: number;
  give: number;
  /** A half-width that grows with the signal. */
  giveOfSignal: number;
  spread: number;
  /** Whether the reading follows the throttle (1), runs against it (-1) or stands still (0). */
  follows: number;
  /** How far a reading wanders that does not stand still. */
  wander: number;
  /** Falls away at some angles. */
  broken: boolean;
  /** The meter shows an overload above this. */
  above: number;
  /** What the last digit is worth where there are too few; 0 where that is not so. */
  digit: number;
  /** The machine is set as it should be. */
  right: boolean;
}

const plain: Way = {
  share: 1,
  form: 'number',
  signal: 1,
  supply: 0,
  offset: 0,
  give: 0,
  giveOfSignal: 0,
  spread: 0,
  follows: 1,
  wander: 0,
  broken: false,
  above: Number.POSITIVE_INFINITY,
  digit: 0,
  right: false,
};

export const healthyWay: readonly Way[] = [plain];

function way(share: number, changes: Partial<Way>): Way {
  return { ...plain, share, ...changes };
}

export function waysOf(predictor: Predictor, supplyMeasured: boolean): Way[] {
  const { share } = predictor;
  const still = { signal: 0, follows: 0 };
  switch (predictor.kind) {
    case 'same':
      return [way(share, { spread: predictor.spread })];
    case 'right':
      return [way(share, { spread: predictor.spread, right: true })];
    case 'mis-set':
      return [way(share, { give: predictor.give, right: true })];
    case 'shifted':
      return [way(share, { offset: predictor.by, give: predictor.give, spread: predictor.spread })];
    case 'scaled':
      return [
        way(share, {
          signal: predictor.by,
          follows: Math.sign(predictor.by),
          giveOfSignal: predictor.give,
          spread: predictor.spread,
        }),
      ];
    case 'follows-supply': {
      if (supplyMeasured) return [way(share, {})];
      return [way(share, { signal: predictor.by, giveOfSignal: predictor.give, spread: predictor.spread })];
    }
    case 'negated':
      return [way(share, { signal: -1, follows: -1, spread: predictor.spread })];
    case 'constant':
      return [way(share, { ...still, offset: predictor.at, give: predictor.give, spread: predictor.spread })];
    case 'supply':
      return [way(share, { ...still, supply: 1, spread: predictor.spread })];
    case 'negative-supply':
      return [way(share, { ...still, supply: -1, spread: predictor.spread })];
    case 'supply-minus':
      return [way(share, { signal: -1, follows: -1, supply: 1, spread: predictor.spread })];
    case 'less-supply':
      return [way(share, { supply: -1, spread: predictor.spread })];
    case 'wandering':
      return predictor.at === undefined
        ? [way(share, { wander: predictor.width })]
        : [way(share, { ...still, offset: predictor.at, wander: predictor.width })];
    case 'drop-out':
      return [way(share, { ...still, offset: predictor.to, spread: predictor.spread, broken: true })];
    case 'over-range':
      return [way(share, { above: predictor.above })];
    case 'coarse':
      return [way(share, { digit: predictor.digit })];
    case 'bar-angle':
      return [
        way(share * 0.9, { offset: predictor.by / 2, give: predictor.by / 2 }),
        way(share * 0.1, { offset: predictor.by / 2, wander: predictor.by }),
      ];
    case 'frozen':
      return [way(share, { give: predictor.give, follows: 0 })];
    case 'anything': {
      const half = (predictor.to - predictor.from) / 2;
      return [way(share, { ...still, follows: 1, offset: predictor.from + half, give: half })];
    }
    case 'overload':
      return [way(share, { ...still, form: 'overload' })];
    case 'blank':
      return [way(share, { ...still, form: 'blank' })];
  }
}

/** The second fault acts on what the first one left. */
export function layOver(first: readonly Way[], second: readonly Way[]): Way[] {
  return first.flatMap((a) =>
    second.map((b): Way => {
      const share = a.share * b.share;
      if (b.form !== 'number') return { ...b, share };
      if (a.form !== 'number') return { ...a, share };
      const size = Math.abs(b.signal);
      return {
        share,
        form: 'number',
        signal: b.signal * a.signal,
        supply: b.signal * a.supply + b.supply,
        offset: b.signal * a.offset + b.offset,
        give: size * a.give + b.give,
        giveOfSignal: size * a.giveOfSignal + b.giveOfSignal * Math.abs(a.signal),
        spread: Math.hypot(size * a.spread, b.spread),
        follows: a.follows * b.follows,
        wander: size * a.wander + b.wander,
        broken: a.broken || b.broken,
        above: Math.min(a.above, b.above),
        digit: Math.max(a.digit, b.digit),
        right: a.right && b.right,
      };
    }),
  );
}
