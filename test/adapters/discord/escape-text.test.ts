// What a person typed shows on Discord as it was typed.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { escapeText } from '../../../adapters/discord/escape-text.ts';
import { nonceOf } from '../../../adapters/discord/nonce.ts';

// Discord, "Message formatting" and the markdown guide of its help pages.
test.each([
  { typed: '0.348 V, right. -0.02?', shown: '0.348 V, right. -0.02?' },
  {
    typed: '**bold** _it_ ~~no~~ `code` ||hidden||',
    shown: '\\*\\*bold\\*\\* \\_it\\_ \\~\\~no\\~\\~ \\`code\\` \\|\\|hidden\\|\\|',
  },
  {
    typed: '# big\n> said\n- one\n1. two\n-# small',
    shown: '\\# big\n\\> said\n\\- one\n1\\. two\n\\-# small',
  },
  { typed: '<@42> <#7> </begin:1> <:x:1> <t:1>', shown: '\\<@42> \\<#7> \\</begin:1> \\<:x:1> \\<t:1>' },
  { typed: '[here](https://example.org) [0.1]', shown: '\\[here](https://example.org) [0.1]' },
  { typed: '@everyone and @here', shown: '@\u2060everyone and @\u2060here' },
  { typed: 'a\\b', shown: 'a\\\\b' },
])('"$typed" is sent as "$shown"', ({ typed, shown }) => {
  expect(escapeText(typed)).toBe(shown);
});

test('the mark of a part has at most 25 characters, and differs with each thing it is made of', () => {
  fc.assert(
    fc.property(
      fc.array(fc.string(), { minLength: 1 }),
      fc.array(fc.string(), { minLength: 1 }),
      (one, other) => {
        expect(nonceOf(...one)).toMatch(/^[\w-]{25}$/);
        expect(nonceOf(...one) === nonceOf(...other)).toBe(JSON.stringify(one) === JSON.stringify(other));
      },
    ),
  );
});
