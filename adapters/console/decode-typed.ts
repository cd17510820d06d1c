// One line that a person typed at the console to a message: as the owner, or as staff after `desk:` or `desk CASE:`.
import { randomUUID } from 'node:crypto';
import type { Body, IncomingMessage } from '../../src/chat/incoming-message.ts';
import type { Choice } from '../../src/chat/outgoing-message.ts';
import { clean } from './decode-line.ts';

/** What was last offered in a seat. */
export interface Offer {
  messageId: string;
  choices: Choice[];
  /** A bare figure is an answer of its own there, not the number of a choice. */
  figureAsked: boolean;
}

export interface Typed {
  message: IncomingMessage;
  /** True where a choice was named that is not on offer: nothing is to be sent. */
  unknownChoice: boolean;
}

const owner = 'you';
const staff = 'desk';

export function decodeTyped(line: string, offers: ReadonlyMap<string, Offer>, locale: string | null): Typed {
  const atDesk = /^desk(?: +([^\s:]+))?:(.*)$/is.exec(line);
  const caseId = atDesk?.[1] === undefined ? null : clean(atDesk[1]);
  const seat = atDesk === null ? 'owner' : caseId === null ? 'desk' : `desk ${caseId}`;
  const text = clean((atDesk === null ? line : (atDesk[2] ?? '')).trim());
  const body = decodeBody(text, offers.get(seat));
  const person = atDesk === null ? owner : staff;
  return {
    unknownChoice: body === null,
    message: {
      platform: 'console',
      messageId: `typed ${randomUUID()}`,
      person,
      name: null,
      role: atDesk === null ? 'owner' : 'staff',
      chat: person,
      caseId,
      locale,
      body: body ?? { kind: 'text', text },
    },
  };
}

/** The message by which an owner who sits down at the console is greeted, or told where they are. */
export function arriving(locale: string | null): IncomingMessage {
  const { message } = decodeTyped('', new Map(), locale);
  return { ...message, body: { kind: 'start', procedure: null, machine: null } };
}

function decodeBody(text: string, offer: Offer | undefined): Body | null {
  const picture = /^picture: *(\S.*)$/i.exec(text);
  if (picture !== null) return { kind: 'picture', picture: picture[1] ?? '', caption: '' };
  const marked = /^(#?)(\d{1,2})$/.exec(text);
  if (marked === null) return { kind: 'text', text };
  const choice = offer?.choices[Number(marked[2]) - 1];
  if (marked[1] === '#') {
    return choice === undefined ? null : { kind: 'choice', choice: choice.id, of: offer?.messageId ?? null };
  }
  if (offer === undefined || choice === undefined || offer.figureAsked) return { kind: 'text', text };
  return { kind: 'choice', choice: choice.id, of: offer.messageId };
}
