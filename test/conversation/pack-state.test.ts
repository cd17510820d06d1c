// The stored form gives back the very state it was made of, at every message of a set-up and whatever came before.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packState, unpackState } from '../../src/conversation/pack-state.ts';
import { type Conversation, newConversation, newSetUp } from '../../src/conversation/state.ts';
import { benchDecide } from './bench-content.ts';
import { everyStage } from './every-stage.ts';

const owner = { platform: 'console', person: 'rider', chat: 'rider', name: null };
const again = (state: Conversation) => unpackState(JSON.parse(JSON.stringify(packState(state))));

test('every state of a whole set-up comes back as it was', async () => {
  for (const { play } of everyStage(await benchDecide())) {
    const state = play.stateOf('rider')!;
    expect(again(state)).toEqual(state);
  }
});

const id = fc.constantFrom('place', 'battery', 'baseline', 'idle-stop', 'snap', 'cover', 'map');
const key = fc.constantFrom(
  'supply-voltage',
  'signal-idle@static',
  'signal-idle@warm',
  'signal-snapped@static',
);
const volts = fc.double({ min: 0, max: 5, noNaN: true }).map((value) => Number(value.toFixed(3)));
const kept = fc.record({
  value: volts,
  resolution: fc.constantFrom(0.001, 0.01),
  result: fc.constantFrom('pass' as const, 'out' as const, 'accepted' as const),
  low: fc.option(volts),
  high: fc.option(volts),
  at: fc.nat(200),
});
const weights = fc.dictionary(
  fc.constantFrom('tight-cable', 'sensor-mis-set+air-leak', 'nothing-wrong'),
  fc.integer(),
);

test('so does any other', () => {
  const any = fc.record({
    been: fc.array(id, { maxLength: 80 }),
    passed: fc.dictionary(id, fc.constantFrom('passed' as const, 'noted' as const, 'accepted' as const)),
    readings: fc.dictionary(key, kept),
    first: fc.dictionary(key, kept),
    evidence: weights,
    detour: fc.option(weights),
    held: fc.boolean(),
    supply: fc.option(volts),
  });
  fc.assert(
    fc.property(any, ({ first, detour, ...own }) => {
      const setUp = Object.assign(newSetUp('A', 'h', 'p', 'm', 's', 1), own, {
        // A first reading is there for each that has a latest one.
        found: { ...own.readings, ...first },
        oddity: detour && {
          weights: detour,
          done: ['read-again'],
          seen: { kind: 'none' as const },
          under: { kind: 'stage' as const },
          retakes: 0,
          settled: false,
        },
      });
      const state: Conversation = { ...newConversation(owner, 'en'), setUp };
      expect(again(state)).toEqual(JSON.parse(JSON.stringify(state)));
    }),
  );
});
