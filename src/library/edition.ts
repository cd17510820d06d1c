// One state of everything a workshop wrote, which a set-up is pinned to: made by the loader, and kept as a snapshot.
import type { Content } from '../procedure/content.ts';
import { byId } from './by-id.ts';
import { canonicalJson, hashOf } from './canonical-json.ts';

/** The Fluent files of each language, as `{ en: { 'stages.ftl': '…' } }`. */
export type WordFiles = Readonly<Record<string, Readonly<Record<string, string>>>>;

export interface Edition {
  /** Names it by its hash. */
  content: Content;
  words: WordFiles;
}

export function makeEdition(
  content: Omit<Content, 'hash'>,
  words: WordFiles,
): { edition: Edition; json: string } {
  const json = canonicalJson({ content, words });
  return { edition: { content: { hash: hashOf(json), ...content }, words }, json };
}

/** Reads a snapshot back; one that is not what its hash says is refused. */
export function readEdition(hash: string, json: string): Edition {
  if (hashOf(json) !== hash)
    throw new Error(`The content snapshot ${hash} is damaged: it is not what its hash says.`);
  const { content, words } = JSON.parse(json) as { content: Omit<Content, 'hash'>; words: WordFiles };
  const machines = byId(Object.values(content.machines));
  const procedures = byId(Object.values(content.procedures));
  return { content: { hash, ...content, machines, procedures }, words };
}

/**
 * The words for a set-up that is pinned to an older edition: the newest, since the program may say more by now, but each
 * procedure's own file, named after it, as it was, since stages may have gone or changed. What that says not yet, the newest says.
 */
export function wordsFor(pinned: Edition, newest: Edition): WordFiles {
  if (pinned.content.hash === newest.content.hash) return newest.words;
  const own = (file: string) => pinned.content.procedures[file.replace(/\.ftl$/, '')] !== undefined;
  const languages = new Set([...Object.keys(newest.words), ...Object.keys(pinned.words)]);
  return Object.fromEntries(
    [...languages].map((language) => {
      const now = newest.words[language] ?? {};
      const kept = Object.entries(pinned.words[language] ?? {}).filter(([file]) => own(file));
      const whole = kept.map(([file, text]) => [file, withMissing(text, now[file] ?? '')]);
      return [language, { ...now, ...Object.fromEntries(whole) }];
    }),
  );
}

/** The words of a file, and those of a newer one whose keys it lacks. */
function withMissing(text: string, newer: string): string {
  const keyOf = (entry: string) => /^-?[a-zA-Z][\w-]*(?=\s*=)/u.exec(entry)?.[0];
  const entriesOf = (file: string) => file.split(/^(?=\S)/mu).filter((entry) => keyOf(entry) !== undefined);
  const known = new Set(entriesOf(text).map(keyOf));
  const missing = entriesOf(newer).filter((entry) => !known.has(keyOf(entry)));
  return missing.length === 0 ? text : `${text.trimEnd()}\n${missing.join('')}`;
}
