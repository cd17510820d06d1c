// What a person types at the console: as the owner, or from the desk's seat.
import { describe, expect, test } from 'vitest';
import { decodeTyped, type Offer } from '../../../adapters/console/decode-typed.ts';

const choices = [
  { id: 'done', label: 'Done' },
  { id: 'help', label: 'Help' },
];
const offers = new Map<string, Offer>([
  ['owner', { messageId: 'm1', choices, figureAsked: false }],
  ['desk c1', { messageId: 'm2', choices: [{ id: 'take', label: 'Take' }], figureAsked: false }],
]);
const asking = new Map<string, Offer>([['owner', { messageId: 'm1', choices, figureAsked: true }]]);

describe('a typed line', () => {
  test.each([
    ['0.348', offers, 'owner', null, { kind: 'text', text: '0.348' }],
    ['1', offers, 'owner', null, { kind: 'choice', choice: 'done', of: 'm1' }],
    ['#2', offers, 'owner', null, { kind: 'choice', choice: 'help', of: 'm1' }],
    ['3', offers, 'owner', null, { kind: 'text', text: '3' }],
    ['1', asking, 'owner', null, { kind: 'text', text: '1' }],
    ['#1', asking, 'owner', null, { kind: 'choice', choice: 'done', of: 'm1' }],
    ['1', new Map(), 'owner', null, { kind: 'text', text: '1' }],
    ['desk: who waits?', offers, 'staff', null, { kind: 'text', text: 'who waits?' }],
    ['desk c1: 1', offers, 'staff', 'c1', { kind: 'choice', choice: 'take', of: 'm2' }],
    ['Desk C9:hello', offers, 'staff', 'C9', { kind: 'text', text: 'hello' }],
    ['the desk: is it open?', offers, 'owner', null, { kind: 'text', text: 'the desk: is it open?' }],
    [
      'picture: /tmp/plug.jpg',
      offers,
      'owner',
      null,
      { kind: 'picture', picture: '/tmp/plug.jpg', caption: '' },
    ],
  ])('%j', (line, known, role, caseId, body) => {
    const { message, unknownChoice } = decodeTyped(line, known, 'de');
    expect(unknownChoice).toBe(false);
    expect(message).toMatchObject({ role, caseId, body, locale: 'de', platform: 'console' });
  });

  test('a marked number that is not on offer is not sent at all', () => {
    expect(decodeTyped('#7', offers, null).unknownChoice).toBe(true);
    expect(decodeTyped('desk c2: #1', offers, null).unknownChoice).toBe(true);
  });
});
