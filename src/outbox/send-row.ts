// Sends one queued message through every adapter that serves its destination, and says what became of it.
import type { Adapter, Sendable, SendOutcome } from '../chat/adapter.ts';
import type { Destination, OutgoingMessage } from '../chat/outgoing-message.ts';
import type { OutboxRow } from '../store/store.ts';
import type { Pacing } from './pace.ts';

export type Paint = (request: {
  drawing: string;
  contentHash: string;
  language: string;
  subject: unknown;
}) => Promise<Sendable['picture']>;

export interface SendOptions {
  route: (to: Destination) => Adapter[];
  paint: Paint | null;
  /** Null sends without any wait. */
  pacing: Pacing | null;
  clock: () => number;
  sleep: (ms: number) => Promise<void>;
}

export type RowOutcome =
  | { kind: 'sent'; progress: OutboxRow['progress']; refusals: string[] }
  | { kind: 'refused'; why: string }
  | { kind: 'retry'; waitMs: number; tried: boolean; why: string | null; progress: OutboxRow['progress'] };

/** Longer waits give the row back, so that it does not hold up a place in hand. */
const patienceMs = 20_000;
const longestBackOffMs = 15 * 60_000;
/** About a day of tries; then it counts as refused, and a person hears of it. */
const mostAttempts = 100;

export function makeSendRow(options: SendOptions): (row: OutboxRow) => Promise<RowOutcome> {
  const { route, paint, pacing, clock, sleep } = options;
  const heldUntil = new Map<string, number>();

  return async (row) => {
    const { message } = row;
    const adapters = route(message.to);
    const progress = { ...row.progress };
    if (adapters.length === 0) return nobodyServes(message.to, progress);
    const picture = await draw(message, paint);
    const refusals: string[] = [];
    const delays: { waitMs: number; tried: boolean; why: string | null }[] = [];
    for (const adapter of adapters) {
      if (progress[adapter.name]?.whole) continue;
      const waitMs = waitFor(adapter.name, message.to);
      if (waitMs > patienceMs) {
        delays.push({ waitMs, tried: false, why: row.lastError });
        continue;
      }
      if (waitMs > 0) await sleep(waitMs);
      pacing?.take(adapter.name, message.to, clock());
      const sentParts = progress[adapter.name]?.parts ?? [];
      const perhapsSent = row.perhapsSent || row.attempts > 0;
      const outcome = await trySending(adapter, { message, picture, sentParts, perhapsSent });
      if (outcome.kind === 'sent') {
        progress[adapter.name] = { parts: outcome.platformIds, whole: true };
      } else if (outcome.kind === 'refused' || (isTry(outcome) && row.attempts + 1 >= mostAttempts)) {
        refusals.push(`${adapter.name}: ${outcome.why}`);
      } else {
        progress[adapter.name] = { parts: outcome.sentParts, whole: false };
        const wait = outcome.waitMs ?? backOff(row.attempts);
        if (outcome.scope === 'platform') heldUntil.set(adapter.name, clock() + wait);
        delays.push({ waitMs: wait, tried: isTry(outcome), why: `${adapter.name}: ${outcome.why}` });
      }
    }
    if (delays.length > 0) {
      const tried = delays.some((delay) => delay.tried);
      const why = delays.find((delay) => delay.why !== null)?.why ?? null;
      return {
        kind: 'retry',
        waitMs: Math.min(...delays.map((delay) => delay.waitMs)),
        tried,
        why,
        progress,
      };
    }
    const delivered = adapters.some((adapter) => progress[adapter.name]?.whole);
    return delivered ? { kind: 'sent', progress, refusals } : { kind: 'refused', why: refusals.join('; ') };
  };

  function waitFor(adapter: string, to: Destination): number {
    const now = clock();
    const held = (heldUntil.get(adapter) ?? now) - now;
    return Math.max(0, held, pacing?.wait(adapter, to, now) ?? 0);
  }
}

/** A platform that says when to come again has refused nothing: it counts as no try. */
const isTry = (outcome: SendOutcome & { kind: 'retry' }): boolean => outcome.waitMs === null;

/** An owner's platform may come back; a desk or a channel that is not set up has no reader, and nothing to wait for. */
function nobodyServes(to: Destination, progress: OutboxRow['progress']): RowOutcome {
  if (to.kind !== 'owner') return { kind: 'sent', progress, refusals: [] };
  const why = `no adapter for ${to.platform} is running`;
  return { kind: 'retry', waitMs: 60_000, tried: false, why, progress };
}

async function draw(message: OutgoingMessage, paint: Paint | null): Promise<Sendable['picture']> {
  if (paint === null || message.picture?.kind !== 'drawn') return null;
  try {
    return await paint(message.picture);
  } catch {
    // The text says all that the picture shows; the painter has reported its own trouble.
    return null;
  }
}

async function trySending(adapter: Adapter, sendable: Sendable): Promise<SendOutcome> {
  try {
    return await adapter.send(sendable);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { kind: 'retry', waitMs: null, scope: 'chat', sentParts: sendable.sentParts, why };
  }
}

function backOff(attempts: number): number {
  return Math.min(1000 * 2 ** Math.min(attempts, 20), longestBackOffMs);
}
