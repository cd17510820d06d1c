// The REST side of the loopback Discord: what each route does, and the errors by which the real one refuses.
import { ChannelType } from 'discord.js';
import type { z } from 'zod';
import type { Interactions } from './interactions.ts';
import * as rules from './rules.ts';
import { type Channel, isThread, type Posted, type World } from './world.ts';

export interface Answer {
  status: number;
  body?: unknown;
  code?: number;
}

export interface Asked {
  method: string;
  path: string;
  query: URLSearchParams;
  body: Record<string, unknown>;
  files: Buffer[];
}

type Handle = (asked: Asked, ids: string[]) => Answer;

const unknownChannel = 10003;
const unknownMessage = 10008;
const missingAccess = 50001;
const cannotMessage = 50007;
const archivedThread = 50083;

export interface RestOptions {
  world: World;
  interactions: Interactions;
  breach: (what: string) => void;
  sessions: () => number;
  gatewayUrl: () => string;
  dispatch: (event: string, data: unknown) => void;
}

export function makeRoutes(options: RestOptions): (asked: Asked) => Answer {
  const { world, interactions, breach, dispatch } = options;
  const nonces = new Map<string, Posted>();

  function check<Shape>(what: string, schema: z.ZodType<Shape>, body: unknown): Shape | null {
    const parsed = schema.safeParse(body);
    if (parsed.success) return parsed.data;
    breach(
      `${what}: ${parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`).join('; ')}`,
    );
    return null;
  }

  const invalid: Answer = { status: 400, code: 50035 };

  function reach(id: string | undefined): Channel | Answer {
    const channel = world.channels.get(id ?? '');
    if (!channel || channel.deleted) return { status: 404, code: unknownChannel };
    if (channel.forbidden) return { status: 403, code: missingAccess };
    return channel;
  }

  const isAnswer = (found: Channel | Answer): found is Answer => 'status' in found;

  function createMessage({ body, files }: Asked, [channelId]: string[]): Answer {
    const channel = reach(channelId);
    if (isAnswer(channel)) return channel;
    if (channel.type === ChannelType.DM) {
      const [person] = [...channel.members];
      if (!world.people.get(person ?? '')?.takesDirectMessages) return { status: 403, code: cannotMessage };
    }
    const valid = check('message', rules.createMessage, body);
    if (!valid) return invalid;
    if ((valid.attachments?.length ?? 0) !== files.length) breach('attachments and files do not match');
    const repeated = nonces.get(`${channel.id}/${valid.nonce}`);
    if (repeated) return { status: 200, body: world.asEvent(repeated) };
    channel.archived = false;
    const { enforce_nonce: _, allowed_mentions: __, attachments, ...shown } = valid;
    const posted = world.post(channel.id, world.bot, { ...shown, files } as Partial<Posted>);
    nonces.set(`${channel.id}/${valid.nonce}`, posted);
    dispatch('MESSAGE_CREATE', world.asEvent(posted));
    void attachments;
    return { status: 200, body: world.asEvent(posted) };
  }

  function findMessage([channelId, messageId]: string[]): Posted | Answer {
    const channel = reach(channelId);
    if (isAnswer(channel)) return channel;
    const found = world.standing(channel.id).find(({ id }) => id === messageId);
    return found ?? { status: 404, code: unknownMessage };
  }

  const routes: [string, RegExp, Handle][] = [
    [
      'GET',
      /^\/gateway\/bot$/,
      () => ({
        status: 200,
        body: {
          url: options.gatewayUrl(),
          shards: 1,
          session_start_limit: {
            total: 1000,
            remaining: 1000 - options.sessions(),
            reset_after: 86_400_000,
            max_concurrency: 1,
          },
        },
      }),
    ],
    ['GET', /^\/users\/@me$/, () => ({ status: 200, body: world.bot })],
    [
      'GET',
      /^\/applications\/@me$/,
      () => ({ status: 200, body: { id: world.application, flags: 1 << 19, name: 'bench' } }),
    ],
    [
      'PUT',
      /^\/applications\/(\d+)\/commands$/,
      ({ body }, [application]) => {
        if (application !== world.application) return { status: 404, code: 10002 };
        const valid = check('commands', rules.commands, body);
        const unknown = (valid ?? [])
          .flatMap((command) => Object.keys(command.description_localizations ?? {}))
          .filter((locale) => !rules.locales.includes(locale));
        for (const locale of unknown) breach(`there is no locale ${locale}`);
        return valid ? { status: 200, body: valid } : invalid;
      },
    ],
    [
      'POST',
      /^\/interactions\/(\d+)\/([^/]+)\/callback$/,
      ({ body }, [id = '', token = '']) => interactions.answer(id, token, body),
    ],
    [
      'PATCH',
      /^\/webhooks\/\d+\/([^/]+)\/messages\/@original$/,
      ({ body }, [token = '']) => ({ body: {}, ...interactions.sayLater(token, body) }),
    ],
    [
      'DELETE',
      /^\/webhooks\/\d+\/([^/]+)\/messages\/@original$/,
      (_, [token = '']) => interactions.takeBack(token),
    ],
    [
      'POST',
      /^\/users\/@me\/channels$/,
      ({ body }) => {
        const { recipient_id: person } = body as { recipient_id?: string };
        if (!person || !world.people.has(person)) return { status: 400, code: 50033 };
        const known = [...world.channels.values()].find(
          ({ type, members }) => type === ChannelType.DM && members.has(person),
        );
        const channel = known ?? world.addChannel({ type: ChannelType.DM, members: new Set([person]) });
        return { status: 200, body: world.showChannel(channel) };
      },
    ],
    ['POST', /^\/channels\/(\d+)\/messages$/, createMessage],
    [
      'GET',
      /^\/channels\/(\d+)\/messages$/,
      ({ query }, [id]) => {
        const channel = reach(id);
        if (isAnswer(channel)) return channel;
        const limit = Number(query.get('limit') ?? 50);
        if (limit < 1 || limit > 100) breach('a page has 1 to 100 messages');
        const after = query.get('after');
        const all = world.standing(channel.id);
        const newer =
          after === null
            ? all.slice(-limit)
            : all.filter((one) => BigInt(one.id) > BigInt(after)).slice(0, limit);
        // Newest first, and without what only the gateway adds.
        const shown = newer
          .reverse()
          .map(({ files: _, deleted: __, edits: ___, nonce: ____, ...message }) => message);
        return { status: 200, body: shown };
      },
    ],
    [
      'GET',
      /^\/channels\/(\d+)\/messages\/(\d+)$/,
      (_, ids) => {
        const found = findMessage(ids);
        return 'status' in found ? found : { status: 200, body: world.asEvent(found) };
      },
    ],
    [
      'PATCH',
      /^\/channels\/(\d+)\/messages\/(\d+)$/,
      ({ body, files }, ids) => {
        const found = findMessage(ids);
        if ('status' in found) return found;
        if (world.channels.get(found.channel_id)?.archived) return { status: 400, code: archivedThread };
        if (found.author.id !== world.bot.id) return { status: 403, code: 50005 };
        const valid = check('edit', rules.editMessage, body);
        if (!valid) return invalid;
        const { allowed_mentions: _, attachments: __, ...changed } = valid;
        Object.assign(found, changed, { edits: found.edits + 1, files });
        return { status: 200, body: world.asEvent(found) };
      },
    ],
    [
      'DELETE',
      /^\/channels\/(\d+)\/messages\/(\d+)$/,
      (_, ids) => {
        const found = findMessage(ids);
        if ('status' in found) return found;
        found.deleted = true;
        return { status: 204 };
      },
    ],
    [
      'POST',
      /^\/channels\/(\d+)\/threads$/,
      ({ body }, [id]) => {
        const channel = reach(id);
        if (isAnswer(channel)) return channel;
        const valid = check('thread', rules.createThread, body);
        if (!valid) return invalid;
        if (channel.type !== ChannelType.GuildText) return { status: 400, code: 50024 };
        const { guild } = channel;
        const thread = world.addChannel({ type: valid.type, guild, parent: channel.id, name: valid.name });
        dispatch('THREAD_CREATE', world.showChannel(thread));
        return { status: 201, body: world.showChannel(thread) };
      },
    ],
    [
      'PUT',
      /^\/channels\/(\d+)\/thread-members\/(\d+)$/,
      (_, [id, person = '']) => {
        const channel = reach(id);
        if (isAnswer(channel)) return channel;
        channel.members.add(person);
        return { status: 204 };
      },
    ],
    [
      'PATCH',
      /^\/channels\/(\d+)$/,
      ({ body }, [id]) => {
        const channel = reach(id);
        if (isAnswer(channel)) return channel;
        if (!isThread(channel) || Object.keys(body).some((key) => key !== 'archived')) {
          breach('a channel was changed by more than bringing back a thread');
        }
        channel.archived = body.archived === true;
        return { status: 200, body: world.showChannel(channel) };
      },
    ],
  ];

  return (asked) => {
    for (const [method, path, handle] of routes) {
      const match = method === asked.method ? path.exec(asked.path) : null;
      if (match) return handle(asked, match.slice(1));
    }
    breach(`there is no ${asked.method} ${asked.path}`);
    return { status: 404, code: 0 };
  };
}
