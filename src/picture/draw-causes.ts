// The causes: how likely each is, as bars, with what speaks for and against it; for the desk.
import { z } from 'zod';
import { colours, frame, type } from './look.ts';
import type { Pen } from './pen.ts';
import { left, right, sheet } from './sheet.ts';
import { box } from './svg.ts';
import { fit, write } from './text.ts';

export const causesSchema = z.object({
  title: z.string(),
  /** Most probable first. */
  rows: z.array(
    z.object({
      name: z.string(),
      probability: z.number().min(0).max(1),
      evidence: z.array(z.object({ text: z.string(), speaks: z.enum(['for', 'against']) })),
    }),
  ),
});

export type CausesSubject = z.infer<typeof causesSchema>;
type Row = CausesSubject['rows'][number];

const most = 4;
const top = 88;
const pitch = 84;
const shareWidth = 92;

export function drawCauses(subject: CausesSubject, pen: Pen): string {
  const rows = subject.rows.slice(0, most);
  const rest = subject.rows.slice(most);
  const restShare = rest.reduce((sum, { probability }) => sum + probability, 0);
  return sheet(
    pen,
    subject.title,
    null,
    rows.length === 0
      ? write(pen, { x: left, y: 140, size: type.title, max: right - left }, pen.say('causes-none'))
      : '',
    ...rows.map((row, index) => drawRow(row, top + index * pitch, pen)),
    rest.length === 0
      ? ''
      : write(
          pen,
          { x: left, y: frame.height - 18, fill: colours.soft, max: right - left },
          pen.say('causes-rest', { count: rest.length, share: pen.percent(restShare) }),
        ),
  );
}

function drawRow(row: Row, y: number, pen: Pen): string {
  const x = left + shareWidth;
  const width = right - x;
  return [
    write(
      pen,
      { x: x - 14, y: y + 30, size: type.title, bold: true, anchor: 'end', max: shareWidth - 10 },
      pen.percent(row.probability),
    ),
    write(pen, { x, y: y + 18, size: type.body, bold: true, max: width }, row.name),
    box(x, y + 26, width, 12, { fill: colours.track }),
    box(x, y + 26, width * row.probability, 12, { fill: colours.bandEdge }),
    evidence(row, x, y + 64, width, pen),
  ].join('');
}

/** What speaks for the cause with a plus, against it with a minus; as many as the line holds, the rest as a number. */
function evidence(row: Row, x: number, y: number, width: number, pen: Pen): string {
  const drawn: string[] = [];
  let at = x;
  for (const [index, { text, speaks }] of row.evidence.entries()) {
    const others = row.evidence.length - index;
    const more = (count: number) => pen.clean(pen.say('causes-more', { count }));
    const tail = others > 1 ? pen.width(more(others - 1), type.small, false) + 24 : 0;
    const room = x + width - at - tail;
    const said = `${speaks === 'for' ? '+' : '−'} ${pen.clean(text)}`;
    if (index > 0 && pen.width(said, type.small, false) > room) {
      drawn.push(write(pen, { x: at, y, fill: colours.soft }, more(others)));
      break;
    }
    const fitted = fit(pen, said, type.small, false, room);
    drawn.push(write(pen, { x: at, y, fill: speaks === 'for' ? colours.ink : colours.adjust }, fitted.text));
    at += fitted.width + 24;
  }
  return drawn.join('');
}

export function describeCauses(subject: CausesSubject, pen: Pen): string {
  const first = subject.rows[0];
  return first === undefined
    ? pen.say('causes-none')
    : pen.say('causes-alternative', {
        count: subject.rows.length,
        name: first.name,
        share: pen.percent(first.probability),
      });
}
