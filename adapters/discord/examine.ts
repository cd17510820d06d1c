// Examines the bot's token, intents and rights on Discord, for `npm run doctor`.
import {
  type APIApplication,
  type APIChannel,
  type APIGuild,
  type APIGuildMember,
  type APIOverwrite,
  type APIUser,
  ApplicationFlags,
  OverwriteType,
  REST,
  PermissionFlagsBits as Right,
  Routes,
} from 'discord.js';
import { compareClock, type Finding } from '../wire/finding.ts';
import type { Links } from '../wire/surroundings.ts';
import { bareRoot, type DiscordOptions } from './bot.ts';
import { readDeskChannel } from './places.ts';
import { readTrouble } from './trouble.ts';

const deskRights = {
  'see the channel': Right.ViewChannel,
  'send messages': Right.SendMessages,
  'create public threads': Right.CreatePublicThreads,
  'send messages in threads': Right.SendMessagesInThreads,
  'read message history': Right.ReadMessageHistory,
  'attach files': Right.AttachFiles,
};

const tipsRights = { 'see the channel': Right.ViewChannel, 'send messages': Right.SendMessages };

/** `links` is null where the database could not be opened. */
export async function examineDiscord(options: DiscordOptions, links: Links | null): Promise<Finding[]> {
  const findings: Finding[] = [];
  let date: string | null = null;
  const rest = new REST({ api: bareRoot(options.apiRoot), timeout: 15_000, retries: 1 }).setToken(
    options.token,
  );
  rest.on('response', (_, response) => {
    date = response.headers.get('date');
  });
  try {
    const me = (await rest.get(Routes.user())) as APIUser;
    findings.push({ right: true, what: `Discord token: the bot is ${me.username}` });
    findings.push(...compareClock('Discord', date, Date.now()));
    findings.push(await examineIntents(rest));
    const desk = links && (await readDeskChannel(links));
    if (desk) findings.push(await examineRights(rest, me.id, 'desk', desk.channel, deskRights));
    if (options.tipsChannel !== null) {
      findings.push(await examineRights(rest, me.id, 'tips', options.tipsChannel, tipsRights));
    }
  } catch (error) {
    findings.push(explain(error, options.apiRoot));
  }
  return findings;
}

function explain(error: unknown, root: string): Finding {
  const trouble = readTrouble(error);
  if (trouble.kind === 'revoked') {
    const mend = 'Reset the token in the developer portal, under Bot, and put it into DISCORD_TOKEN.';
    return { right: false, what: 'Discord token: not accepted', mend };
  }
  const why = 'why' in trouble ? trouble.why : trouble.kind;
  return {
    right: false,
    what: `Discord: ${why}`,
    mend: `See that ${root} can be reached from here, and try again.`,
  };
}

async function examineIntents(rest: REST): Promise<Finding> {
  const { flags = 0 } = (await rest.get(Routes.currentApplication())) as Partial<APIApplication>;
  const either = ApplicationFlags.GatewayMessageContent | ApplicationFlags.GatewayMessageContentLimited;
  const right = (flags & either) !== 0;
  const mend = 'Switch on “Message Content Intent” in the developer portal, under Bot.';
  return { right, what: `Discord intents: message content is ${right ? 'on' : 'off'}`, mend };
}

async function examineRights(
  rest: REST,
  self: string,
  what: string,
  channelId: string,
  wanted: Record<string, bigint>,
): Promise<Finding> {
  try {
    const channel = (await rest.get(Routes.channel(channelId))) as APIChannel;
    if (!('guild_id' in channel) || !channel.guild_id) throw new Error('not in a server');
    const guild = (await rest.get(Routes.guild(channel.guild_id))) as APIGuild;
    const member = (await rest.get(Routes.guildMember(guild.id, self))) as APIGuildMember;
    const overwrites = 'permission_overwrites' in channel ? (channel.permission_overwrites ?? []) : [];
    const rights = rightsIn(guild, self, member.roles, overwrites);
    const missing = Object.entries(wanted).flatMap(([name, right]) =>
      (rights & right) === right ? [] : [name],
    );
    const mend = `Give the bot these rights in the channel: ${missing.join(', ')}.`;
    return {
      right: missing.length === 0,
      what: `Discord ${what}: ${missing.length === 0 ? 'all rights there' : `${missing.length} rights missing`}`,
      mend,
    };
  } catch {
    const mend = 'Invite the bot to the server again, or let it see the channel.';
    return { right: false, what: `Discord ${what}: the channel cannot be reached`, mend };
  }
}

/** In the order that Discord publishes: everyone, roles, then the channel's exceptions for everyone, roles and the member. */
export function rightsIn(
  guild: Pick<APIGuild, 'id' | 'roles' | 'owner_id'>,
  self: string,
  roles: readonly string[],
  overwrites: readonly APIOverwrite[],
): bigint {
  const everything = ~0n;
  if (guild.owner_id === self) return everything;
  const mine = guild.roles.filter(({ id }) => id === guild.id || roles.includes(id));
  const base = mine.reduce((rights, role) => rights | BigInt(role.permissions), 0n);
  if ((base & Right.Administrator) !== 0n) return everything;
  const layers = [
    overwrites.filter(({ id }) => id === guild.id),
    overwrites.filter(({ id, type }) => type === OverwriteType.Role && roles.includes(id)),
    overwrites.filter(({ id, type }) => type === OverwriteType.Member && id === self),
  ];
  return layers.reduce((rights, layer) => {
    const denied = layer.reduce((all, { deny }) => all | BigInt(deny), 0n);
    const allowed = layer.reduce((all, { allow }) => all | BigInt(allow), 0n);
    return (rights & ~denied) | allowed;
  }, base);
}
