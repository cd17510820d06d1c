// How a message looks to a person at a terminal.
import { stripVTControlCharacters } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutMessage, widthOf, wrap } from '../../../adapters/console/lay-out-message.ts';
import type { OutgoingMessage } from '../../../src/chat/outgoing-message.ts';

const owner = { kind: 'owner', platform: 'console', person: 'you', chat: 'you' } as const;
const plain = (_: string, text: string) => text;

function message(more: Partial<OutgoingMessage>): OutgoingMessage {
  return {
    id: 'c1-1',
    edit: 0,
    to: owner,
    text: 'Send the reading.',
    choices: [],
    picture: null,
    facts: {},
    ...more,
  };
}

const layOut = (more: Partial<OutgoingMessage>, columns = 80) =>
  layOutMessage(message(more), columns, null, plain);

describe('a message at the terminal', () => {
  test('has its choices numbered below', () => {
    const choices = [
      { id: 'done', label: 'Done' },
      { id: 'help', label: 'Help' },
    ];
    expect(layOut({ text: 'Loosen both screws.', choices }).text).toBe(
      '  Loosen both screws.\n  1  Done\n  2  Help',
    );
  });

  test('marks the numbers of choices where a bare figure would be a reading', () => {
    const choices = [{ id: 'jumping', label: 'It jumps' }];
    const ask = { kind: 'reading', measure: 'signal-idle', unit: 'V' } as const;
    expect(layOut({ choices, facts: { ask } }).text).toBe('  Send the reading.\n  #1  It jumps');
  });

  test('sets the desk, its cases and the channel off by a margin', () => {
    expect(layOut({ to: { kind: 'desk', caseId: null } })).toEqual({
      text: 'desk | Send the reading.',
      seat: 'desk',
    });
    expect(layOut({ to: { kind: 'desk', caseId: 'c1' } })).toEqual({
      text: 'desk c1 | Send the reading.',
      seat: 'desk c1',
    });
    expect(layOut({ to: { kind: 'tips' } }).text).toBe('channel | Send the reading.');
  });

  test('says that a message is a changed one, and where its picture lies', () => {
    const { text } = layOutMessage(message({ edit: 2 }), 80, '/tmp/c1-1.png', plain);
    expect(text.split('\n')).toEqual(['  (changed)', '  Send the reading.', '  Picture: /tmp/c1-1.png']);
  });

  describe('a card that was shown before and is changed', () => {
    const to = { kind: 'desk', caseId: 'c1' } as const;
    const take = [{ id: 'take', label: 'Take it' }];
    const close = [{ id: 'close', label: 'Close it' }];
    const changed = (before: typeof take | null, choices = take) =>
      layOutMessage(message({ to, edit: 2, text: 'Case c1\nlong', choices }), 80, null, plain, before).text;

    test('is only said to be changed', () => {
      expect(changed(take)).toBe('desk c1 | (card changed)');
    });

    test('shows its choices where they are others now, as their numbers count', () => {
      expect(changed(take, close)).toBe('desk c1 | (card changed)\ndesk c1 | #1  Close it');
    });

    test('is shown whole where the first was shown by an earlier start', () => {
      expect(changed(null)).toContain('Case c1\ndesk c1 | long');
    });
  });

  test('never lets what a person typed steer the terminal', () => {
    const { text } = layOut({
      text: 'a\u001b[2Jb\u009b31mc\u0007\rd',
      choices: [{ id: 'x', label: '\u001b]0;t\u0007' }],
    });
    expect(text).toBe(stripVTControlCharacters(text));
    expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
  });

  test('keeps within the columns of the terminal, and within 80 of a wider one', () => {
    const texts = fc.string({ unit: 'grapheme', maxLength: 400 });
    fc.assert(
      fc.property(texts, fc.integer({ min: 30, max: 200 }), (text, columns) => {
        const laid = layOut({ text, choices: [{ id: 'a', label: text }] }, columns);
        for (const line of laid.text.split('\n'))
          expect(widthOf(line)).toBeLessThanOrEqual(Math.min(columns, 80));
      }),
    );
  });
});

describe('wrapping', () => {
  test.each([
    ['one two three', 7, ['one two', 'three']],
    ['one two three', 80, ['one two three']],
    ['abcdefghij', 4, ['abcd', 'efgh', 'ij']],
    ['go abcdefghij on', 4, ['go', 'abcd', 'efgh', 'ij', 'on']],
    ['', 10, ['']],
    ['  - item one two', 10, ['  - item', '  one two']],
    ['多字的一行', 4, ['多字', '的一', '行']],
  ])('%j in %d columns', (line, room, lines) => {
    expect(wrap(line, room)).toEqual(lines);
  });

  test('loses no word and adds none', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-z]{1,12}$/)),
        fc.integer({ min: 12, max: 60 }),
        (words, room) => {
          expect(wrap(words.join(' '), room).join(' ').split(' ').filter(Boolean)).toEqual(words);
        },
      ),
    );
  });
});
