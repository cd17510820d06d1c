// Arrivals for tests of store and inbox, with everything filled in that does not matter there.
import type { IncomingMessage } from '../../src/chat/incoming-message.ts';
import type { Arrival } from '../../src/store/store.ts';

let counted = 0;

export function textFrom(person: string, text: string, more: Partial<IncomingMessage> = {}): Arrival {
  counted += 1;
  const message: IncomingMessage = {
    platform: 'console',
    messageId: `message ${counted}`,
    person,
    name: null,
    role: 'owner',
    chat: person,
    caseId: null,
    locale: null,
    body: { kind: 'text', text },
    ...more,
  };
  return { kind: 'message', message };
}

export function staffSay(text: string, caseId: string | null): Arrival {
  return textFrom('mechanic', text, { role: 'staff', caseId });
}
