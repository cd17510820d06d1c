// Holds the words of every language against what is needed and against English, for `check`: a gap would be a hole in a sentence.
import type { Place, Problem } from './problem.ts';
import type { FluentFile, Message } from './read-fluent.ts';
import { nearest } from './suggest.ts';

/** A key that something has to say, and where that stands. */
export interface Need extends Place {
  key: string;
  file: string;
  /** What says it, as `the stage "baseline"`. */
  who: string;
  /** The variables that are given, where that is known. */
  given?: readonly string[];
}

export interface WordsToCheck {
  folder: string;
  /** The read files by language, then by name. */
  languages: ReadonlyMap<string, ReadonlyMap<string, FluentFile>>;
  /** Languages whose lexicon says that they are not whole yet. */
  drafts: ReadonlySet<string>;
  needs: readonly Need[];
  /** Keys that the program may say besides. */
  spoken: (key: string) => boolean;
}

const english = 'en';

export function checkWords({ folder, languages, drafts, needs, spoken }: WordsToCheck): Problem[] {
  const reference = languages.get(english);
  if (!reference) {
    const mend = `Put the words into ${folder}/${english}/, as Fluent files.`;
    return [problem({ file: folder, line: 1, column: 1 }, 'There are no English words.', mend)];
  }
  return [
    ...checkNeeds(reference, needs, `${folder}/${english}`),
    ...checkUnused(reference, needs, spoken),
    ...[...languages].flatMap(([, files]) => checkWithin(files)),
    ...[...languages]
      .filter(([language]) => language !== english)
      .flatMap(([language, files]) => compare(reference, files, drafts.has(language))),
  ];
}

type Files = ReadonlyMap<string, FluentFile>;
type Where = Place & { file: string };

function checkNeeds(reference: Files, needs: readonly Need[], folder: string): Problem[] {
  const known = entriesOf(reference);
  const complained = new Set<string>();
  return needs.flatMap((need) => {
    const message = known.get(need.key);
    if (!message && complained.has(need.key)) return [];
    if (!message) {
      complained.add(need.key);
      const near = nearest(need.key, known.keys());
      const mend = `Add "${need.key} = …" to the words in ${folder}/.${near ? ` There is "${near}".` : ''}`;
      return [problem(need, `There are no words for ${need.who}: "${need.key}" is missing.`, mend)];
    }
    const { given } = need;
    if (!given) return [];
    return message.variables
      .filter((variable) => !given.includes(variable.name))
      .map((variable) => {
        const mend =
          given.length > 0 ? `Use one of: ${given.map((name) => `$${name}`).join(', ')}.` : 'Take it out.';
        return problem(
          { ...variable, file: message.file },
          `"$${variable.name}" is not given to "${need.key}".`,
          mend,
        );
      });
  });
}

function checkUnused(reference: Files, needs: readonly Need[], spoken: (key: string) => boolean): Problem[] {
  const known = entriesOf(reference);
  const used = new Set([
    ...needs.map((need) => need.key),
    ...[...known.values()].flatMap((entry) => [
      ...entry.messages.map((mention) => mention.name),
      ...entry.terms.map((mention) => `-${mention.name}`),
    ]),
  ]);
  return [...known.values()]
    .filter((entry) => !used.has(entry.key) && !spoken(entry.key))
    .map((entry) =>
      problem(entry, `Nothing says "${entry.key}".`, 'Take it out, or mend its name.', 'warning'),
    );
}

/** What can be told from one language alone: a key said twice, a reference that leads nowhere. */
function checkWithin(files: Files): Problem[] {
  const known = new Map<string, Message & { file: string }>();
  const problems: Problem[] = [];
  for (const entry of inOrder(files)) {
    const earlier = known.get(entry.key);
    if (earlier) {
      const message = `"${entry.key}" is here and at ${earlier.file}:${earlier.line}.`;
      problems.push(problem(entry, message, 'Keep one of the two.'));
    } else known.set(entry.key, entry);
  }
  for (const entry of known.values()) {
    const mentions = [...entry.messages, ...entry.terms.map((term) => ({ ...term, name: `-${term.name}` }))];
    for (const mention of mentions.filter(({ name }) => !known.has(name))) {
      const near = nearest(mention.name, known.keys());
      const mend = near ? `Did you mean "${near}"?` : `Add "${mention.name} = …", or take this out.`;
      problems.push(
        problem(
          { ...mention, file: entry.file },
          `"${entry.key}" refers to "${mention.name}", which is missing.`,
          mend,
        ),
      );
    }
  }
  return problems;
}

/** A file that is not there at all is shown in English; one that is there has to be whole, unless the language is a draft. */
function compare(reference: Files, files: Files, draft: boolean): Problem[] {
  const own = entriesOf(files);
  const problems: Problem[] = [];
  for (const [name, { file, entries }] of reference) {
    const translated = files.get(name);
    if (!translated) continue;
    let before: Where = { file: translated.file, line: 1, column: 1 };
    for (const entry of entries.filter(({ key }) => !key.startsWith('-'))) {
      const counterpart = own.get(entry.key);
      if (counterpart) {
        if (counterpart.file === translated.file) before = counterpart;
        problems.push(...checkVariables(entry, counterpart));
      } else if (!draft) {
        const mend = `Add "${entry.key} = …" below this, after ${file}:${entry.line}.`;
        problems.push(problem(before, `The words for "${entry.key}" are missing.`, mend));
      }
    }
  }
  const known = entriesOf(reference);
  for (const entry of own.values()) {
    if (entry.key.startsWith('-') || known.has(entry.key)) continue;
    const near = nearest(entry.key, known.keys());
    const mend = near ? `Did you mean "${near}"?` : 'Take it out, or add it to the English words first.';
    problems.push(problem(entry, `English has no "${entry.key}".`, mend));
  }
  return problems;
}

function checkVariables(reference: Message, entry: Message & { file: string }): Problem[] {
  if (reference.broken) return [];
  const given = [...new Set(reference.variables.map((variable) => variable.name))];
  return entry.variables
    .filter((variable) => !given.includes(variable.name))
    .map((variable) => {
      const near = nearest(variable.name, given);
      const all =
        given.length > 0 ? `Use one of: ${given.map((name) => `$${name}`).join(', ')}.` : 'Take it out.';
      const message = `"${entry.key}" uses "$${variable.name}", which English does not.`;
      return problem({ ...variable, file: entry.file }, message, near ? `Did you mean "$${near}"?` : all);
    });
}

function inOrder(files: Files): (Message & { file: string })[] {
  return [...files.values()].flatMap(({ file, entries }) => entries.map((entry) => ({ ...entry, file })));
}

function entriesOf(files: Files): Map<string, Message & { file: string }> {
  return new Map(inOrder(files).map((entry) => [entry.key, entry]));
}

function problem(
  { file, line, column }: Where,
  message: string,
  mend: string,
  level: Problem['level'] = 'error',
): Problem {
  return { level, file, line, column, message, mend };
}
