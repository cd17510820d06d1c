// What the desk reads in a language of its own: no id of content in it, and what it types is understood by the words that it reads.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { measureIds } from '../../src/procedure/vocabulary.ts';
import { Play, shippedDecide } from './play.ts';
import { shippedFigures, walk } from './ready-owner.ts';

const folder = mkdtempSync(join(tmpdir(), 'gaugehand-desk-language-'));
afterAll(() => rmSync(folder, { recursive: true }));
cpSync(join(import.meta.dirname, '..', '..', 'content'), folder, { recursive: true });

/** Ids with a hyphen: the others may be words of a language. */
const ids = ['procedures/throttle-sensor.yaml', 'faults/checks.yaml'].flatMap((file) =>
  Array.from(
    readFileSync(join(folder, file), 'utf8').matchAll(/ id: ([a-z]+-[a-z-]+)$/gm),
    ([, id]) => id ?? '',
  ),
);
const cautions = ['guidance-only', 'fuel-and-heat', 'battery-care', 'back-probing'];
const measures = measureIds.filter((id) => id.includes('-'));

/** A case in Sam's hands, of an owner whose leads are in; and what Sam reads of what Sam types in it. */
async function openDesk(language: string) {
  const file = join(folder, 'workshop.yaml');
  writeFileSync(file, readFileSync(file, 'utf8').replace(/^language: .*$/m, `language: ${language}`));
  const play = new Play(await shippedDecide(folder));
  play.start('Ann', 'throttle-sensor', 'fenmoor-450');
  play.choose('Ann', 'runs-badly');
  walk(
    play,
    'Ann',
    shippedFigures,
    ({ facts }) => facts.stage === 'as-found-idle' && facts.ask !== undefined,
  );
  const caseId = play.text('Ann', 'person').findLast(({ case: id }) => id !== undefined)?.case ?? null;
  const seat = { role: 'staff' as const, name: 'Sam', caseId };
  play.choose('Sam', 'take', null, seat);
  return {
    play,
    says: (typed: string) => play.text('Sam', typed, seat).filter(({ to }) => to === 'desk'),
    lists: () => play.text('Sam', 'cases', { ...seat, caseId: null }),
  };
}

const languages = [
  ['de', 'Grundwert', 'Leerlauf', 'Gaszug'],
  ['es', 'valor base', 'ralenti', 'cable del acelerador'],
  ['fr', 'valeur de base', 'ralenti', 'cable des gaz'],
  ['it', 'valore base', 'minimo', "cavo dell'acceleratore"],
  ['pt', 'valor de base', 'marcha lenta', 'cabo do acelerador'],
] as const;

test.each(languages)('in %s its own words choose a stage, a reading and a check', async (...row) => {
  const [language, baseline, idle, cable] = row;
  const { play, says } = await openDesk(language);
  says(`/jump ${baseline}`);
  expect(play.stateOf('Ann')?.case?.goTo).toBe('baseline');
  says(`/ask ${idle}`);
  expect(play.stateOf('Ann')?.setUp?.asked).toMatchObject({ measure: 'signal-idle' });
  says(`/check ${cable}`);
  expect(play.stateOf('Ann')?.setUp?.asked).toMatchObject({ check: 'look-at-cable' });
  // English ids stay understood.
  says('/ask closed stop');
  expect(play.stateOf('Ann')?.setUp?.asked).toMatchObject({ measure: 'signal-closed-stop' });
});

test('what an owner presses beside a person is told in the words of the desk', async () => {
  const play = new Play(await shippedDecide());
  const inGerman = { locale: 'de' };
  play.text('Ann', '', {
    ...inGerman,
    body: { kind: 'start', procedure: 'throttle-sensor', machine: 'fenmoor-450' },
  });
  const caseId =
    play.text('Ann', 'Werkstatt', inGerman).findLast(({ case: id }) => id !== undefined)?.case ?? null;
  play.choose('Sam', 'take', null, { role: 'staff', name: 'Sam', caseId });
  const said = play.choose('Ann', 'runs-badly', null, inGerman);
  expect(said.find(({ to }) => to === 'desk')?.text).toBe('Owner Ann pressed: Runs badly');
});

test.each(languages)('in %s card, record, lists and buttons name everything in its words', async (...row) => {
  const [language, baseline, idle, cable] = row;
  const { play, says, lists } = await openDesk(language);
  for (const typed of [
    `/jump ${baseline}`,
    `/ask ${idle}`,
    `/check ${cable}`,
    '/accept ok',
    '/clear',
    '/note x',
  ]) {
    says(typed);
  }
  for (const typed of ['/card', '/record', '/jump', '/ask', '/check']) says(typed);
  lists();
  const read = play.said
    .filter(({ to }) => to === 'desk')
    .flatMap(({ text, choices }) => [text, ...choices.map(({ label }) => label)]);
  expect(read.length).toBeGreaterThan(20);
  for (const id of [...ids, ...measures, ...cautions, 'fenmoor-450']) {
    const word = new RegExp(`(?<![\\w-])${id.replaceAll('-', '[- ]')}(?![\\w-])`);
    expect(
      read.filter((text) => word.test(text)),
      id,
    ).toEqual([]);
  }
});
