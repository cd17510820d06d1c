// One line of the pipe contract to what it asks for: a message, a move of the clock, nothing, or why it is none of these.
import { randomUUID } from 'node:crypto';
import type { Body, IncomingMessage } from '../../src/chat/incoming-message.ts';

export type Line =
  | { kind: 'message'; message: IncomingMessage }
  | { kind: 'advance'; ms: number; messageId: string }
  | { kind: 'blank' }
  | { kind: 'wrong'; why: string };

type Fields = Record<string, unknown>;

const unitMs: Record<string, number> = { s: 1000, m: 60_000, h: 3_600_000, d: 86_400_000 };
const texts = ['from', 'case', 'text', 'choose', 'of', 'picture', 'start', 'advance', 'locale', 'role'];

export function decodeLine(line: string): Line {
  if (line.trim() === '') return { kind: 'blank' };
  let parsed: unknown;
  try {
    parsed = JSON.parse(line);
  } catch {
    return wrong('this line is not JSON');
  }
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed)) {
    return wrong('a line is one JSON object');
  }
  const fields = Object.fromEntries(Object.entries(parsed).filter(([, value]) => value !== null)) as Fields;
  const notText = texts.find((name) => fields[name] !== undefined && typeof fields[name] !== 'string');
  if (notText !== undefined) return wrong(`"${notText}" is a string`);
  if (fields.id !== undefined && typeof fields.id !== 'string' && typeof fields.id !== 'number') {
    return wrong('"id" is a string');
  }
  // Without an id every line is new: its own id then only has to be one that never came before.
  const messageId = fields.id === undefined ? `line ${randomUUID()}` : clean(String(fields.id));
  return fields.advance === undefined ? decodeMessage(fields, messageId) : decodeAdvance(fields, messageId);
}

function decodeAdvance(fields: Fields, messageId: string): Line {
  const match = /^(\d+(?:\.\d+)?)([smhd])$/.exec(fields.advance as string);
  const ms = match === null ? Number.NaN : Math.round(Number(match[1]) * (unitMs[match[2] ?? ''] ?? 0));
  // A thousand years: beyond that a date no longer holds.
  if (!(ms <= 1000 * 366 * 86_400_000)) {
    return wrong('"advance" is a number with s, m, h or d, as "36h"');
  }
  return { kind: 'advance', ms, messageId };
}

function decodeMessage(fields: Fields, messageId: string): Line {
  const { from, role = 'owner', locale } = fields as Record<string, string | undefined>;
  if (from === undefined || clean(from) === '') return wrong('"from" names who says this');
  if (role !== 'owner' && role !== 'staff') return wrong('"role" is "owner" or "staff"');
  if (fields.case !== undefined && role === 'owner') return wrong('"case" is for staff: add "role":"staff"');
  const body = decodeBody(fields as Record<string, string | undefined>);
  if (typeof body === 'string') return wrong(body);
  return {
    kind: 'message',
    message: {
      platform: 'console',
      messageId,
      person: clean(from),
      name: clean(from),
      role,
      chat: clean(from),
      caseId: fields.case === undefined ? null : clean(fields.case as string),
      locale: locale === undefined ? null : clean(locale),
      body,
    },
  };
}

/** The body, or what is wrong with it. */
function decodeBody(fields: Record<string, string | undefined>): Body | string {
  const { text, choose, of, picture, start } = fields;
  const given = [choose, picture, start].filter((value) => value !== undefined).length;
  if (given > 1) return 'a line holds one of "text", "choose", "picture" and "start"';
  if (of !== undefined && choose === undefined) return '"of" belongs to "choose"';
  if (picture !== undefined) {
    return { kind: 'picture', picture: clean(picture), caption: clean(text ?? '') };
  }
  if (given === 1 && text !== undefined) return 'a line holds one of "text", "choose" and "start"';
  if (choose !== undefined) {
    return { kind: 'choice', choice: clean(choose), of: of === undefined ? null : clean(of) };
  }
  if (start !== undefined) {
    const [procedure, ...machine] = clean(start).split('/');
    return { kind: 'start', procedure: procedure || null, machine: machine.join('/') || null };
  }
  return text === undefined
    ? 'a line holds "text", "choose", "picture", "start" or "advance"'
    : { kind: 'text', text: clean(text) };
}

/** Half a surrogate pair and U+0000 are no text to any database: they end here. */
export function clean(text: string): string {
  return text.toWellFormed().replaceAll('\0', '');
}

function wrong(why: string): Line {
  return { kind: 'wrong', why };
}
