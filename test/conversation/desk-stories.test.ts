// The stories of owners and the desk: who writes what, and who then reads what; each story is a file that anybody at the bench can read.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { tellDeskStory } from './desk-story.ts';
import { Play, shippedDecide } from './play.ts';

const folder = join(import.meta.dirname, '..', 'conversations', 'desk');
const files = readdirSync(folder).filter((file) => file.endsWith('.yaml'));

test.each(files)('%s', async (file) => {
  const story = parse(readFileSync(join(folder, file), 'utf8'));
  const play = new Play(await shippedDecide());
  expect(tellDeskStory(story, play)).toEqual([]);
});
