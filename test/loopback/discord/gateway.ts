// The gateway of the loopback Discord: sessions, heartbeats, resuming, intents, and faults on purpose.
import type { Server } from 'node:http';
import { GatewayIntentBits, type GatewayMessageCreateDispatchData } from 'discord.js';
import { type WebSocket, WebSocketServer } from 'ws';
import type { World } from './world.ts';

interface Session {
  id: string;
  socket: WebSocket | null;
  intents: number;
  sequence: number;
  /** Everything dispatched, for a resume. */
  sent: { t: string; s: number; d: unknown }[];
}

export interface GatewayOptions {
  server: Server;
  world: World;
  token: string;
  breach: (what: string) => void;
  url: () => string;
  heartbeatMs: number;
}

const identifyEveryMs = 5_000;
const sendsPerMinute = 120;

export function makeGateway({ server, world, token, breach, url, heartbeatMs }: GatewayOptions) {
  const sockets = new WebSocketServer({ server, path: '/' });
  const sessions = new Map<string, Session>();
  let current: Session | null = null;
  let identifies: number[] = [];
  let acknowledging = true;
  let refuseWith: number | null = null;
  let resumes = 0;

  sockets.on('connection', (socket) => {
    let beaten = Date.now();
    const sentAt: number[] = [];
    const send = (payload: unknown) => socket.send(JSON.stringify(payload));
    send({ op: 10, d: { heartbeat_interval: heartbeatMs } });
    const watch = setInterval(() => {
      if (Date.now() - beaten > heartbeatMs * 3) breach('heartbeats stopped');
    }, heartbeatMs);
    socket.on('close', () => {
      clearInterval(watch);
      if (current?.socket === socket) current.socket = null;
    });
    socket.on('message', (raw) => {
      const text = raw.toString();
      if (Buffer.byteLength(text) > 4096) breach('a payload to the gateway is over 4096 bytes');
      const now = Date.now();
      sentAt.push(now);
      if (sentAt.filter((at) => now - at < 60_000).length > sendsPerMinute && heartbeatMs >= 1000) {
        breach('more than 120 payloads a minute to the gateway');
      }
      const { op, d } = JSON.parse(text) as { op: number; d: never };
      if (op === 1) {
        beaten = now;
        if (acknowledging) send({ op: 11 });
      } else if (op === 2) identify(socket, d);
      else if (op === 6) resume(socket, d);
      else breach(`op ${op} is not for a bot like this`);
    });
  });

  function identify(socket: WebSocket, { token: given, intents }: { token: string; intents: number }): void {
    if (given !== token || refuseWith !== null) return socket.close(refuseWith ?? 4004);
    const now = Date.now();
    identifies = identifies.filter((at) => now - at < identifyEveryMs);
    if (identifies.length > 0) {
      breach('identified oftener than once in five seconds');
      socket.send(JSON.stringify({ op: 9, d: false }));
      return;
    }
    identifies.push(now);
    checkIntents(intents);
    current = { id: `session-${sessions.size + 1}`, socket, intents, sequence: 0, sent: [] };
    sessions.set(current.id, current);
    dispatch('READY', {
      v: 10,
      user: world.bot,
      guilds: [{ id: world.guild, unavailable: true }],
      session_id: current.id,
      resume_gateway_url: url(),
      application: { id: world.application, flags: 1 << 19 },
      shard: [0, 1],
    });
    const channels = [...world.channels.values()].filter(({ guild, parent }) => guild && !parent);
    dispatch('GUILD_CREATE', {
      id: world.guild,
      name: 'Workshop',
      owner_id: '1',
      channels: channels.map(world.showChannel),
      threads: [],
      members: [],
      roles: [],
      emojis: [],
      stickers: [],
      member_count: 2,
      unavailable: false,
    });
  }

  /** The least that works: anything more is a breach. */
  function checkIntents(intents: number): void {
    const { Guilds, GuildMessages, DirectMessages, MessageContent } = GatewayIntentBits;
    const least = Guilds | GuildMessages | DirectMessages | MessageContent;
    if ((intents & ~least) !== 0) breach(`more intents than are needed: ${intents & ~least}`);
  }

  function resume(
    socket: WebSocket,
    { token: given, session_id, seq }: { token: string; session_id: string; seq: number },
  ): void {
    const session = sessions.get(session_id);
    if (given !== token) return socket.close(4004);
    if (!session) {
      socket.send(JSON.stringify({ op: 9, d: false }));
      return;
    }
    resumes += 1;
    session.socket = socket;
    current = session;
    for (const { t, s, d } of session.sent.filter(({ s }) => s > seq))
      socket.send(JSON.stringify({ op: 0, t, s, d }));
    dispatch('RESUMED', {});
  }

  function dispatch(t: string, d: unknown): void {
    const session = current;
    if (!session || !covers(session.intents, t, d)) return;
    session.sequence += 1;
    const sent = {
      t,
      s: session.sequence,
      d: t === 'MESSAGE_CREATE' || t === 'MESSAGE_UPDATE' ? veil(session.intents, d) : d,
    };
    session.sent.push(sent);
    session.socket?.send(JSON.stringify({ op: 0, ...sent }));
  }

  function covers(intents: number, event: string, d: unknown): boolean {
    const inServer = (d as { guild_id?: string }).guild_id !== undefined;
    if (event.startsWith('MESSAGE_')) {
      return (
        (intents & (inServer ? GatewayIntentBits.GuildMessages : GatewayIntentBits.DirectMessages)) !== 0
      );
    }
    return (
      event === 'READY' ||
      event === 'RESUMED' ||
      event === 'INTERACTION_CREATE' ||
      (intents & GatewayIntentBits.Guilds) !== 0
    );
  }

  /** Without the privileged intent, what a message in a server says is empty unless the bot is mentioned. */
  function veil(intents: number, d: unknown): unknown {
    const message = d as GatewayMessageCreateDispatchData;
    const open =
      (intents & GatewayIntentBits.MessageContent) !== 0 ||
      message.guild_id === undefined ||
      message.author.id === world.bot.id ||
      message.mentions.some(({ id }) => id === world.bot.id);
    return open ? message : { ...message, content: '', attachments: [], embeds: [], components: [] };
  }

  return {
    dispatch,
    identified: () => sessions.size,
    resumed: () => resumes,
    connected: () => current?.socket?.readyState === 1,
    /** The connection breaks; the session can be resumed. */
    drop: () => current?.socket?.terminate(),
    closeWith: (code: number) => current?.socket?.close(code),
    askToReconnect: () => current?.socket?.send(JSON.stringify({ op: 7, d: null })),
    invalidate(resumable: boolean) {
      if (!resumable && current) sessions.delete(current.id);
      current?.socket?.send(JSON.stringify({ op: 9, d: resumable }));
    },
    /** Sessions are forgotten: what happens from now on is not replayed. */
    forget() {
      if (current) sessions.delete(current.id);
    },
    setAcknowledging(on: boolean) {
      acknowledging = on;
    },
    refuse(code: number | null) {
      refuseWith = code;
    },
    close() {
      for (const client of sockets.clients) client.terminate();
      sockets.close();
    },
  };
}
