// How large a conversation's stored state becomes when an owner with a complaint goes through the shipped procedure, faults and all.
import { join } from 'node:path';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { makeKnowledge } from '../../src/commands/make-knowledge.ts';
import { makeDecide } from '../../src/inbox/decide.ts';
import { loadContent } from '../../src/library/load-content.ts';
import type { Loaded } from '../../src/store/store.ts';
import type { Answer } from '../kill/drive-program.ts';
import { answer } from '../kill/plain-owners.ts';

export async function largestState(messages: number): Promise<number> {
  const { newest } = await loadContent(join(import.meta.dirname, '..', '..', 'content'));
  if (newest === null) throw new Error('the shipped content does not load');
  const nothingKept = { put: async () => {}, get: async () => undefined, inUse: async () => [] };
  const { knowledge } = await makeKnowledge(newest, nothingKept);
  const decide = makeDecide(knowledge);
  const heard: OutgoingMessage[] = [];
  let state: string | null = null;
  let largest = 0;
  for (let count = 0; count < messages; count += 1) {
    const loaded: Loaded = {
      now: Date.UTC(2026, 0, 5, 9) + count * 30_000,
      key: 'console:p',
      number: 1,
      state: state === null ? null : JSON.parse(state),
      desk: null,
      openCases: [],
      readings: [],
      hasReadings: true,
    };
    const said = answer(heard as unknown as Answer[], 'runs-badly') as { text?: string; choose?: string };
    const body =
      said.choose === undefined
        ? ({ kind: 'text', text: said.text ?? '' } as const)
        : ({ kind: 'choice', choice: said.choose, of: null } as const);
    const message = {
      platform: 'console',
      messageId: `${count}`,
      person: 'p',
      name: 'p',
      role: 'owner',
      chat: 'p',
      caseId: null,
      locale: 'en',
      body,
    } as const;
    const decision = decide(loaded, { kind: 'message', message });
    if ('needs' in decision) throw new Error('the readings were given');
    state = JSON.stringify(decision.state);
    largest = Math.max(largest, Buffer.byteLength(state));
    heard.push(...decision.messages.filter(({ to }) => to.kind === 'owner'));
  }
  return largest;
}
