// Sends one message to Discord part by part, or changes it where it stands, and says what became of it; for the outbox.
import { type APIMessage, type RawFile, type REST, Routes } from 'discord.js';
import type { Sendable, SendOutcome } from '../../src/chat/adapter.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import type { Surroundings } from '../wire/surroundings.ts';
import { encode, nonceOfPart, type Part } from './encode.ts';
import type { Keyboards } from './keyboards.ts';
import type { Places } from './places.ts';
import { readPicture } from './read-picture.ts';
import { isNewer, type Seen } from './seen.ts';
import { readTrouble, type Trouble, tokenRefused } from './trouble.ts';

export interface Sending {
  rest: REST;
  self: string;
  tipsChannel: string | null;
  places: Places;
  keyboards: Keyboards;
  seen: Seen;
  around: Surroundings;
  /** Resolves once what was said in the channel while we were away has been taken. */
  caughtUp(channel: string): Promise<void>;
}

interface Picture {
  bytes: Uint8Array;
  alternative: string;
}

type Rows = { components?: { custom_id?: string }[] }[];

const nothingBetter: SendOutcome = {
  kind: 'refused',
  why: 'the person takes no direct messages, and no room could be made in a server',
};

export async function send(sendable: Sendable, sending: Sending): Promise<SendOutcome> {
  const { message } = sendable;
  const sent = [...sendable.sentParts];
  // A thread or room made anew can be needed once within one sending.
  for (let round = 0; ; round += 1) {
    try {
      const found = await findChannel(message, sending);
      if ('kind' in found) return found;
      await sending.caughtUp(found.channel);
      return await sendParts(sendable, sent, found.channel, sending);
    } catch (error) {
      const trouble = readTrouble(error);
      if (round > 1 || !(await mend(trouble, message, sending))) {
        return outcomeOf(trouble, sent, sending.around);
      }
    }
  }
}

async function findChannel(
  { to }: OutgoingMessage,
  sending: Sending,
): Promise<{ channel: string } | SendOutcome> {
  switch (to.kind) {
    case 'owner':
      return { channel: sending.places.channelOf(to.chat) };
    case 'tips':
      if (sending.tipsChannel === null) return { kind: 'refused', why: 'no Discord channel for tips is set' };
      return { channel: sending.tipsChannel };
    case 'desk': {
      const { places } = sending;
      const channel = to.caseId === null ? places.deskChannel() : await places.threadFor(to.caseId);
      if (channel !== null) return { channel };
      const why = 'no Discord channel is the desk yet';
      return { kind: 'retry', waitMs: null, scope: 'chat', sentParts: [], why };
    }
  }
}

/** Whether another round is worth trying: the place was made anew. */
async function mend(trouble: Trouble, { to }: OutgoingMessage, { places }: Sending): Promise<boolean> {
  const gone = trouble.kind === 'channel-gone';
  if (to.kind === 'desk' && to.caseId !== null && gone) {
    await places.forgetThread(to.caseId);
    return true;
  }
  if (to.kind !== 'owner' || !(gone || trouble.kind === 'closed-to-us')) return false;
  if (gone && !(await places.forgetRoom(to.chat))) return false;
  const room = await places.openRoom(to.person, to.chat).catch(() => null);
  return room !== null;
}

function outcomeOf(trouble: Trouble, sentParts: string[], around: Surroundings): SendOutcome {
  switch (trouble.kind) {
    case 'wait': {
      const scope = trouble.everywhere ? 'platform' : 'chat';
      return { kind: 'retry', waitMs: trouble.ms, scope, sentParts, why: 'Discord asks to wait' };
    }
    case 'revoked':
      around.onFatal('revoked-token', tokenRefused);
      return { kind: 'retry', waitMs: null, scope: 'platform', sentParts, why: 'the token was reset' };
    case 'passing':
      return { kind: 'retry', waitMs: null, scope: 'chat', sentParts, why: trouble.why };
    case 'closed-to-us':
      return nothingBetter;
    case 'refused':
      return { kind: 'refused', why: trouble.why };
    default:
      return { kind: 'refused', why: `Discord: ${trouble.kind}` };
  }
}

async function sendParts(
  sendable: Sendable,
  sent: string[],
  channel: string,
  sending: Sending,
): Promise<SendOutcome> {
  const { message } = sendable;
  const { around, keyboards, seen } = sending;
  const picture = await findPicture(sendable, sending);
  const parts = encode(
    message,
    picture?.alternative ?? null,
    around.words.say('platform-type-reading', null),
  );
  if (parts.length === 0) return { kind: 'refused', why: 'the message is empty' };
  const standing = message.edit > 0 ? await around.sentParts(message.id) : [];
  const about = message.to.kind === 'owner' ? `discord:${message.to.person}` : null;
  for (let index = sent.length; index < parts.length; index += 1) {
    const part = parts[index] as Part;
    const files = filesOf(part, picture);
    const earlier = standing[index];
    const changed = earlier === undefined ? null : await changePart(earlier, part, files, sending);
    const found = changed ?? (sendable.perhapsSent ? await findSent(channel, part, sending) : null);
    const name = found ?? (await postPart(channel, message, index, part, files, sending));
    sent.push(name);
    seen.sent(channel, about, readPart(name).id);
  }
  for (const surplus of standing.slice(parts.length)) {
    const { channel: where, id } = readPart(surplus);
    await sending.rest.delete(Routes.channelMessage(where, id)).catch(() => {});
  }
  const last = parts.at(-1);
  if (message.to.kind === 'owner' && last && last.body.components.length > 0) {
    const { id } = readPart(sent.at(-1) as string);
    await keyboards.opened(message.to.chat, message.to.person, channel, id, message.id);
  }
  return { kind: 'sent', platformIds: sent };
}

async function postPart(
  channel: string,
  message: OutgoingMessage,
  index: number,
  part: Part,
  files: RawFile[],
  { rest }: Sending,
): Promise<string> {
  const nonce = nonceOfPart(message, channel, index, part);
  const body = { ...part.body, nonce, enforce_nonce: true };
  const posted = (await rest.post(Routes.channelMessages(channel), { body, files })) as APIMessage;
  return `${channel}/${posted.id}`;
}

/** Null where it has to be sent anew. */
async function changePart(
  earlier: string,
  part: Part,
  files: RawFile[],
  { rest }: Sending,
): Promise<string | null> {
  const { channel, id } = readPart(earlier);
  const body = { attachments: [], ...part.body };
  try {
    await rest.patch(Routes.channelMessage(channel, id), { body, files });
    return earlier;
  } catch (error) {
    const { kind } = readTrouble(error);
    if (kind === 'message-gone' || kind === 'channel-gone') return null;
    if (kind !== 'archived') throw error;
    await rest.patch(Routes.channel(channel), { body: { archived: false } });
    await rest.patch(Routes.channelMessage(channel, id), { body, files });
    return earlier;
  }
}

/** Discord knows a repeat by its nonce for some minutes only: before that is relied on, the latest messages are compared. */
async function findSent(channel: string, part: Part, { rest, self, seen }: Sending): Promise<string | null> {
  const after = seen.find(channel)?.sent ?? '0';
  const query = new URLSearchParams({ limit: '50' });
  const latest = (await rest.get(Routes.channelMessages(channel), { query })) as APIMessage[];
  const ids = controlIds(part.body.components as Rows);
  const found = latest.find(
    (message) =>
      message.author.id === self &&
      isNewer(message.id, after) &&
      message.content === part.body.content &&
      controlIds((message.components ?? []) as Rows) === ids,
  );
  return found ? `${channel}/${found.id}` : null;
}

/** The ids in buttons name our message, so a text that says the same twice is still told apart. */
function controlIds(rows: Rows): string {
  return rows.flatMap((row) => row.components?.map((control) => control.custom_id ?? '') ?? []).join(' ');
}

async function findPicture({ message, picture }: Sendable, sending: Sending): Promise<Picture | null> {
  if (picture) return { bytes: picture.png, alternative: picture.alternative };
  if (message.picture?.kind !== 'relayed') return null;
  const { platform, picture: reference } = message.picture;
  const bytes =
    platform === 'discord'
      ? await readPicture(sending.rest, reference)
      : await sending.around.fetchForeign(platform, reference);
  return bytes === null ? null : { bytes, alternative: '' };
}

const filesOf = (part: Part, picture: Picture | null): RawFile[] =>
  part.hasPicture && picture
    ? [{ name: 'picture.png', data: Buffer.from(picture.bytes), contentType: 'image/png' }]
    : [];

function readPart(name: string): { channel: string; id: string } {
  const [channel = '', id = ''] = name.split('/');
  return { channel, id };
}
