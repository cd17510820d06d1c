// The adapter for Telegram: owners in private chats, the desk in a group, tips in a channel; started by `npm run bot`.
import type { Server } from 'node:http';
import { Api } from 'grammy';
import type { UserFromGetMe } from 'grammy/types';
import type { Receive } from '../../src/chat/adapter.ts';
import { isCodeUnused } from '../wire/desk-code.ts';
import { makeLanes } from '../wire/lanes.ts';
import { backoff, pause } from '../wire/pause.ts';
import type { PlatformAdapter, Surroundings } from '../wire/surroundings.ts';
import { openDesk } from './desk.ts';
import { makeKeyboards } from './keyboards.ts';
import { setMenu } from './menu.ts';
import { nativeFetch } from './native-fetch.ts';
import { allowedUpdates, poll } from './poll.ts';
import { readPicture } from './read-picture.ts';
import { type Sending, send } from './send.ts';
import { makeTakeUpdate } from './take-update.ts';
import { readTrouble, type Trouble, tokenRefused } from './trouble.ts';
import { listen, type Webhook } from './webhook.ts';

export interface TelegramOptions {
  token: string;
  apiRoot: string;
  /** Null: long polling. */
  webhook: Webhook | null;
  tipsChannel: string | null;
}

const pollTimeoutSeconds = 45;
const callTimeoutSeconds = 20;

export function createTelegram(options: TelegramOptions, around: Surroundings): PlatformAdapter {
  const { token, apiRoot, webhook } = options;

  const client = { apiRoot, fetch: nativeFetch as never };
  const api = new Api(token, { ...client, timeoutSeconds: callTimeoutSeconds });
  const pollApi = new Api(token, { ...client, timeoutSeconds: pollTimeoutSeconds });
  const stopper = new AbortController();
  const stopping = stopper.signal;
  const lanes = makeLanes();
  let sending: Sending | null = null;
  let polling: Promise<void> = Promise.resolve();
  let server: Server | null = null;
  let lastSign: number | null = null;
  const sign = () => {
    lastSign = Date.now();
  };

  async function start(receive: Receive): Promise<void> {
    const me = await persist(() => api.getMe());
    if (me === null) return;
    const desk = await openDesk(api, around);
    const keyboards = makeKeyboards(api, around.links);
    const username = me.username;
    sending = { api, username, tipsChannel: options.tipsChannel, desk, keyboards, around };
    const self = { id: me.id, username };
    const take = makeTakeUpdate({ api, self, desk, keyboards, around, receive, stopping });
    await sayAboutDesk(me);
    if (webhook) {
      server = await listen({ webhook, take, lanes, around });
      const settings = { secret_token: webhook.secret, allowed_updates: allowedUpdates };
      await persist(() => api.setWebhook(webhook.url, settings));
    } else {
      await persist(() => api.deleteWebhook());
      polling = poll({ api: pollApi, take, sign, lanes, around, stopping });
    }
    void setMenu(api, around);
  }

  async function sayAboutDesk(me: UserFromGetMe): Promise<void> {
    around.log.info(
      { platform: 'telegram', bot: me.username, webhook: webhook !== null },
      'Telegram is ready',
    );
    if (sending?.desk.group() === null && (await isCodeUnused('telegram', around.deskCode, around.links))) {
      around.log.info(
        { platform: 'telegram' },
        'no desk here yet: write "/desk CODE" in the workshop’s group',
      );
    }
  }

  /** Tries until it works, since a platform that is away comes back; null once there is no point or no time. */
  async function persist<Answer>(call: () => Promise<Answer>): Promise<Answer | null> {
    for (let attempt = 0; !stopping.aborted; attempt += 1) {
      try {
        return await call();
      } catch (error) {
        const trouble = readTrouble(error);
        if (isHopeless(trouble)) return null;
        const waitMs = trouble.kind === 'wait' ? trouble.ms : backoff(attempt, 500, 15_000);
        around.log.warn(
          { platform: 'telegram', waitMs, why: 'why' in trouble ? trouble.why : trouble.kind },
          'Telegram cannot be reached yet',
        );
        await pause(waitMs, stopping);
      }
    }
    return null;
  }

  function isHopeless(trouble: Trouble): boolean {
    // A token that was never right is answered like a method that does not exist.
    const revoked =
      trouble.kind === 'revoked' || (trouble.kind === 'refused' && trouble.why.startsWith('404'));
    if (revoked) around.onFatal('revoked-token', tokenRefused);
    else if (trouble.kind === 'refused') around.onFatal('not-allowed', `Telegram refuses: ${trouble.why}`);
    return revoked || trouble.kind === 'refused';
  }

  async function stop(): Promise<void> {
    stopper.abort();
    server?.close();
    await polling;
    await lanes.idle();
    server?.closeAllConnections();
  }

  return {
    name: 'telegram',
    start,
    async send(sendable) {
      if (sending) return await send(sendable, sending);
      const { sentParts } = sendable;
      return { kind: 'retry', waitMs: null, scope: 'platform', sentParts, why: 'Telegram is not ready yet' };
    },
    stop,
    // Telegram posts when there is something: its silence says nothing.
    lastSign: () => (webhook && server ? Date.now() : lastSign),
    hasDesk: () => sending !== null && sending.desk.group() !== null,
    fetchPicture: (picture) => readPicture(api, apiRoot, token, picture),
  };
}
