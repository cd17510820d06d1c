// Telegram's published limits on sending (core.telegram.org/bots/faq): one message a second in a chat with short bursts, twenty a minute in a group.
import { Refusal } from './methods.ts';
import type { World } from './world.ts';

const groupPerMinute = 20;
/** "Short bursts" are not defined; so many within so long pass here. */
const burst = 8;
const burstMs = 3_000;

export function makeRates(breach: (what: string) => void) {
  const sentAt = new Map<string, number[]>();
  const heldUntil = new Map<string, number>();
  return {
    hold(chat: string, seconds: number): void {
      heldUntil.set(chat, Date.now() + seconds * 1000);
    },
    count(chat: string, world: World): void {
      const now = Date.now();
      const held = heldUntil.get(chat) ?? 0;
      if (now < held - 20) {
        breach(`chat ${chat} was sent to ${held - now} ms before the wait was over`);
        const left = Math.ceil((held - now) / 1000);
        throw new Refusal(429, `Too Many Requests: retry after ${left}`, { retry_after: left });
      }
      const times = (sentAt.get(chat) ?? []).filter((at) => now - at < 60_000);
      times.push(now);
      sentAt.set(chat, times);
      const isGroup = world.groups.has(Number(chat));
      if (isGroup && times.length > groupPerMinute)
        breach(`more than ${groupPerMinute} messages a minute in a group`);
      const recent = times.filter((at) => now - at < burstMs).length;
      if (!isGroup && recent > burst) breach(`${recent} messages within ${burstMs} ms in chat ${chat}`);
    },
  };
}
