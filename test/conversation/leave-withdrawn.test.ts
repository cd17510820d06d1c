// A procedure that a workshop withdraws as wrong while set-ups are open in it: they go on in the right one at the same stage, or at the desk.
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { makeKnowledge } from '../../src/commands/make-knowledge.ts';
import { makeDecide } from '../../src/inbox/decide.ts';
import { loadContent } from '../../src/library/load-content.ts';
import type { Decide } from '../../src/store/store.ts';
import { Play, type Said } from './play.ts';
import { shippedFigures, walk } from './ready-owner.ts';

const folder = mkdtempSync(join(tmpdir(), 'gaugehand-withdrawn-'));
afterAll(() => rmSync(folder, { recursive: true }));
cpSync(join(import.meta.dirname, '..', '..', 'content'), folder, {
  recursive: true,
  filter: (path) => !/words.(?!en)[a-z]{2}$/.test(path),
});
rmSync(join(folder, 'tips'), { recursive: true });
const shelf = new Map<string, string>();

const path = (...names: string[]) => join(folder, ...names);
const change = (file: string, edit: (text: string) => string) =>
  writeFileSync(file, edit(readFileSync(file, 'utf8')));

async function decideOn(): Promise<Decide> {
  const { newest, problems } = await loadContent(folder);
  if (!newest) throw new Error(JSON.stringify(problems, null, 1));
  const { knowledge } = await makeKnowledge(newest, {
    put: async (hash, json) => void shelf.set(hash, json),
    get: async (hash) => shelf.get(hash),
    inUse: async () => [...shelf.keys()],
  });
  return makeDecide(knowledge);
}

const before = await decideOn();
const old = path('procedures', 'throttle-sensor.yaml');
// The right one asks about the knob before the map, and nothing about the tuning box.
writeFileSync(
  path('procedures', 'throttle-sensor-2.yaml'),
  readFileSync(old, 'utf8')
    .replace('id: throttle-sensor', 'id: throttle-sensor-2')
    .replace(/ {2}- id: signal-box\n[\s\S]*?(?= {2}- id: codes)/, ''),
);
writeFileSync(
  path('words', 'en', 'throttle-sensor-2.ftl'),
  readFileSync(path('words', 'en', 'throttle-sensor.ftl'), 'utf8').replaceAll(
    'throttle-sensor-',
    'throttle-sensor-2-',
  ),
);
for (const machine of readdirSync(path('machines'))) {
  change(path('machines', machine), (text) =>
    text.replace('procedures: [throttle-sensor]', 'procedures: [throttle-sensor, throttle-sensor-2]'),
  );
}
change(old, (text) =>
  text.replace('order: 1', 'order: 1\nwithdrawn: { instead: throttle-sensor-2, why: the map comes later }'),
);
const after = await decideOn();

function at(stage: string): Play {
  const play = new Play(before);
  play.start('rider', 'throttle-sensor', 'fenmoor-450');
  play.choose('rider', 'runs-badly');
  walk(
    play,
    'rider',
    shippedFigures,
    ({ facts }) => facts.stage === stage && !facts.cautions && facts.ask !== undefined,
  );
  play.startOn(after);
  return play;
}

const toOwner = (said: Said[]) => said.filter(({ to }) => to === 'rider');

test('at the next message it goes on at the same stage of the right one, and says why', () => {
  const play = at('baseline');
  const kept = play.stateOf('rider')?.setUp?.readings;
  const said = toOwner(play.text('rider', '0.620'));
  expect(said.at(-1)?.text).toMatch(
    /^The workshop has withdrawn this procedure: the map comes later\.\nWe go on with the right one\./,
  );
  expect(said.at(-1)?.facts).toMatchObject({ procedure: 'throttle-sensor-2', stage: 'baseline' });
  expect(said.at(-1)?.facts.ask).toMatchObject({ kind: 'reading', measure: 'signal-closed-stop' });
  // What was sent was for a stage that holds no more; what was read before stays.
  expect(play.stateOf('rider')?.setUp?.readings).toEqual(kept);
  expect(toOwner(play.text('rider', '0.620')).at(-1)?.facts.verdict?.value).toBe(0.62);
  expect(play.said.filter(({ text }) => text.includes('withdrawn'))).toHaveLength(1);
});

test('a red flag, a call for a person and giving up come first', () => {
  for (const typed of ['there is smoke', 'person', 'stop']) {
    const play = at('baseline');
    expect(
      play.text('rider', typed).some(({ text }) => text.includes('withdrawn')),
      typed,
    ).toBe(false);
  }
});

test('where the right one has no such stage, a person takes over, and the desk can only close it', () => {
  const play = at('signal-box');
  const said = play.choose('rider', 'none');
  expect(toOwner(said).at(-1)?.text).toContain('The workshop has withdrawn this procedure');
  const thread = said.findLast(({ case: id }) => id !== undefined);
  expect(thread?.facts.case).toMatchObject({ reason: 'procedure-withdrawn', state: 'waiting' });
  const seat = { role: 'staff' as const, name: 'Sam', caseId: thread?.case ?? null };
  play.choose('Sam', 'take', null, seat);
  expect(play.choose('Sam', 'give-back', null, seat).at(-1)?.text).toContain('Close the case');
  play.choose('Sam', 'close', null, seat);
  expect(play.records.at(-1)?.result).toBe('not-set');
});

test('whoever has the chat with a person goes on in the right one once it is given back', () => {
  const play = at('idle-stop');
  const called = play.text('rider', 'person');
  const seat = {
    role: 'staff' as const,
    name: 'Sam',
    caseId: called.findLast(({ case: id }) => id)?.case ?? null,
  };
  play.choose('Sam', 'take', null, seat);
  const said = toOwner(play.choose('Sam', 'give-back', null, seat));
  expect(said.at(-1)?.text).toContain('We go on with the right one.');
  expect(said.at(-1)?.facts).toMatchObject({ procedure: 'throttle-sensor-2', stage: 'idle-stop' });
});

test('a new set-up begins in the right one', () => {
  const play = new Play(after);
  expect(
    play
      .text('rider', 'hello')
      .at(-1)
      ?.choices.map(({ id }) => id),
  ).toContain('fenmoor-450');
  play.choose('rider', 'fenmoor-450');
  expect(play.stateOf('rider')?.setUp?.procedure).toBe('throttle-sensor-2');
});
