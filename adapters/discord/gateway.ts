// Keeps the connection over which Discord reports what happens, for the adapter; resuming is the library's work.
import {
  type APIInteraction,
  Client,
  Events,
  GatewayCloseCodes,
  GatewayDispatchEvents,
  GatewayIntentBits,
  type GatewayReadyDispatchData,
  Options,
  Partials,
} from 'discord.js';
import { backoff, pause } from '../wire/pause.ts';
import type { Surroundings } from '../wire/surroundings.ts';
import type { SeenMessage } from './decode-message.ts';
import { tokenRefused } from './trouble.ts';

/** The least that works; the guide says what each is for. */
export const intents = [
  GatewayIntentBits.Guilds,
  GatewayIntentBits.GuildMessages,
  GatewayIntentBits.DirectMessages,
  GatewayIntentBits.MessageContent,
];

export interface Listener {
  /** A new session: whatever happened before it was not reported. */
  ready(session: GatewayReadyDispatchData): void;
  message(message: SeenMessage): void;
  edit(message: SeenMessage): void;
  interaction(interaction: APIInteraction): void;
}

export interface Gateway {
  /** Resolves once connected, or once there is no point in trying. */
  connect(): Promise<void>;
  close(): Promise<void>;
}

const intentsRefused =
  'Discord refuses the intents: switch on “Message Content Intent” for the bot in the developer portal.';

export function openGateway(
  token: string,
  api: string,
  listener: Listener,
  around: Surroundings,
  stopping: AbortSignal,
): Gateway {
  let client: Client | null = null;
  let given = false;

  /** A client that failed to log in cannot be used again. */
  function makeClient(): Client {
    const made = new Client({
      intents,
      // Without it, a direct message in a chat not yet known would be dropped.
      partials: [Partials.Channel],
      makeCache: Options.cacheWithLimits({ ...Options.DefaultMakeCacheSettings, MessageManager: 0 }),
      rest: { api },
    });
    made.ws.on(GatewayDispatchEvents.Ready, (session) => listener.ready(session));
    made.ws.on(GatewayDispatchEvents.MessageCreate, (message) => listener.message(message));
    made.ws.on(GatewayDispatchEvents.MessageUpdate, (message) => listener.edit(message));
    made.ws.on(GatewayDispatchEvents.InteractionCreate, (interaction) => listener.interaction(interaction));
    made.on(Events.ShardDisconnect, ({ code }) => giveUp(code));
    made.on(Events.ShardReconnecting, () =>
      around.log.warn({ platform: 'discord' }, 'reconnecting to Discord'),
    );
    made.on(Events.ShardResume, () =>
      around.log.info({ platform: 'discord' }, 'the session on Discord goes on'),
    );
    made.on(Events.ShardError, (error) =>
      around.log.warn({ trouble: error.name }, 'the connection to Discord failed'),
    );
    made.on(Events.Error, (error) => around.log.warn({ trouble: error.name }, 'Discord’s library failed'));
    return made;
  }

  function giveUp(code: number): void {
    if (given || stopping.aborted) return;
    given = true;
    if (code === GatewayCloseCodes.AuthenticationFailed) around.onFatal('revoked-token', tokenRefused);
    else if (code === GatewayCloseCodes.DisallowedIntents || code === GatewayCloseCodes.InvalidIntents) {
      around.onFatal('not-allowed', intentsRefused);
    } else around.onFatal('not-allowed', `Discord closed the connection for good (code ${code}).`);
  }

  async function connect(): Promise<void> {
    for (let attempt = 1; !given && !stopping.aborted; attempt += 1) {
      client = makeClient();
      try {
        await client.login(token);
        return;
      } catch (error) {
        if (isTokenInvalid(error)) return giveUp(GatewayCloseCodes.AuthenticationFailed);
        const waitMs = backoff(attempt, 1_000, 60_000);
        around.log.warn(
          { platform: 'discord', waitMs, trouble: nameOf(error) },
          'Discord cannot be reached yet',
        );
        await pause(waitMs, stopping);
      }
    }
  }

  return {
    connect,
    async close() {
      await client?.destroy();
    },
  };
}

const isTokenInvalid = (error: unknown) => (error as { code?: unknown } | null)?.code === 'TokenInvalid';

const nameOf = (error: unknown) => (error instanceof Error ? error.name : typeof error);
