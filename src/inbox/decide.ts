// Makes of what was loaded and what arrived one decision: understood, moved on, put into words; pure, called by the store inside its transaction.
import type { Facts } from '../chat/facts.ts';
import type { OutgoingMessage } from '../chat/outgoing-message.ts';
import { dueAt, type Event, readState, transition } from '../conversation/transition.ts';
import type { Saying, Scene, Turn } from '../conversation/turn.ts';
import type { Edition, WordFiles } from '../library/edition.ts';
import { wordsFor } from '../library/edition.ts';
import type { Library } from '../library/library.ts';
import type { Lexicon } from '../measurement/lexicon.ts';
import type { Arrival, CaseRow, Decide, Decision, Loaded } from '../store/store.ts';
import { chooseLanguage } from '../words/choose-language.ts';
import { label, render } from '../words/render.ts';
import { prepareWording, type Wording } from '../words/wording.ts';

export interface Knowledge {
  library: Library;
  /** The owner's language first, English second. */
  lexicons: (language: string) => readonly Lexicon[];
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
  const wordingFor = makeWordings(knowledge.library);
  return (loaded, arrival) => {
    const state = readState(loaded.state);
    const turn = transition(sceneOf(knowledge, loaded), state, eventOf(knowledge.library, arrival));
    return decisionOf(turn, wordingFor);
  };
}

function eventOf(library: Library, arrival: Arrival): Event {
  if (arrival.kind === 'due') return { kind: 'due' };
  if (arrival.kind === 'refused') {
    return { kind: 'refused', to: arrival.message.to.kind === 'owner' ? 'owner' : 'desk', why: arrival.why };
  }
  const { message } = arrival;
  const { workshop } = library.current.content;
  const languages = Object.keys(library.current.words);
  const language = message.locale === null ? workshop.language : chooseLanguage(message.locale, languages);
  return { kind: 'message', message, language };
}

function sceneOf({ library, lexicons }: Knowledge, loaded: Loaded): Scene {
  return {
    now: loaded.now,
    number: loaded.number,
    current: library.current.content,
    contentAt: (hash) => editionAt(library, hash).content,
    lexicons,
    desk: { open: true, opensAt: null },
  };
}

function editionAt(library: Library, hash: string): Edition {
  const edition = library.at(hash);
  if (!edition) throw new MissingEdition(hash);
  return edition;
}

function decisionOf(turn: Turn, wordingFor: WordingFor): Decision {
  const { state, scene } = turn;
  const setUp = state.setUp;
  const machine = setUp && scene.contentAt(setUp.content).machines[setUp.machine];
  const pinned = setUp?.content ?? scene.current.hash;
  const decision: Decision = {
    state: turn.erase ? null : state,
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

function caseRowOf({ state, scene, erase }: Turn): CaseRow | null {
  const one = state.case;
  if (!one || erase) return null;
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
      state.setUp?.machine ?? '',
      state.setUp?.code ?? '',
      ...one.ownWords,
    ].join(' '),
    body: {
      owner: state.owner.name,
      machine: state.setUp?.machine ?? null,
      stage: state.setUp?.stage ?? null,
    },
  };
}

/** The words of one message. What content or a person brought as plain text stays as it is. */
function put(saying: Saying, wording: Wording): OutgoingMessage {
  const facts: Facts = saying.facts;
  return {
    id: saying.id,
    edit: saying.edit,
    to: saying.to,
    text: render(saying.lines, wording),
    choices: saying.buttons.map((button) => ({
      id: button.id,
      label:
        typeof button.label === 'string'
          ? button.label
          : label(button.label.key, button.label.with ?? {}, wording),
    })),
    picture: saying.picture,
    facts,
  };
}

type WordingFor = (language: string, pinned: string) => Wording;

/** Wordings are made once for each language and edition. */
function makeWordings(library: Library): WordingFor {
  const made = new Map<string, Wording>();
  const files = new Map<string, WordFiles>();
  return (language, pinned) => {
    const known = made.get(`${pinned} ${language}`);
    if (known) return known;
    let words = files.get(pinned);
    if (!words) {
      words = wordsFor(editionAt(library, pinned), library.current);
      files.set(pinned, words);
    }
    const wording = prepareWording(language, words);
    made.set(`${pinned} ${language}`, wording);
    return wording;
  };
}
