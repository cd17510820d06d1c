// Sends one message to Telegram part by part, or changes it where it stands, and says what became of it; for the outbox.
import { type Api, InputFile } from 'grammy';
import type { InlineKeyboardMarkup } from 'grammy/types';
import type { Sendable, SendOutcome } from '../../src/chat/adapter.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import type { Surroundings } from '../wire/surroundings.ts';
import type { CasePlace, Desk } from './desk.ts';
import { encode, type Part } from './encode.ts';
import type { Keyboards } from './keyboards.ts';
import { readTrouble, tokenRefused } from './trouble.ts';

export interface Sending {
  api: Api;
  username: string;
  tipsChannel: string | null;
  desk: Desk;
  keyboards: Keyboards;
  around: Surroundings;
}

interface Target {
  chat: string;
  place: CasePlace | null;
}

/** A file_id of Telegram's own, or bytes. */
type Photo = { fileId: string; isDocument: boolean } | { png: Uint8Array };

export async function send(sendable: Sendable, sending: Sending): Promise<SendOutcome> {
  const { message } = sendable;
  const sent = [...sendable.sentParts];
  // A topic made anew, or a chat that moved: each can happen once within one sending.
  for (let round = 0; ; round += 1) {
    try {
      const target = await findTarget(message, sending);
      if (target.kind !== 'found') return target;
      return await sendParts(sendable, sent, target.target, sending);
    } catch (error) {
      const trouble = readTrouble(error);
      if (round < 2 && trouble.kind === 'topic-gone' && message.to.kind === 'desk' && message.to.caseId) {
        await sending.desk.forgetPlace(message.to.caseId);
        continue;
      }
      if (round < 2 && trouble.kind === 'migrated') {
        await noteMove(message, trouble.chat, sending);
        continue;
      }
      return outcomeOf(trouble, sent, sending.around);
    }
  }
}

function outcomeOf(
  trouble: ReturnType<typeof readTrouble>,
  sentParts: string[],
  around: Surroundings,
): SendOutcome {
  switch (trouble.kind) {
    case 'wait':
      return { kind: 'retry', waitMs: trouble.ms, scope: 'chat', sentParts, why: 'Telegram asks to wait' };
    case 'revoked':
      around.onFatal('revoked-token', tokenRefused);
      return { kind: 'retry', waitMs: null, scope: 'platform', sentParts, why: 'the token was revoked' };
    case 'passing':
      return { kind: 'retry', waitMs: null, scope: 'chat', sentParts, why: trouble.why };
    case 'conflict':
      return { kind: 'retry', waitMs: null, scope: 'chat', sentParts, why: 'conflict' };
    case 'refused':
      return { kind: 'refused', why: trouble.why };
    default:
      return { kind: 'refused', why: `Telegram: ${trouble.kind}` };
  }
}

type FoundTarget = { kind: 'found'; target: Target } | SendOutcome;

async function findTarget({ to }: OutgoingMessage, sending: Sending): Promise<FoundTarget> {
  switch (to.kind) {
    case 'owner': {
      const moved = await sending.around.links.get(`telegram:moved:${to.chat}`);
      return { kind: 'found', target: { chat: moved ?? to.chat, place: null } };
    }
    case 'tips':
      if (sending.tipsChannel === null)
        return { kind: 'refused', why: 'no Telegram channel for tips is set' };
      return { kind: 'found', target: { chat: sending.tipsChannel, place: null } };
    case 'desk': {
      const group = sending.desk.group();
      if (group === null) {
        const why = 'no Telegram group is the desk yet';
        return { kind: 'retry', waitMs: null, scope: 'chat', sentParts: [], why };
      }
      if (to.caseId === null) return { kind: 'found', target: { chat: group, place: null } };
      return { kind: 'found', target: { chat: group, place: await sending.desk.placeOf(to.caseId) } };
    }
  }
}

async function noteMove({ to }: OutgoingMessage, chat: string, sending: Sending): Promise<void> {
  if (to.kind === 'owner') {
    await sending.around.links.set(`telegram:moved:${to.chat}`, chat, `telegram:${to.person}`);
  } else if (to.kind === 'desk') await sending.desk.migrate(sending.desk.group() ?? '', chat);
  else sending.tipsChannel = chat;
}

async function sendParts(
  { message, picture }: Sendable,
  sent: string[],
  target: Target,
  sending: Sending,
): Promise<SendOutcome> {
  const photo = await findPhoto(message, picture?.png ?? null, sending.around);
  const parts = encode(message, photo !== null, sending.username);
  if (parts.length === 0) return { kind: 'refused', why: 'the message is empty' };
  const standing = message.edit > 0 ? await sending.around.sentParts(message.id) : [];
  for (let index = sent.length; index < parts.length; index += 1) {
    const part = parts[index] as Part;
    const earlier = standing[index];
    const changed = earlier === undefined ? null : await changePart(earlier, part, photo, sending);
    sent.push(changed ?? (await sendPart(part, photo, target, message, sending)));
  }
  for (const surplus of standing.slice(parts.length)) await removePart(surplus, sending);
  if (message.to.kind === 'owner' && message.choices.length > 0) {
    await sending.keyboards.opened(target.chat, message.to.person, readPart(sent.at(-1) as string).messageId);
  }
  return { kind: 'sent', platformIds: sent };
}

async function sendPart(
  part: Part,
  photo: Photo | null,
  { chat, place }: Target,
  message: OutgoingMessage,
  sending: Sending,
): Promise<string> {
  const { api, desk } = sending;
  const options = {
    ...(part.buttons.length > 0 ? { reply_markup: { inline_keyboard: part.buttons } } : {}),
    ...(place?.topic ? { message_thread_id: place.topic } : {}),
    ...(place && !place.topic && place.root
      ? { reply_parameters: { message_id: place.root, allow_sending_without_reply: true } }
      : {}),
  };
  const answer =
    part.kind === 'text' || photo === null
      ? await api.sendMessage(chat, part.text, { ...options, link_preview_options: { is_disabled: true } })
      : 'fileId' in photo && photo.isDocument
        ? await api.sendDocument(chat, photo.fileId, withCaption(part, options))
        : await api.sendPhoto(chat, uploadOf(photo), withCaption(part, options));
  const { to } = message;
  if (to.kind === 'desk' && to.caseId && place) {
    await desk.noteSent(to.caseId, place, answer.message_id);
    place.root ??= answer.message_id;
  }
  return writePart({ chat, messageId: answer.message_id, kind: part.kind });
}

const withCaption = <Options>(part: Part, options: Options) =>
  part.text === '' ? options : { ...options, caption: part.text };

const uploadOf = (photo: Photo) =>
  'fileId' in photo ? photo.fileId : new InputFile(photo.png, 'picture.png');

/** The part's name where it stands, or null where it has to be sent anew. */
async function changePart(
  earlier: string,
  part: Part,
  photo: Photo | null,
  { api }: Sending,
): Promise<string | null> {
  const { chat, messageId, kind } = readPart(earlier);
  if (kind !== part.kind || (photo && 'fileId' in photo && photo.isDocument)) {
    await removePart(earlier, { api });
    return null;
  }
  const reply_markup: InlineKeyboardMarkup = { inline_keyboard: part.buttons };
  try {
    if (part.kind === 'text' || photo === null) {
      const link_preview_options = { is_disabled: true };
      await api.editMessageText(chat, messageId, part.text, { reply_markup, link_preview_options });
    } else {
      const media = { type: 'photo' as const, media: uploadOf(photo), caption: part.text };
      await api.editMessageMedia(chat, messageId, media, { reply_markup });
    }
    return earlier;
  } catch (error) {
    const trouble = readTrouble(error);
    if (trouble.kind === 'unchanged') return earlier;
    if (trouble.kind === 'message-gone' || trouble.kind === 'topic-gone') return null;
    throw error;
  }
}

async function removePart(part: string, { api }: Pick<Sending, 'api'>): Promise<void> {
  const { chat, messageId } = readPart(part);
  await api.deleteMessage(chat, messageId).catch(() => {});
}

async function findPhoto(
  { picture }: OutgoingMessage,
  png: Uint8Array | null,
  around: Surroundings,
): Promise<Photo | null> {
  if (png) return { png };
  if (picture?.kind !== 'relayed') return null;
  if (picture.platform === 'telegram') {
    const isDocument = picture.picture.startsWith('document:');
    return { fileId: isDocument ? picture.picture.slice('document:'.length) : picture.picture, isDocument };
  }
  const bytes = await around.fetchForeign(picture.platform, picture.picture);
  return bytes === null ? null : { png: bytes };
}

interface StandingPart {
  chat: string;
  messageId: number;
  kind: Part['kind'];
}

const writePart = ({ chat, messageId, kind }: StandingPart) => `${chat}/${messageId}/${kind}`;

function readPart(name: string): StandingPart {
  const [chat = '', messageId, kind] = name.split('/');
  return { chat, messageId: Number(messageId), kind: kind === 'photo' ? 'photo' : 'text' };
}
