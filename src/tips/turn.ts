// One turn of the tips in the making, and how it speaks to the channel and to the desk; every part of the tips works on it.
import type { Facts, Line } from '../chat/facts.ts';
import type { Choice, Destination, OutgoingMessage } from '../chat/outgoing-message.ts';
import type { Content } from '../procedure/content.ts';
import { inLanguage } from '../procedure/localised.ts';
import type { Tip } from '../procedure/tip.ts';
import { keepSpoken } from '../words/keep-spoken.ts';
import { label, render } from '../words/render.ts';
import type { Wording } from '../words/wording.ts';
import type { Post, TipState, TipsState } from './state.ts';

const dayMs = 24 * 3_600_000;

export interface TipsScene {
  now: number;
  /** The conversation's own small number: ids are made from it. */
  number: number;
  content: Content;
  /** In the workshop's language. */
  wording: Wording;
  /** Whether there is a channel at all. */
  hasChannel: boolean;
  /** A time as the desk reads it. */
  tellTime: (at: number) => string;
}

export interface TipsTurn {
  scene: TipsScene;
  state: TipsState;
  messages: OutgoingMessage[];
}

export const line = (key: string, fillIn?: Line['with']): Line => (fillIn ? { key, with: fillIn } : { key });

/** The words of a tip, as its message has them. */
export function tipLine({ content, wording }: TipsScene, tip: Tip): Line {
  const nameOf = (thing: Content['machines'][string] | Content['procedures'][string] | undefined) =>
    thing ? inLanguage(thing.name, wording.language) : '';
  return line(`tip-${tip.id}`, {
    machine: nameOf(content.machines[tip.machine]),
    procedure: nameOf(content.procedures[tip.procedure]),
  });
}

/** What is known of a tip; one that was never met is met now, and what it may have missed before does not count. */
export function tipState({ scene, state }: TipsTurn, id: string): TipState {
  state.tips[id] ??= { seenTo: scene.now, withdrawn: false, posts: [] };
  return state.tips[id];
}

/** What stands in the channel as a tip and can still be changed: of older messages it is not kept where they are. */
export function standing(turn: TipsTurn, id: string): Post[] {
  const { now, content } = turn.scene;
  const since = now - content.workshop.keepDays * dayMs;
  return tipState(turn, id).posts.filter(({ withdrawn, at }) => !withdrawn && at >= since);
}

export function nextId({ scene, state }: TipsTurn): string {
  state.said += 1;
  return `c${scene.number}-${state.said}`;
}

interface Spoken {
  id: string;
  edit: number;
  to: Destination;
  lines: Line[];
  choices: Choice[];
}

export function send(turn: TipsTurn, { lines, ...rest }: Spoken): OutgoingMessage {
  const { wording } = turn.scene;
  const facts: Facts = { lines: keepSpoken(lines, wording) };
  const message = { ...rest, text: render(lines, wording), picture: null, facts };
  turn.messages.push(message);
  return message;
}

export function tellDesk(turn: TipsTurn, lines: Line[], choices: Choice[] = []): void {
  send(turn, { id: nextId(turn), edit: 0, to: { kind: 'desk', caseId: null }, lines, choices });
}

/** A button at the desk; its id is what could be typed, with colons. */
export function button({ scene }: TipsTurn, words: string, key: string): Choice {
  return { id: `tips:${words.replaceAll(' ', ':')}`, label: label(key, {}, scene.wording) };
}
