import { expect, test } from 'vitest';
import { machineFillIn, partFillIn } from '../../src/conversation/fill-in.ts';
import { ofMachine, ofPart } from '../../src/library/words-needed.ts';
import { loadChanged } from './sound-content.ts';

// The library may not import the conversation, so the two lists are held together here.
test('the variables that check allows in words are the ones that the conversation gives', async () => {
  const { newest } = await loadChanged({});
  const machine = newest!.edition.content.machines['tern-200']!;
  expect(ofMachine).toEqual(Object.keys(machineFillIn(machine, 'en')));
  expect(ofPart).toEqual(Object.keys(partFillIn(machine, 'sensor-body', 'en')));
});
