// The upright value axis with its band, which approach and sweep share: limits in bold, round ticks where there is room.
import { colours, type } from './look.ts';
import type { Pen } from './pen.ts';
import { type Limits, limitDigits, linear, placeLabels, type Span, ticks } from './scale.ts';
import { box, line } from './svg.ts';
import { write } from './text.ts';

export interface Plot {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Draws the axis and gives the scale; a value beyond the axis is placed on its end, and `beyond` says which. */
export function valueAxis(
  pen: Pen,
  plot: Plot,
  domain: Span,
  limits: Limits & { digits: number },
  /** Room above and below for figures beside the outermost readings. */
  inset = 0,
): { drawn: string; y: (value: number) => number; beyond: (value: number) => -1 | 0 | 1 } {
  const scale = linear(domain, [plot.bottom - inset, plot.top + inset]);
  const y = (value: number) => Math.min(Math.max(scale(value), plot.top), plot.bottom);
  const { low, high, target } = limits;
  const digits = limitDigits(limits, limits.digits);
  const bold = [high, low].filter((limit) => limit !== null);
  const height = type.body;
  const places = placeLabels(
    bold.map((limit) => ({ at: y(limit), width: height })),
    4,
    [plot.top - 12, plot.bottom + 12],
  );
  const round = ticks(domain, 5);
  const shown = (tick: number) =>
    pen.figure(tick, bold.length > 0 ? Math.max(round.digits, digits) : round.digits);
  const spare = round.values.filter((tick) =>
    places.every((place) => Math.abs(place - y(tick)) > height + 6),
  );
  const edge = { stroke: colours.bandEdge, 'stroke-width': 3 };
  const label = { x: plot.left - 12, anchor: 'end', max: plot.left - 24 } as const;
  const drawn = [
    box(plot.left, plot.top, plot.right - plot.left, plot.bottom - plot.top, { fill: colours.track }),
    low === null && high === null
      ? ''
      : box(
          plot.left,
          high === null ? plot.top : y(high),
          plot.right - plot.left,
          (low === null ? plot.bottom : y(low)) - (high === null ? plot.top : y(high)),
          { fill: colours.band },
        ),
    ...spare.map(
      (tick) =>
        line(plot.left, y(tick), plot.right, y(tick), { stroke: colours.rule, 'stroke-width': 2 }) +
        write(pen, { ...label, y: y(tick) + 8, fill: colours.soft }, shown(tick)),
    ),
    ...bold.map((limit) => line(plot.left, y(limit), plot.right, y(limit), edge)),
    typeof target === 'number'
      ? line(plot.left, y(target), plot.right, y(target), { ...edge, 'stroke-dasharray': '4 8' })
      : '',
    ...bold.map((limit, index) =>
      write(
        pen,
        { ...label, y: places[index]! + 8, bold: true, fill: colours.bandEdge },
        pen.figure(limit, digits),
      ),
    ),
  ].join('');
  return {
    drawn,
    y,
    beyond: (value) => (value < domain[0] ? -1 : value > domain[1] ? 1 : 0),
  };
}
