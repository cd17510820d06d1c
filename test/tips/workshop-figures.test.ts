// Holds what `report` says of a workshop's numbers against figures worked out by hand.
import { expect, test } from 'vitest';
import { causesByMonth, timeByStage, whereOwnersStop } from '../../src/tips/workshop-figures.ts';

const stages = ['supply', 'baseline', 'idle-stop'];
const minute = 60_000;

test('owners who stop are counted at their stage, and everyone who came as far as having reached it', () => {
  const ended = [
    { procedure: 'p', result: 'set', stage: 'idle-stop', readings: [] },
    { procedure: 'p', result: 'not-set', stage: 'baseline', readings: [] },
    { procedure: 'p', result: 'not-set', stage: 'baseline', readings: [] },
    { procedure: 'p', result: 'not-set', stage: 'supply', readings: [] },
  ];
  expect(whereOwnersStop(stages, ended)).toEqual([
    { stage: 'supply', reached: 4, stopped: 1 },
    { stage: 'baseline', reached: 3, stopped: 2 },
  ]);
});

test('the time of a stage runs to the first reading of the next, and a night in between does not count', () => {
  const one = (minutes: number[]) => ({
    procedure: 'p',
    result: 'set',
    stage: 'idle-stop',
    readings: [
      { stage: 'supply', at: 0 },
      { stage: 'baseline', at: minutes[0]! * minute },
      { stage: 'baseline', at: (minutes[0]! + 1) * minute },
      { stage: 'idle-stop', at: (minutes[0]! + minutes[1]!) * minute },
    ],
  });
  const rows = timeByStage(stages, [one([2, 5]), one([4, 7]), one([3, 600])]);
  expect(rows).toEqual([
    { stage: 'supply', quarter: 2.5, median: 3, threeQuarters: 3.5 },
    { stage: 'baseline', quarter: 5.5, median: 6, threeQuarters: 6.5 },
  ]);
});

test('causes are counted by the month they were found in, the commonest first', () => {
  const at = (text: string) => Date.parse(text);
  expect(
    causesByMonth([
      { cause: 'tight-cable', at: at('2026-01-10T10:00:00Z') },
      { cause: 'leads-swapped', at: at('2026-01-11T10:00:00Z') },
      { cause: 'tight-cable', at: at('2026-03-01T10:00:00Z') },
      { cause: null, at: at('2026-02-01T10:00:00Z') },
    ]),
  ).toEqual({
    months: ['2026-01', '2026-03'],
    rows: [
      { cause: 'tight-cable', counts: [1, 1] },
      { cause: 'leads-swapped', counts: [1, 0] },
    ],
  });
});
