// Remembers, for each chat on Discord, how far we got: what a restart has to fetch, and what a repeat is compared with.
import type { Links, Log } from '../wire/surroundings.ts';

export interface Trace {
  /** The latest message of a person that was taken; catching up starts behind it. */
  taken: string;
  /** Our own latest. */
  sent: string;
  at: number;
  about: string | null;
}

export type Seen = Awaited<ReturnType<typeof openSeen>>;

const prefix = 'discord:seen:';
const writeEveryMs = 5_000;
const activeForMs = 3 * 24 * 3600 * 1000;
/** A channel with nothing taken yet starts at the oldest. */
const beginning = '0';

export async function openSeen(links: Links, log: Log) {
  const traces = new Map<string, Trace>();
  const unwritten = new Set<string>();
  for (const { link, value } of await links.list(prefix)) {
    const trace = JSON.parse(value) as Trace;
    if (Date.now() - trace.at < activeForMs) traces.set(link.slice(prefix.length), trace);
    else await links.delete(link);
  }
  const timer = setInterval(() => void write(), writeEveryMs);
  timer.unref();

  function change(channel: string, about: string | null, part: 'taken' | 'sent', id: string): void {
    const before = traces.get(channel) ?? { taken: beginning, sent: beginning, at: 0, about };
    if (isNewer(id, before[part])) before[part] = id;
    // What came before we ever spoke here is none of our business.
    if (before.taken === beginning) before.taken = id;
    traces.set(channel, { ...before, at: Date.now() });
    unwritten.add(channel);
  }

  /** Late by some seconds at most: what is fetched twice is known as a repeat. */
  async function write(): Promise<void> {
    const channels = [...unwritten];
    unwritten.clear();
    for (const channel of channels) {
      const trace = traces.get(channel);
      if (!trace) continue;
      await links.set(prefix + channel, JSON.stringify(trace), trace.about).catch(() => {
        unwritten.add(channel);
        log.warn({}, 'how far a chat was read could not be noted yet');
      });
    }
  }

  return {
    active: (): [string, Trace][] => [...traces],
    find: (channel: string) => traces.get(channel) ?? null,
    taken: (channel: string, about: string | null, id: string) => change(channel, about, 'taken', id),
    sent: (channel: string, about: string | null, id: string) => change(channel, about, 'sent', id),
    async forget(channel: string) {
      traces.delete(channel);
      unwritten.delete(channel);
      await links.delete(prefix + channel);
    },
    async close() {
      clearInterval(timer);
      await write();
    },
  };
}

/** Ids count up with time, beyond what a number can hold. */
export const isNewer = (one: string, other: string) => BigInt(one) > BigInt(other);
