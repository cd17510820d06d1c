// Deals with one update of Telegram's to the end: answered at once, committed, and only then let go.
import type { Api } from 'grammy';
import type { Update } from 'grammy/types';
import type { Receive } from '../../src/chat/adapter.ts';
import type { IncomingMessage } from '../../src/chat/incoming-message.ts';
import { useDeskCode } from '../wire/desk-code.ts';
import type { Surroundings } from '../wire/surroundings.ts';
import { takeSurely } from '../wire/take-surely.ts';
import { type Arrived, type DeskPlace, decodeUpdate, type Self } from './decode-update.ts';
import type { Desk } from './desk.ts';
import type { Keyboards } from './keyboards.ts';

export interface Taking {
  api: Api;
  self: Self;
  desk: Desk;
  keyboards: Keyboards;
  around: Surroundings;
  receive: Receive;
  stopping: AbortSignal;
}

const pointerRestMs = 60_000;

export function makeTakeUpdate(taking: Taking): (update: Update) => Promise<void> {
  const { api, self, desk, keyboards, around } = taking;
  const { log, words } = around;
  const pointedAt = new Map<string, number>();

  async function take(update: Update): Promise<void> {
    const arrived = decodeUpdate(update, self, desk.group());
    switch (arrived.kind) {
      case 'message':
        if (await admit(arrived.message, arrived.place)) await receive(arrived.message, arrived.place);
        return;
      case 'press':
        return await takePress(arrived);
      case 'dead-press':
        return answer(arrived.query);
      case 'claim':
        return await takeClaim(arrived);
      case 'elsewhere':
        return await point(arrived);
      case 'migrated':
        return await desk.migrate(arrived.from, arrived.to);
      case 'removed':
        if (arrived.chat === desk.group()) {
          log.error({ group: arrived.chat }, 'the bot was removed from the desk group: add it again');
        }
        return;
      case 'nothing':
        return;
    }
  }

  async function receive(message: IncomingMessage, place: DeskPlace | null): Promise<void> {
    const caseId = place === null ? null : await desk.caseAt(place);
    if (place) await desk.noteTopics(place);
    const taken = await takeSurely(taking.receive, { ...message, caseId }, log, taking.stopping);
    if (!taken) await speak(message.chat, place?.topic ?? null, 'platform-not-taken', message.locale);
  }

  /** Whoever speaks at the desk must still belong to it. */
  async function admit(message: IncomingMessage, place: DeskPlace | null): Promise<boolean> {
    if (place === null || (await desk.isMember(message.person))) return true;
    log.warn({ person: message.person }, 'somebody who is not a member spoke at the desk');
    return false;
  }

  async function takePress({ message, place, pressed }: Extract<Arrived, { kind: 'press' }>): Promise<void> {
    answer(pressed.query);
    if (!(await admit(message, place))) return;
    await receive(message, place);
    // The card at the desk keeps its buttons: it is changed as a whole.
    if (place === null) await keyboards.pressed(pressed.chat, pressed.messageId);
  }

  /** Not waited for: a press is answered at once, and one answered too late does no harm. */
  function answer(query: string): void {
    api.answerCallbackQuery(query).catch(() => {});
  }

  async function takeClaim(claim: Extract<Arrived, { kind: 'claim' }>): Promise<void> {
    const chat = String(claim.chat.id);
    const inGroup = claim.chat.type === 'group' || claim.chat.type === 'supergroup';
    if (!inGroup) return await speak(chat, null, 'platform-desk-only-in-group', claim.locale);
    const right = await useDeskCode('telegram', claim.code, around.deskCode, around.links);
    if (right) await desk.claim(chat, claim.chat.is_forum === true);
    else log.warn({ group: chat }, 'a wrong or used code was given for the desk');
    await speak(
      chat,
      claim.topic,
      right ? 'platform-desk-claimed' : 'platform-desk-code-wrong',
      claim.locale,
    );
  }

  async function point({ chat, topic, locale }: Extract<Arrived, { kind: 'elsewhere' }>): Promise<void> {
    const now = Date.now();
    if (now - (pointedAt.get(chat) ?? 0) < pointerRestMs) return;
    pointedAt.set(chat, now);
    await speak(chat, topic, 'platform-pointer', locale, {
      inline_keyboard: [
        [{ text: words.say('platform-open-chat', locale), url: `https://t.me/${self.username}?start=hello` }],
      ],
    });
  }

  /** What the adapter says by itself is worth one try. */
  async function speak(
    chat: string,
    topic: number | null,
    text: Parameters<typeof words.say>[0],
    locale: string | null,
    reply_markup?: { inline_keyboard: { text: string; url: string }[][] },
  ): Promise<void> {
    const options = {
      ...(topic === null ? {} : { message_thread_id: topic }),
      ...(reply_markup ? { reply_markup } : {}),
    };
    await api.sendMessage(chat, words.say(text, locale), options).catch(() => {});
  }

  return take;
}
