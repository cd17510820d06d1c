// Turns a press, a form or a command on Discord into what is to be done about it.
import {
  type APIInteraction,
  type APIUser,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ComponentType,
  InteractionType,
} from 'discord.js';
import type { Body } from '../../src/chat/incoming-message.ts';
import { cleanText } from '../wire/clean-text.ts';
import { decodePress } from '../wire/press.ts';
import { readStartChoice } from '../wire/start-link.ts';
import { bodyOfCommand, isMenuCommand } from '../wire/steering.ts';
import { isMenuChoice, startPrefix, typedPrefix, typePrefix } from './controls.ts';

export interface Who {
  user: APIUser;
  nick: string | null;
  channel: string;
  guild: string | null;
  locale: string | null;
}

export type Asked =
  | { kind: 'command'; who: Who; command: string; body: Body }
  /** A start button, which anyone may press anywhere. */
  | { kind: 'begin'; who: Who; body: Body }
  | { kind: 'press'; who: Who; body: Body; pressed: string }
  | { kind: 'form'; who: Who; messageId: string }
  | { kind: 'typed'; who: Who; messageId: string; text: string }
  | { kind: 'claim'; who: Who; code: string; isTextChannel: boolean }
  | { kind: 'nothing' };

const nothing: Asked = { kind: 'nothing' };
const textChannel = 0;

export function decodeInteraction(interaction: APIInteraction): Asked {
  const who = whoAsks(interaction);
  if (who === null) return nothing;
  switch (interaction.type) {
    case InteractionType.ApplicationCommand: {
      const { data } = interaction;
      if (data.type !== ApplicationCommandType.ChatInput) return nothing;
      if (data.name === 'desk') {
        const code = data.options?.find((option) => option.name === 'code');
        const text = code?.type === ApplicationCommandOptionType.String ? code.value : '';
        return { kind: 'claim', who, code: text, isTextChannel: interaction.channel?.type === textChannel };
      }
      if (!isMenuCommand(data.name)) return nothing;
      return { kind: 'command', who, command: data.name, body: bodyOfCommand(data.name) };
    }
    case InteractionType.MessageComponent: {
      const { data, message } = interaction;
      const id = data.custom_id;
      if (id.startsWith(startPrefix)) {
        return {
          kind: 'begin',
          who,
          body: { kind: 'start', ...readStartChoice(id.slice(startPrefix.length)) },
        };
      }
      if (id.startsWith(typePrefix)) return { kind: 'form', who, messageId: id.slice(typePrefix.length) };
      const press = decodePress(id);
      const chosen = data.component_type === ComponentType.StringSelect ? data.values[0] : undefined;
      const choice = isMenuChoice(press.choice) && chosen !== undefined ? chosen : press.choice;
      return { kind: 'press', who, body: { kind: 'choice', ...press, choice }, pressed: message.id };
    }
    case InteractionType.ModalSubmit: {
      const { data } = interaction;
      if (!data.custom_id.startsWith(typedPrefix)) return nothing;
      const text = cleanText(readField(data.components));
      return { kind: 'typed', who, messageId: data.custom_id.slice(typedPrefix.length), text };
    }
    default:
      return nothing;
  }
}

function whoAsks(interaction: APIInteraction): Who | null {
  const user = interaction.member?.user ?? interaction.user;
  const channel = interaction.channel?.id ?? interaction.channel_id;
  if (!user || channel === undefined) return null;
  return {
    user,
    nick: interaction.member?.nick ?? null,
    channel,
    guild: interaction.guild_id ?? null,
    locale: 'locale' in interaction ? interaction.locale : null,
  };
}

/** A form has one field; in which kind of frame it comes back is no matter. */
function readField(components: unknown): string {
  if (Array.isArray(components)) return components.map(readField).find((text) => text !== '') ?? '';
  if (typeof components !== 'object' || components === null) return '';
  const { value, components: inner, component } = components as Record<string, unknown>;
  if (typeof value === 'string') return value;
  return readField(inner ?? component ?? null);
}
