// A contactless sensor has no track that could wear: it is not suspected of it, however the figure jumps (common practice, no source).
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { loadContent } from '../../src/library/load-content.ts';
import { faultsFor } from '../../src/procedure/fault.ts';
import { Play, shippedDecide } from './play.ts';
import { shippedFigures, walk } from './ready-owner.ts';

const folder = mkdtempSync(join(tmpdir(), 'gaugehand-sensor-kind-'));
afterAll(() => rmSync(folder, { recursive: true }));
cpSync(join(import.meta.dirname, '..', '..', 'content'), folder, { recursive: true });

async function suspects(kind: string): Promise<string[]> {
  const file = join(folder, 'machines', 'fenmoor-450.yaml');
  writeFileSync(file, readFileSync(file, 'utf8').replace(/^ {2}kind: .*$/m, `  kind: ${kind}`));
  const play = new Play(await shippedDecide(folder));
  play.start('Ann', 'throttle-sensor', 'fenmoor-450');
  play.choose('Ann', 'runs-badly');
  walk(
    play,
    'Ann',
    shippedFigures,
    ({ facts }) => facts.stage === 'as-found-idle' && facts.ask !== undefined,
  );
  play.text('Ann', 'jumps between 0.55 and 0.78');
  const said = play.text('Ann', 'person');
  return said.flatMap(({ facts }) => facts.causes ?? []).map(({ id }) => id);
}

test('a figure that jumps speaks of a worn track where there is one, and of other things where there is none', async () => {
  const worn = (ids: string[]) => ids.some((id) => id.startsWith('worn-track'));
  expect(worn(await suspects('potentiometer'))).toBe(true);
  const others = await suspects('contactless');
  expect(others.length).toBeGreaterThan(0);
  expect(worn(others)).toBe(false);
});

test('pairs go with the faults that they are made of', async () => {
  const { newest } = await loadContent(folder);
  const { faults } = newest!.edition.content;
  const fitting = faultsFor(faults, 'contactless');
  const ids = new Set(fitting.faults.map(({ id }) => id));
  expect(faults.faults.length - ids.size).toBe(2);
  expect(fitting.pairs.flatMap(({ of }) => of).filter((id) => !ids.has(id))).toEqual([]);
  expect(faultsFor(faults, 'potentiometer')).toBe(faults);
});
