// The commands that are whole messages, in each language that ships: to be forgotten, and what staff write.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readLexicon } from '../../src/commands/interpret.ts';
import { asksToErase } from '../../src/conversation/command-words.ts';
import { readCommand } from '../../src/desk/read-command.ts';
import { foldPhrase } from '../../src/measurement/hear-fold.ts';
import { Play, shippedDecide } from './play.ts';

const languages = ['en', 'de', 'es', 'fr', 'it', 'pt'] as const;
const lexicons = new Map(
  await Promise.all(languages.map(async (one) => [one, await readLexicon('content', one)] as const)),
);
const decide = await shippedDecide();

test.each([
  ['en', 'Erase me.'],
  ['en', '/erase'],
  ['de', 'Lösch mich!'],
  ['de', 'losch mich'],
  ['es', 'Bórrame'],
  ['fr', 'efface moi'],
  ['it', 'Cancellami'],
  ['pt', 'apague tudo'],
  // English stays understood everywhere.
  ['it', 'erase me'],
])('in %s "%s" asks whether everything shall be erased, and yes does it', (locale, typed) => {
  const play = new Play(decide);
  play.start('rider', 'throttle-sensor', 'fenmoor-450');
  expect(play.text('rider', typed, { locale }).at(-1)?.facts.ask).toEqual({
    kind: 'choice',
    question: 'erase',
  });
  play.choose('rider', 'yes');
  expect(play.stateOf('rider')).toBeNull();
});

test.each(languages)('what the greeting says in %s erases', (locale) => {
  const play = new Play(decide);
  const greeting = play
    .text('rider', 'x', { locale })
    .map(({ text }) => text)
    .join('\n');
  const [, quoted = ''] = /"([^"]+)"/.exec(greeting) ?? [];
  expect(play.text('rider', quoted, { locale }).at(-1)?.facts.ask).toMatchObject({ question: 'erase' });
});

test('sentences with such words in them erase nothing', () => {
  for (const text of [
    'erase me a line',
    'please do not erase me',
    'vergiss mich nicht',
    'erase the mark',
    '',
  ]) {
    expect(asksToErase(text, [...lexicons.values()]), text).toBe(false);
  }
});

test.each(languages)('what the help at the desk names in %s is a command there', (language) => {
  const words = readFileSync(`content/words/${language}/desk.ftl`, 'utf8');
  const own = lexicons.get(language);
  const named = Array.from(words.matchAll(/(?<=[" ])\/([\p{L}-]+)(?: [a-z]+)?/gu), ([, word]) => word ?? '');
  expect(named.length).toBeGreaterThan(15);
  const known = new Set([
    'take',
    'pass',
    'ask',
    'check',
    'accept',
    'jump',
    'clear',
    'give-back',
    'close',
    'note',
    'job',
    'card',
    'record',
    'help',
  ]);
  const commands = named.map(
    (word) => readCommand(`/${word}`, (words) => own?.commands.get(foldPhrase(words)))?.name ?? '',
  );
  expect(commands.filter((name) => !known.has(name))).toEqual([]);
  expect(new Set(commands).size).toBe(known.size);
});
