// Part and sense: which part to turn, which way as the hand sees it, and how far; for the owner.
import { z } from 'zod';
import { type Part, partIds } from '../procedure/vocabulary.ts';
import { amountWords, digitsSchema, figureSchema, moveSchema, type PicturedMove } from './amounts.ts';
import { colours, frame, type } from './look.ts';
import { eye, turnArrow } from './marks.ts';
import { cableFace, face, factoryStop, type PartKind } from './part-faces.ts';
import type { Pen } from './pen.ts';
import { left, right, sheet } from './sheet.ts';
import { box, line, onCircle } from './svg.ts';
import { wrap, write, writeLines } from './text.ts';

export const partMoveSchema = z.object({
  part: z.enum(partIds),
  /** In place of the part's usual name. */
  title: z.string().optional(),
  /** Left out where the part is only pointed out. */
  move: moveSchema.nullable().optional(),
  /** The sense as seen facing the part, where content knows better than the thread; null where it must not be said. */
  turn: z.enum(['clockwise', 'counter-clockwise']).nullable().optional(),
  /** Where the part sits. */
  where: z.string().nullable().optional(),
  /** Its face looks down: the owner looks up at it from below, and "clockwise" is seen from there. */
  upsideDown: z.boolean().optional(),
  /** The band to watch for on the meter while turning. */
  until: z
    .object({ low: figureSchema, high: figureSchema, digits: digitsSchema, unit: z.string() })
    .nullable()
    .optional(),
  /** What the move does to the reading, where that is known. */
  effect: z.enum(['raises', 'lowers']).nullable().optional(),
});

export type PartMoveSubject = z.infer<typeof partMoveSchema>;

const faces: Record<Part, PartKind> = {
  'sensor-body': 'sensor',
  'upper-screw': 'screw',
  'lower-screw': 'screw',
  'idle-stop': 'screw',
  'fast-idle': 'knob',
  cable: 'cable',
  'chain-adjuster': 'screw',
  'preload-collar': 'collar',
};

/** Parts on a right-hand thread, driven in by turning clockwise (common practice, no source). */
const threaded: readonly Part[] = ['upper-screw', 'lower-screw', 'idle-stop', 'fast-idle'];

/** The sense of a move as seen facing the part; null where nothing turns or nobody knows. */
export function senseOf({ part, move, turn }: PartMoveSubject): 'clockwise' | 'counter-clockwise' | null {
  if (!move || turn !== undefined) return turn ?? null;
  if (move.direction === 'clockwise' || move.direction === 'counter-clockwise') return move.direction;
  if (!threaded.includes(part)) return null;
  return move.direction === 'in' ? 'clockwise' : move.direction === 'out' ? 'counter-clockwise' : null;
}

const middle = { x: 222, y: 226, r: 104 } as const;
const words = { left: 440, width: right - 440 } as const;

export function drawPart(subject: PartMoveSubject, pen: Pen): string {
  return sheet(
    pen,
    subject.title ?? pen.say(`part-name-${subject.part}`),
    null,
    drawFace(subject),
    says(subject, pen),
    // Owners take the one for the other.
    subject.part === 'idle-stop' ? neverTouched(pen) : '',
  );
}

/** How far the arrow reaches: turns as they are; a click a twelfth of a circle; a nudge just a hair. */
export function arrowDegrees(subject: PartMoveSubject): number {
  const { move } = subject;
  const sense = senseOf(subject);
  if (!move || sense === null) return 0;
  const sign = sense === 'clockwise' ? 1 : -1;
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
  const kind = faces[subject.part];
  if (kind === 'cable') return cableFace(x, y + 20, subject.move?.direction ?? null);
  const degrees = arrowDegrees(subject);
  const long = r + 26;
  const [startX, startY] = onCircle(x, y, long - 14, 0);
  return [
    face(kind, x, y, r),
    degrees === 0
      ? ''
      : turnArrow(x, y, long, degrees, colours.adjust, 14) +
        line(startX, startY, startX, startY - 28, { stroke: colours.adjust, 'stroke-width': 6 }),
    subject.move?.unit === 'click' ? clickTicks(x, y, r) : '',
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
  const { move, until, effect, where } = subject;
  const x = words.left;
  const max = words.width;
  const loud = { x, bold: true, max, fill: colours.adjust } as const;
  const turn = senseOf(subject);
  const drawn: string[] = [];
  let y = 76;
  if (move) {
    y = 122;
    drawn.push(write(pen, { ...loud, y, size: type.loud }, moveWords(move, turn, pen)));
    if (turn !== null) {
      y += 40;
      drawn.push(write(pen, { ...loud, y, size: type.title }, pen.say(`part-way-${turn}`)));
    }
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
  if (where) put(where, move ? { fill: colours.soft } : { bold: true });
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

/** "¼ turn in"; where the sense is the whole direction, the sense has a line of its own. */
function moveWords(move: PicturedMove, turn: 'clockwise' | 'counter-clockwise' | null, pen: Pen): string {
  const amount = amountWords(pen, move);
  if (move.direction === turn) return amount;
  return pen.say('part-amount', { amount, way: pen.say(`part-way-${move.direction}`) });
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
  const { move, where } = subject;
  const title = subject.title ?? pen.say(`part-name-${subject.part}`);
  if (!move) return pen.say('part-alternative-where', { title, where: where ?? '–' });
  const turn = senseOf(subject);
  const moved = moveWords(move, turn, pen);
  return pen.say('part-alternative', {
    title,
    move: turn === null ? moved : `${moved}, ${pen.say(`part-way-${turn}`)}`,
  });
}
