// The desk as a whole, where staff speak of no case: lists, search, records, the day called off, and a summary when the day ends.
import type { Body, IncomingMessage } from '../chat/incoming-message.ts';
import type { Archive, CaseListing } from '../desk/listing.ts';
import { dayEndsNext, dayOf, opensNext, tellTime } from '../desk/opening-hours.ts';
import { quoteName } from '../desk/quote.ts';
import { type Command, deskCommands, readBareCommand, readCommand } from '../desk/read-command.ts';
import type { Lexicon } from '../measurement/lexicon.ts';
import type { Content } from '../procedure/content.ts';
import { commandsOf } from './command-words.ts';
import { casesLines, findLines, recordOf, summaryLines } from './desk-lists.ts';
import { line, type Message } from './say.ts';
import type { Saying } from './turn.ts';

/** All that is remembered of the desk as a whole; of owners nothing. */
export interface DeskState {
  version: 1;
  said: number;
  /** The day that was called off, as "2026-01-05". */
  closedOn: string | null;
  /** When the summary of the day is due. */
  summaryAt: number | null;
  /** When it was last said what can be said here. */
  hintedAt: number | null;
  /** What was asked of the tips, the latest last: they have a conversation of their own, which looks here. */
  tips?: TipsRequest[];
}

interface TipsRequest {
  number: number;
  words: string;
  name: string;
}

export interface DeskScene {
  now: number;
  number: number;
  current: Content;
  lexicons: (language: string) => readonly Lexicon[];
  openCases: readonly CaseListing[];
  /** Closed cases and records too; null before they were asked for. */
  archive: Archive | null;
}

export interface DeskTurn {
  scene: DeskScene;
  state: DeskState;
  said: Saying[];
  /** It cannot be answered without the archive. */
  needsArchive: boolean;
}

const hintEvery = 12 * 3_600_000;
/** A summary that is later than this (ms) tells nobody anything. */
const staleAfter = 4 * 3_600_000;
const mostRequests = 5;
const longestRequest = 80;

const newDesk = (): DeskState => ({
  version: 1,
  said: 0,
  closedOn: null,
  summaryAt: null,
  hintedAt: null,
});

/** `message` is null when the clock woke the desk. */
export function hearDesk(
  scene: DeskScene,
  stored: DeskState | null,
  message: IncomingMessage | null,
): DeskTurn {
  const state = { ...(stored ?? newDesk()) };
  const turn: DeskTurn = { scene, state, said: [], needsArchive: false };
  if (message) hear(turn, message);
  else endDay(turn);
  state.summaryAt =
    state.summaryAt !== null && state.summaryAt > scene.now
      ? state.summaryAt
      : dayEndsNext(scene.current.workshop, scene.now, state.closedOn);
  return turn;
}

function hear(turn: DeskTurn, { body, caseId, name, person }: IncomingMessage): void {
  if (caseId !== null)
    return say(turn, { lines: [line('desk-case-unknown-id', { id: quoteName(caseId, '?') })] });
  const command = commandIn(body, commandsOf(turn.scene));
  if (command?.name === 'tips') return askTips(turn, command.rest, quoteName(name, person));
  if (command) return act(turn, command);
  if (body.kind === 'choice') return say(turn, { lines: [line('desk-choice-unknown')] });
  hint(turn);
}

function commandIn(body: Body, meaning?: Parameters<typeof readCommand>[1]): Command | null {
  if (body.kind === 'choice') {
    const [name = '', ...rest] = body.choice.split(':');
    return (deskCommands as readonly string[]).includes(name) ? { name, rest: rest.join(':') } : null;
  }
  if (body.kind !== 'text') return null;
  const signed = readCommand(body.text, meaning);
  if (signed) return signed;
  const bare = readBareCommand(body.text, deskCommands, meaning);
  return bare && isMeant(bare) ? bare : null;
}

/** Whether the tips are to look at what the desk has just been asked. */
export function isForTips({ role, caseId, body }: IncomingMessage): boolean {
  return role === 'staff' && caseId === null && commandIn(body)?.name === 'tips';
}

/** They answer by themselves. */
function askTips({ state }: DeskTurn, rest: string, name: string): void {
  const asked = state.tips ?? [];
  const number = (asked.at(-1)?.number ?? 0) + 1;
  const words = rest.slice(0, longestRequest);
  state.tips = [...asked, { number, words, name }].slice(-mostRequests);
}

/** Without its sign, a word is a command only where nothing but its own kind follows. */
function isMeant({ name, rest }: Command): boolean {
  if (name === 'find') return rest !== '';
  if (name === 'record') return /^\S+(\s+json)?$/iu.test(rest);
  if (name === 'closed') return /^today$/iu.test(rest);
  if (name === 'tips') return /^((post|correct|withdraw)\s+)?[a-z0-9-]*$/iu.test(rest);
  if (name === 'open') return /^(again|today)$/iu.test(rest);
  return rest === '';
}

function act(turn: DeskTurn, { name, rest }: Command): void {
  const { scene, state } = turn;
  const { workshop } = scene.current;
  switch (name) {
    case 'cases':
      return say(turn, { lines: casesLines(scene) });
    case 'find':
      if (!scene.archive) return needArchive(turn);
      return say(turn, findLines(scene.archive, rest, scene.current));
    case 'record':
      if (!scene.archive) return needArchive(turn);
      return say(turn, { lines: recordOf(scene.archive, rest, scene.current) });
    case 'closed': {
      state.closedOn = dayOf(workshop, scene.now);
      const at = opensNext(workshop, scene.now, state.closedOn);
      return say(turn, {
        lines: [
          at === null
            ? line('desk-closed-today')
            : line('desk-closed-today-until', { when: tellTime(workshop, at, null) }),
        ],
      });
    }
    case 'open':
      state.closedOn = null;
      return say(turn, { lines: [line('desk-open-again')] });
    case 'help':
      return say(turn, { lines: [line('desk-help-desk'), line('desk-help-case')] });
    case 'take':
    case 'close':
    case 'give-back':
      return say(turn, { lines: [line('desk-in-thread')] });
    default:
      return say(turn, { lines: [line('desk-command-unknown')] });
  }
}

/** It is loaded, and the same message comes again. */
function needArchive(turn: DeskTurn): void {
  turn.needsArchive = true;
}

/** Staff may talk among themselves here: now and then they are told what this place can do. */
function hint(turn: DeskTurn): void {
  const { state, scene } = turn;
  if (state.hintedAt !== null && scene.now - state.hintedAt < hintEvery) return;
  state.hintedAt = scene.now;
  say(turn, { lines: [line('desk-hint')] });
}

/** Once the day's last span is over: what waits, what is in hand, what was closed. */
function endDay(turn: DeskTurn): void {
  const { scene, state } = turn;
  const { summaryAt } = state;
  if (summaryAt === null || scene.now < summaryAt || scene.now - summaryAt > staleAfter) return;
  if (!scene.archive) return needArchive(turn);
  const lines = summaryLines(scene, scene.archive, summaryAt);
  if (lines.length > 0) say(turn, { lines });
}

function say({ scene, state, said }: DeskTurn, { lines, facts, buttons = [] }: Message): void {
  state.said += 1;
  said.push({
    id: `c${scene.number}-${state.said}`,
    edit: 0,
    to: { kind: 'desk', caseId: null },
    language: scene.current.workshop.language,
    lines,
    buttons,
    picture: null,
    facts: { ...facts, lines },
  });
}
