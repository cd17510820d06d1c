// Makes of what was loaded and what arrived one decision: understood, moved on, put into words; pure, called by the store inside its transaction.
import type { Facts, Line } from '../chat/facts.ts';
import type { OutgoingMessage, PictureRequest } from '../chat/outgoing-message.ts';
import { caseRecord } from '../conversation/case-record.ts';
import { isCaseChanged } from '../conversation/finish-turn.ts';
import { type DeskState, hearDesk } from '../conversation/hear-desk.ts';
import { packState } from '../conversation/pack-state.ts';
import { dueAt, type Event, readState, transition } from '../conversation/transition.ts';
import type { Button, Saying, Scene, TakenReading, Turn } from '../conversation/turn.ts';
import { isOpen } from '../desk/case.ts';
import { isOpenAt, opensNext } from '../desk/opening-hours.ts';
import type { Lexicon } from '../measurement/lexicon.ts';
import type { Content } from '../procedure/content.ts';
import {
  type Arrival,
  type CaseRow,
  type Decide,
  type Decision,
  deskKey,
  type Loaded,
} from '../store/store.ts';
import { chooseLanguage } from '../words/choose-language.ts';
import { keepSpoken } from '../words/keep-spoken.ts';
import { label, render } from '../words/render.ts';
import type { Wording } from '../words/wording.ts';

/** What is known of the workshop's content, whatever keeps it. */
export interface Knowledge {
  /** The newest content, and the languages that it has words in. */
  current: Content;
  languages: readonly string[];
  /** Content that a set-up is pinned to; undefined where it was not brought yet. */
  contentAt: (hash: string) => Content | undefined;
  /** The words of a language, for a set-up pinned to this content. */
  wordingFor: (language: string, hash: string) => Wording;
  /** The owner's language first, English second. */
  lexicons: (language: string) => readonly Lexicon[];
  /** So many messages of one owner are taken in a minute; left out where that is not limited, as in pipe mode. */
  mostPerMinute?: number;
  /** Who decides for conversations that are neither an owner's nor the desk's, by their key. */
  others?: Readonly<Record<string, Decide>>;
}

/** A set-up is pinned to content that this process has not brought yet; whoever takes the turn brings it and tries again. */
export class MissingEdition extends Error {
  override name = 'MissingEdition';
  readonly hash: string;
  constructor(hash: string) {
    super(`The content ${hash} that a set-up is pinned to is not there.`);
    this.hash = hash;
  }
}

export function makeDecide(knowledge: Knowledge): Decide {
  return (loaded, arrival) => {
    if (loaded.key === deskKey) return decideForDesk(knowledge, loaded, arrival);
    const other = knowledge.others?.[loaded.key];
    if (other) return other(loaded, arrival);
    const state = readState(loaded.state);
    const turn = transition(sceneOf(knowledge, loaded), state, eventOf(knowledge, arrival));
    return decisionOf(turn, knowledge.wordingFor);
  };
}

function eventOf({ languages }: Knowledge, arrival: Arrival): Event {
  if (arrival.kind === 'due') return { kind: 'due' };
  if (arrival.kind === 'refused') {
    return { kind: 'refused', to: arrival.message.to.kind === 'owner' ? 'owner' : 'desk', why: arrival.why };
  }
  const { message } = arrival;
  const language = message.locale === null ? null : chooseLanguage(message.locale, languages);
  return { kind: 'message', message, language };
}

function decideForDesk(knowledge: Knowledge, loaded: Loaded, arrival: Arrival): ReturnType<Decide> {
  const { current, lexicons } = knowledge;
  const { now, number, openCases } = loaded;
  const stored = loaded.state as DeskState | null;
  const nothing = { readings: [], caseRow: null, records: [] };
  if (arrival.kind === 'refused') {
    return { ...nothing, state: stored, messages: [], dueAt: stored?.summaryAt ?? null };
  }
  const message = arrival.kind === 'message' ? arrival.message : null;
  const turn = hearDesk(
    { now, number, current, lexicons, openCases, archive: loaded.archive ?? null },
    stored,
    message,
  );
  if (turn.needsArchive) return { needs: 'archive' };
  return {
    ...nothing,
    state: turn.state,
    messages: turn.said.map((saying) => put(saying, knowledge.wordingFor(saying.language, current.hash))),
    dueAt: turn.state.summaryAt,
    // Its lists name owners, who may have themselves erased: no copy stays.
    passing: true,
  };
}

function sceneOf(knowledge: Knowledge, loaded: Loaded): Scene {
  const { current, contentAt, lexicons, mostPerMinute, wordingFor } = knowledge;
  const { workshop } = current;
  const closedOn = (loaded.desk as DeskState | null)?.closedOn ?? null;
  return {
    now: loaded.now,
    number: loaded.number,
    current,
    contentAt: (hash) => {
      const content = contentAt(hash);
      if (!content) throw new MissingEdition(hash);
      return content;
    },
    lexicons,
    label: (words, language, hash) => labelOf(words, wordingFor(language, hash)),
    // Reckoned only where somebody asks: a calendar is slow.
    desk: {
      closedOn,
      get open() {
        return isOpenAt(workshop, loaded.now, closedOn);
      },
      get opensAt() {
        return opensNext(workshop, loaded.now, closedOn);
      },
    },
    readings: loaded.readings.map(({ body }) => body as TakenReading),
    mostPerMinute: mostPerMinute ?? null,
  };
}

function decisionOf(turn: Turn, wordingFor: Knowledge['wordingFor']): Decision {
  const { state, scene } = turn;
  const setUp = state.setUp;
  const machine = setUp && scene.contentAt(setUp.content).machines[setUp.machine];
  const pinned = setUp?.content ?? scene.current.hash;
  const decision: Decision = {
    state: turn.erase ? null : packState(state),
    messages: turn.said.map((saying) => put(saying, wordingFor(saying.language, pinned))),
    readings: turn.taken.map((reading, index) => ({
      number: state.taken - turn.taken.length + 1 + index,
      at: reading.at,
      stage: reading.stage,
      measure: reading.measure,
      body: reading,
    })),
    caseRow: caseRowOf(turn),
    records: turn.ended.map((ended) => ({
      code: ended.code,
      at: ended.at,
      procedure: ended.procedure,
      machine: ended.machine,
      result: ended.facts.record?.result ?? 'not-set',
      body: ended.facts,
    })),
    dueAt: turn.erase ? null : dueAt(state, machine?.awakeMinutes ?? null),
    pins: setUp ? [setUp.content] : [],
  };
  if (turn.erase) decision.erase = 'all';
  return decision;
}

function caseRowOf(turn: Turn): CaseRow | null {
  const { state, scene, erase } = turn;
  const one = state.case;
  if (!one || erase || !(isOpen(one) || isCaseChanged(turn))) return null;
  return {
    id: one.id,
    state: one.state,
    reason: one.reason,
    takenBy: one.holder?.name ?? null,
    openedAt: one.openedAt,
    changedAt: scene.now,
    words: [
      state.owner.name ?? '',
      state.owner.person,
      state.setUp?.machine ?? one.about?.machine ?? '',
      state.setUp?.code ?? one.about?.code ?? '',
      one.job ?? '',
      ...one.ownWords,
    ].join(' '),
    body: caseRecord(turn, one),
  };
}

/** The words of one message. What content or a person brought as plain text stays as it is. */
function put(saying: Saying, wording: Wording): OutgoingMessage {
  const { lines, ...said } = saying.facts;
  const facts: Facts = lines ? { ...said, lines: keepSpoken(lines, wording) } : said;
  return {
    id: saying.id,
    edit: saying.edit,
    to: saying.to,
    text: render(saying.lines, wording),
    choices: saying.buttons.map((button) => ({
      id: button.id,
      label: labelOf(button.label, wording),
    })),
    picture: putPicture(saying.picture, wording),
    facts,
  };
}

const labelOf = (words: Button['label'], wording: Wording): string =>
  typeof words === 'string' ? words : label(words.key, words.with ?? {}, wording);

function putPicture(picture: PictureRequest | null, wording: Wording): PictureRequest | null {
  return picture?.kind === 'drawn' ? { ...picture, subject: putWithin(picture.subject, wording) } : picture;
}

/** A picture's subject may hold lines where it will show words. */
function putWithin(subject: unknown, wording: Wording): unknown {
  if (Array.isArray(subject)) return subject.map((one) => putWithin(one, wording));
  if (typeof subject !== 'object' || subject === null) return subject;
  const { key, with: fillIn } = subject as Partial<Line>;
  if (typeof key === 'string') return label(key, fillIn ?? {}, wording);
  return Object.fromEntries(
    Object.entries(subject).map(([name, value]) => [name, putWithin(value, wording)]),
  );
}
