// Part and sense: which part to turn, which way as the hand sees it, and how far; for the owner.
import { z } from 'zod';
import { amountWords, digitsSchema, figureSchema, moveSchema } from './amounts.ts';
import { colours, frame, type } from './look.ts';
import { eye, turnArrow } from './marks.ts';
import { cableFace, face, factoryStop, partKinds } from './part-faces.ts';
import type { Pen } from './pen.ts';
import { left, right, sheet } from './sheet.ts';
import { box, line, onCircle } from './svg.ts';
import { wrap, write, writeLines } from './text.ts';

export const partMoveSchema = z.object({
  /** The part's name, as the title. */
  title: z.string(),
  kind: z.enum(partKinds),
  move: moveSchema,
  /** The sense as seen facing the part; null where content does not say, or nothing turns. */
  turn: z.enum(['clockwise', 'counter-clockwise']).nullable(),
  /** Where the part sits. */
  where: z.string().nullable().optional(),
  /** Its face looks down: the owner looks up at it from below, and "clockwise" is seen from there. */
  upsideDown: z.boolean(),
  /** The band to watch for on the meter while turning. */
  until: z
    .object({ low: figureSchema, high: figureSchema, digits: digitsSchema, unit: z.string() })
    .nullable()
    .optional(),
  /** What the move does to the reading, where that is known. */
  effect: z.enum(['raises', 'lowers']).nullable().optional(),
  /** Shows the plate's own factory stop as never to be touched. */
  factoryStop: z.boolean(),
});

export type PartMoveSubject = z.infer<typeof partMoveSchema>;

const middle = { x: 222, y: 240, r: 104 } as const;
const words = { left: 440, width: right - 440 } as const;

export function drawPart(subject: PartMoveSubject, pen: Pen): string {
  return sheet(
    pen,
    subject.title,
    null,
    drawFace(subject),
    says(subject, pen),
    subject.factoryStop ? neverTouched(pen) : '',
  );
}

/** How far the arrow reaches: turns as they are; a click a thirtieth of a circle each; a nudge just a hair. */
export function arrowDegrees({ move, turn }: Pick<PartMoveSubject, 'move' | 'turn'>): number {
  if (turn === null) return 0;
  const sign = turn === 'clockwise' ? 1 : -1;
  switch (move.unit) {
    case 'turn':
      return sign * Math.min(330, Math.max(40, move.amount * 360));
    case 'click':
      return sign * Math.min(330, Math.max(40, move.amount * 30));
    case 'nudge':
    case 'mm':
      return sign * Math.min(90, 40 + 8 * (move.amount - 1));
  }
}

function drawFace(subject: PartMoveSubject): string {
  const { x, y, r } = middle;
  if (subject.kind === 'cable') return cableFace(x, y + 20, subject.move.direction === 'more');
  const degrees = arrowDegrees(subject);
  const long = r + 26;
  const [startX, startY] = onCircle(x, y, long - 14, 0);
  return [
    face(subject.kind, x, y, r),
    degrees === 0
      ? ''
      : turnArrow(x, y, long, degrees, colours.adjust, 14) +
        line(startX, startY, startX, startY - 28, { stroke: colours.adjust, 'stroke-width': 6 }),
    subject.move.unit === 'click' ? clickTicks(x, y, r) : '',
  ].join('');
}

function clickTicks(x: number, y: number, r: number): string {
  return Array.from({ length: 12 }, (_, index) => {
    const [x1, y1] = onCircle(x, y, r + 6, index * 30);
    const [x2, y2] = onCircle(x, y, r + 14, index * 30);
    return line(x1, y1, x2, y2, { stroke: colours.soft, 'stroke-width': 3 });
  }).join('');
}

/** How much and which way, large; then what to watch, where the part is, and from where it is seen. */
function says(subject: PartMoveSubject, pen: Pen): string {
  const { move, turn, until, effect, where } = subject;
  const x = words.left;
  const max = words.width;
  const loud = { x, bold: true, max, fill: colours.adjust } as const;
  const turned = move.direction === turn;
  const amount = amountWords(pen, move);
  const drawn: string[] = [
    write(
      pen,
      { ...loud, y: 122, size: type.loud },
      turned ? amount : pen.say('part-amount', { amount, way: pen.say(`part-way-${move.direction}`) }),
    ),
  ];
  let y = 122;
  if (turn !== null) {
    y += 40;
    drawn.push(write(pen, { ...loud, y, size: type.title }, pen.say(`part-way-${turn}`)));
  }
  y += 8;
  const put = (text: string, style: { bold?: boolean; fill?: string }) => {
    const rows = wrap(pen, text, type.small, style.bold ?? false, max, 2);
    drawn.push(writeLines(pen, { x, y: y + 32, max, ...style }, rows, 28));
    y += 8 + rows.length * 28;
  };
  if (until) {
    const shown = (value: number) => pen.figure(value, until.digits);
    put(pen.say('part-until', { low: shown(until.low), high: shown(until.high), unit: until.unit }), {
      bold: true,
    });
  } else if (effect) {
    put(pen.say(`part-${effect}`), { bold: true });
  }
  if (where) put(where, { fill: colours.soft });
  if (turn !== null) {
    const seen = pen.say(subject.upsideDown ? 'part-seen-below' : 'part-seen-facing');
    const rows = wrap(pen, seen, type.small, false, max - sight - 14, 2);
    drawn.push(
      subject.upsideDown ? seenFromBelow(x, y + 44) : seenFacing(x, y + 38),
      writeLines(
        pen,
        { x: x + sight + 14, y: y + (rows.length === 1 ? 46 : 32), max: max - sight - 14 },
        rows,
        28,
      ),
    );
  }
  return drawn.join('');
}

/** How wide the small side view is that says from where the part is seen. */
const sight = 84;
const dashes = { stroke: colours.ink, 'stroke-width': 2, 'stroke-dasharray': '4 4' };
const steel = { fill: '#8b929c', stroke: colours.ink, 'stroke-width': 2 };

/** The part from the side, its face to the eye. */
function seenFacing(x: number, y: number): string {
  return (
    box(x, y - 6, 20, 12, steel) +
    box(x + 18, y - 15, 12, 30, steel) +
    line(x + 33, y, x + 52, y, dashes) +
    eye(x + 67, y, 15)
  );
}

/** The part hanging, its face down, the eye below it. */
function seenFromBelow(x: number, y: number): string {
  const middle = x + sight / 2;
  return (
    box(middle - 6, y - 34, 12, 18, steel) +
    box(middle - 15, y - 18, 30, 10, steel) +
    line(middle, y - 6, middle, y + 10, dashes) +
    eye(middle, y + 22, 15)
  );
}

function neverTouched(pen: Pen): string {
  const y = frame.height - 42;
  return (
    box(left, y - 28, right - left, 56, { fill: colours.track, rx: 10 }) +
    factoryStop(left + 38, y, 22) +
    write(
      pen,
      {
        x: left + 78,
        y: y + 8,
        size: type.body,
        bold: true,
        max: right - left - 96,
        fill: colours.implausible,
      },
      pen.say('part-factory-stop'),
    )
  );
}

export function describePart(subject: PartMoveSubject, pen: Pen): string {
  return pen.say('part-alternative', {
    title: subject.title,
    amount: amountWords(pen, subject.move),
    way: pen.say(`part-way-${subject.turn ?? subject.move.direction}`),
  });
}
