// Holds the words of the pictures together: the same keys and arguments in every language.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { FluentParser, type Message, Visitor } from '@fluent/syntax';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../../content/words');
const languages = readdirSync(root).filter((name) => /^[a-z]{2}$/.test(name));

function read(language: string): Map<string, string[]> {
  const text = readFileSync(join(root, language, 'pictures.ftl'), 'utf8');
  const keys = new Map<string, string[]>();
  for (const entry of new FluentParser().parse(text).body) {
    if (entry.type === 'Junk') throw new Error(`${language}: ${(entry as { content?: string }).content}`);
    if (entry.type !== 'Message') continue;
    const names = new Set<string>();
    class Names extends Visitor {
      override visitVariableReference(node: { id: { name: string } }) {
        names.add(node.id.name);
      }
    }
    new Names().visit(entry);
    keys.set((entry as Message).id.name, [...names].sort());
  }
  return keys;
}

test.each(languages.filter((language) => language !== 'en'))(
  '%s has every key, filled in with the same',
  (language) => {
    const [ours, english] = [read(language), read('en')];
    expect([...ours.keys()].sort()).toEqual([...english.keys()].sort());
    for (const [key, names] of ours) {
      // A language may do without the count where a sentence for one has none.
      const given = english.get(key)!;
      expect(given, `${language}: ${key}`).toEqual(expect.arrayContaining(names));
      expect(names.length, `${language}: ${key}`).toBe(given.length);
    }
  },
);

test('six languages are spoken', () => {
  expect(languages.sort()).toEqual(['de', 'en', 'es', 'fr', 'it', 'pt']);
});
