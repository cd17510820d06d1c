// What stands in the buttons, menus and forms of Discord, written and read; for encoding and for taking in.
import {
  type APIActionRowComponent,
  type APIButtonComponent,
  type APIComponentInMessageActionRow,
  type APIModalInteractionResponseCallbackData,
  type APIStringSelectComponent,
  ButtonStyle,
  ComponentType,
  TextInputStyle,
} from 'discord.js';
import type { Choice, OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { encodePress } from '../wire/press.ts';

export type Row = APIActionRowComponent<APIComponentInMessageActionRow>;

const idLimit = 100;
const labelLimit = 80;
const inARow = 5;
const inAMenu = 25;
/** More buttons than these are a wall: they become menus. */
const mostButtons = 15;
const mostMenus = 4;

/** Our own controls begin with a sign that no message id begins with. */
export const startPrefix = '!start:';
export const typePrefix = '!type:';
export const typedPrefix = '!typed:';
const menuChoice = '*';

export const isMenuChoice = (choice: string) => choice.startsWith(menuChoice);

export function encodeControls(message: OutgoingMessage, typeLabel: string): Row[] {
  if (message.to.kind === 'tips') return inRows(message.choices.map(startButton));
  const buttons: APIButtonComponent[] = [];
  const menus: Row[] = [];
  if (message.choices.length > mostButtons) menus.push(...encodeMenus(message));
  else buttons.push(...message.choices.flatMap((choice, index) => pressButton(message.id, choice, index)));
  if (message.to.kind === 'owner' && asksForFigures(message)) {
    buttons.push(button(typePrefix + message.id, typeLabel, ButtonStyle.Secondary));
  }
  return [...menus, ...inRows(buttons)];
}

export const startButton = ({ id, label }: Choice): APIButtonComponent =>
  button(startPrefix + id, label, ButtonStyle.Primary);

function pressButton(messageId: string, choice: Choice, index: number): APIButtonComponent[] {
  const customId = encodePress(messageId, choice.id, idLimit);
  if (customId === null) return [];
  return [button(customId, choice.label, index === 0 ? ButtonStyle.Primary : ButtonStyle.Secondary)];
}

function button(
  custom_id: string,
  label: string,
  style: ButtonStyle.Primary | ButtonStyle.Secondary,
): APIButtonComponent {
  return { type: ComponentType.Button, custom_id, label: shorten(label), style };
}

export function inRows(buttons: APIButtonComponent[]): Row[] {
  const rows: Row[] = [];
  for (let first = 0; first < buttons.length; first += inARow) {
    rows.push({ type: ComponentType.ActionRow, components: buttons.slice(first, first + inARow) });
  }
  return rows;
}

function encodeMenus({ id, choices }: OutgoingMessage): Row[] {
  const rows: Row[] = [];
  for (let first = 0; first < choices.length && rows.length < mostMenus; first += inAMenu) {
    const options = choices.slice(first, first + inAMenu).map((choice) => ({
      label: shorten(choice.label),
      value: choice.id.slice(0, idLimit),
    }));
    const menu: APIStringSelectComponent = {
      type: ComponentType.StringSelect,
      custom_id: `${id}:${menuChoice}${rows.length}`,
      options,
    };
    rows.push({ type: ComponentType.ActionRow, components: [menu] });
  }
  return rows;
}

function shorten(label: string): string {
  return label.length <= labelLimit ? label : `${label.slice(0, labelLimit - 1).toWellFormed()}…`;
}

const figures: readonly string[] = ['reading', 'readings', 'count', 'target'];

const asksForFigures = ({ facts }: OutgoingMessage) =>
  facts.ask !== undefined && figures.includes(facts.ask.kind);

/** The form in which a reading can be typed, beside plain typing. */
export function readingForm(
  messageId: string,
  title: string,
  field: string,
): APIModalInteractionResponseCallbackData {
  return {
    custom_id: typedPrefix + messageId,
    title: title.slice(0, 45),
    components: [
      {
        type: ComponentType.ActionRow,
        components: [
          {
            type: ComponentType.TextInput,
            custom_id: 'reading',
            style: TextInputStyle.Short,
            label: field.slice(0, 45),
            required: true,
            max_length: 300,
          },
        ],
      },
    ],
  };
}
