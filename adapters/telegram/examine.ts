// Examines the bot's token, webhook and rights on Telegram, for `npm run doctor`.
import { Api } from 'grammy';
import { compareClock, type Finding } from '../wire/finding.ts';
import type { Links } from '../wire/surroundings.ts';
import type { TelegramOptions } from './bot.ts';
import { readDeskGroup } from './desk.ts';
import { nativeFetch } from './native-fetch.ts';
import { readTrouble } from './trouble.ts';

/** `links` is null where the database could not be opened. */
export async function examineTelegram(options: TelegramOptions, links: Links | null): Promise<Finding[]> {
  const findings: Finding[] = [];
  let date: string | null = null;
  const watch = async (...call: Parameters<typeof nativeFetch>) => {
    const answer = await nativeFetch(...call);
    date = answer.headers.get('date');
    return answer;
  };
  const api = new Api(options.token, { apiRoot: options.apiRoot, fetch: watch as never, timeoutSeconds: 15 });
  try {
    const me = await api.getMe();
    findings.push({ right: true, what: `Telegram token: the bot is @${me.username}` });
    findings.push(...compareClock('Telegram', date, Date.now()));
    findings.push(await examineWebhook(api, options));
    findings.push(...(await examineDesk(api, me.id, links)));
    if (options.tipsChannel !== null) findings.push(await examineTips(api, me.id, options.tipsChannel));
  } catch (error) {
    findings.push(explain(error, options.apiRoot));
  }
  return findings;
}

function explain(error: unknown, root: string): Finding {
  const trouble = readTrouble(error);
  if (trouble.kind === 'revoked' || (trouble.kind === 'refused' && trouble.why.startsWith('404'))) {
    const mend = 'Ask Telegram’s bot for bots for the token, and put it into TELEGRAM_TOKEN.';
    return { right: false, what: 'Telegram token: not accepted', mend };
  }
  const why = 'why' in trouble ? trouble.why : trouble.kind;
  return {
    right: false,
    what: `Telegram: ${why}`,
    mend: `See that ${root} can be reached from here, and try again.`,
  };
}

async function examineWebhook(api: Api, { webhook }: TelegramOptions): Promise<Finding> {
  const { url = '', last_error_message: trouble, pending_update_count: waiting } = await api.getWebhookInfo();
  if (webhook === null) {
    if (url === '') return { right: true, what: `Telegram updates: fetched by polling, ${waiting} waiting` };
    const mend = 'It is taken off when the bot starts. If another program set it, give each its own bot.';
    return { right: null, what: 'Telegram updates: a webhook is set, though none is configured', mend };
  }
  if (url !== webhook.url) {
    const mend = 'It is set when the bot starts. If it stays so, another program uses this bot.';
    return { right: null, what: 'Telegram webhook: not set to TELEGRAM_WEBHOOK_URL yet', mend };
  }
  if (!trouble) return { right: true, what: `Telegram webhook: set, ${waiting} waiting` };
  const mend =
    'See that the address leads here from outside, with a valid certificate, on port 443, 80, 88 or 8443.';
  return { right: false, what: `Telegram webhook: the last call failed (${trouble})`, mend };
}

async function examineDesk(api: Api, self: number, links: Links | null): Promise<Finding[]> {
  const desk = links && (await readDeskGroup(links));
  if (!desk) return [];
  try {
    const bot = await api.getChatMember(desk.group, self);
    if (bot.status === 'left' || bot.status === 'kicked') {
      return [
        {
          right: false,
          what: 'Telegram desk: the bot is not in the group',
          mend: 'Add it to the group again.',
        },
      ];
    }
    if (!desk.hasTopics) return [{ right: true, what: 'Telegram desk: a group, by replies' }];
    const mayMakeTopics = bot.status === 'administrator' && bot.can_manage_topics === true;
    const mend = 'Make the bot an administrator with the one right to manage topics.';
    return [
      {
        right: mayMakeTopics,
        what: `Telegram desk: a group with topics${mayMakeTopics ? '' : ', but no right to make them'}`,
        mend,
      },
    ];
  } catch {
    const mend = 'Add the bot to the group again, or claim another one with a new DESK_CODE.';
    return [{ right: false, what: 'Telegram desk: the group cannot be reached', mend }];
  }
}

async function examineTips(api: Api, self: number, channel: string): Promise<Finding> {
  const mend = 'Make the bot an administrator of the channel with the one right to post messages.';
  try {
    const bot = await api.getChatMember(channel, self);
    const right = bot.status === 'administrator' && bot.can_post_messages === true;
    return { right, what: `Telegram tips: ${right ? 'may post' : 'may not post'} in ${channel}`, mend };
  } catch {
    return { right: false, what: `Telegram tips: ${channel} cannot be reached`, mend };
  }
}
