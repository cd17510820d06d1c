// Whatever a person types or presses: nothing breaks, nothing unread passes, the state stays small, and the same again gives the same.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { benchDecide } from './bench-content.ts';
import { everyStage } from './every-stage.ts';
import { brokenRules } from './message-rules.ts';
import { Play, type Said } from './play.ts';
import { answer, benchFigures, latestAsk, type Shows } from './ready-owner.ts';

const decide = await benchDecide();
const who = 'rider';
/** Four kilobytes after two hundred messages: performance goal G3. */
const largest = 4096;
/** A case beside it: its history and the owner's own words, as far as they are kept without staff's notes. */
const caseAtMost = 1536;
/** A detour under way weighs every cause a second time. */
const detourAtMost = 1024;
type Input =
  | { kind: 'answer' }
  | { kind: 'text'; text: string }
  | { kind: 'press'; at: number }
  | { kind: 'wait'; minutes: number };

const typed = fc.oneof(
  fc.string({ maxLength: 40 }),
  fc.string({ unit: 'grapheme', maxLength: 20 }),
  fc.double({ min: -20, max: 20, noNaN: true }).map((value) => `${value.toFixed(3)} V`),
  fc.double({ min: 0.2, max: 0.9, noNaN: true }).map((value) => value.toFixed(3)),
  fc.integer({ min: 0, max: 5000 }).map(String),
  fc.constantFrom(
    'OL',
    'nothing',
    'done',
    'yes',
    'no',
    'back',
    'repeat',
    'help',
    'pause',
    'jumps between .34 and .36',
    '0,4',
    '1 2 3 4 5 6 7 8 9',
  ),
);
const input: fc.Arbitrary<Input> = fc.oneof(
  { weight: 8, arbitrary: fc.constant<Input>({ kind: 'answer' }) },
  { weight: 4, arbitrary: typed.map((text): Input => ({ kind: 'text', text })) },
  { weight: 2, arbitrary: fc.nat(5).map((at): Input => ({ kind: 'press', at })) },
  {
    weight: 1,
    arbitrary: fc.integer({ min: 1, max: 90 }).map((minutes): Input => ({ kind: 'wait', minutes })),
  },
);

function give(play: Play, one: Input, shows: Shows): Said[] {
  const asked = latestAsk(play, who);
  if (one.kind === 'text') return play.text(who, one.text);
  if (one.kind === 'wait') return play.advance(one.minutes * 60_000);
  if (one.kind === 'press')
    return play.choose(who, asked?.choices[one.at % Math.max(1, asked.choices.length)]?.id ?? 'done');
  if (!asked) return play.text(who, 'hello');
  return answer(play, who, asked, shows) ?? [];
}

const figures = { ...benchFigures, complaint: 'runs-badly', machine: 'bench-single' };

function chat(inputs: readonly Input[]): Play {
  const play = new Play(decide);
  play.start(who, 'throttle-sensor', 'bench-single');
  for (const one of inputs) give(play, one, figures);
  return play;
}

test('every message keeps the rules, and every pass is on a number that was sent', () => {
  fc.assert(
    fc.property(fc.array(input, { maxLength: 90 }), (inputs) => {
      const play = new Play(decide);
      play.start(who, 'throttle-sensor', 'bench-single');
      let heard: number | null = null;
      for (const one of inputs) {
        const said = give(play, one, figures);
        expect(said.flatMap(brokenRules)).toEqual([]);
        for (const { facts } of said.filter(({ to }) => to === who)) {
          if (facts.verdict?.result !== 'pass' || one.kind === 'press') continue;
          // A yes to what was heard may come as a word; a series has no value of its own.
          const value = facts.verdict.value ?? null;
          if (one.kind === 'text' && heard === null && value !== null) {
            const digits = one.text.replaceAll(',', '.').match(/\d*\.?\d+/g) ?? [];
            expect(
              digits.map(Number).some((number) => near(number, value) || near(number / 1000, value)),
            ).toBe(true);
          }
        }
        heard = latestAsk(play, who)?.facts.heard?.value ?? null;
      }
    }),
    { numRuns: 150, seed: 3 },
  );
});

const near = (a: number, b: number) => Math.abs(a - b) < 1e-9;

test('the same input gives the same output, over any restarts between', () => {
  fc.assert(
    fc.property(fc.array(input, { maxLength: 60 }), (inputs) => {
      // The player keeps every state as text, as a restart would find it.
      expect(JSON.stringify(chat(inputs).said)).toBe(JSON.stringify(chat(inputs).said));
    }),
    { numRuns: 40, seed: 7 },
  );
});

test('after two hundred messages the state is still small', () => {
  let biggest = 0;
  fc.assert(
    fc.property(fc.array(input, { minLength: 200, maxLength: 200 }), (inputs) => {
      const play = chat(inputs);
      const open = play.stateOf(who)?.case != null;
      biggest = Math.max(biggest, play.bytesOf(who));
      expect(play.bytesOf(who)).toBeLessThanOrEqual(largest + detourAtMost + (open ? caseAtMost : 0));
    }),
    { numRuns: 25, seed: 11 },
  );
  expect(biggest).toBeGreaterThan(500);
});

test('in good order no state of a whole set-up is larger either', () => {
  const sizes = [...everyStage(decide)].map(({ play }) => play.bytesOf('rider'));
  expect(Math.max(...sizes)).toBeLessThanOrEqual(largest);
});
