// Turns one of our messages into the parts that Telegram takes, each within its limits and free of markup and mentions.
import type { InlineKeyboardButton } from 'grammy/types';
import type { Choice, OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { encodePress } from '../wire/press.ts';
import { splitByLimits } from '../wire/split-text.ts';
import { encodeStart, readStartChoice } from '../wire/start-link.ts';

const textLimit = 4096;
const captionLimit = 1024;
const dataLimit = 64;

/** Telegram lets a button's label run over; on a phone about so many characters fit beside each other. */
const rowWidth = 26;
const mostInARow = 3;

export interface Part {
  kind: 'text' | 'photo';
  text: string;
  buttons: InlineKeyboardButton[][];
}

export function encode(message: OutgoingMessage, hasPicture: boolean, username: string): Part[] {
  const limitOf = (piece: number) => (hasPicture && piece === 0 ? captionLimit : textLimit);
  const pieces = splitByLimits(keepPlain(message), limitOf);
  if (pieces.length === 0 && hasPicture) pieces.push('');
  const buttons = encodeButtons(message, username);
  return pieces.map((text, piece) => ({
    kind: hasPicture && piece === 0 ? 'photo' : 'text',
    text,
    buttons: piece === pieces.length - 1 ? buttons : [],
  }));
}

/**
 * Telegram finds "@name" in plain text by itself and calls that person, and makes of "/close" what a tap sends off; an
 * invisible word joiner keeps both text. Commands only matter at the desk, where an owner's words are shown to staff.
 */
function keepPlain({ text, to }: OutgoingMessage): string {
  const nobodyCalled = text.replace(/@(?=\w)/g, '@\u2060');
  return to.kind === 'desk' ? nobodyCalled.replace(/(?<![\w/])\/(?=\w)/g, '/\u2060') : nobodyCalled;
}

function encodeButtons(message: OutgoingMessage, username: string): InlineKeyboardButton[][] {
  const rows: InlineKeyboardButton[][] = [];
  let widest = 0;
  for (const choice of message.choices) {
    const button = encodeButton(message, choice, username);
    if (!button) continue;
    const row = rows.at(-1);
    widest = Math.max(row?.length ? widest : 0, choice.label.length);
    if (row && row.length < mostInARow && widest * (row.length + 1) <= rowWidth) row.push(button);
    else {
      rows.push([button]);
      widest = choice.label.length;
    }
  }
  return rows;
}

function encodeButton(
  message: OutgoingMessage,
  choice: Choice,
  username: string,
): InlineKeyboardButton | null {
  if (message.to.kind === 'tips') {
    const start = encodeStart(readStartChoice(choice.id));
    return { text: choice.label, url: `https://t.me/${username}?start=${start}` };
  }
  const data = encodePress(message.id, choice.id, dataLimit);
  return data === null ? null : { text: choice.label, callback_data: data };
}
