// Turns one of our messages into the parts that Discord takes, each within its limits, with no mention that resolves.
import { type APIAttachment, MessageFlags } from 'discord.js';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { splitText } from '../wire/split-text.ts';
import { encodeControls, type Row } from './controls.ts';
import { escapeText } from './escape-text.ts';
import { nonceOf } from './nonce.ts';

const contentLimit = 2000;
const alternativeLimit = 1024;

export interface Part {
  body: {
    content: string;
    components: Row[];
    /** Links that a person typed are not unfolded. */
    flags: MessageFlags.SuppressEmbeds;
    allowed_mentions: { parse: [] };
    attachments?: Pick<APIAttachment, 'id' | 'description'>[];
  };
  hasPicture: boolean;
}

/** `alternative` is the picture's, or null where there is no picture. */
export function encode(message: OutgoingMessage, alternative: string | null, typeLabel: string): Part[] {
  const pieces = splitText(message.text, contentLimit, (piece) => escapeText(piece).length);
  if (pieces.length === 0 && alternative !== null) pieces.push('');
  const controls = encodeControls(message, typeLabel);
  return pieces.map((piece, index) => {
    const hasPicture = alternative !== null && index === 0;
    return {
      body: {
        content: escapeText(piece),
        components: index === pieces.length - 1 ? controls : [],
        flags: MessageFlags.SuppressEmbeds,
        allowed_mentions: { parse: [] },
        ...(hasPicture
          ? { attachments: [{ id: '0', description: alternative.slice(0, alternativeLimit) }] }
          : {}),
      },
      hasPicture,
    };
  });
}

/** The mark of a part: who it is for, which part of which message, and what it says. */
export const nonceOfPart = (message: OutgoingMessage, channel: string, index: number, part: Part) =>
  nonceOf(channel, message.id, message.edit, index, part.body.content);
