// Faces of the parts that a hand turns, seen as the hand sees them: screw, knob, sensor, collar, cable; for part-and-sense.
import { colours } from './look.ts';
import { arrowHead } from './marks.ts';
import { box, disc, line, onCircle, shape } from './svg.ts';

export type PartKind = 'screw' | 'knob' | 'sensor' | 'collar' | 'cable';

const outline = { stroke: colours.ink, 'stroke-width': 4, 'stroke-linejoin': 'round' } as const;
const metal = '#d3d6da';
const plastic = '#5b626c';

/** A part within a circle of this radius about the point. */
export function face(kind: PartKind, cx: number, cy: number, r: number): string {
  switch (kind) {
    case 'screw':
      return screw(cx, cy, r * 0.86);
    case 'knob':
      return knob(cx, cy, r * 0.92);
    case 'sensor':
      return sensor(cx, cy, r);
    case 'collar':
      return collar(cx, cy, r);
    case 'cable':
      return '';
  }
}

function screw(cx: number, cy: number, r: number): string {
  return (
    disc(cx, cy, r, { ...outline, fill: metal }) +
    disc(cx, cy, r * 0.8, { fill: 'none', stroke: colours.edge, 'stroke-width': 2 }) +
    box(cx - r * 0.7, cy - r * 0.11, r * 1.4, r * 0.22, { fill: colours.ink })
  );
}

function knob(cx: number, cy: number, r: number): string {
  const ridges = Array.from({ length: 24 }, (_, index) => {
    const [x1, y1] = onCircle(cx, cy, r * 0.84, index * 15);
    const [x2, y2] = onCircle(cx, cy, r, index * 15);
    return line(x1, y1, x2, y2, { stroke: colours.paper, 'stroke-width': 5 });
  });
  return (
    disc(cx, cy, r, { ...outline, fill: plastic }) +
    ridges.join('') +
    disc(cx, cy, r * 0.74, { ...outline, fill: '#8b929c' }) +
    disc(cx, cy, r * 0.12, { fill: colours.ink })
  );
}

/** The body with two slotted ears and their screws; its plug hangs at the bottom. */
function sensor(cx: number, cy: number, r: number): string {
  const ear = (side: -1 | 1) => {
    const x = cx + side * r * 0.78;
    return (
      box(x - r * 0.26, cy - r * 0.36, r * 0.52, r * 0.72, { ...outline, fill: plastic, rx: r * 0.2 }) +
      box(x - r * 0.11, cy - r * 0.27, r * 0.22, r * 0.54, { fill: colours.paper, rx: r * 0.11 }) +
      disc(x, cy, r * 0.16, { ...outline, 'stroke-width': 3, fill: metal }) +
      line(x - r * 0.1, cy, x + r * 0.1, cy, { stroke: colours.ink, 'stroke-width': 4 })
    );
  };
  return (
    box(cx - r * 0.26, cy + r * 0.4, r * 0.52, r * 0.56, { ...outline, fill: plastic, rx: 6 }) +
    ear(-1) +
    ear(1) +
    disc(cx, cy, r * 0.58, { ...outline, fill: '#8b929c' }) +
    disc(cx, cy, r * 0.24, { ...outline, 'stroke-width': 3, fill: metal }) +
    line(cx, cy - r * 0.58, cx, cy - r * 0.36, { stroke: colours.paper, 'stroke-width': 6 })
  );
}

function collar(cx: number, cy: number, r: number): string {
  const notches = Array.from({ length: 8 }, (_, index) => {
    const [x, y] = onCircle(cx, cy, r * 0.92, index * 45 + 22);
    return disc(x, y, r * 0.12, { fill: colours.paper, stroke: colours.ink, 'stroke-width': 3 });
  });
  return (
    disc(cx, cy, r * 0.92, { ...outline, fill: metal }) +
    notches.join('') +
    disc(cx, cy, r * 0.52, { ...outline, fill: colours.paper }) +
    disc(cx, cy, r * 0.3, { ...outline, fill: plastic })
  );
}

/** A cable's end in its adjuster: the gap is the free play, the arrows say whether it grows. */
export function cableFace(cx: number, cy: number, direction: string | null): string {
  const gap = 56;
  const start = cx - gap / 2;
  const end = cx + gap / 2;
  const stroke = colours.adjust;
  const reach = 52;
  const arrow = (x: number, way: -1 | 1) =>
    line(x - way * reach, cy - 84, x - way * 6, cy - 84, { stroke, 'stroke-width': 10 }) +
    arrowHead(x, cy - 84, way * 90, 28, stroke);
  return [
    line(cx - 180, cy, cx + 180, cy, { stroke: colours.ink, 'stroke-width': 8 }),
    box(cx - 180, cy - 24, start - (cx - 180), 48, { ...outline, fill: plastic, rx: 8 }),
    box(start - 34, cy - 38, 34, 76, { ...outline, fill: metal }),
    box(end, cy - 38, 34, 76, { ...outline, fill: metal }),
    shape(
      [
        [end + 34, cy - 24],
        [cx + 170, cy - 14],
        [cx + 170, cy + 14],
        [end + 34, cy + 24],
      ],
      { ...outline, fill: '#8b929c' },
    ),
    line(start, cy - 110, start, cy - 46, { stroke: colours.soft, 'stroke-width': 2 }),
    line(end, cy - 110, end, cy - 46, { stroke: colours.soft, 'stroke-width': 2 }),
    direction === 'more' ? arrow(start - reach, -1) + arrow(end + reach, 1) : '',
    direction === 'less' ? arrow(start, 1) + arrow(end, -1) : '',
  ].join('');
}

/** The plate's own stop: a screw with a dab of paint over its end, crossed out. */
export function factoryStop(cx: number, cy: number, r: number): string {
  return (
    box(cx - r * 0.7, cy - r * 0.18, r * 0.9, r * 0.36, {
      fill: metal,
      stroke: colours.ink,
      'stroke-width': 2,
    }) +
    disc(cx + r * 0.22, cy, r * 0.44, { fill: '#e2b714', stroke: colours.ink, 'stroke-width': 2 }) +
    disc(cx, cy, r, { fill: 'none', stroke: colours.implausible, 'stroke-width': 5 }) +
    line(cx - r * 0.7, cy - r * 0.7, cx + r * 0.7, cy + r * 0.7, {
      stroke: colours.implausible,
      'stroke-width': 5,
    })
  );
}
