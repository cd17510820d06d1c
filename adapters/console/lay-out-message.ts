// Lays a message out for a person at a terminal: wrapped, with numbered choices, the desk and the channel set off by a margin.
import { isDeepStrictEqual } from 'node:util';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';

/** Colours what it is given, or leaves it as it is. */
export type Paint = (kind: 'margin' | 'number' | 'aside', text: string) => string;

export interface LaidOut {
  text: string;
  /** Where the choices of this message are to be looked up: an owner's seat, the desk's, or a case's. */
  seat: string;
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
// Han, Hangul, kana and emoji take two columns of a terminal.
const wide = /[\p{Script=Han}\p{Script=Hangul}\p{Script=Hiragana}\p{Script=Katakana}\p{Emoji_Presentation}]/u;
const askedFigure = new Set(['reading', 'readings', 'count', 'target']);

/**
 * `before` are the choices with which this message was last shown, null where it is new here. A card is long and often
 * changed, so of one that stands there already only that is said, and which choices it has now where they are others.
 */
export function layOutMessage(
  message: OutgoingMessage,
  columns: number,
  picture: string | null,
  paint: Paint,
  before: OutgoingMessage['choices'] | null = null,
): LaidOut {
  const { to } = message;
  const seat = seatOf(message);
  const margin = to.kind === 'owner' ? '  ' : `${to.kind === 'tips' ? 'channel' : seat} | `;
  const room = Math.max(20, Math.min(columns, 80) - widthOf(margin) - 1);
  const isKnownCard = message.edit > 0 && to.kind === 'desk' && before !== null;
  const words = plain(message.text)
    .split('\n')
    .flatMap((line) => wrap(line, room));
  const changed = message.edit > 0 ? [paint('aside', isKnownCard ? '(card changed)' : '(changed)')] : [];
  const lines = isKnownCard ? changed : [...changed, ...words];
  const choices = isKnownCard && isDeepStrictEqual(before, message.choices) ? [] : message.choices;
  if (picture !== null) lines.push(paint('aside', `Picture: ${plain(picture)}`));
  // A bare figure is a reading where one is asked for, so there a choice needs its mark.
  const mark = to.kind !== 'owner' || asksFigure(message) ? '#' : '';
  choices.forEach(({ label }, index) => {
    const number = `${mark}${index + 1}`;
    const [first = '', ...rest] = wrap(plain(label), room - number.length - 2);
    lines.push(`${paint('number', number)}  ${first}`);
    for (const line of rest) lines.push(' '.repeat(number.length + 2) + line);
  });
  const shown = to.kind === 'owner' ? margin : paint('margin', margin);
  const text = lines.map((line) => (shown + line).trimEnd()).join('\n');
  return { text, seat };
}

export function asksFigure(message: OutgoingMessage): boolean {
  return askedFigure.has(message.facts.ask?.kind ?? '');
}

function seatOf({ to }: OutgoingMessage): string {
  if (to.kind !== 'desk') return to.kind;
  return to.caseId === null ? 'desk' : `desk ${to.caseId}`;
}

/** What a person typed must not steer the terminal of another. */
function plain(text: string): string {
  return text.replace(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/g, ' ');
}

/** Lines of at most `room` columns, broken at spaces; a longer word is cut. */
export function wrap(line: string, room: number): string[] {
  const indent = /^ */.exec(line)?.[0] ?? '';
  const lines: string[] = [];
  let current = indent;
  for (const word of line.trim().split(/ +/)) {
    const glued = current.trim() === '' ? current + word : `${current} ${word}`;
    if (widthOf(glued) <= room) {
      current = glued;
      continue;
    }
    if (current.trim() !== '') lines.push(current);
    const pieces = cut(word, room - indent.length);
    lines.push(...pieces.slice(0, -1).map((piece) => indent + piece));
    current = indent + (pieces.at(-1) ?? '');
  }
  return [...lines, current];
}

function cut(word: string, room: number): string[] {
  const pieces = [''];
  for (const { segment } of graphemes.segment(word)) {
    const last = pieces.at(-1) ?? '';
    if (widthOf(last + segment) > room && last !== '') pieces.push(segment);
    else pieces[pieces.length - 1] = last + segment;
  }
  return pieces;
}

export function widthOf(text: string): number {
  let width = 0;
  for (const { segment } of graphemes.segment(text)) width += wide.test(segment) ? 2 : 1;
  return width;
}
