// Twelve stages, each one reading against a tolerance, asked for until it is right; without faults and words. For the goals of the pure step.
import { join } from 'node:path';
import type { IncomingMessage } from '../../src/chat/incoming-message.ts';
import { packState } from '../../src/conversation/pack-state.ts';
import { type Event, readState, transition } from '../../src/conversation/transition.ts';
import type { Scene } from '../../src/conversation/turn.ts';
import { loadContent } from '../../src/library/load-content.ts';
import { prepareLexicon } from '../../src/measurement/lexicon.ts';
import type { Content } from '../../src/procedure/content.ts';
import { nothingWrong, unknownCause } from '../../src/procedure/fault.ts';
import { procedureSchema } from '../../src/procedure/procedure.ts';

/** These two every content has. */
const always = new Set<string>([nothingWrong, unknownCause]);

export const stages = 12;
/** For a job of 200 messages: a person is called where a reading stays wrong, so the tries of each stage stay the same. */
export const manyStages = 60;
export const low = 2;
export const high = 4;

/** The readings of a job of so many messages: wrong ones spread over the stages, then the right one of each. */
export function readingsOf(messages: number, stages: number): number[] {
  const wrong = messages - stages;
  return Array.from({ length: stages }, (_, stage) => {
    const share = Math.floor(((stage + 1) * wrong) / stages) - Math.floor((stage * wrong) / stages);
    // Each try comes nearer, as turning does.
    return [...Array.from({ length: share }, (_, index) => 4.5 + (share - index) * 0.1), 3];
  }).flat();
}

/** State and text in, state and the number of replies out: what a message costs without the store. */
export type Step = (state: string | null, text: string) => { state: string; replies: number };

export async function ourStep(stages: number): Promise<Step> {
  const { newest } = await loadContent(join(import.meta.dirname, '..', '..', 'content'));
  if (newest === null) throw new Error('the shipped content does not load');
  const shipped = newest.edition.content;
  const machine = shipped.machines['fenmoor-450'];
  if (machine === undefined) throw new Error('the shipped machine is missing');
  const procedure = procedureSchema.parse({
    id: 'bench',
    name: { en: 'Bench' },
    stages: Array.from({ length: stages }, (_, index) => ({
      id: `stage-${index}`,
      ask: { reading: 'free-play' },
      failing: { go: `stage-${index}` },
    })),
  });
  const content: Content = {
    ...shipped,
    hash: 'bench',
    procedures: { bench: procedure },
    faults: {
      faults: shipped.faults.faults.filter(({ id }) => always.has(id)),
      questions: [],
      checks: [],
      pairs: [],
    },
    machines: {
      'fenmoor-450': {
        ...machine,
        procedures: ['bench'],
        targets: { 'free-play': { low, high, scales: false, guarded: false, source: 'workshop' } },
      },
    },
  };
  const english = newest.lexicons.en;
  if (english === undefined) throw new Error('the shipped lexicon is missing');
  const lexicon = [prepareLexicon(english)];
  const scene: Scene = {
    now: Date.UTC(2026, 0, 5),
    number: 1,
    current: content,
    contentAt: () => content,
    lexicons: () => lexicon,
    label: () => '',
    desk: { open: true, opensAt: null, closedOn: null },
    readings: [],
    mostPerMinute: null,
  };
  return (state, text) => {
    const turn = transition(scene, state === null ? null : readState(JSON.parse(state)), eventOf(text));
    return { state: JSON.stringify(packState(turn.state)), replies: turn.said.length };
  };
}

function eventOf(text: string): Event {
  const body: IncomingMessage['body'] =
    text === 'start' ? { kind: 'start', procedure: 'bench', machine: 'fenmoor-450' } : { kind: 'text', text };
  const message: IncomingMessage = {
    platform: 'bench',
    messageId: '1',
    person: 'p',
    name: null,
    role: 'owner',
    chat: 'p',
    caseId: null,
    locale: null,
    body,
  };
  return { kind: 'message', message, language: 'en' };
}
