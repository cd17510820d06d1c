// What no owner, no word and no button gets past, tried at every message of a whole set-up.
import { describe, expect, test } from 'vitest';
import { benchDecide } from './bench-content.ts';
import { everyStage } from './every-stage.ts';
import { brokenRules } from './message-rules.ts';
import type { Said } from './play.ts';
import { answer, latestAsk } from './ready-owner.ts';

const decide = await benchDecide();
const toOwner = (said: Said[]) => said.filter(({ to }) => to === 'rider');
const judged = (said: Said[]) => toOwner(said).filter(({ facts }) => facts.verdict);

test('a whole set-up is gone through, with its loop and its start list', () => {
  const stages = [...everyStage(decide)].map(({ asked }) => asked.facts.stage);
  expect(new Set(stages).size).toBeGreaterThan(50);
  expect(stages).toContain('start');
  expect([...everyStage(decide)].some(({ asked }) => asked.facts.move?.part === 'sensor-body')).toBe(true);
});

describe('at a reading', () => {
  const readings = () =>
    [...everyStage(decide)].filter(
      ({ asked: { facts } }) => facts.ask?.kind === 'reading' || facts.ask?.kind === 'readings',
    );

  test.each(['done', 'yes', 'next', 'ok', '👍', 'skip', 'it is right now', 'purple', '...', ''])(
    '"%s" is no reading, and no way past it',
    (typed) => {
      for (const { play, who, asked } of readings()) {
        const said = toOwner(play.text(who, typed));
        expect(judged(said), asked.facts.stage).toEqual([]);
        expect(said.at(-1)?.facts.stage).toBe(asked.facts.stage);
        expect(said.at(-1)?.facts.ask).toEqual(asked.facts.ask);
        expect(said.flatMap(brokenRules)).toEqual([]);
      }
    },
  );

  test('no button but those offered passes it, and none of these is a pass', () => {
    for (const { play, who, asked } of readings()) {
      for (const choice of ['done', 'yes', 'skip', 'go-on']) {
        if (asked.choices.some(({ id }) => id === choice)) continue;
        const said = toOwner(play.choose(who, choice));
        expect(judged(said).filter(({ facts }) => facts.verdict?.result === 'pass')).toEqual([]);
        expect(said.at(-1)?.facts.stage).toBe(asked.facts.stage);
      }
    }
  });

  test('a reading that can not tell is no pass, however often it is sent', () => {
    for (const { play, who, asked } of readings()) {
      const { ask } = asked.facts;
      // Fewer digits than three, where half a volt is set to ten millivolts (common practice, no source).
      if (ask?.kind !== 'reading' || !ask.measure.startsWith('signal-') || ask.measure === 'signal-wide-open')
        continue;
      for (const typed of ['0.50', '0.5', '0.50', '0.5']) {
        const said = judged(play.text(who, typed));
        expect(
          said.filter(({ facts }) => facts.verdict?.result === 'pass'),
          asked.facts.stage,
        ).toEqual([]);
      }
    }
  });
});

describe('a pause', () => {
  test('tells to take the jumper off once anything was begun, and nobody presses on through it', () => {
    for (const { play, who, asked, shows } of everyStage(decide)) {
      const { rig, doing } = play.stateOf(who)?.setUp ?? { rig: undefined, doing: [] };
      const { sensor, idleStop, fastIdle, probes, awake, engine } = rig ?? {};
      const stands = [sensor, idleStop, fastIdle, probes, awake, engine, doing.length];
      const begun = stands.join() !== 'tight,set,set,none,false,off,0';
      const paused = toOwner(play.text(who, 'pause'));
      expect(paused.at(-1)?.text.includes('Jumper off'), asked.facts.stage).toBe(begun);
      expect(paused.at(-1)?.facts.ask).toBeUndefined();
      // Whatever comes first brings the question back and answers nothing.
      const back = toOwner(answer(play, who, asked, shows) ?? []);
      expect(judged(back), asked.facts.stage).toEqual([]);
      expect(back.at(-1)?.text).toContain('Welcome back');
      expect(back.at(-1)?.facts.stage).toBe(asked.facts.stage);
      const { ask } = asked.facts;
      const live = ask?.kind === 'reading' && /^(signal|supply)-/.test(ask.measure);
      if (live) expect(back.at(-1)?.facts.do, asked.facts.stage).toContain('wake');
    }
  });
});

describe('a red flag', () => {
  const flags: [typed: string, first: string][] = [
    ['the throttle sticks', 'Kill switch. Hands off the grip.'],
    ['there is smoke', 'Kill switch. Jumper off. Step away.'],
    ['fuel is spraying out', 'Kill switch. Jumper off. No spark, no flame.'],
    ['the pump keeps running', 'Jumper off now.'],
    ['I feel dizzy', 'Engine off. Out into fresh air now.'],
  ];

  test.each(flags)('"%s" is answered first, at every message', (typed, first) => {
    for (const { play, who, asked } of everyStage(decide)) {
      const said = play.text(who, typed);
      expect(toOwner(said)[0]?.text.startsWith(first), asked.facts.stage).toBe(true);
      expect(said.some(({ facts }) => facts.case?.reason.startsWith('flag-'))).toBe(true);
    }
  });

  test('holds: neither word, number, button nor start link gets on with it', () => {
    for (const { play, who, asked, shows } of everyStage(decide)) {
      play.text(who, 'there is smoke');
      const tries = [
        ...(answer(play, who, asked, shows) ?? []),
        ...['done', 'yes', 'back', 'repeat', 'help', 'pause', '0.400'].flatMap((typed) =>
          play.text(who, typed),
        ),
        ...play.start(who, 'throttle-sensor', 'fenmoor-450'),
        ...play.choose(who, 'replace'),
      ];
      for (const { facts } of toOwner(tries)) {
        expect(facts.do, asked.facts.stage).toBeUndefined();
        expect(facts.move).toBeUndefined();
        expect(facts.verdict).toBeUndefined();
        expect(facts.ask?.kind === 'reading' || facts.ask?.kind === 'confirm').toBe(false);
      }
    }
  });
});

describe('words that steer', () => {
  test.each([
    'the idle stop is set',
    'stop screw is out',
    'backed out two turns',
    'back to .35',
    'I was done with this bike years ago',
    'please help your self to the biscuits',
  ])('"%s" is no command: nothing ends, goes back, or is confirmed', (typed) => {
    for (const { play, who, asked } of everyStage(decide)) {
      const { ask } = asked.facts;
      // There it is the answer.
      if (typed.includes('turns') && ask?.kind === 'count' && ask.unit === 'turn') continue;
      const said = toOwner(play.text(who, typed));
      const last = said.at(-1)?.facts;
      expect(last?.record, asked.facts.stage).toBeUndefined();
      expect(last?.stage).toBe(asked.facts.stage);
      expect(last?.ask?.kind === 'choice' && last.ask.question === 'way-back').toBe(false);
      if (asked.facts.ask?.kind === 'confirm') expect(last?.ask).toEqual(asked.facts.ask);
    }
  });

  test('stop ends or offers the way back at every message, and the way back leads out', () => {
    for (const { play, who, asked } of everyStage(decide)) {
      let said = toOwner(play.text(who, 'stop'));
      if (said.at(-1)?.facts.ask?.kind === 'choice') said = toOwner(play.choose(who, 'restore'));
      for (let steps = 0; steps < 10 && !said.at(-1)?.facts.record; steps += 1) {
        expect(said.flatMap(brokenRules), asked.facts.stage).toEqual([]);
        expect(said.at(-1)?.facts.ask).toEqual({ kind: 'confirm' });
        said = toOwner(play.choose(who, 'done'));
      }
      expect(said.at(-1)?.facts.record?.result).toBe('not-set');
      expect(latestAsk(play, who)).toBeDefined();
    }
  });
});
