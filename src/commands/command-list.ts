// What the program can be asked to do, and with which options: for the command line, its usage and its help.

export interface CommandWords {
  about: string;
  /** Each as it is typed, with what it does. */
  options: Readonly<Record<string, string>>;
}

const content = {
  '--content DIR': 'the folder of content (CONTENT_DIR, else the one that ships with the program)',
};
const data = {
  '--data DIR': 'the folder of the database (DATA_DIR, else data/); DATABASE_URL goes before it',
};

export const commandList = {
  chat: {
    about: 'the local chat, for a person or (with --pipe) for another program',
    options: {
      ...data,
      ...content,
      '--pictures DIR': 'draws pictures into this folder (else none are drawn)',
      '--pipe': 'takes and gives lines of JSON, for another program',
      '--now INSTANT': 'stops the clock there, as 2026-01-05T09:00:00Z',
    },
  },
  bot: { about: 'Telegram and Discord, as .env says', options: content },
  interpret: {
    about: 'how messages are understood, a line each',
    options: {
      '--unit UNIT': 'what the messages are about: V, 1/min, mm, kPa, Nm or %',
      '--locale LANGUAGE': 'the language that they are written in (en)',
      ...content,
    },
  },
  check: { about: 'whether the content is sound', options: content },
  doctor: { about: 'whether everything that the bot needs is there', options: content },
  report: {
    about: 'where owners stop, how long stages take, which causes were found',
    options: { ...data, ...content, '--pictures DIR': 'draws the three figures into this folder too' },
  },
} as const satisfies Record<string, CommandWords>;

export type CommandName = keyof typeof commandList;

export const isCommand = (name: string | undefined): name is CommandName =>
  name !== undefined && Object.hasOwn(commandList, name);

/** All commands, for whoever named none that there is. */
export function usage(named: string | undefined): string {
  const known = Object.entries(commandList).map(
    ([name, { about }]) => `  npm run ${name.padEnd(10)} ${about}`,
  );
  const first = named === undefined ? 'Name a command.' : `There is no command "${named}".`;
  return [first, 'The commands are:', ...known, ''].join('\n');
}

/** One command and its options. */
export function helpFor(name: CommandName): string {
  const { about, options }: CommandWords = commandList[name];
  const shown = Object.entries(options).map(([option, does]) => `  ${option.padEnd(18)} ${does}`);
  return [`npm run ${name}: ${about}.`, 'Options, after "--":', ...shown, ''].join('\n');
}
