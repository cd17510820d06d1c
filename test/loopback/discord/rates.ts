// Discord's limits on calls: told with every answer, and never to be run into twice (discord.com/developers/docs/topics/rate-limits).

export interface Limit {
  headers: Record<string, string>;
  /** Null where the call may take place. */
  refused: { retryAfter: number; everywhere: boolean } | null;
}

const calls = 5;
const windowMs = 2_000;

export function makeRates(breach: (what: string) => void) {
  const windows = new Map<string, { until: number; used: number }>();
  const heldUntil = new Map<string, number>();
  const everywhere = '*';

  return {
    hold(route: string, seconds: number, all: boolean): void {
      heldUntil.set(all ? everywhere : route, Date.now() + seconds * 1000);
    },
    count(route: string): Limit {
      const now = Date.now();
      for (const lane of [route, everywhere]) {
        const left = (heldUntil.get(lane) ?? 0) - now;
        if (left > 20) {
          breach(`${route} was called ${left} ms before the wait was over`);
          return { headers: {}, refused: { retryAfter: left / 1000, everywhere: lane === everywhere } };
        }
      }
      let window = windows.get(route);
      if (!window || window.until <= now) {
        window = { until: now + windowMs, used: 0 };
        windows.set(route, window);
      }
      window.used += 1;
      const left = (window.until - now) / 1000;
      const headers = {
        'x-ratelimit-limit': String(calls),
        'x-ratelimit-remaining': String(Math.max(0, calls - window.used)),
        'x-ratelimit-reset-after': left.toFixed(3),
        'x-ratelimit-bucket': 'messages',
      };
      if (window.used <= calls) return { headers, refused: null };
      breach(`${route} was called more often than its limit allows`);
      return { headers, refused: { retryAfter: left, everywhere: false } };
    },
  };
}
