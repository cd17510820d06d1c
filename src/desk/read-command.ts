// Tells the desk's commands from plain words: a dot or a slash and a word, in a case or at the desk as a whole; for what staff type.

/** At the desk as a whole. */
export const deskCommands = ['cases', 'find', 'record', 'closed', 'open', 'tips', 'help'] as const;

export interface Command {
  name: string;
  /** What follows it, as typed. */
  rest: string;
}

/** Which command a few words are in the desk's own language. */
type Meaning = (words: string) => string | undefined;

const noLanguage: Meaning = () => undefined;

/** No command has more words. */
const mostWords = 3;

/**
 * "/take", ".ask idle", "/give back", and the same in the desk's language. Whatever begins like one is never passed on as
 * plain words, also where no such command exists: a slip of a finger must not send a remark to an owner.
 */
export function readCommand(text: string, meaning = noLanguage): Command | null {
  const found = /^[./]\s?(\p{L}\S*)([\s\S]*)/u.exec(text.trim());
  // A platform adds the bot's own name behind a command in a group.
  return found ? named((found[1] ?? '').replace(/@.*$/u, ''), found[2] ?? '', meaning) : null;
}

/** The same without its sign, where plain words would go nowhere. */
export function readBareCommand(
  text: string,
  known: readonly string[],
  meaning = noLanguage,
): Command | null {
  const found = /^(\p{L}[\p{L}-]*)(?:\s([\s\S]*))?$/u.exec(text.trim());
  const command = found && named(found[1] ?? '', found[2] ?? '', meaning);
  return command && known.includes(command.name) ? command : null;
}

/** "/note: late again" is still a note. */
function named(word: string, after: string, meaning: Meaning): Command {
  const name = word.toLowerCase().replace(/[:;,.!?]+$/u, '');
  const rest = after.trim();
  const next = rest.split(/\s+/u).slice(0, mostWords - 1);
  for (let more = next.length; more >= 0; more -= 1) {
    const command = meaning([name, ...next.slice(0, more)].join(' '));
    if (command !== undefined)
      return meant(
        command,
        rest
          .split(/(?<=\s)(?=\S)/u)
          .slice(more)
          .join(''),
      );
  }
  const back = /^back\b\s*/iu.exec(rest);
  if (name === 'give' && back) return { name: 'give-back', rest: rest.slice(back[0].length) };
  return { name, rest };
}

/** Two are said in whole sentences. */
function meant(command: string, rest: string): Command {
  if (command === 'closed-today') return { name: 'closed', rest: 'today' };
  if (command === 'open-again') return { name: 'open', rest: 'again' };
  return { name: command, rest };
}
