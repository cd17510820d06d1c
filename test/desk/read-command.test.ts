// What staff type: commands are told from words that are meant for the owner.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { deskCommands, readBareCommand, readCommand } from '../../src/desk/read-command.ts';

test.each([
  ['/take', 'take', ''],
  ['.take', 'take', ''],
  ['/Take ', 'take', ''],
  ['/ask closed stop', 'ask', 'closed stop'],
  ['/give back', 'give-back', ''],
  ['/give-back', 'give-back', ''],
  // A platform adds the bot's own name behind a command in a group.
  ['/close@workshop_bot worn track', 'close', 'worn track'],
  ['/note two\nlines', 'note', 'two\nlines'],
  // A slip is still no message to the owner.
  ['/noet he never listens', 'noet', 'he never listens'],
  ['/note: he never listens', 'note', 'he never listens'],
  ['/no.te he never listens', 'no.te', 'he never listens'],
  ['/note2 he never listens', 'note2', 'he never listens'],
  ['/note, he never listens', 'note', 'he never listens'],
  ['  / take  ', 'take', ''],
  ['/note   late\u00a0again ', 'note', 'late\u00a0again'],
  ['/give back idle', 'give-back', 'idle'],
  ['/give Back', 'give-back', ''],
  ['/give it back', 'give', 'it back'],
  ['/take back', 'take', 'back'],
  ['/give backwards', 'give', 'backwards'],
])('%j is a command', (text, name, rest) => {
  expect(readCommand(text)).toEqual({ name, rest });
});

test.each([
  'take it off',
  '.348 is fine',
  '1/2 turn',
  '... wait',
  '/',
  '.',
  ' ',
  '/ 2 turns',
  'see /note',
  'ok\n/take',
])('%j is meant for the owner', (text) => {
  expect(readCommand(text)).toBeNull();
});

test.each([
  ['/nimm', 'take', ''],
  ['/Prüfung Gaszug', 'check', 'Gaszug'],
  ['.notiz zwei\nZeilen', 'note', 'zwei\nZeilen'],
  ['/zurückgeben', 'give-back', ''],
  ['/take', 'take', ''],
  ['/heute zu', 'closed', 'today'],
  ['/nimmer', 'nimmer', ''],
])('%j is a command where the desk speaks German', (text, name, rest) => {
  const german = new Map([
    ['nimm', 'take'],
    ['prüfung', 'check'],
    ['notiz', 'note'],
    ['zurückgeben', 'give-back'],
    ['heute zu', 'closed-today'],
  ]);
  expect(readCommand(text, (words) => german.get(words))).toEqual({ name, rest });
});

test('at the desk as a whole a known word needs no sign, any other does', () => {
  expect(readBareCommand('find ann', deskCommands)).toEqual({ name: 'find', rest: 'ann' });
  expect(readBareCommand('Cases', deskCommands)).toEqual({ name: 'cases', rest: '' });
  expect(readBareCommand('  find  ann  ', deskCommands)).toEqual({ name: 'find', rest: 'ann' });
  expect(readBareCommand('find\nann', deskCommands)).toEqual({ name: 'find', rest: 'ann' });
});

test.each(['lunch?', 'cases?', '2 cases', 'opened', 'open: 9', '/cases', 'the record', ''])(
  'at the desk as a whole %j is no command',
  (text) => {
    expect(readBareCommand(text, deskCommands)).toBeNull();
  },
);

test('whatever begins with a sign and a letter is never passed on', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('/', '.'),
      fc.stringMatching(/^[a-z][a-z-]{0,12}$/),
      fc.string(),
      (sign, word, more) => {
        expect(readCommand(`${sign}${word}${more}`)).not.toBeNull();
        expect(readCommand(`${sign}${word} ${more}`)).not.toBeNull();
      },
    ),
  );
});

// "gib zurück" is German for "give back", "gib es bitte ab" a request of four words.
test.each([
  ['/nimm', 'take', ''],
  ['/gib zurück', 'give-back', ''],
  ['/GIB zurück  an  Sam', 'give-back', 'an  Sam'],
  ['/gib\nzurück\nan Sam', 'give-back', 'an Sam'],
  ['/gib ab', 'gib', 'ab'],
  ['/gib es ab Sam', 'pass', 'Sam'],
  // The longest that is known counts; what is longer than any command is none.
  ['/frag', 'ask', ''],
  ['/frag nach', 'check', ''],
  ['/frag danach', 'ask', 'danach'],
  ['/heute zu', 'closed', 'today'],
  ['/wieder auf', 'open', 'again'],
])('in the words of a language %j is the command "%s"', (text, name, rest) => {
  const words: Record<string, string> = {
    nimm: 'take',
    'gib zurück': 'give-back',
    'gib es ab': 'pass',
    frag: 'ask',
    'frag nach': 'check',
    'heute zu': 'closed-today',
    'wieder auf': 'open-again',
  };
  expect(readCommand(text, (said) => words[said])).toEqual({ name, rest });
  expect(readBareCommand(text.slice(1), [name], (said) => words[said])).toEqual({ name, rest });
});
