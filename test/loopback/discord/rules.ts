// What Discord demands of what is sent to it, from its published reference (discord.com/developers/docs), for the loopback server.
import { z } from 'zod';

const customId = z.string().min(1).max(100);

const button = z.strictObject({
  type: z.literal(2),
  style: z.number().int().min(1).max(4),
  label: z.string().min(1).max(80),
  custom_id: customId,
});

const select = z.strictObject({
  type: z.literal(3),
  custom_id: customId,
  options: z
    .array(z.strictObject({ label: z.string().min(1).max(100), value: z.string().min(1).max(100) }))
    .min(1)
    .max(25)
    .refine((options) => new Set(options.map(({ value }) => value)).size === options.length, 'values repeat'),
});

const row = z.strictObject({
  type: z.literal(1),
  components: z.union([z.array(button).min(1).max(5), z.array(select).length(1)]),
});

const rows = z
  .array(row)
  .max(5)
  .refine((all) => {
    const ids = all.flatMap(({ components }) => components.map(({ custom_id }) => custom_id));
    return new Set(ids).size === ids.length;
  }, 'a custom_id stands twice in one message');

/** Asked of every message of this program: no mention ever resolves. */
const mentionsNobody = z.strictObject({ parse: z.array(z.string()).length(0) });

const content = z.string().max(2000);
const attachments = z
  .array(z.strictObject({ id: z.string(), description: z.string().max(1024).optional() }))
  .max(10);

/** A nonce with `enforce_nonce` is asked of every message to a channel, so that a repeat creates none. */
export const createMessage = z
  .strictObject({
    content,
    components: rows.optional(),
    flags: z.number().int().optional(),
    allowed_mentions: mentionsNobody,
    attachments: attachments.optional(),
    nonce: z.string().min(1).max(25),
    enforce_nonce: z.literal(true),
  })
  .refine((message) => message.content !== '' || (message.attachments?.length ?? 0) > 0, 'an empty message');

export const editMessage = z.strictObject({
  content: content.optional(),
  components: rows.optional(),
  flags: z.number().int().optional(),
  allowed_mentions: mentionsNobody,
  attachments: attachments.optional(),
});

export const createThread = z
  .strictObject({
    name: z.string().min(1).max(100),
    type: z.literal([11, 12]),
    auto_archive_duration: z.literal([60, 1440, 4320, 10080]),
    invitable: z.boolean().optional(),
  })
  .refine(
    ({ type, invitable }) => type === 12 || invitable === undefined,
    'invitable is for private threads',
  );

const localised = z.record(z.string().regex(/^[a-z]{2}(-[A-Z]{2})?$/), z.string().min(1).max(100));

/** The languages that Discord has, of those that a program like this may name. */
export const locales = ['de', 'es-ES', 'fr', 'it', 'pt-BR'];

const option = z.strictObject({
  type: z.literal(3),
  name: z.string().regex(/^[-_a-z0-9]{1,32}$/),
  description: z.string().min(1).max(100),
  description_localizations: localised.optional(),
  required: z.boolean().optional(),
});

export const commands = z
  .array(
    z.strictObject({
      name: z.string().regex(/^[-_a-z0-9]{1,32}$/),
      description: z.string().min(1).max(100),
      description_localizations: localised.optional(),
      contexts: z.array(z.number().int().min(0).max(2)),
      integration_types: z.array(z.number().int().min(0).max(1)),
      default_member_permissions: z.string().regex(/^\d+$/).optional(),
      options: z.array(option).max(25).optional(),
    }),
  )
  .max(100);

const form = z.strictObject({
  custom_id: customId,
  title: z.string().min(1).max(45),
  components: z
    .array(
      z.strictObject({
        type: z.literal(1),
        components: z
          .array(
            z.strictObject({
              type: z.literal(4),
              custom_id: customId,
              style: z.literal([1, 2]),
              label: z.string().min(1).max(45),
              required: z.boolean().optional(),
              max_length: z.number().int().min(1).max(4000).optional(),
            }),
          )
          .length(1),
      }),
    )
    .min(1)
    .max(5),
});

/** The first answer to an interaction, by its type; which may follow which kind is checked where it is given. */
export const firstAnswer = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal(5), data: z.strictObject({ flags: z.literal(64) }).optional() }),
  z.strictObject({ type: z.literal(6) }),
  z.strictObject({ type: z.literal(9), data: form }),
]);

export const laterAnswer = z.strictObject({
  content: content.min(1),
  allowed_mentions: mentionsNobody,
});
