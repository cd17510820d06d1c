// What Telegram's Bot API demands of each call, from its published reference (core.telegram.org/bots/api), for the loopback server.
import { z } from 'zod';

const chatId = z.union([z.number().int(), z.string().min(1)]);

/** "1-64 bytes" of callback data; a button has exactly one action besides its text. */
const button = z
  .strictObject({
    text: z.string().min(1),
    url: z.url().optional(),
    callback_data: z
      .string()
      .refine((data) => Buffer.byteLength(data) >= 1 && Buffer.byteLength(data) <= 64, 'BUTTON_DATA_INVALID')
      .optional(),
  })
  .refine((one) => (one.url === undefined) !== (one.callback_data === undefined), 'exactly one action');

const keyboard = z.preprocess(
  (value) => (typeof value === 'string' ? JSON.parse(value) : value),
  z
    .strictObject({ inline_keyboard: z.array(z.array(button).max(8)) })
    .refine((markup) => markup.inline_keyboard.flat().length <= 100, 'at most 100 buttons'),
);

/** Counted in UTF-16 units, which is never less than what Telegram counts. */
const text = z.string().min(1).max(4096);
const caption = z.string().max(1024).optional();

const replying = {
  message_thread_id: z.coerce.number().int().optional(),
  reply_parameters: z
    .preprocess(
      (value) => (typeof value === 'string' ? JSON.parse(value) : value),
      z.strictObject({
        message_id: z.number().int(),
        allow_sending_without_reply: z.boolean().optional(),
      }),
    )
    .optional(),
};

const linkPreview = z.strictObject({ is_disabled: z.boolean() }).optional();
const messageId = z.coerce.number().int();

/** Parameters that the reference names but that this program has no need of count as a mistake here. */
export const rules = {
  getMe: z.strictObject({}),
  getUpdates: z.strictObject({
    offset: z.number().int().optional(),
    limit: z.number().int().min(1).max(100).optional(),
    timeout: z.number().int().min(0).optional(),
    allowed_updates: z.array(z.string()).optional(),
  }),
  setWebhook: z.strictObject({
    url: z.string(),
    secret_token: z
      .string()
      .regex(/^[A-Za-z0-9_-]{1,256}$/)
      .optional(),
    allowed_updates: z.array(z.string()).optional(),
    max_connections: z.number().int().min(1).max(100).optional(),
    drop_pending_updates: z.boolean().optional(),
  }),
  deleteWebhook: z.strictObject({ drop_pending_updates: z.boolean().optional() }),
  getWebhookInfo: z.strictObject({}),
  sendMessage: z.strictObject({
    chat_id: chatId,
    text,
    reply_markup: keyboard.optional(),
    link_preview_options: linkPreview,
    ...replying,
  }),
  sendPhoto: z.strictObject({
    chat_id: chatId,
    photo: z.string().min(1),
    caption,
    reply_markup: keyboard.optional(),
    ...replying,
  }),
  sendDocument: z.strictObject({
    chat_id: chatId,
    document: z.string().min(1),
    caption,
    reply_markup: keyboard.optional(),
    ...replying,
  }),
  editMessageText: z.strictObject({
    chat_id: chatId,
    message_id: messageId,
    text,
    reply_markup: keyboard.optional(),
    link_preview_options: linkPreview,
  }),
  editMessageMedia: z.strictObject({
    chat_id: chatId,
    message_id: messageId,
    media: z.preprocess(
      (value) => (typeof value === 'string' ? JSON.parse(value) : value),
      z.strictObject({ type: z.literal('photo'), media: z.string().min(1), caption }),
    ),
    reply_markup: keyboard.optional(),
  }),
  editMessageReplyMarkup: z.strictObject({
    chat_id: chatId,
    message_id: messageId,
    reply_markup: keyboard.optional(),
  }),
  deleteMessage: z.strictObject({ chat_id: chatId, message_id: messageId }),
  answerCallbackQuery: z.strictObject({
    callback_query_id: z.string(),
    text: z.string().max(200).optional(),
  }),
  setMyCommands: z.strictObject({
    commands: z
      .array(
        z.strictObject({
          command: z.string().regex(/^[a-z0-9_]{1,32}$/),
          description: z.string().min(1).max(256),
        }),
      )
      .max(100),
    scope: z.strictObject({ type: z.string() }).optional(),
    language_code: z
      .string()
      .regex(/^[a-z]{2}$/)
      .optional(),
  }),
  getChatMember: z.strictObject({ chat_id: chatId, user_id: z.number().int() }),
  getChat: z.strictObject({ chat_id: chatId }),
  createForumTopic: z.strictObject({
    chat_id: chatId,
    name: z.string().min(1).max(128),
    icon_color: z.number().optional(),
  }),
  getFile: z.strictObject({ file_id: z.string() }),
} as const;

export type Method = keyof typeof rules;

export const isMethod = (name: string): name is Method => name in rules;
