// The connector: the plug from its wire side, wires in their colours, and which lead goes into which pin; for the owner.
import { z } from 'zod';
import type { WireColour } from '../procedure/machine.ts';
import { colours, frame, type } from './look.ts';
import { eye } from './marks.ts';
import type { Pen } from './pen.ts';
import { left, right, sheet } from './sheet.ts';
import { box, disc, line, path } from './svg.ts';
import { fit, wrap, write, writeLines } from './text.ts';

/** Near the usual cable colours, and each a little apart from its neighbours for eyes that tell few hues apart. */
export const wireColours = {
  black: '#1d2229',
  white: '#ffffff',
  grey: '#8f949b',
  brown: '#6f4420',
  red: '#c81e1e',
  orange: '#ee7d11',
  yellow: '#f5d90a',
  green: '#157a3a',
  'light-green': '#8fd14f',
  blue: '#1a4fb0',
  'light-blue': '#7cc0ee',
  violet: '#7d3fa8',
  pink: '#f2a3bd',
} as const satisfies Record<WireColour, string>;

const wireColourNames = Object.keys(wireColours) as [WireColour, ...WireColour[]];

export const connectorSchema = z
  .object({
    /** In place of "Throttle sensor plug". */
    title: z.string().optional(),
    /** From left to right, then the next row, as seen from the wire side. */
    pins: z
      .array(
        z.object({
          label: z.string(),
          role: z.enum(['supply', 'signal', 'ground']).nullable(),
          /** The base colour, and the stripe where there is one; empty where nobody knows. */
          colours: z.array(z.enum(wireColourNames)).max(2),
        }),
      )
      .min(1)
      .max(16),
    rows: z.union([z.literal(1), z.literal(2)]).optional(),
    /** Places in `pins` for the two leads; null, or -1, where a lead does not go into the plug. */
    red: z.number().int().min(-1).nullable(),
    black: z.number().int().min(-1).nullable(),
    /** Where the plug's latch is, if content says so: it tells left from right. */
    latch: z.enum(['up', 'down']).nullable().optional(),
  })
  .refine(({ pins, red, black }) => Math.max(red ?? 0, black ?? 0) < pins.length, {
    message: 'a lead goes into a pin that is not there',
  })
  .refine(({ pins, rows = 1 }) => pins.length <= 8 * rows, { message: 'more than eight pins in a row' });

export type ConnectorSubject = z.infer<typeof connectorSchema>;
type Pin = ConnectorSubject['pins'][number];
type Lead = 'red' | 'black';

const plug = { left: 40, right: 430 } as const;
const list = { left: 466, right } as const;

interface PinPlace {
  x: number;
  y: number;
  /** Which way the wire leaves. */
  wire: 'up' | 'down';
  /** How far out the grip of a lead sits. */
  reach: number;
}

/** Where the pins sit; the upper of two rows lets its wires go up, so that none crosses a pin. */
export function placePins(count: number, rows: 1 | 2): { places: PinPlace[]; pitch: number } {
  const perRow = Math.ceil(count / rows);
  const pitch = Math.min(112, (plug.right - plug.left - 20) / perRow);
  const middle = (plug.left + plug.right) / 2;
  const places = Array.from({ length: count }, (_, index): PinPlace => {
    const row = Math.floor(index / perRow);
    const x = middle + ((index % perRow) - (perRow - 1) / 2) * pitch;
    if (rows === 1) return { x, y: 172, wire: 'down', reach: 150 };
    return row === 0 ? { x, y: 206, wire: 'up', reach: 102 } : { x, y: 262, wire: 'down', reach: 102 };
  });
  return { places, pitch };
}

export function drawConnector(subject: ConnectorSubject, pen: Pen): string {
  const { places, pitch } = placePins(subject.pins.length, subject.rows ?? 1);
  const leadOf = (index: number): Lead | null =>
    index === subject.red ? 'red' : index === subject.black ? 'black' : null;
  return sheet(
    pen,
    subject.title ?? pen.say('connector-title'),
    null,
    housing(places, pitch, subject.latch ?? null),
    ...subject.pins.map((pin, index) => wire(pin, places[index]!, pitch, leadOf(index) !== null)),
    ...subject.pins.map((pin, index) => cavity(pin, places[index]!, pitch, leadOf(index), pen)),
    leadRow(subject, 'red', 108, pen),
    leadRow(subject, 'black', 252, pen),
    seenFrom(subject, pen),
  );
}

function housing(places: readonly PinPlace[], pitch: number, latch: 'up' | 'down' | null): string {
  const xs = places.map(({ x }) => x);
  const ys = places.map(({ y }) => y);
  const half = Math.min(56, pitch / 2 + 8);
  const x = Math.min(...xs) - half;
  const width = Math.max(...xs) + half - x;
  const y = Math.min(...ys) - 48;
  const height = Math.max(...ys) + 48 - y;
  const style = { fill: '#dcd8cd', stroke: colours.soft, 'stroke-width': 4 };
  const middle = x + width / 2;
  const tab =
    latch === null
      ? ''
      : box(middle - 36, latch === 'up' ? y - 18 : y + height - 4, 72, 22, { ...style, rx: 5 });
  return tab + box(x, y, width, height, { ...style, rx: 18 });
}

/** A wire comes out of its cavity and is cut off, a lit one further out: base colour, stripe, and an outline on any ground. */
function wire(pin: Pin, { x, y, wire: way, reach }: PinPlace, pitch: number, lit: boolean): string {
  const [base, stripe] = pin.colours;
  const half = Math.min(15, pitch * 0.2);
  const long = lit ? reach - 10 : reach - 34;
  const from = way === 'down' ? y : y - long;
  return [
    box(x - half, from, 2 * half, long, {
      fill: base === undefined ? colours.paper : wireColours[base],
      stroke: colours.ink,
      'stroke-width': 3,
      'stroke-dasharray': base === undefined ? '5 6' : undefined,
    }),
    stripe === undefined ? '' : box(x - half * 0.35, from, half * 0.7, long, { fill: wireColours[stripe] }),
  ].join('');
}

/** The cavity with its number; a lit one has a thick ring and the needle of its lead. */
function cavity(pin: Pin, place: PinPlace, pitch: number, lead: Lead | null, pen: Pen): string {
  const { x, y } = place;
  const r = Math.min(26, pitch * 0.4);
  const rim = disc(x, y, r, {
    fill: lead === null ? colours.track : colours.paper,
    stroke: lead === null ? colours.soft : colours.ink,
    'stroke-width': lead === null ? 3 : 6,
  });
  const style = { x, y: y + 8, anchor: 'middle', bold: lead !== null, max: 2 * r } as const;
  return rim + write(pen, style, pin.label) + (lead === null ? '' : needle(place, pitch, lead));
}

const leadFill = { red: wireColours.red, black: wireColours.black } as const;

/** The lead's pin goes in beside the wire; red has a round grip, black a square one, so that colour is not needed. */
function needle({ x, y, wire: way, reach }: PinPlace, pitch: number, lead: Lead): string {
  const sign = way === 'down' ? 1 : -1;
  const beside = x + Math.min(15, pitch * 0.2) + 8;
  const tip = y + sign * 10;
  const grip = y + sign * reach;
  return (
    line(beside, tip, beside, grip, { stroke: colours.paper, 'stroke-width': 11 }) +
    line(beside, tip, beside, grip, { stroke: colours.ink, 'stroke-width': 7, 'stroke-linecap': 'round' }) +
    line(beside, tip + sign * 16, beside, grip, { stroke: leadFill[lead], 'stroke-width': 3 }) +
    grips(lead, beside, grip, { fill: leadFill[lead], stroke: colours.ink, 'stroke-width': 3 })
  );
}

function grips(lead: Lead, x: number, y: number, style: Record<string, string | number>): string {
  return lead === 'red' ? disc(x, y, 17, style) : box(x - 16, y - 16, 32, 32, style);
}

/** The words beside the plug: which lead, which pin, which wire, what it carries. */
function leadRow(subject: ConnectorSubject, lead: Lead, y: number, pen: Pen): string {
  const index = subject[lead];
  const pin = index === null ? undefined : subject.pins[index];
  const x = list.left + 48;
  const max = list.right - x;
  const head =
    grips(lead, list.left + 18, y - 4, { fill: leadFill[lead], stroke: colours.ink, 'stroke-width': 3 }) +
    write(pen, { x, y: y + 6, size: type.title, bold: true, max }, pen.say(`connector-${lead}`));
  if (pin === undefined) return head + write(pen, { x, y: y + 44, max }, pen.say('connector-elsewhere'));
  const role = pin.role === null ? '' : ` · ${pen.say(`connector-${pin.role}`)}`;
  return (
    head +
    write(
      pen,
      { x, y: y + 42, size: type.body, max },
      `${pen.say('connector-pin', { pin: pin.label })}${role}`,
    ) +
    writeLines(pen, { x, y: y + 74, max }, wrap(pen, wireWords(pin, pen), type.small, false, max, 2), 30)
  );
}

function wireWords(pin: Pick<Pin, 'colours'>, pen: Pen): string {
  const [base, stripe] = pin.colours;
  if (base === undefined) return pen.say('connector-wire-unknown');
  const name = pen.say(`connector-colour-${base}`);
  return stripe === undefined
    ? pen.say('connector-wire', { base: name })
    : pen.say('connector-wire-striped', { base: name, stripe: pen.say(`connector-colour-${stripe}`) });
}

function seenFrom(subject: ConnectorSubject, pen: Pen): string {
  const y = frame.height - 26;
  const said = subject.latch ? pen.say(`connector-seen-latch-${subject.latch}`) : pen.say('connector-seen');
  const { text } = fit(pen, pen.clean(said), type.body, true, right - left - 48);
  return (
    path(`M${left} ${y - 38}H${right}`, { stroke: colours.rule, 'stroke-width': 2, fill: 'none' }) +
    eye(left + 18, y - 8, 17) +
    write(pen, { x: left + 48, y, size: type.body, bold: true, max: right - left - 48 }, text)
  );
}

export function describeConnector(subject: ConnectorSubject, pen: Pen): string {
  const lead = (which: Lead) => {
    const index = subject[which];
    const pin = index === null ? undefined : subject.pins[index];
    return pin === undefined
      ? pen.say('connector-elsewhere')
      : `${pen.say('connector-pin', { pin: pin.label })}, ${wireWords(pin, pen)}`;
  };
  return pen.say('connector-alternative', {
    title: subject.title ?? pen.say('connector-title'),
    red: lead('red'),
    black: lead('black'),
  });
}
