// G9: from what a platform sends to our own message, against the bare JSON.parse of the same text; for Telegram and Discord.
import { decodeInteraction } from '../../adapters/discord/decode-interaction.ts';
import { decodeMessage } from '../../adapters/discord/decode-message.ts';
import { decodeUpdate } from '../../adapters/telegram/decode-update.ts';
import { alternate, type BenchOptions, type BenchResult, result } from './measure.ts';

/** What was made of the texts is counted, so that nothing can be left out as unused. */
type Make = (text: string) => { kind: string };

/** Microseconds for one text, each text being another one, as they are on the wire. */
function timeOf(texts: readonly string[], ms: number, make: Make, kinds: readonly string[]): number {
  const began = performance.now();
  let rounds = 0;
  for (; performance.now() - began < ms; rounds += 1) {
    for (const [index, text] of texts.entries()) {
      const { kind } = make(text);
      if (kind !== kinds[index % kinds.length]) throw new Error(`${text} came to be ${kind}`);
    }
  }
  return ((performance.now() - began) * 1000) / (rounds * texts.length);
}

export async function measureAdapters(options: BenchOptions = {}): Promise<BenchResult[]> {
  const rounds = options.quick ? 7 : 15;
  const ms = options.quick ? 60 : 250;
  const results: BenchResult[] = [];
  for (const { platform, texts, kinds, decode } of platforms) {
    const bare: Make = (text) => {
      JSON.parse(text);
      return { kind: kinds[0] ?? '' };
    };
    const sides = {
      bare: () => timeOf(texts, ms, bare, kinds.slice(0, 1)),
      ours: () => timeOf(texts, ms, decode, kinds),
    };
    // The first round warms up.
    await alternate(1, sides);
    const { ours, bare: other } = await alternate(rounds, sides);
    const what = `${platform}: what comes in to our message (typed, pressed), against JSON.parse of it`;
    results.push(result({ id: 'G9', what, unit: 'µs', ours, other, goal: '<= 2' }));
  }
  return results;
}

const count = 64;
const each = (make: (index: number) => object) =>
  Array.from({ length: count }, (_, index) => JSON.stringify(make(index)));

/** The fields of a text message and of a press as the Bot API's reference has them; numbers are invented. */
const updates = each((index) => {
  const from = { id: 4_700_000_000 + index, is_bot: false, first_name: 'Ann', language_code: 'de' };
  const person = { ...from, last_name: 'Example', username: `ann_example_${index}` };
  const chat = { id: from.id, first_name: 'Ann', username: person.username, type: 'private' };
  const message = { message_id: 900 + index, from: person, chat, date: 1_767_600_000 + index };
  if (index % 2 === 0) {
    return { update_id: 77_000_000 + index, message: { ...message, text: `0.${340 + index} V, closed` } };
  }
  const button = (text: string, choice: string) => [{ text, callback_data: `c${index}-17:${choice}` }];
  const inline_keyboard = [button('Done', 'done'), button('It jumps', 'jumping')];
  const text = 'Turn the idle stop screw a quarter of a turn out. Then send the reading.';
  return {
    update_id: 77_000_000 + index,
    callback_query: {
      id: `1180000000${index}`,
      from: person,
      message: {
        ...message,
        from: { id: 77, is_bot: true, first_name: 'Bench' },
        text,
        reply_markup: { inline_keyboard },
      },
      chat_instance: `-22000000${index}`,
      data: `c${index}-17:done`,
    },
  };
});

/** The fields of a direct message and of a press as Discord's reference has them; numbers are invented. */
const packets = each((index) => {
  const id = (base: number) => String(1_300_000_000_000_000_000n + BigInt(base * 1000 + index));
  const user = {
    id: id(1),
    username: `ann_example_${index}`,
    global_name: 'Ann',
    discriminator: '0',
    avatar: 'a'.repeat(32),
    public_flags: 0,
    avatar_decoration_data: null,
    clan: null,
    primary_guild: null,
  };
  const common = {
    tts: false,
    mention_everyone: false,
    mentions: [],
    mention_roles: [],
    attachments: [],
    embeds: [],
  };
  const message = {
    ...common,
    id: id(2),
    channel_id: id(3),
    channel_type: 1,
    type: 0,
    timestamp: '2026-01-05T09:00:00.000000+00:00',
    edited_timestamp: null,
    flags: 0,
    pinned: false,
    nonce: id(4),
    components: [],
  };
  if (index % 2 === 0) {
    return {
      op: 0,
      t: 'MESSAGE_CREATE',
      s: index,
      d: { ...message, author: user, content: `0.${340 + index} V` },
    };
  }
  const button = (label: string, choice: string) => ({
    type: 2,
    id: 2,
    style: 1,
    label,
    custom_id: `c${index}-17:${choice}`,
  });
  const components = [
    { type: 1, id: 1, components: [button('Done', 'done'), button('It jumps', 'jumping')] },
  ];
  const content = 'Turn the idle stop screw a quarter of a turn out. Then send the reading.';
  const d = {
    version: 1,
    type: 3,
    id: id(5),
    token: 'x'.repeat(180),
    application_id: id(6),
    channel_id: message.channel_id,
    channel: { id: message.channel_id, type: 1, flags: 0, last_message_id: message.id, recipients: [user] },
    locale: 'de',
    user,
    entitlements: [],
    entitlement_sku_ids: [],
    app_permissions: '2230295604128833',
    authorizing_integration_owners: { '1': user.id },
    attachment_size_limit: 10_485_760,
    context: 1,
    data: { id: 2, component_type: 2, custom_id: `c${index}-17:done` },
    message: { ...message, author: { ...user, id: '900', bot: true }, content, components },
  };
  return { op: 0, t: 'INTERACTION_CREATE', s: index, d };
});

const self = { id: 77, username: 'bench_bot' };

const platforms: { platform: string; texts: string[]; kinds: string[]; decode: Make }[] = [
  {
    platform: 'Telegram',
    texts: updates,
    kinds: ['message', 'press'],
    decode: (text) => decodeUpdate(JSON.parse(text), self, '-300'),
  },
  {
    platform: 'Discord',
    texts: packets,
    kinds: ['message', 'press'],
    decode(text) {
      const { t, d } = JSON.parse(text);
      return t === 'MESSAGE_CREATE' ? decodeMessage(d, null, '900') : decodeInteraction(d);
    },
  },
];
