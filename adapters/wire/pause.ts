// Waits, unless the program is stopping, for the adapters' loops.
import { setTimeout as sleep } from 'node:timers/promises';

/** Returns early, without an error, once `stopping` is aborted. */
export async function pause(ms: number, stopping: AbortSignal): Promise<void> {
  await sleep(ms, undefined, { signal: stopping }).catch(() => {});
}

/** Doubling waits with jitter, so that many who were cut off at once do not come back at once. */
export function backoff(
  attempt: number,
  shortestMs: number,
  longestMs: number,
  random = Math.random,
): number {
  const full = Math.min(longestMs, shortestMs * 2 ** Math.min(attempt, 16));
  return full * (0.5 + random() / 2);
}
