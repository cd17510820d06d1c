// Which language an owner is answered in: the one their platform reports, and the last one reported where a message comes without.
import { expect, test } from 'vitest';
import { Play, shippedDecide } from './play.ts';

const decide = await shippedDecide();

test('a text that comes without a language is answered in the one that the press before came with', () => {
  const play = new Play(decide);
  const [hello] = play.text('anna', 'hello');
  expect(hello?.text).toContain('Which machine is it?');
  play.choose('anna', 'fenmoor-450', null, { locale: 'de' });
  const [asked] = play.text('anna', 'hm');
  expect(asked?.text).toContain('Was stimmt nicht');
});

test('a language of another region, and one that has no words here', () => {
  const play = new Play(decide);
  expect(play.text('ana', 'oi', { locale: 'pt-BR' })[0]?.text).toContain('Qual');
  expect(play.text('aino', 'hei', { locale: 'fi' })[0]?.text).toContain('Which machine is it?');
});

test('whoever changes the language of their platform is answered in the new one', () => {
  const play = new Play(decide);
  play.text('eve', 'salut', { locale: 'fr' });
  expect(play.text('eve', 'hi', { locale: 'en-GB' })[0]?.text).toContain('Which machine is it?');
});
