// Reads what the operator set in the environment, for `npm run bot` and `npm run doctor`: settings, or a sentence for each mistake.
import { z } from 'zod';

export interface TelegramSettings {
  token: string;
  apiRoot: string;
  webhook: { url: string; secret: string; port: number } | null;
  tipsChannel: string | null;
}

export interface DiscordSettings {
  token: string;
  apiRoot: string;
  tipsChannel: string | null;
}

export interface Settings {
  telegram: TelegramSettings | null;
  discord: DiscordSettings | null;
  databaseUrl: string | null;
  folder: string;
  deskCode: string | null;
  /** Where the health endpoint listens, where the webhook does not bring it along; null for nowhere. */
  healthPort: number | null;
  logLevel: (typeof logLevels)[number];
}

export type ReadSettings = { settings: Settings } | { mistakes: string[] };

const logLevels = ['trace', 'debug', 'info', 'warn', 'error', 'silent'] as const;

const token = (name: string) =>
  z
    .string()
    .regex(/^[^\s/]+$/, `${name} holds a blank or a slash: copy the token alone, as it was given out.`);

const address = (name: string) =>
  z.url({
    protocol: /^https?$/,
    hostname: /.+/,
    error: `${name} is no web address, as "https://example.org" is one.`,
  });

const isLoopback = (url: string) => ['127.0.0.1', 'localhost', '[::1]'].includes(new URL(url).hostname);

const schema = z.object({
  TELEGRAM_TOKEN: token('TELEGRAM_TOKEN').optional(),
  TELEGRAM_API_ROOT: address('TELEGRAM_API_ROOT').default('https://api.telegram.org'),
  TELEGRAM_WEBHOOK_URL: address('TELEGRAM_WEBHOOK_URL')
    .refine(
      (url) => !URL.canParse(url) || url.startsWith('https:') || isLoopback(url),
      'TELEGRAM_WEBHOOK_URL must begin with https: Telegram posts to nothing else.',
    )
    .optional(),
  TELEGRAM_WEBHOOK_SECRET: z
    .string()
    .regex(
      /^[A-Za-z0-9_-]{1,256}$/,
      'TELEGRAM_WEBHOOK_SECRET may hold up to 256 letters, digits, "_" and "-", and nothing else.',
    )
    .optional(),
  TELEGRAM_TIPS_CHANNEL: z
    .string()
    .regex(
      /^(@\w{4,}|-?\d+)$/,
      'TELEGRAM_TIPS_CHANNEL is a name as "@workshop_tips" or a number as "-1001234".',
    )
    .optional(),
  DISCORD_TOKEN: token('DISCORD_TOKEN').optional(),
  DISCORD_API_ROOT: address('DISCORD_API_ROOT').default('https://discord.com/api'),
  DISCORD_TIPS_CHANNEL: z
    .string()
    .regex(/^\d+$/, 'DISCORD_TIPS_CHANNEL is the channel’s id, a long number: "Copy Channel ID" shows it.')
    .optional(),
  DESK_CODE: z
    .string()
    .min(8, 'DESK_CODE is too short: take eight characters or more, so that nobody guesses it.')
    .optional(),
  DATABASE_URL: z
    .string()
    .regex(
      /^postgres(ql)?:\/\//,
      'DATABASE_URL is no address of a Postgres, as "postgres://user@host/name" is one.',
    )
    .optional(),
  DATA_DIR: z.string().default('data'),
  LOG_LEVEL: z.enum(logLevels, `LOG_LEVEL is one of ${logLevels.join(', ')}.`).default('info'),
  PORT: z
    .string()
    .refine((port) => /^\d{1,5}$/.test(port) && Number(port) <= 65_535, 'PORT is a number up to 65535.')
    .optional(),
});

type Read = z.infer<typeof schema>;

export function readEnvironment(environment: Record<string, string | undefined>): ReadSettings {
  // A line "NAME=" in a file of settings means that it is not set.
  const set = Object.fromEntries(Object.entries(environment).filter(([, value]) => value?.trim()));
  const parsed = schema.safeParse(set);
  const mistakes = parsed.success ? [] : parsed.error.issues.map(({ message }) => message);
  if (set.TELEGRAM_TOKEN === undefined && set.DISCORD_TOKEN === undefined) {
    mistakes.push('There is nothing to start: set TELEGRAM_TOKEN, DISCORD_TOKEN or both.');
  }
  if (set.TELEGRAM_WEBHOOK_URL !== undefined && set.TELEGRAM_WEBHOOK_SECRET === undefined) {
    mistakes.push(
      'TELEGRAM_WEBHOOK_URL needs TELEGRAM_WEBHOOK_SECRET: without it anybody could post to the address.',
    );
  }
  return parsed.success && mistakes.length === 0 ? { settings: toSettings(parsed.data) } : { mistakes };
}

function toSettings(read: Read): Settings {
  return {
    telegram: toTelegram(read),
    discord:
      read.DISCORD_TOKEN === undefined
        ? null
        : {
            token: read.DISCORD_TOKEN,
            apiRoot: read.DISCORD_API_ROOT,
            tipsChannel: read.DISCORD_TIPS_CHANNEL ?? null,
          },
    databaseUrl: read.DATABASE_URL ?? null,
    folder: read.DATA_DIR,
    deskCode: read.DESK_CODE ?? null,
    healthPort: read.PORT !== undefined && read.TELEGRAM_WEBHOOK_URL === undefined ? Number(read.PORT) : null,
    logLevel: read.LOG_LEVEL,
  };
}

function toTelegram(read: Read): TelegramSettings | null {
  if (read.TELEGRAM_TOKEN === undefined) return null;
  const { TELEGRAM_WEBHOOK_URL: url, TELEGRAM_WEBHOOK_SECRET: secret } = read;
  return {
    token: read.TELEGRAM_TOKEN,
    apiRoot: read.TELEGRAM_API_ROOT.replace(/\/+$/, ''),
    webhook: url && secret ? { url, secret, port: portOf(url, read.PORT) } : null,
    tipsChannel: read.TELEGRAM_TIPS_CHANNEL ?? null,
  };
}

function portOf(url: string, given: string | undefined): number {
  if (given !== undefined) return Number(given);
  const { port, protocol } = new URL(url);
  return port === '' ? (protocol === 'https:' ? 443 : 80) : Number(port);
}
