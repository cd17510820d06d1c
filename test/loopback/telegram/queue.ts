// The updates that wait for the bot on the loopback Telegram: handed out by long polling or posted to a webhook, and confirmed.
import type { Update } from 'grammy/types';

interface Poll {
  resolve: (updates: Update[] | 'conflict') => void;
  offset: number;
  limit: number;
}

export interface UpdateQueue {
  push(...updates: Update[]): void;
  poll(offset: number | undefined, limit: number, seconds: number): Promise<Update[] | 'conflict'>;
  waiting(): Update[];
  /** How often each update was handed out. */
  handedOut: Map<number, number>;
  /** Keeps updates back until `release`, so that they come in one batch. */
  hold(): void;
  release(): void;
  /** Hands the next batch out in this order instead. */
  reorderNext(order: (updates: Update[]) => Update[]): void;
  setWebhook(webhook: { url: string; secret: string | undefined } | null): void;
  webhook(): { url: string; secret: string | undefined } | null;
  close(): void;
}

export function makeQueue(): UpdateQueue {
  let waiting: Update[] = [];
  let open: Poll | null = null;
  let reorder: ((updates: Update[]) => Update[]) | null = null;
  let webhook: { url: string; secret: string | undefined } | null = null;
  let closed = false;
  let held = false;
  const handedOut = new Map<number, number>();
  const posting = new Set<number>();

  function handOut(limit: number): Update[] {
    let batch = waiting.slice(0, limit);
    if (batch.length > 0 && reorder) {
      batch = reorder(batch);
      reorder = null;
    }
    for (const { update_id } of batch) handedOut.set(update_id, (handedOut.get(update_id) ?? 0) + 1);
    return batch;
  }

  function serve(): void {
    if (webhook) return void postAll();
    if (held || !open || waiting.length === 0) return;
    const { resolve, limit } = open;
    open = null;
    resolve(handOut(limit));
  }

  /** One chat strictly in sequence; what is not answered with 2xx comes again. */
  async function postAll(): Promise<void> {
    const chats = new Map<string, Update[]>();
    for (const update of waiting.filter(({ update_id }) => !posting.has(update_id))) {
      const chat = JSON.stringify(update.message?.chat.id ?? update.callback_query?.message?.chat.id ?? 0);
      chats.set(chat, [...(chats.get(chat) ?? []), update]);
      posting.add(update.update_id);
    }
    await Promise.all([...chats.values()].map(postChat));
  }

  async function postChat(updates: Update[]): Promise<void> {
    for (const update of updates) {
      while (!closed && webhook && !(await postOne(update)))
        await new Promise((done) => setTimeout(done, 50));
      waiting = waiting.filter((one) => one !== update);
      posting.delete(update.update_id);
    }
  }

  async function postOne(update: Update): Promise<boolean> {
    if (!webhook) return false;
    handedOut.set(update.update_id, (handedOut.get(update.update_id) ?? 0) + 1);
    const headers: Record<string, string> = { 'content-type': 'application/json' };
    if (webhook.secret) headers['x-telegram-bot-api-secret-token'] = webhook.secret;
    const answer = await fetch(webhook.url, { method: 'POST', headers, body: JSON.stringify(update) }).catch(
      () => null,
    );
    return answer?.ok === true;
  }

  return {
    handedOut,
    push(...updates) {
      waiting.push(...updates);
      serve();
    },
    poll(offset, limit, seconds) {
      if (offset !== undefined) waiting = waiting.filter(({ update_id }) => update_id >= offset);
      // The older of two polls gets the conflict.
      open?.resolve('conflict');
      return new Promise((resolve) => {
        const mine: Poll = { resolve, offset: offset ?? 0, limit };
        open = mine;
        serve();
        if (open !== mine) return;
        setTimeout(() => {
          if (open !== mine) return;
          open = null;
          resolve([]);
        }, seconds * 1000).unref();
      });
    },
    waiting: () => [...waiting],
    hold() {
      held = true;
    },
    release() {
      held = false;
      serve();
    },
    reorderNext(order) {
      reorder = order;
    },
    setWebhook(given) {
      webhook = given;
      serve();
    },
    webhook: () => webhook,
    close() {
      closed = true;
      open?.resolve([]);
      open = null;
    },
  };
}
