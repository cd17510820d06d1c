// Pacing holds every window of time to its limit, whatever is sent when.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Destination } from '../../src/chat/outgoing-message.ts';
import { makePacing } from '../../src/outbox/pace.ts';

// Telegram's published limits: one message a second in a chat, 20 a minute in a group, about 30 a second in all
// (https://core.telegram.org/bots/faq, "My bot is hitting limits").
const rates = {
  telegram: {
    chat: { gapMs: 1000, burst: 3 },
    desk: { gapMs: 3000, burst: 5 },
    overall: { gapMs: 35, burst: 1 },
  },
};
const owner = (chat: string): Destination => ({ kind: 'owner', platform: 'telegram', person: chat, chat });

describe('pacing', () => {
  test('lets a short burst go, then one message a gap', () => {
    const pacing = makePacing({ a: { ...rates.telegram, overall: { gapMs: 0, burst: 1 } } });
    const waits: number[] = [];
    for (let sent = 0; sent < 5; sent += 1) {
      waits.push(pacing.wait('a', owner('1'), 0));
      pacing.take('a', owner('1'), 0);
    }
    expect(waits).toEqual([0, 0, 0, 1000, 2000]);
    expect(pacing.wait('a', owner('2'), 0)).toBe(0);
  });

  test('counts all threads of the desk as one group, and leaves other platforms alone', () => {
    const pacing = makePacing(rates);
    for (let sent = 0; sent < 5; sent += 1)
      pacing.take('telegram', { kind: 'desk', caseId: String(sent) }, 0);
    expect(pacing.wait('telegram', { kind: 'desk', caseId: 'x' }, 0)).toBe(3000);
    expect(pacing.wait('console', { kind: 'desk', caseId: 'x' }, 0)).toBe(0);
  });

  test('never lets more through in a stretch of time than the burst and one for each gap', () => {
    const steps = fc.array(fc.record({ chat: fc.nat(3), after: fc.nat(800) }), { maxLength: 200 });
    fc.assert(
      fc.property(steps, (wanted) => {
        const pacing = makePacing(rates);
        const sent: { chat: string; at: number }[] = [];
        let now = 0;
        for (const { chat, after } of wanted) {
          now += after;
          const to = owner(String(chat));
          now += pacing.wait('telegram', to, now);
          pacing.take('telegram', to, now);
          sent.push({ chat: to.kind === 'owner' ? to.chat : '', at: now });
        }
        for (const { chat, at } of sent) {
          const inChat = sent.filter(
            (other) => other.chat === chat && other.at >= at && other.at < at + 10_000,
          );
          const inAll = sent.filter((other) => other.at >= at && other.at < at + 1000);
          if (inChat.length > 3 + 10 || inAll.length > 1 + 1000 / 35) return false;
        }
        return true;
      }),
    );
  });
});
