// An owner who is not understood several times in a row: told what is wanted, then offered a person, and never passed on by it.
import { expect, test } from 'vitest';
import { benchDecide } from './bench-content.ts';
import { Play } from './play.ts';
import { benchFigures, walk } from './ready-owner.ts';

const decide = await benchDecide();

function atSupply(): Play {
  const play = new Play(decide);
  play.start('rider', 'throttle-sensor', 'bench-single');
  play.choose('rider', 'runs-badly');
  walk(play, 'rider', benchFigures, ({ facts }) => facts.stage === 'supply' && facts.ask?.kind === 'reading');
  return play;
}

const textOf = (play: Play, typed: string) => play.text('rider', typed).at(-1)?.text ?? '';
const wanted = 'Only the number on the meter';
const offered = 'type person';

test('once says why, twice what is wanted, three times that a person can look at it', () => {
  const play = atSupply();
  const [once, twice, thrice] = ['purple', 'still purple', 'so purple'].map((typed) => textOf(play, typed));
  expect(once).not.toContain(wanted);
  expect(twice).toContain(wanted);
  expect(twice).not.toContain(offered);
  expect(thrice).toContain(offered);
  expect(play.stateOf('rider')?.setUp?.stage).toBe('supply');
});

test('an answer that is understood in between ends the row', () => {
  const play = atSupply();
  textOf(play, 'purple');
  textOf(play, 'help');
  expect(textOf(play, 'purple')).not.toContain(wanted);
});
