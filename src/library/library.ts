// Keeps the newest content and every older state that a set-up is pinned to, so that an edited file never breaks one under way.
import { type Edition, readEdition } from './edition.ts';

export interface Library {
  /** The newest, as its files say. */
  readonly current: Edition;
  /** What a set-up is pinned to; undefined where it was not brought yet. */
  at(hash: string): Edition | undefined;
  /** Adds a snapshot as it was kept. */
  add(hash: string, json: string): Edition;
  /** Looks it up among the kept snapshots first, as when another process began the set-up. */
  bring(hash: string): Promise<Edition | undefined>;
}

/** Where snapshots are kept: the store. */
export interface Shelf {
  put(hash: string, json: string): Promise<void>;
  get(hash: string): Promise<string | undefined>;
  inUse(): Promise<string[]>;
}

/** Keeps the newest and takes in every snapshot that is still pinned. */
export async function openLibrary(
  newest: { edition: Edition; json: string },
  shelf: Shelf,
): Promise<Library> {
  const current = newest.edition;
  const editions = new Map([[current.content.hash, current]]);
  const add = (hash: string, json: string) => {
    const edition = readEdition(hash, json);
    editions.set(hash, edition);
    return edition;
  };
  const bring = async (hash: string) => {
    const known = editions.get(hash);
    if (known) return known;
    const json = await shelf.get(hash);
    return json === undefined ? undefined : add(hash, json);
  };
  await shelf.put(current.content.hash, newest.json);
  for (const hash of await shelf.inUse()) await bring(hash);
  return { current, at: (hash) => editions.get(hash), add, bring };
}
