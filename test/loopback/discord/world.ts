// The servers, channels, people and messages of the loopback Discord, and how it names them.
import {
  type APIChannel,
  type APIMessage,
  type APIUser,
  ChannelType,
  type GatewayMessageCreateDispatchData,
  MessageType,
} from 'discord.js';

export interface Person {
  id: string;
  name: string;
  locale: string;
  /** Whether the bot may write to this person directly. */
  takesDirectMessages: boolean;
}

export interface Channel {
  id: string;
  type: ChannelType;
  guild: string | null;
  parent: string | null;
  name: string;
  /** Of a direct chat or a private thread. */
  members: Set<string>;
  deleted: boolean;
  archived: boolean;
  /** The bot's rights were taken away. */
  forbidden: boolean;
}

export interface Posted extends APIMessage {
  deleted: boolean;
  edits: number;
  nonce?: string;
  files: Buffer[];
}

export interface World {
  bot: APIUser;
  application: string;
  guild: string;
  people: Map<string, Person>;
  channels: Map<string, Channel>;
  messages: Posted[];
  nextId(): string;
  userOf(person: Person): APIUser;
  addChannel(channel: Partial<Channel> & { type: ChannelType }): Channel;
  post(channel: string, author: APIUser, message: Partial<Posted>): Posted;
  /** Messages that stand in a channel, oldest first. */
  standing(channel: string): Posted[];
  showChannel(channel: Channel): APIChannel;
  /** As the gateway reports it: in a server with whose server it is. */
  asEvent(message: Posted): GatewayMessageCreateDispatchData;
}

export function makeWorld(): World {
  let last = (BigInt(Date.now()) - 1420070400000n) << 22n;
  const people = new Map<string, Person>();
  const channels = new Map<string, Channel>();
  const messages: Posted[] = [];
  const user = (id: string, name: string, bot: boolean) =>
    ({ id, username: name, global_name: name, discriminator: '0', avatar: null, bot }) as APIUser;
  const nextId = () => String(++last);
  return {
    bot: user('900', 'bench', true),
    application: '901',
    guild: '500',
    people,
    channels,
    messages,
    nextId,
    userOf: ({ id, name }) => user(id, name, false),
    addChannel(given) {
      const channel: Channel = {
        id: nextId(),
        guild: null,
        parent: null,
        name: 'channel',
        members: new Set(),
        deleted: false,
        archived: false,
        forbidden: false,
        ...given,
      };
      channels.set(channel.id, channel);
      return channel;
    },
    post(channel, author, message) {
      const posted = {
        id: nextId(),
        channel_id: channel,
        author,
        content: '',
        timestamp: new Date().toISOString(),
        edited_timestamp: null,
        tts: false,
        mention_everyone: false,
        mentions: [],
        mention_roles: [],
        attachments: [],
        embeds: [],
        pinned: false,
        type: MessageType.Default,
        components: [],
        deleted: false,
        edits: 0,
        files: [],
        ...message,
      } as Posted;
      messages.push(posted);
      return posted;
    },
    standing: (channel) => messages.filter((one) => one.channel_id === channel && !one.deleted),
    showChannel: ({ id, type, guild, parent, name, archived }) =>
      ({
        id,
        type,
        name,
        ...(guild ? { guild_id: guild } : {}),
        ...(parent
          ? { parent_id: parent, thread_metadata: { archived, auto_archive_duration: 10080, locked: false } }
          : {}),
      }) as APIChannel,
    asEvent(message) {
      const channel = channels.get(message.channel_id);
      const { files: _, deleted: __, edits: ___, ...shown } = message;
      const guild = channel?.guild ? { guild_id: channel.guild, member: { nick: null, roles: [] } } : {};
      return { ...shown, ...guild } as unknown as GatewayMessageCreateDispatchData;
    },
  };
}

export const isThread = ({ type }: Channel) =>
  type === ChannelType.PublicThread || type === ChannelType.PrivateThread;
