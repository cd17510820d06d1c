// Which folder may import what: the table of the architecture, for the test that reads every import.

export interface Allowed {
  /** Our own folders; those under `types` for their types only. */
  ours: readonly string[];
  types?: readonly string[];
  /** Packages and Node's own modules. */
  packages: readonly string[];
}

/** No await, no clock, no random, no logger, no input or output. */
export const core = [
  'src/measurement',
  'src/procedure',
  'src/diagnosis',
  'src/conversation',
  'src/desk',
  'src/words',
  'src/chat',
];

export const allowed: Readonly<Record<string, Allowed>> = {
  'src/measurement': { ours: [], packages: [] },
  'src/procedure': { ours: ['src/measurement'], packages: ['zod'] },
  'src/diagnosis': { ours: ['src/measurement', 'src/procedure'], packages: [] },
  'src/chat': { ours: [], types: ['src/measurement'], packages: [] },
  'src/desk': { ours: ['src/procedure', 'src/chat'], packages: [] },
  'src/conversation': {
    ours: ['src/measurement', 'src/procedure', 'src/diagnosis', 'src/desk', 'src/chat'],
    packages: [],
  },
  'src/words': { ours: ['src/chat'], packages: ['@fluent/bundle'] },
  'src/library': {
    ours: ['src/procedure'],
    packages: [
      'zod',
      'zod/v4/core',
      'yaml',
      '@fluent/syntax',
      'node:crypto',
      'node:fs/promises',
      'node:path',
    ],
  },
  'src/store': {
    ours: ['src/chat'],
    types: core,
    packages: [
      'kysely',
      'pg',
      'node:sqlite',
      'node:crypto',
      'node:fs',
      'node:fs/promises',
      'node:path',
      'node:timers/promises',
    ],
  },
  'src/inbox': {
    ours: [...core, 'src/store'],
    packages: ['node:timers/promises'],
  },
  'src/outbox': {
    ours: [...core, 'src/store', 'src/picture'],
    packages: ['node:timers/promises'],
  },
  'src/picture': {
    ours: ['src/chat', 'src/procedure', 'src/words'],
    packages: [
      'zod',
      '@resvg/resvg-js',
      'node:fs',
      'node:module',
      'node:path',
      'node:url',
      'node:worker_threads',
      'node:zlib',
    ],
  },
  'src/tips': {
    ours: ['src/chat', 'src/procedure', 'src/words', 'src/store'],
    packages: ['zod', 'croner'],
  },
  'src/commands': {
    ours: ['src/*', 'adapters/*'],
    packages: ['zod', 'yaml', 'pino', 'node:*'],
  },
  /** The start itself: plain JavaScript that any Node can read. */
  src: { ours: ['src/commands'], packages: ['node:module'] },
  'adapters/console': {
    ours: ['src/chat'],
    packages: ['node:crypto', 'node:fs/promises', 'node:path', 'node:readline', 'node:stream', 'node:util'],
  },
  /** What both platforms over the network need, and the console does not. */
  'adapters/wire': { ours: ['src/chat'], packages: ['node:crypto', 'node:timers/promises'] },
  'adapters/telegram': {
    ours: ['src/chat', 'adapters/wire'],
    packages: ['grammy', 'grammy/types', 'node:crypto', 'node:http', 'node:timers/promises'],
  },
  'adapters/discord': {
    ours: ['src/chat', 'adapters/wire'],
    packages: ['discord.js', '@discordjs/ws', 'node:crypto', 'node:timers/promises'],
  },
};
