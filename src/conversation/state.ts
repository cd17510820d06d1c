// All that is remembered of one owner's chat, as plain data: bounded, versioned, and enough to go on after any restart.
import type { Case } from '../desk/case.ts';
import type { Seen, Weights } from '../diagnosis/evidence.ts';
import type { Trial } from '../measurement/learn-part.ts';
import type { Action, Measure } from '../procedure/vocabulary.ts';
import { type Rig, rigAtStart } from './rig.ts';

export const stateVersion = 1;

export interface Conversation {
  version: typeof stateVersion;
  owner: { platform: string; person: string; chat: string; name: string | null };
  language: string;
  /** How many messages were made for this chat; the next one's id follows from it. */
  said: number;
  greeted: boolean;
  /** How many readings were taken; each has a number. */
  taken: number;
  /** The latest message to the owner that offered choices, whose buttons are therefore current; and what is on them. */
  latest: { id: string; choices: string[]; labels?: string[] } | null;
  menu: 'procedure' | 'machine' | null;
  /** The procedure chosen in the menu before the machine is. */
  chosen: string | null;
  /** A start link that waits for the owner to keep or replace the open set-up. */
  offered: { procedure: string; machine: string } | null;
  /** The owner was asked whether everything about them shall be erased. */
  erasing: boolean;
  setUps: number;
  setUp: SetUp | null;
  cases: number;
  case: Case | null;
  /** How many messages came since this instant, where that is limited. */
  pace: { since: number; count: number } | null;
}

/** What is awaited of the owner within a set-up. */
export type Step =
  /** Cautions to be acknowledged, before the stage's own words or before the first turn. */
  | { kind: 'cautions'; cautions: string[]; before: 'stage' | 'turn' }
  /** The stage's own ask. */
  | { kind: 'stage' }
  /** A part was moved, a number is awaited. */
  | { kind: 'turned' }
  /** What was free has been fixed, a number is awaited. */
  | { kind: 'fixed' }
  /** A check of the diagnosis. */
  | { kind: 'check'; check: string }
  /** Everything is being put back; what is left to do, in order. */
  | { kind: 'way-back'; left: string[] }
  /** Whether to put everything back before giving up. */
  | { kind: 'give-up' };

export interface Kept {
  value: number;
  resolution: number;
  /** How the reading stood: within its limits, out of them, or accepted by staff. */
  result: 'pass' | 'out' | 'accepted';
  low: number | null;
  high: number | null;
  at: number;
}

/** One adjusting loop: a part that is turned until its reading is right. */
export interface Loop {
  /** What was let go for it is still loose. */
  free: boolean;
  /** The move that was advised last: part, and signed amount in the part's units. */
  advised: { part: string; amount: number; watched: boolean; slack: boolean } | null;
  /** The reading before that move. */
  before: number | null;
  /** The moves of this loop, oldest first; bounded. */
  trials: Trial[];
  /** The reading just before it was fixed. */
  loose: number | null;
  /** How often it was fixed. */
  fixes: number;
  /** A reading out of all proportion was asked for again. */
  doubted: boolean;
}

/** A reading beside the straight path, for the desk: struck and why, or asked for by staff. */
export interface Aside {
  measure: string;
  situation: string | null;
  typed: string;
  value: number | null;
  resolution: number;
  low: number | null;
  high: number | null;
  why: 'asked' | 'asleep' | 'implausible' | 'unclear' | 'doubted';
  /** The number of the reading. */
  at: number;
}

/** What staff had the program ask, besides the set-up's own questions; the cautions left stand before it. */
export type Asked = { check: string | null; cautions: string[]; by: string } & (
  | { kind: 'reading'; measure: Measure; situation: string | null }
  | { kind: 'question'; question: string }
);

export interface SetUp {
  /** The short code by which staff find it. */
  code: string;
  content: string;
  procedure: string;
  machine: string;
  startedAt: number;
  touchedAt: number;
  /** How long the owner has been at work, breaks left out. */
  workedMs: number;
  /** A person was offered to them, since it takes long. */
  offered: boolean;
  stage: string;
  step: Step;
  /** What the owner was asked to do and has not yet confirmed. */
  doing: Action[];
  /** A value to be confirmed before it counts. */
  heard: { value: number; resolution: number; bare: boolean } | null;
  /** The stage for which a bare figure's meaning is settled. */
  bareSettled: string | null;
  /** The stages that asked something, latest last; for `back`. */
  been: string[];
  paused: boolean;
  answers: Record<string, string>;
  passed: Record<string, 'passed' | 'noted' | 'accepted'>;
  touched: string[];
  /** The latest reading by measure and situation. */
  readings: Record<string, Kept>;
  /** The first, where it was read again since. */
  found: Record<string, Kept>;
  /** What the owner's own manual gives, by measure. */
  manual: Record<string, number>;
  /** The units counted out until the part was free. */
  counts: Record<string, number>;
  /** The latest moves of each part and what they did, by which the part is learned. */
  trials: Record<string, Trial[]>;
  /** What tightening did to the reading, each time. */
  shifts: number[];
  supply: number | null;
  checkOnly: string | null;
  finding: 'left-alone' | null;
  acknowledged: string[];
  rig: Rig;
  loop: Loop | null;
  /** How often in a row a reading at this step could not tell, or showed a unit asleep. */
  unclear: number;
  /** How often in a row something was asked back. */
  lost: number;
  /** The reading that would have decided against the machine, and was asked for once more. */
  reread: number | null;
  wakes: number;
  /** How often each stage was left because its reading did not come out right. */
  failures: Record<string, number>;
  /** Done in front of the next reading, besides what its stage says. */
  extra: Action[];
  /** A log-likelihood for each cause, from all that lasts. */
  evidence: Weights;
  /** The detour for a reading that makes no sense: what it weighs, what was asked, and the step to come back to. */
  oddity: {
    weights: Weights;
    done: string[];
    seen: Seen;
    under: Step;
    retakes: number;
    settled: boolean;
  } | null;
  /** Values accepted by staff, by measure and situation. */
  accepted: Record<string, { by: string; value: number }>;
  asides: Aside[];
  asked: Asked | null;
  /** The desk holds the set-up: nothing goes on until it is given back. */
  held: boolean;
}

export function newConversation(owner: Conversation['owner'], language: string): Conversation {
  return {
    version: stateVersion,
    owner,
    language,
    said: 0,
    taken: 0,
    greeted: false,
    latest: null,
    menu: null,
    chosen: null,
    offered: null,
    erasing: false,
    setUps: 0,
    setUp: null,
    cases: 0,
    case: null,
    pace: null,
  };
}

export function newSetUp(
  code: string,
  content: string,
  procedure: string,
  machine: string,
  stage: string,
  now: number,
): SetUp {
  return {
    code,
    content,
    procedure,
    machine,
    startedAt: now,
    touchedAt: now,
    workedMs: 0,
    offered: false,
    stage,
    step: { kind: 'stage' },
    doing: [],
    heard: null,
    bareSettled: null,
    been: [],
    paused: false,
    answers: {},
    passed: {},
    touched: [],
    readings: {},
    found: {},
    manual: {},
    counts: {},
    trials: {},
    shifts: [],
    supply: null,
    checkOnly: null,
    finding: null,
    acknowledged: [],
    rig: { ...rigAtStart },
    loop: null,
    unclear: 0,
    lost: 0,
    reread: null,
    wakes: 0,
    failures: {},
    extra: [],
    evidence: {},
    oddity: null,
    accepted: {},
    asides: [],
    asked: null,
    held: false,
  };
}

/** What a measure showed when it was first read in this situation. */
export function firstFound({ found, readings }: SetUp, key: string): Kept | undefined {
  return found[key] ?? readings[key];
}

/** Enough for the desk to see what went before. */
const asidesKept = 8;

export function keepAsides(setUp: SetUp, more: readonly Aside[]): void {
  setUp.asides = [...setUp.asides, ...more].slice(-asidesKept);
}
