// Spaces out what is sent, for each chat and for a platform as a whole, so that the platform's limits are not run into.
import type { Destination } from '../chat/outgoing-message.ts';

export interface Pacing {
  /** How long to wait before a message may go there; 0 for now. */
  wait(adapter: string, to: Destination, now: number): number;
  /** Counts a message that goes there at that instant. */
  take(adapter: string, to: Destination, at: number): void;
}

/** One message each `gapMs`, but for a burst of so many. */
interface Rate {
  gapMs: number;
  burst: number;
}

export interface PlatformRates {
  /** In one owner's chat. */
  chat: Rate;
  /** At the desk: all cases share one group on some platforms. */
  desk: Rate;
  overall: Rate;
}

export function makePacing(platforms: Record<string, PlatformRates>): Pacing {
  /** For each lane, the instant at which the rate is used up to. */
  const usedUpTo = new Map<string, number>();

  function lanes(adapter: string, to: Destination): [string, Rate][] {
    const rates = platforms[adapter];
    if (rates === undefined) return [];
    const chat: [string, Rate] =
      to.kind === 'owner'
        ? [`${adapter}/owner/${to.chat}`, rates.chat]
        : [`${adapter}/${to.kind}`, rates.desk];
    return [chat, [`${adapter}/`, rates.overall]];
  }

  return {
    wait(adapter, to, now) {
      const waits = lanes(adapter, to).map(
        ([lane, { gapMs, burst }]) => (usedUpTo.get(lane) ?? 0) - (burst - 1) * gapMs - now,
      );
      return Math.max(0, ...waits);
    },
    take(adapter, to, at) {
      for (const [lane, { gapMs }] of lanes(adapter, to)) {
        usedUpTo.set(lane, Math.max(usedUpTo.get(lane) ?? 0, at) + gapMs);
      }
      if (usedUpTo.size > 10_000) {
        for (const [lane, instant] of usedUpTo) if (instant < at) usedUpTo.delete(lane);
      }
    },
  };
}
