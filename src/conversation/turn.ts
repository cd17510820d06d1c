// One turn of a conversation in the making: the state as it will be, and what is said and written; every part of the conversation works on it.

import type { Facts, Line, VerdictFact } from '../chat/facts.ts';
import type { Destination, PictureRequest } from '../chat/outgoing-message.ts';
import type { Lexicon } from '../measurement/lexicon.ts';
import { type Content, contentFor } from '../procedure/content.ts';
import type { Machine } from '../procedure/machine.ts';
import type { Procedure, Stage } from '../procedure/procedure.ts';
import { stageOf } from '../procedure/procedure.ts';
import type { Conversation, SetUp } from './state.ts';

/** What the conversation can see of the world besides its own state. */
export interface Scene {
  now: number;
  /** The conversation's own small number: ids are made from it. */
  number: number;
  /** The newest content, for menus and cautions. */
  current: Content;
  /** The content that a set-up is pinned to. */
  contentAt: (hash: string) => Content;
  lexicons: (language: string) => readonly Lexicon[];
  /** What is on a button, for a set-up that is pinned to this content. */
  label: (label: Button['label'], language: string, hash: string) => string;
  /** Whether somebody is at the desk now, when next, and the day that was called off. */
  desk: { readonly open: boolean; readonly opensAt: number | null; readonly closedOn: string | null };
  /** The whole table of readings, while a case is open. */
  readings: readonly TakenReading[];
  /** So many messages of one owner are taken in a minute; null where that is not limited. */
  mostPerMinute: number | null;
}

/** A button: its id, and its label as words or as a name that content brings. */
export interface Button {
  id: string;
  label: Line | string;
}

/** A message before it is put into words. */
export interface Saying {
  id: string;
  edit: number;
  to: Destination;
  language: string;
  lines: Line[];
  buttons: Button[];
  picture: PictureRequest | null;
  facts: Facts;
}

/** One reading as it goes into the table of readings. */
export interface TakenReading {
  setUp: string;
  stage: string;
  measure: string;
  situation: string | null;
  typed: string;
  value: number | null;
  low: number | null;
  high: number | null;
  result: VerdictFact['result'];
  struck: string | null;
  at: number;
}

/** What ended, for the store's table of records. */
interface EndedSetUp {
  code: string;
  procedure: string;
  machine: string;
  facts: Facts;
  at: number;
}

export interface Turn {
  scene: Scene;
  state: Conversation;
  said: Saying[];
  taken: TakenReading[];
  ended: EndedSetUp[];
  /** Lines and a verdict that go in front of the next message to the owner. */
  carried: Line[];
  carriedFacts: Facts;
  carriedPicture: PictureRequest | null;
  /** What is awaited of the owner is said again, when all else is said. */
  again: boolean;
  /** The owner asked to be forgotten. */
  erase: boolean;
  /** The case as it was when the turn began, as text. */
  caseWas: string;
}

/** A set-up with the content that it is pinned to, looked up once. */
export interface Bench {
  setUp: SetUp;
  content: Content;
  procedure: Procedure;
  machine: Machine;
  stage: Stage;
}

export function startTurn(scene: Scene, state: Conversation): Turn {
  return {
    scene,
    state,
    said: [],
    taken: [],
    ended: [],
    carried: [],
    carriedFacts: {},
    carriedPicture: null,
    again: false,
    erase: false,
    caseWas: JSON.stringify(state.case),
  };
}

/** The open set-up and its content; throws where there is none, which callers have ruled out. */
export function benchOf(turn: Turn): Bench {
  const { setUp } = turn.state;
  if (!setUp) throw new Error('No set-up is open.');
  const content = turn.scene.contentAt(setUp.content);
  const procedure = content.procedures[setUp.procedure];
  const machine = content.machines[setUp.machine];
  const stage = procedure && stageOf(procedure, setUp.stage);
  if (!procedure || !machine || !stage) {
    throw new Error(
      `Set-up ${setUp.code} is pinned to content ${setUp.content}, which lacks its machine, procedure or stage.`,
    );
  }
  return { setUp, content: contentFor(content, machine), procedure, machine, stage };
}
