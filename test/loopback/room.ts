// A stand-in platform as somebody in the terminal sees it: an owner's chat and the desk, their messages with buttons, and what can be done there.
import { ChannelType } from 'discord.js';
import { startDiscord } from './discord/server.ts';
import { isThread } from './discord/world.ts';
import { startTelegram } from './telegram/server.ts';

export interface Shown {
  /** The same message, changed later, has the same id and another text or other buttons. */
  id: string;
  where: 'you' | 'desk';
  text: string;
  picture: boolean;
  buttons: { label: string; press(): void }[];
}

export interface Room {
  /** What the bot has to be started with. */
  settings: Record<string, string>;
  /** Makes a group or channel the desk. */
  claimDesk(code: string): void;
  isConnected(): boolean;
  say(text: string): void;
  /** In the case that was opened last, or at the desk as a whole while there is none. */
  sayAtDesk(text: string): void;
  /** All messages of the bot's that stand now, oldest first. */
  shown(): Shown[];
  violations: readonly string[];
  close(): Promise<void>;
}

export async function openTelegramRoom(): Promise<Room> {
  const telegram = await startTelegram();
  const [owner, member] = [telegram.person(11, 'You'), telegram.person(21, 'Desk')];
  const group = telegram.group(-300, { members: [21] });
  return {
    settings: { TELEGRAM_TOKEN: telegram.token, TELEGRAM_API_ROOT: telegram.url },
    claimDesk: (code) => void member.say(`/desk ${code}`, { group }),
    isConnected: () => telegram.calls.some(({ method }) => method === 'getUpdates'),
    say: (text) => void owner.say(text),
    sayAtDesk(text) {
      const topic = [...group.topics.keys()].at(-1);
      member.say(text, topic === undefined ? { group } : { group, topic });
    },
    shown: () =>
      telegram.world.sent
        .filter(({ deleted }) => !deleted)
        .map((sent) => {
          const atDesk = sent.chat === String(group.id);
          return {
            id: String(sent.messageId),
            where: atDesk ? 'desk' : 'you',
            text: sent.text,
            picture: sent.photo !== null,
            buttons: (sent.markup?.inline_keyboard.flat() ?? []).map(({ text: label }) => ({
              label,
              press: () => void (atDesk ? member : owner).press(label, sent),
            })),
          };
        }),
    violations: telegram.violations,
    close: () => telegram.close(),
  };
}

export async function openDiscordRoom(): Promise<Room> {
  const discord = await startDiscord();
  const { world } = discord;
  const [owner, member] = [discord.person('11', 'You'), discord.person('21', 'Desk')];
  const desk = discord.channel(ChannelType.GuildText, 'desk');
  const threads = () => [...world.channels.values()].filter((one) => isThread(one) && !one.deleted);
  const atDesk = (channel: string) => channel === desk.id || threads().some(({ id }) => id === channel);
  return {
    settings: { DISCORD_TOKEN: discord.token, DISCORD_API_ROOT: discord.url },
    claimDesk: (code) => void member.command('desk', desk, [{ name: 'code', value: code }]),
    isConnected: () => discord.gateway.connected(),
    say: (text) => void owner.say(text),
    sayAtDesk: (text) => void member.say(text, threads().at(-1) ?? desk),
    shown: () =>
      world.messages
        .filter(({ deleted, author }) => !deleted && author.id === world.bot.id)
        .map((posted) => ({
          id: posted.id,
          where: atDesk(posted.channel_id) ? 'desk' : 'you',
          text: posted.content,
          picture: posted.files.length > 0,
          buttons: labelsOf(posted.components).map((label) => ({
            label,
            press: () => void (atDesk(posted.channel_id) ? member : owner).press(label, posted),
          })),
        })),
    violations: discord.violations,
    close: () => discord.close(),
  };
}

/** Of buttons, and of what a menu lists. */
function labelsOf(components: unknown): string[] {
  const rows = (components ?? []) as {
    components: { label?: string; options?: { label: string }[] }[];
  }[];
  return rows
    .flatMap((row) => row.components)
    .flatMap(({ label, options }) => options?.map((option) => option.label) ?? label ?? []);
}
