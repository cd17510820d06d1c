// No engine is started before everything is confirmed that must hold, item by item, whatever way the owner takes there.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Stage } from '../../src/procedure/procedure.ts';
import { benchDecide } from './bench-content.ts';
import { brokenRules } from './message-rules.ts';
import { Play, type Said } from './play.ts';
import { answer, benchFigures, latestAsk, walk } from './ready-owner.ts';

/** What a good technician makes sure of first (common practice, no source), by the stages that ask for it. */
const list = [
  'asleep',
  'leads-out',
  'refitted',
  'latched',
  'snaps-shut',
  'outdoors',
  'kill-switch',
  'people-clear',
];

const decide = await benchDecide();
const who = 'rider';
const figures = { ...benchFigures, complaint: 'runs-badly' };

/** Each thing the owner does, and what was asked of them just before. */
interface Moment {
  asked: Said | undefined;
  confirmed: boolean;
  said: Said[];
}

const detours = [
  'back',
  'repeat',
  'help',
  'pause',
  'no',
  '0.00',
  '0.9',
  '4.5',
  'purple',
  'press done',
  'press an old done',
  'start link',
] as const;
const moves = fc.array(
  fc.oneof(
    { weight: 12, arbitrary: fc.constant('answer' as const) },
    { weight: 3, arbitrary: fc.constantFrom(...detours) },
  ),
  { minLength: 10, maxLength: 70 },
);

function act(play: Play, move: 'answer' | (typeof detours)[number]): Moment {
  const asked = latestAsk(play, who);
  const moment = (said: Said[], confirmed: boolean): Moment => ({ asked, said, confirmed });
  const confirms = asked?.facts.ask?.kind === 'confirm' && !asked.facts.cautions;
  if (move === 'answer') return moment((asked && answer(play, who, asked, figures)) ?? [], confirms);
  if (move === 'press done') return moment(play.choose(who, 'done'), confirms);
  if (move === 'press an old done') return moment(play.choose(who, 'done', 'c1-3'), asked?.id === 'c1-3');
  if (move === 'start link') return moment(play.start(who, 'throttle-sensor', 'bench-single'), false);
  return moment(play.text(who, move), false);
}

const starts = ({ said }: Moment) =>
  said.some(({ to, facts }) => to === who && facts.do?.includes('start-engine') === true);

/** Items confirmed since the leads were last moved or the sensor last freed. */
function confirmedBy(moments: readonly Moment[]): Set<string> {
  const confirmed = new Set<string>();
  for (const { asked, confirmed: yes, said } of moments) {
    const stage = asked?.facts.stage;
    if (yes && stage !== undefined && said.some(({ facts }) => facts.stage !== stage || facts.cautions))
      confirmed.add(stage);
    if (said.some(({ facts }) => facts.do?.some((one) => /^(probe|loosen)/.test(one)))) confirmed.clear();
  }
  return confirmed;
}

function fromStage(stage: string): Play {
  const play = new Play(decide);
  play.start(who, 'throttle-sensor', 'bench-single');
  walk(play, who, figures, ({ facts }) => facts.stage === stage && facts.ask !== undefined);
  return play;
}

test('in good order the engine is started after the whole list', () => {
  const play = fromStage('jumps');
  const moments: Moment[] = [];
  while (!moments.some(starts)) moments.push(act(play, 'answer'));
  expect([...confirmedBy(moments)].filter((stage) => list.includes(stage))).toEqual(list);
});

test.each(['jumps', 'asleep', 'outdoors', 'release-again'])('from %s on, by any way round', (stage) => {
  let started = 0;
  fc.assert(
    fc.property(moves, (ways) => {
      const play = fromStage(stage);
      // What lay before counts as far as it was confirmed there.
      const moments: Moment[] = list.slice(0, Math.max(0, list.indexOf(stage))).map((id) => ({
        asked: { facts: { stage: id } } as Said,
        confirmed: true,
        said: [{ facts: { stage } } as Said],
      }));
      for (const way of ways) {
        if (play.records.length > 0) break;
        const moment = act(play, way);
        moments.push(moment);
        expect(moment.said.flatMap(brokenRules)).toEqual([]);
        if (!starts(moment)) continue;
        started += 1;
        const confirmed = confirmedBy(moments);
        expect(list.filter((item) => !confirmed.has(item))).toEqual([]);
      }
    }),
    { numRuns: 150, seed: 5 },
  );
  expect(started).toBeGreaterThan(20);
});

// `check` refuses such content; whatever got past it does not get past this.
test.each<[string, (jumps: Stage) => void]>([
  [
    'an answer',
    ({ ask }) => {
      if (ask && 'question' in ask && ask.answers[0]) ask.answers[0].outcome = { go: 'start' };
    },
  ],
  [
    'the stage before it',
    (jumps) => {
      jumps.next = 'start';
    },
  ],
])('a procedure in which %s jumps over the list runs through it all the same', async (_, bend) => {
  const jumping = await benchDecide(undefined, ({ procedures }) => {
    const jumps = procedures['throttle-sensor']?.stages.find(({ id }) => id === 'jumps');
    if (!jumps) throw new Error('the procedure no longer has that stage');
    bend(jumps);
  });
  const play = new Play(jumping);
  play.start(who, 'throttle-sensor', 'bench-single');
  walk(play, who, figures, ({ facts }) => facts.stage === 'jumps');
  const said = play.choose(who, 'smooth');
  expect(said.at(-1)?.facts).toMatchObject({ stage: 'asleep', do: ['sleep'] });
});
