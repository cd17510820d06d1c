// The peers of the pure step: a hand-written reducer, xstate's transition, and a conversation that is replayed at each message.
import {
  type ConversationData,
  type ConversationFlavor,
  conversations,
  createConversation,
  type VersionedState,
} from '@grammyjs/conversations';
import { Bot, type Context } from 'grammy';
import type { Update, UserFromGetMe } from 'grammy/types';
import { assign, createMachine, transition as move, type SnapshotFrom } from 'xstate';
import { high, low, type Step, stages } from './bench-procedure.ts';

const right = (value: number) => value >= low && value <= high;

interface Reduced {
  stage: number;
  tries: number;
  readings: number[];
}

/** All readings are kept in its state, as a first draft would. */
export const reducerStep: Step = (state, text) => {
  const { stage, tries, readings } =
    state === null ? { stage: 0, tries: 0, readings: [] } : (JSON.parse(state) as Reduced);
  if (text === 'start') return { state: JSON.stringify({ stage, tries, readings }), replies: 1 };
  const value = Number.parseFloat(text);
  const next: Reduced = right(value)
    ? { stage: stage + 1, tries: 0, readings: [...readings, value] }
    : { stage, tries: tries + 1, readings: [...readings, value] };
  return { state: JSON.stringify(next), replies: 1 };
};

type Reading = { type: 'reading'; value: number };

const machine = createMachine({
  types: {} as { context: { tries: number; readings: number[] }; events: Reading },
  context: { tries: 0, readings: [] },
  initial: 's0',
  states: {
    ...Object.fromEntries(
      Array.from({ length: stages }, (_, stage) => [
        `s${stage}`,
        {
          on: {
            reading: [
              {
                guard: ({ event }: { event: Reading }) => right(event.value),
                target: `s${stage + 1}`,
                actions: assign({
                  tries: 0,
                  readings: ({ context, event }) => [...context.readings, (event as Reading).value],
                }),
              },
              {
                actions: assign({
                  tries: ({ context }) => context.tries + 1,
                  readings: ({ context, event }) => [...context.readings, (event as Reading).value],
                }),
              },
            ],
          },
        },
      ]),
    ),
    [`s${stages}`]: { type: 'final' },
  },
});

/** The pure way that xstate documents: resolve a stored state, ask for the transition, store what comes out. */
export const xstateStep: Step = (state, text) => {
  const before =
    state === null
      ? machine.resolveState({ value: 's0', context: { tries: 0, readings: [] } })
      : machine.resolveState(JSON.parse(state));
  if (text === 'start') return { state: stored(before), replies: 1 };
  const [after] = move(machine, before, { type: 'reading', value: Number.parseFloat(text) });
  return { state: stored(after), replies: 1 };
};

function stored({ value, context }: SnapshotFrom<typeof machine>): string {
  return JSON.stringify({ value, context });
}

const me = { id: 1, is_bot: true, first_name: 'bench', username: 'bench' } as unknown as UserFromGetMe;

export interface Replay {
  /** Takes one message of a chat. */
  take(chat: number, text: string): Promise<void>;
  bytes(chat: number): number;
}

/** Each message replays the whole conversation up to it; its log is stored as JSON. */
export function replayed(): Replay {
  const kept = new Map<string, string>();
  const bot = new Bot<ConversationFlavor<Context>>('1:bench', {
    botInfo: me,
    client: { fetch: answerAll as never },
  });
  bot.use(
    conversations({
      storage: {
        type: 'key',
        adapter: {
          read: (key: string) => {
            const json = kept.get(key);
            return json === undefined ? undefined : (JSON.parse(json) as VersionedState<ConversationData>);
          },
          write: (key: string, value: VersionedState<ConversationData>) => {
            kept.set(key, JSON.stringify(value));
          },
          delete: (key: string) => {
            kept.delete(key);
          },
        },
      },
    }),
  );
  bot.use(
    createConversation(async (conversation, context: Context) => {
      const readings: number[] = [];
      await context.reply('stage 0');
      for (let stage = 0; stage < stages; ) {
        const { message } = await conversation.waitFor('message:text');
        const value = Number.parseFloat(message.text);
        readings.push(value);
        if (right(value)) stage += 1;
        await context.reply(`stage ${stage}`);
      }
    }, 'job'),
  );
  bot.command('start', (context) => context.conversation.enter('job'));
  let updates = 0;
  return {
    take(chat, text) {
      updates += 1;
      const typed = text === 'start' ? '/start' : text;
      const entities = text === 'start' ? [{ type: 'bot_command', offset: 0, length: 6 }] : undefined;
      const from = { id: chat, is_bot: false, first_name: 'p' };
      const message = {
        message_id: updates,
        date: 1,
        chat: { id: chat, type: 'private', first_name: 'p' },
        from,
        text: typed,
        entities,
      };
      return bot.handleUpdate({ update_id: updates, message } as unknown as Update);
    },
    bytes: (chat) => kept.get(String(chat))?.length ?? 0,
  };
}

let answers = 0;

/** Stands in for the platform: no network, an answer of the usual shape. */
async function answerAll(): Promise<Response> {
  answers += 1;
  const result = {
    message_id: answers,
    date: 1,
    chat: { id: 1, type: 'private', first_name: 'p' },
    text: 'stage',
  };
  return new Response(JSON.stringify({ ok: true, result }), {
    headers: { 'content-type': 'application/json' },
  });
}
