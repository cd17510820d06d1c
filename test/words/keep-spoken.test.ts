// What a stored message keeps of its fill-ins: all that its words say, and nothing else.
import { expect, test } from 'vitest';
import { keepSpoken, variablesOf } from '../../src/words/keep-spoken.ts';
import { render } from '../../src/words/render.ts';
import { prepareWording } from '../../src/words/wording.ts';

const wording = prepareWording('en', {
  en: {
    'a.ftl': `
plain = Hands off.
wire = { $colour } wire
lead = Red on the { $signal }.
turns = { $amount ->
    [1] one turn
   *[other] { $amount } turns
 }
move = In, { turns }, { $where }.
digits = { NUMBER($value) } V
attribute-free = { $left ->
    [yes] { $inner }
   *[no] nothing
 }
`,
  },
});
const all = {
  signal: { key: 'wire', with: { colour: 'grey', stripe: 'green' } },
  amount: 2,
  where: 'on the left',
  seconds: 15,
};

test.each([
  ['plain', []],
  ['lead', ['signal']],
  ['turns', ['amount']],
  ['move', ['amount', 'where']],
  ['digits', ['value']],
  ['attribute-free', ['inner', 'left']],
])('the words of "%s" are filled in with %j', (key, variables) => {
  expect([...variablesOf(key, wording)].sort()).toEqual(variables);
});

test('lines say the same without what their words pass over, lines within lines too', () => {
  const lines = ['plain', 'lead', 'move'].map((key) => ({ key, with: all }));
  const kept = keepSpoken(lines, wording);
  expect(kept).toEqual([
    { key: 'plain' },
    { key: 'lead', with: { signal: { key: 'wire', with: { colour: 'grey' } } } },
    { key: 'move', with: { amount: 2, where: 'on the left' } },
  ]);
  expect(render(kept, wording)).toBe(render(lines, wording));
});
