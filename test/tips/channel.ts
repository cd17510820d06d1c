// A channel and a desk to try the tips on: their decisions, one after the other, with the clock moved by hand.
import { join } from 'node:path';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { tellTime } from '../../src/desk/opening-hours.ts';
import { loadContent } from '../../src/library/load-content.ts';
import type { Content } from '../../src/procedure/content.ts';
import { type Tip, tipSchema } from '../../src/procedure/tip.ts';
import type { Arrival, Decision, Loaded } from '../../src/store/store.ts';
import { makeDecideTips } from '../../src/tips/decide-tips.ts';
import type { Request } from '../../src/tips/hear-request.ts';
import { prepareWording } from '../../src/words/wording.ts';

const { newest } = await loadContent(join(import.meta.dirname, '../../content'));
if (!newest) throw new Error('the shipped content is not sound');
const { edition } = newest;
export const shipped: Content = edition.content;

export const hour = 3_600_000;
export const day = 24 * hour;

export interface Posted {
  at: number;
  tip: string;
  message: OutgoingMessage;
}

const job = { procedure: 'throttle-sensor', machine: 'any-single', days: ['tue', 'fri'], time: '17:30' };

/** A tip with what the test does not care about filled in. */
export const tip = (own: { id: string } & Partial<Tip>): Tip => tipSchema.parse({ ...job, ...own });

/** Words for made-up tips: each says its own name. */
export function openChannel(options: { now: string; tips?: Tip[]; timeZone?: string; hasChannel?: boolean }) {
  let now = Date.parse(options.now);
  let tips = options.tips ?? Object.values(shipped.tips);
  let words: Record<string, string> = {};
  let hasChannel = options.hasChannel ?? true;
  let state: unknown = null;
  let dueAt: number | null = now;
  const requests: Request[] = [];
  const posted: Posted[] = [];
  const desk: OutgoingMessage[] = [];
  const edits: OutgoingMessage[] = [];

  function open() {
    const own = tips.map(({ id }) => `tip-${id} = ${words[id] ?? `This is ${id}.`}`).join('\n');
    const { timeZone = shipped.workshop.timeZone } = options;
    const content: Content = {
      ...shipped,
      workshop: { ...shipped.workshop, timeZone },
      tips: Object.fromEntries(tips.map((one) => [one.id, one])),
    };
    return makeDecideTips({
      content,
      wording: prepareWording(
        'en',
        options.tips ? { en: { ...edition.words.en, 'own.ftl': own } } : edition.words,
      ),
      hasChannel,
      tellTime: (at, today) => tellTime(content.workshop, at, today),
      requestsOf: (found) => (found as Request[] | null) ?? [],
    });
  }

  let decideTips = open();

  function decide(arrival: Arrival): Decision {
    const loaded: Loaded = {
      now,
      key: 'tips',
      number: 2,
      // As the store keeps it.
      state: JSON.parse(JSON.stringify(state)),
      desk: requests,
      openCases: [],
      readings: [],
      hasReadings: false,
    };
    const before = JSON.stringify(loaded);
    const decision = decideTips(loaded, arrival);
    if ('needs' in decision) throw new Error('the tips asked for more');
    if (JSON.stringify(loaded) !== before) throw new Error('the tips changed what they were given');
    if (JSON.stringify(decideTips(loaded, arrival)) !== JSON.stringify(decision)) {
      throw new Error('the same input gave two decisions');
    }
    return decision;
  }

  function take(arrival: Arrival): void {
    const decision = decide(arrival);
    state = decision.state;
    dueAt = decision.dueAt;
    for (const message of decision.messages) {
      if (message.to.kind === 'desk') desk.push(message);
      else if (message.edit > 0) edits.push(message);
      else {
        const key = message.facts.lines?.[0]?.key ?? '';
        posted.push({ at: now, tip: key.replace(/^tip-/, ''), message });
      }
    }
  }

  const due: Arrival = { kind: 'due', key: 'tips' };

  /** As the clock would: what falls due on the way is taken at its instant. */
  function advance(ms: number): void {
    const until = now + ms;
    for (let turns = 0; dueAt !== null && dueAt <= until; turns += 1) {
      if (turns > 100_000) throw new Error('the clock cannot get past');
      now = Math.max(now, dueAt);
      take(due);
    }
    now = until;
  }

  return {
    posted,
    desk,
    edits,
    advance,
    advanceTo: (instant: string) => advance(Date.parse(instant) - now),
    get now() {
      return now;
    },
    get dueAt() {
      return dueAt;
    },
    get state() {
      return state;
    },
    /** The program does not run for so long; then it starts, and the tips are woken. */
    isOffFor(ms: number): void {
      now += ms;
      take(due);
    },
    /** A member of the desk asks; what it answers. */
    ask(asked: string, name = 'Ines'): string {
      requests.push({ number: requests.length + 1, words: asked, name });
      const said = desk.length;
      take(due);
      return desk
        .slice(said)
        .map(({ text }) => text)
        .join('\n---\n');
    },
    refuse(message: OutgoingMessage, why: string, partly = false): void {
      take({ kind: 'refused', key: 'tips', row: 1, message, why, partly });
    },
    /** Another edition of the content, as after a start. */
    change(to: { tips?: Tip[]; words?: Record<string, string>; hasChannel?: boolean }): void {
      tips = to.tips ?? tips;
      words = to.words ?? words;
      hasChannel = to.hasChannel ?? hasChannel;
      decideTips = open();
      take(due);
    },
  };
}
