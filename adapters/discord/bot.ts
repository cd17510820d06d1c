// The adapter for Discord: owners in direct messages, the desk in a channel, tips in another; started by `npm run bot`.
import { type GatewayReadyDispatchData, REST } from 'discord.js';
import type { Receive } from '../../src/chat/adapter.ts';
import { isCodeUnused } from '../wire/desk-code.ts';
import { makeLanes } from '../wire/lanes.ts';
import type { PlatformAdapter, Surroundings } from '../wire/surroundings.ts';
import { type CatchUp, makeCatchUp } from './catch-up.ts';
import { type Gateway, openGateway } from './gateway.ts';
import { makeKeyboards } from './keyboards.ts';
import { setMenu } from './menu.ts';
import { openPlaces, type Places } from './places.ts';
import { readPicture } from './read-picture.ts';
import { openSeen, type Seen } from './seen.ts';
import { type Sending, send } from './send.ts';
import { makeTakeEvent, type TakeEvent } from './take-event.ts';

export interface DiscordOptions {
  token: string;
  /** With or without the version at its end. */
  apiRoot: string;
  tipsChannel: string | null;
}

/** What is known once Discord has told us who we are. */
interface Session {
  take: TakeEvent;
  catchUp: CatchUp;
  sending: Sending;
}

/** The library adds the version by itself. */
export const bareRoot = (apiRoot: string) => apiRoot.replace(/\/+$/, '').replace(/\/v\d+$/, '');

export function createDiscord(options: DiscordOptions, around: Surroundings): PlatformAdapter {
  const { token, tipsChannel } = options;
  const api = bareRoot(options.apiRoot);
  // Repeating is the outbox's work: it keeps the order within a chat and outlives the process.
  const rest = new REST({ api, retries: 0, timeout: 15_000, rejectOnRateLimit: ['/channels'] }).setToken(
    token,
  );
  const stopper = new AbortController();
  const stopping = stopper.signal;
  const lanes = makeLanes();
  let places: Places | null = null;
  let seen: Seen | null = null;
  let session: Session | null = null;
  let gateway: Gateway | null = null;

  async function start(receive: Receive): Promise<void> {
    places = await openPlaces(rest, around);
    seen = await openSeen(around.links, around.log);
    const common = { rest, places, seen, keyboards: makeKeyboards(rest, around.links), around };

    function begin({ user, application }: GatewayReadyDispatchData): void {
      if (session === null) {
        const self = user.id;
        const take = makeTakeEvent({
          ...common,
          self,
          application: application?.id ?? self,
          lanes,
          receive,
          stopping,
        });
        const catchUp = makeCatchUp(rest, common.seen, lanes, take, around.log, stopping);
        session = { take, catchUp, sending: { ...common, self, tipsChannel, caughtUp: catchUp.done } };
        void setMenu(rest, application?.id ?? self, around);
        around.log.info({ platform: 'discord', bot: user.username }, 'Discord is ready');
      }
      session.catchUp.begin();
    }

    /** A failure within a lane has been logged where it happened; here it only means that we are stopping. */
    const inLane = (lane: string, work: (take: TakeEvent) => Promise<void>) => {
      const { take } = session ?? {};
      if (take) lanes.run(lane, () => work(take)).catch(() => {});
    };

    gateway = openGateway(
      token,
      rest,
      {
        ready: begin,
        message: (message) => inLane(message.channel_id, (take) => take.takeMessage(message)),
        edit: (message) => inLane(message.channel_id, (take) => take.takeEdit(message)),
        interaction: (interaction) => void session?.take.takeInteraction(interaction).catch(() => {}),
      },
      around,
      stopping,
    );
    await gateway.connect();
    if (!places.hasDesk() && (await isCodeUnused('discord', around.deskCode, around.links))) {
      around.log.info(
        { platform: 'discord' },
        'no desk here yet: give /desk and the code in the workshop’s channel',
      );
    }
  }

  async function stop(): Promise<void> {
    stopper.abort();
    await gateway?.close();
    await lanes.idle();
    await seen?.close();
  }

  return {
    name: 'discord',
    start,
    async send(sendable) {
      if (session) return await send(sendable, session.sending);
      const { sentParts } = sendable;
      return { kind: 'retry', waitMs: null, scope: 'platform', sentParts, why: 'Discord is not ready yet' };
    },
    stop,
    lastSign: () => gateway?.lastSign() ?? null,
    hasDesk: () => places?.hasDesk() ?? false,
    fetchPicture: (picture) => readPicture(rest, picture),
  };
}
