// Keeps the connection over which Discord reports what happens, for the adapter; resuming is the library's work.
import { type SessionInfo, WebSocketManager, WebSocketShardEvents } from '@discordjs/ws';
import {
  type APIInteraction,
  GatewayCloseCodes,
  GatewayDispatchEvents,
  type GatewayDispatchPayload,
  GatewayIntentBits,
  type GatewayReadyDispatchData,
  type REST,
} from 'discord.js';
import { backoff, pause } from '../wire/pause.ts';
import type { Surroundings } from '../wire/surroundings.ts';
import type { SeenMessage } from './decode-message.ts';
import { readTrouble, tokenRefused } from './trouble.ts';

/** The least that works; the guide says what each is for. */
const intents =
  GatewayIntentBits.Guilds |
  GatewayIntentBits.GuildMessages |
  GatewayIntentBits.DirectMessages |
  GatewayIntentBits.MessageContent;

export interface Listener {
  /** A new session: whatever happened before it was not reported. */
  ready(session: GatewayReadyDispatchData): void;
  message(message: SeenMessage): void;
  edit(message: SeenMessage): void;
  interaction(interaction: APIInteraction): void;
}

export interface Gateway {
  /** When Discord last answered a heartbeat or began a session. */
  lastSign(): number | null;
  /** Resolves once connected, or once there is no point in trying. */
  connect(): Promise<void>;
  close(): Promise<void>;
}

const intentsRefused =
  'Discord refuses the intents: switch on “Message Content Intent” for the bot in the developer portal.';

/** After these a new session is refused as well. */
const final: readonly number[] = [
  GatewayCloseCodes.AuthenticationFailed,
  GatewayCloseCodes.InvalidShard,
  GatewayCloseCodes.ShardingRequired,
  GatewayCloseCodes.InvalidAPIVersion,
  GatewayCloseCodes.InvalidIntents,
  GatewayCloseCodes.DisallowedIntents,
];

export function openGateway(
  token: string,
  rest: REST,
  listener: Listener,
  { log, onFatal }: Surroundings,
  stopping: AbortSignal,
): Gateway {
  const platform = 'discord';
  let manager: WebSocketManager | null = null;
  let session: SessionInfo | null = null;
  let given = false;
  let lastSign: number | null = null;
  const sign = () => {
    lastSign = Date.now();
  };

  function makeManager(): WebSocketManager {
    const made = new WebSocketManager({
      token,
      intents,
      rest,
      // Left to the library, all connections of one process would share one session.
      retrieveSessionInfo: () => session,
      updateSessionInfo(_, changed) {
        session = changed;
      },
    });
    made.on(WebSocketShardEvents.Dispatch, ({ data }) => dispatch(data));
    made.on(WebSocketShardEvents.HeartbeatComplete, sign);
    made.on(WebSocketShardEvents.Ready, sign);
    made.on(WebSocketShardEvents.Resumed, () => log.info({ platform }, 'the session on Discord goes on'));
    made.on(WebSocketShardEvents.Error, ({ error }) => {
      log.warn({ platform, trouble: error.name }, 'the connection to Discord failed');
    });
    made.on(WebSocketShardEvents.Closed, ({ code }) => {
      if (final.includes(code)) giveUp(code);
      else if (!stopping.aborted) log.warn({ platform, code }, 'the connection to Discord was closed');
    });
    return made;
  }

  function dispatch({ t, d }: GatewayDispatchPayload): void {
    switch (t) {
      case GatewayDispatchEvents.Ready:
        return listener.ready(d);
      case GatewayDispatchEvents.MessageCreate:
        return listener.message(d);
      case GatewayDispatchEvents.MessageUpdate:
        return listener.edit(d);
      case GatewayDispatchEvents.InteractionCreate:
        return listener.interaction(d);
    }
  }

  function giveUp(code: number): void {
    if (given || stopping.aborted) return;
    given = true;
    if (code === GatewayCloseCodes.AuthenticationFailed) onFatal('revoked-token', tokenRefused);
    else if (code === GatewayCloseCodes.DisallowedIntents || code === GatewayCloseCodes.InvalidIntents) {
      onFatal('not-allowed', intentsRefused);
    } else onFatal('not-allowed', `Discord closed the connection for good (code ${code}).`);
  }

  async function connect(): Promise<void> {
    for (let attempt = 1; !given && !stopping.aborted; attempt += 1) {
      manager = makeManager();
      try {
        await manager.connect();
        return;
      } catch (error) {
        const trouble = readTrouble(error);
        if (trouble.kind === 'revoked') return giveUp(GatewayCloseCodes.AuthenticationFailed);
        // Each try may use up one of the day's sessions: the waits grow.
        const waitMs = trouble.kind === 'wait' ? trouble.ms : backoff(attempt, 1_000, 60_000);
        const why = 'why' in trouble ? trouble.why : trouble.kind;
        log.warn({ platform, waitMs, why }, 'Discord cannot be reached yet');
        await destroy();
        await pause(waitMs, stopping);
      }
    }
  }

  /** One that never came to be connected has nothing to close. */
  async function destroy(): Promise<void> {
    try {
      await manager?.destroy();
    } catch {}
  }

  return { connect, close: destroy, lastSign: () => lastSign };
}
