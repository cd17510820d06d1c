import { describe, expect, test } from 'vitest';
import { type Edition, makeEdition, readEdition, wordsFor } from '../../src/library/edition.ts';
import { openLibrary, type Shelf } from '../../src/library/library.ts';
import { type Change, loadChanged } from './sound-content.ts';

async function load(changes: Record<string, Change> = {}) {
  const { newest } = await loadChanged(changes);
  return newest!;
}

/** A shelf in memory, as the store keeps one. */
function makeShelf(pinned: string[] = []): Shelf & { kept: Map<string, string> } {
  const kept = new Map<string, string>();
  return {
    kept,
    put: async (hash, json) => void kept.set(hash, json),
    get: async (hash) => kept.get(hash),
    inUse: async () => pinned,
  };
}

describe('the library', () => {
  test('keeps the newest content on the shelf, and gives it by its hash', async () => {
    const newest = await load();
    const shelf = makeShelf();
    const library = await openLibrary(newest, shelf);
    const { hash } = library.current.content;
    expect(library.at(hash)).toBe(library.current);
    expect(readEdition(hash, shelf.kept.get(hash)!)).toEqual(library.current);
    expect(library.at('no such hash')).toBeUndefined();
  });

  test('still has what a set-up is pinned to after its file has gone', async () => {
    const before = await load();
    const { hash } = before.edition.content;
    const shelf = makeShelf([hash]);
    await openLibrary(before, shelf);
    const after = await load({ 'machines/tern-200.yaml': ['id: tern-200', 'id: tern-250'] });
    const library = await openLibrary(after, shelf);
    expect(library.current.content.machines['tern-200']).toBeUndefined();
    expect(library.at(hash)?.content.machines['tern-200']?.name).toBe('Tern 200');
  });

  test('brings what another process has put on the shelf meanwhile', async () => {
    const shelf = makeShelf();
    const library = await openLibrary(await load(), shelf);
    const other = await load({ 'machines/tern-200.yaml': ['awakeMinutes: 15', 'awakeMinutes: 20'] });
    const { hash } = other.edition.content;
    await shelf.put(hash, other.json);
    expect(library.at(hash)).toBeUndefined();
    expect(await library.bring(hash)).toEqual(other.edition);
    expect(library.at(hash)).toEqual(other.edition);
    expect(await library.bring('no such hash')).toBeUndefined();
  });

  test('knows no machine or procedure by the names that every object has', async () => {
    const { edition, json } = await load();
    for (const { content } of [edition, readEdition(edition.content.hash, json)]) {
      expect(content.procedures.constructor).toBeUndefined();
      expect(content.machines.toString).toBeUndefined();
    }
  });

  test('refuses a snapshot that was changed', async () => {
    const { json, edition } = await load();
    const library = await openLibrary(await load(), makeShelf());
    expect(() => library.add(edition.content.hash, json.replace('0.4', '0.5'))).toThrow('is damaged');
  });
});

describe('the words of a pinned set-up', () => {
  const edition = (procedures: string[], words: Edition['words']): Edition => {
    const content = { procedures: Object.fromEntries(procedures.map((id) => [id, { id }])) };
    return makeEdition(content as unknown as Edition['content'], words).edition;
  };
  const pinned = edition(['baseline'], {
    en: { 'baseline.ftl': 'old', 'asks.ftl': 'old' },
    de: { 'baseline.ftl': 'alt' },
  });
  const newest = edition(['baseline'], {
    en: { 'baseline.ftl': 'new', 'asks.ftl': 'new', 'more.ftl': 'new' },
  });

  test("are the newest, but for its procedures' own files", () => {
    expect(wordsFor(pinned, newest)).toEqual({
      en: { 'baseline.ftl': 'old', 'asks.ftl': 'new', 'more.ftl': 'new' },
      de: { 'baseline.ftl': 'alt' },
    });
  });

  test('are filled up where a procedure says more by now', () => {
    const before = edition(['baseline'], {
      en: { 'baseline.ftl': 'a = old\n    more of it\n# said\nb = old\n' },
    });
    const after = edition(['baseline'], {
      en: { 'baseline.ftl': 'a = new\na-name = A\nb = new\nb-name = B\n  and C\n' },
    });
    expect(wordsFor(before, after).en?.['baseline.ftl']).toBe(
      'a = old\n    more of it\n# said\nb = old\na-name = A\nb-name = B\n  and C\n',
    );
  });

  test('are the newest where it is pinned to that', () => {
    expect(wordsFor(newest, newest)).toBe(newest.words);
  });
});
