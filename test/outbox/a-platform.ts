// A platform for tests of the outbox: answers as it is told to, and remembers what it was given.
import type { Adapter, Sendable, SendOutcome } from '../../src/chat/adapter.ts';

export interface FakePlatform extends Adapter {
  sent: Sendable[];
  texts(): string[];
  /** The outcomes of the next sendings; then every one is sent. An error is thrown. */
  answers: (SendOutcome | Error)[];
}

export function aPlatform(name = 'console'): FakePlatform {
  const sent: Sendable[] = [];
  const answers: (SendOutcome | Error)[] = [];
  return {
    name,
    sent,
    answers,
    texts: () => sent.map(({ message }) => message.text),
    start: async () => {},
    stop: async () => {},
    async send(sendable) {
      sent.push(sendable);
      const answer = answers.shift() ?? { kind: 'sent', platformIds: [`${name} ${sent.length}`] };
      if (answer instanceof Error) throw answer;
      return answer;
    },
  };
}
