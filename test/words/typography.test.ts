// French typography (Lexique des règles typographiques en usage à l'Imprimerie nationale; from memory): a no-break space before ? ! : ; and inside « ».
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const folder = join(import.meta.dirname, '..', '..', 'content', 'words', 'fr');

test('French words have a no-break space at their double punctuation, and never a plain one', () => {
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.ftl'))) {
    const lines = readFileSync(join(folder, file), 'utf8').split('\n');
    const said = lines.filter((line) => !line.trimStart().startsWith('#'));
    expect(
      said.filter((line) => / [?!:;»]|« /.test(line)),
      file,
    ).toEqual([]);
    expect(
      said.filter((line) => /(?:\p{L}|[^"]\})[?!:;»](?![\p{L}\d])|«[\p{L}{]/u.test(line)),
      file,
    ).toEqual([]);
  }
});

test('one word for the least that a hand can turn: in the chat, at the desk and in pictures', () => {
  const words = readFileSync(join(folder, '..', 'en', 'pictures.ftl'), 'utf8');
  expect(words).toContain('[one] { $amount } hair\n');
  expect(words).not.toMatch(/= .*nudge|\] .*nudge/);
});
