// What an owner sends as a count of turns or clicks, held against what a hand can count.
import { describe, expect, test } from 'vitest';
import { benchDecide } from './bench-content.ts';
import { Play } from './play.ts';
import { benchFigures, walk } from './ready-owner.ts';

const decide = await benchDecide();

function at(stage: string): Play {
  const play = new Play(decide);
  play.start('rider', 'throttle-sensor', 'bench-single');
  play.choose('rider', 'runs-badly');
  walk(play, 'rider', benchFigures, ({ facts }) => facts.stage === stage && facts.ask?.kind === 'count');
  return play;
}

const counted = (play: Play, part: string) => play.stateOf('rider')?.setUp?.counts[part] ?? null;

describe('turns of the idle stop', () => {
  test.each([
    ['2', 2],
    ['2.5', 2.5],
    ['2,5', 2.5],
    ['2 1/2', 2.5],
    ['2½', 2.5],
    ['.5', 0.5],
    ['about 3 turns', 3],
    ['1.75 turns', 1.75],
    ['two and a half', 2.5],
    ['one turn and a quarter', 1.25],
    ['eleven clicks', null],
    ['0', 0],
    // A voltage, a slip, or more than a thread has.
    ['0.712', null],
    ['back to .35', null],
    ['712', null],
    ['2 or 3', null],
    ['a few', null],
    ['1/0', null],
  ])('"%s" is counted as %s', (typed, count) => {
    const play = at('stop-off');
    const said = play.text('rider', typed);
    expect(counted(play, 'idle-stop')).toBe(count);
    expect(said.at(-1)?.facts.stage).toBe(count === null ? 'stop-off' : 'baseline');
  });
});

test.each([
  ['11', 11],
  ['11 clicks', 11],
  ['eleven', 11],
  ['two and a half', null],
  // Counted elsewhere.
  ['two turns', null],
  ['backed out 2 turns', null],
  ['2.5', null],
  ['.35', null],
])('"%s" is counted as %s clicks', (typed, count) => {
  const play = at('knob-off');
  play.text('rider', typed);
  expect(counted(play, 'fast-idle')).toBe(count);
});
