// Deals with one message or interaction on Discord to the end: answered within its three seconds, then committed.
import { type APIInteraction, InteractionResponseType, MessageFlags, type REST, Routes } from 'discord.js';
import type { Receive } from '../../src/chat/adapter.ts';
import type { Body, IncomingMessage } from '../../src/chat/incoming-message.ts';
import { useDeskCode } from '../wire/desk-code.ts';
import type { Lanes } from '../wire/lanes.ts';
import type { PlatformText, Surroundings } from '../wire/surroundings.ts';
import { takeSurely } from '../wire/take-surely.ts';
import { inRows, readingForm, startButton } from './controls.ts';
import { type Asked, decodeInteraction, type Who } from './decode-interaction.ts';
import { type Arrived, decodeEdit, decodeMessage, incoming, type SeenMessage } from './decode-message.ts';
import type { Keyboards } from './keyboards.ts';
import { nonceOf } from './nonce.ts';
import type { Places } from './places.ts';
import type { Seen } from './seen.ts';
import { readTrouble } from './trouble.ts';

export interface Taking {
  rest: REST;
  self: string;
  application: string;
  places: Places;
  keyboards: Keyboards;
  seen: Seen;
  lanes: Lanes;
  around: Surroundings;
  receive: Receive;
  stopping: AbortSignal;
}

const pointerRestMs = 60_000;
const privately = { flags: MessageFlags.Ephemeral };
const mentionsNobody = { allowed_mentions: { parse: [] } };

export type TakeEvent = ReturnType<typeof makeTakeEvent>;

export function makeTakeEvent(taking: Taking) {
  const { rest, self, application, places, keyboards, seen, lanes, around, stopping } = taking;
  const { words, log } = around;
  const pointedAt = new Map<string, number>();

  /** To be called within the channel's lane. */
  async function takeMessage(message: SeenMessage): Promise<void> {
    await takeArrived(decodeMessage(message, places.find(message.channel_id), self), message);
  }

  async function takeEdit(message: SeenMessage): Promise<void> {
    await takeArrived(decodeEdit(message, places.find(message.channel_id)), message);
  }

  async function takeArrived(arrived: Arrived, { channel_id: channel, id }: SeenMessage): Promise<void> {
    if (arrived.kind === 'elsewhere') return await point(channel, id);
    if (arrived.kind === 'nothing') return;
    const { message } = arrived;
    if (await receive(message)) seen.taken(channel, aboutOf(message), id);
    else await say(channel, 'platform-not-taken', id);
  }

  const receive = (message: IncomingMessage) => takeSurely(taking.receive, message, log, stopping);

  const aboutOf = (message: IncomingMessage) =>
    message.role === 'owner' ? `discord:${message.person}` : null;

  /** The first thing awaited is Discord's own answer; whatever the store does comes after. */
  async function takeInteraction(interaction: APIInteraction): Promise<void> {
    const asked = decodeInteraction(interaction);
    if (asked.kind === 'nothing') return;
    await answer(interaction, asked);
    if (asked.kind === 'form') return;
    await lanes.run(asked.who.channel, () => act(interaction, asked));
  }

  async function answer(interaction: APIInteraction, asked: Asked): Promise<void> {
    const body = answerTo(asked);
    try {
      await rest.post(Routes.interactionCallback(interaction.id, interaction.token), { body, auth: false });
    } catch (error) {
      log.warn({ why: readTrouble(error).kind }, 'an interaction could not be answered in time');
    }
  }

  function answerTo(asked: Asked) {
    switch (asked.kind) {
      case 'form': {
        const { locale } = asked.who;
        const title = words.say('platform-type-reading', locale);
        const form = readingForm(asked.messageId, title, words.say('platform-reading-field', locale));
        return { type: InteractionResponseType.Modal, data: form };
      }
      case 'press':
      case 'typed':
        return { type: InteractionResponseType.DeferredMessageUpdate };
      default:
        return { type: InteractionResponseType.DeferredChannelMessageWithSource, data: privately };
    }
  }

  async function act(interaction: APIInteraction, asked: Exclude<Asked, { kind: 'nothing' | 'form' }>) {
    const { who } = asked;
    const place = places.find(who.channel);
    switch (asked.kind) {
      case 'claim':
        return await takeClaim(interaction, asked);
      case 'begin':
        return await bringHome(interaction, who, asked.body);
      case 'command':
        if (place?.kind === 'desk' ? asked.command !== 'help' : place === null && who.guild !== null) {
          return await bringHome(interaction, who, asked.body);
        }
        await hear(interaction, who, asked.body);
        return await takeBack(interaction);
      case 'typed':
        return await hear(interaction, who, await bodyOfTyped(asked));
      case 'press': {
        if (place === null && who.guild !== null) return;
        await hear(interaction, who, asked.body);
        // The card at the desk keeps its buttons: it is changed as a whole.
        if (place?.kind === 'desk') return;
        const chat = place?.kind === 'room' ? place.chat : who.channel;
        return await keyboards.pressed(chat, who.channel, asked.pressed);
      }
    }
  }

  async function hear(interaction: APIInteraction, who: Who, body: Body): Promise<void> {
    const place = places.find(who.channel);
    if (place?.kind === 'room' && place.person !== who.user.id) return;
    const message = incoming(who.user, who.nick, who.channel, place, interaction.id, who.locale, body);
    if (!(await receive(message))) await say(who.channel, 'platform-not-taken', interaction.id);
  }

  /** A form may be sent long after: a figure must not be taken for an answer to a later question. */
  async function bodyOfTyped({ who, messageId, text }: Extract<Asked, { kind: 'typed' }>): Promise<Body> {
    const place = places.find(who.channel);
    const chat = place?.kind === 'room' ? place.chat : who.channel;
    if (await keyboards.stands(chat, messageId)) return { kind: 'text', text };
    return { kind: 'choice', choice: 'type', of: messageId };
  }

  /** Asked for in a server: it goes on in private, and only the asker is told so. */
  async function bringHome(interaction: APIInteraction, who: Who, body: Body): Promise<void> {
    const home = who.guild === null ? null : who.channel;
    let text: PlatformText = 'platform-not-taken';
    let chat: string | null = null;
    try {
      chat = await places.directChat(who.user.id, home);
      const message = incoming(who.user, null, chat, null, interaction.id, who.locale, body);
      if (await receive(message)) text = 'platform-written-privately';
    } catch (error) {
      if (stopping.aborted) throw error;
      log.warn({ why: readTrouble(error).kind }, 'a private chat could not be opened');
    }
    if (who.guild === null) return await takeBack(interaction);
    const address =
      chat && text === 'platform-written-privately' ? `\nhttps://discord.com/channels/@me/${chat}` : '';
    await tellPrivately(interaction, words.say(text, who.locale) + address);
  }

  async function takeClaim(interaction: APIInteraction, claim: Extract<Asked, { kind: 'claim' }>) {
    const { who } = claim;
    const inChannel = who.guild !== null && claim.isTextChannel;
    const right = inChannel && (await useDeskCode('discord', claim.code, around.deskCode, around.links));
    if (right) await places.claim(who.guild as string, who.channel);
    else log.warn({ channel: who.channel }, 'the desk could not be claimed there, or not by that code');
    const refusal = inChannel ? 'platform-desk-code-wrong' : 'platform-desk-only-in-group';
    await tellPrivately(interaction, words.say(right ? 'platform-desk-claimed' : refusal, who.locale));
  }

  async function tellPrivately({ token }: APIInteraction, content: string): Promise<void> {
    const body = { content, ...mentionsNobody };
    await rest
      .patch(Routes.webhookMessage(application, token, '@original'), { body, auth: false })
      .catch(() => {});
  }

  /** The deferred answer was only to be in time: what there is to say comes as a message. */
  async function takeBack({ token }: APIInteraction): Promise<void> {
    await rest
      .delete(Routes.webhookMessage(application, token, '@original'), { auth: false })
      .catch(() => {});
  }

  async function point(channel: string, id: string): Promise<void> {
    const now = Date.now();
    if (now - (pointedAt.get(channel) ?? 0) < pointerRestMs) return;
    pointedAt.set(channel, now);
    await say(channel, 'platform-pointer', id, [
      startButton({ id: '', label: words.say('platform-open-chat', words.workshop) }),
    ]);
  }

  /** What the adapter says by itself is worth one try. */
  async function say(
    channel: string,
    text: PlatformText,
    about: string,
    buttons: ReturnType<typeof startButton>[] = [],
  ): Promise<void> {
    const body = {
      content: words.say(text, words.workshop),
      components: inRows(buttons),
      nonce: nonceOf(channel, text, about),
      enforce_nonce: true,
      ...mentionsNobody,
    };
    await rest.post(Routes.channelMessages(channel), { body }).catch(() => {});
  }

  return { takeMessage, takeEdit, takeInteraction };
}
