// A button's words typed out, in the languages that people write on a phone: capitals, accents and a full stop make no difference.
import { expect, test } from 'vitest';
import { Play, shippedDecide } from './play.ts';

const decide = await shippedDecide();

/** Opens a set-up in this language; the first question is what is wrong with how it runs. */
function atComplaint(locale: string): Play {
  const play = new Play(decide);
  play.text('rider', 'x', {
    locale,
    body: { kind: 'start', procedure: 'throttle-sensor', machine: 'fenmoor-450' },
  });
  return play;
}

test.each(['en', 'de', 'es', 'fr', 'it', 'pt'])('in %s every button of a question can be typed', (locale) => {
  const offered = atComplaint(locale).said.at(-1)?.choices ?? [];
  expect(offered).toHaveLength(5);
  for (const { id, label } of offered) {
    for (const typed of [
      label,
      `${label.toUpperCase()}.`,
      label.normalize('NFD').replace(/\p{M}/gu, ''),
      `  ${label}!`,
    ]) {
      const play = atComplaint(locale);
      play.text('rider', typed, { locale });
      expect(play.stateOf('rider')?.setUp?.answers.complaint, typed).toBe(id);
    }
  }
});

test('what is on no button presses none', () => {
  const play = atComplaint('en');
  for (const typed of ['badly', 'runs badly and worse', 'none of them all', '.', '"']) {
    play.text('rider', typed, { locale: 'en' });
    expect(play.stateOf('rider')?.setUp?.answers.complaint, typed).toBeUndefined();
  }
});

test('the words of an earlier message press nothing', () => {
  const play = atComplaint('en');
  play.text('rider', 'runs badly', { locale: 'en' });
  play.text('rider', 'bad idle', { locale: 'en' });
  expect(play.stateOf('rider')?.setUp?.answers.complaint).toBe('runs-badly');
});

test('"erase it" erases, as the button does', () => {
  const play = atComplaint('en');
  play.text('rider', 'erase me');
  play.text('rider', 'Erase it.');
  expect(play.stateOf('rider')).toBeNull();
});

test.each([
  ['en', 'nope', 'none'],
  ['en', 'yep', 'fitted'],
  ['de', 'nee', 'none'],
  ['it', 'sì', 'fitted'],
])('in %s "%s" presses the button that means it', (locale, typed, choice) => {
  const play = atComplaint(locale);
  const asks = () => play.said.at(-1)?.facts.ask;
  for (let step = 0; step < 12; step += 1) {
    const ask = asks();
    if (ask?.kind === 'choice' && ask.question === 'signal-box') break;
    play.choose('rider', play.said.at(-1)?.choices[0]?.id ?? 'done', null, { locale });
  }
  expect(asks()).toMatchObject({ question: 'signal-box' });
  play.text('rider', typed, { locale });
  expect(play.stateOf('rider')?.setUp?.answers['signal-box']).toBe(choice);
});
