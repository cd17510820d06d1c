// How fast the bot sends on each platform, below the limits that the platforms publish.
import type { PlatformRates } from '../outbox/pace.ts';

export const platformRates: Record<string, PlatformRates> = {
  // One message a second in a chat with short bursts, twenty a minute in a group, thirty a second overall.
  telegram: {
    chat: { gapMs: 1_000, burst: 4 },
    desk: { gapMs: 4_000, burst: 5 },
    overall: { gapMs: 40, burst: 20 },
  },
  // Fifty calls a second overall; the limits of a channel come with each answer and are kept by the library.
  discord: {
    chat: { gapMs: 1_000, burst: 4 },
    desk: { gapMs: 250, burst: 10 },
    overall: { gapMs: 30, burst: 20 },
  },
};
