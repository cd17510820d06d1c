// Every story beside this file, played as its owner tells it; each message on the way keeps the rules of a good one.
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parse } from 'yaml';
import type { Decide } from '../../src/store/store.ts';
import { Play, shippedDecide } from '../conversation/play.ts';
import { benchFigures, shippedFigures } from '../conversation/ready-owner.ts';
import { storySchema, tellStory } from '../conversation/tell-story.ts';

const here = import.meta.dirname;
let folder: string;
let decide: Decide;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'gaugehand-stories-'));
  // Told in English: the other languages are left out.
  const told = (path: string) => !/words.(?!en)[a-z]{2}$/.test(path);
  cpSync(join(here, '..', '..', 'content'), folder, { recursive: true, filter: told });
  cpSync(join(here, '..', 'content', 'machines'), join(folder, 'machines'), { recursive: true });
  decide = await shippedDecide(folder);
});
afterAll(() => rmSync(folder, { recursive: true }));

const files = readdirSync(here).filter((file) => file.endsWith('.yaml'));

test.each(files)('%s', (file) => {
  const story = storySchema.parse(parse(readFileSync(join(here, file), 'utf8')));
  const usual = story.machine === 'bench-single' ? benchFigures : shippedFigures;
  expect(tellStory(story, new Play(decide), usual).join('\n\n')).toBe('');
});
