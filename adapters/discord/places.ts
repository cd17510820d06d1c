// Which channel of Discord is what: the desk, a case's thread, an owner's room; and how to get to a person.
import {
  ChannelType,
  type REST,
  type RESTPostAPIChannelThreadsResult,
  type RESTPostAPICurrentUserCreateDMChannelResult,
  Routes,
} from 'discord.js';
import { cleanName } from '../wire/clean-text.ts';
import type { Links, Surroundings } from '../wire/surroundings.ts';

export type Place =
  | { kind: 'desk'; caseId: string | null }
  /** A private thread that stands for a person's direct messages. */
  | { kind: 'room'; person: string; chat: string };

export interface ClaimedChannel {
  guild: string;
  channel: string;
}

const week = 10080;
const deskLink = 'discord:desk';
const casePrefix = 'discord:case:';
const roomPrefix = 'discord:room:';
const homeLink = (person: string) => `discord:home:${person}`;
const directLink = (person: string) => `discord:direct:${person}`;

export async function readDeskChannel(links: Links): Promise<ClaimedChannel | null> {
  const known = await links.get(deskLink);
  return known === undefined ? null : JSON.parse(known);
}

export type Places = Awaited<ReturnType<typeof openPlaces>>;

export async function openPlaces(rest: REST, { links, words, log }: Surroundings) {
  let claimed = await readDeskChannel(links);
  /** By thread; every message of a server asks here, so they are kept at hand. */
  const caseOf = new Map<string, string>();
  const threadOf = new Map<string, string>();
  const rooms = new Map<string, { person: string; chat: string }>();
  for (const { link, value } of await links.list(casePrefix)) noteCase(link.slice(casePrefix.length), value);
  for (const { link, value } of await links.list(roomPrefix)) {
    rooms.set(link.slice(roomPrefix.length), JSON.parse(value));
  }

  function noteCase(caseId: string, thread: string): void {
    caseOf.set(thread, caseId);
    threadOf.set(caseId, thread);
  }

  function find(channel: string): Place | null {
    if (channel === claimed?.channel) return { kind: 'desk', caseId: null };
    const caseId = caseOf.get(channel);
    if (caseId !== undefined) return { kind: 'desk', caseId };
    const room = rooms.get(channel);
    return room ? { kind: 'room', ...room } : null;
  }

  /** The threads of an earlier desk are no longer the desk's. */
  async function claim(guild: string, channel: string): Promise<void> {
    for (const caseId of threadOf.keys()) await links.delete(casePrefix + caseId);
    caseOf.clear();
    threadOf.clear();
    claimed = { guild, channel };
    await links.set(deskLink, JSON.stringify(claimed));
    log.info({ ...claimed }, 'a Discord channel is the desk now');
  }

  /** The case's thread, opened where there is none; null while there is no desk. */
  async function threadFor(caseId: string): Promise<string | null> {
    if (claimed === null) return null;
    const standing = threadOf.get(caseId);
    if (standing !== undefined) return standing;
    const name = cleanName(words.say('platform-case-name', words.workshop, { case: caseId })) ?? caseId;
    const thread = (await rest.post(Routes.threads(claimed.channel), {
      body: { name: name.slice(0, 100), type: ChannelType.PublicThread, auto_archive_duration: week },
    })) as RESTPostAPIChannelThreadsResult;
    await links.set(casePrefix + caseId, thread.id);
    noteCase(caseId, thread.id);
    return thread.id;
  }

  /** A thread that somebody deleted: the case gets a new one with its next message. */
  async function forgetThread(caseId: string): Promise<void> {
    const thread = threadOf.get(caseId);
    if (thread !== undefined) caseOf.delete(thread);
    threadOf.delete(caseId);
    await links.delete(casePrefix + caseId);
    log.warn({ caseId }, 'the thread of a case is gone: it is made anew');
  }

  /** Where a person's answers go. Opening many chats too fast is punished, so each is opened once. */
  async function directChat(person: string, home: string | null): Promise<string> {
    const about = `discord:${person}`;
    if (home !== null) await links.set(homeLink(person), home, about);
    const standing = await links.get(directLink(person));
    if (standing !== undefined) return standing;
    const channel = (await rest.post(Routes.userChannels(), {
      body: { recipient_id: person },
    })) as RESTPostAPICurrentUserCreateDMChannelResult;
    await links.set(directLink(person), channel.id, about);
    return channel.id;
  }

  /** The channel that stands for a chat: itself, or the room in its place. */
  function channelOf(chat: string): string {
    for (const [thread, room] of rooms) if (room.chat === chat) return thread;
    return chat;
  }

  /** A private thread in the channel where the person met us; null where we never met in a server. */
  async function openRoom(person: string, chat: string): Promise<string | null> {
    const home = await links.get(homeLink(person));
    if (home === undefined) return null;
    const name = words.say('platform-room-name', words.workshop).slice(0, 100);
    const thread = (await rest.post(Routes.threads(home), {
      body: { name, type: ChannelType.PrivateThread, auto_archive_duration: week, invitable: false },
    })) as RESTPostAPIChannelThreadsResult;
    await rest.put(Routes.threadMembers(thread.id, person));
    rooms.set(thread.id, { person, chat });
    await links.set(roomPrefix + thread.id, JSON.stringify({ person, chat }), `discord:${person}`);
    return thread.id;
  }

  async function forgetRoom(chat: string): Promise<boolean> {
    const thread = channelOf(chat);
    if (!rooms.delete(thread)) return false;
    await links.delete(roomPrefix + thread);
    return true;
  }

  return {
    hasDesk: () => claimed !== null,
    deskChannel: () => claimed?.channel ?? null,
    find,
    claim,
    threadFor,
    forgetThread,
    directChat,
    channelOf,
    openRoom,
    forgetRoom,
  };
}
