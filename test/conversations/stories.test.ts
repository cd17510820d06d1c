// Every story beside this file, played as its owner tells it; each message on the way keeps the rules of a good one.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { benchDecide } from '../conversation/bench-content.ts';
import { Play } from '../conversation/play.ts';
import { benchFigures, shippedFigures } from '../conversation/ready-owner.ts';
import { storySchema, tellStory } from '../conversation/tell-story.ts';

const here = import.meta.dirname;
const decide = await benchDecide();
const files = readdirSync(here).filter((file) => file.endsWith('.yaml'));

test.each(files)('%s', (file) => {
  const story = storySchema.parse(parse(readFileSync(join(here, file), 'utf8')));
  const usual = story.machine === 'bench-single' ? benchFigures : shippedFigures;
  expect(tellStory(story, new Play(decide), usual).join('\n\n')).toBe('');
});
