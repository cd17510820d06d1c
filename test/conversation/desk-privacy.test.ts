// What an owner wrote stays between them and the desk, goes when they ask, and never steers anything: on the real store, with hostile owners.
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeKnowledge } from '../../src/commands/make-knowledge.ts';
import { makeDecide } from '../../src/inbox/decide.ts';
import { loadContent } from '../../src/library/load-content.ts';
import { House, press, text } from './desk-house.ts';
import { shippedDecide } from './play.ts';

const person = 'zebrafish-4711';
const words = 'quixotic wording';

let house: House;

beforeEach(async () => {
  house = new House(await shippedDecide());
  await house.open();
});

afterEach(() => house.close());

const toDesk = () => house.sent.filter(({ to }) => to.kind === 'desk').map((one) => one.text);
const toOwner = () => house.sent.filter(({ to }) => to.kind === 'owner').map((one) => one.text);
const caseState = () => house.sent.findLast(({ facts }) => facts.case)?.facts.case?.state;

async function inTheMiddleOfACase(): Promise<string> {
  await house.owner(person, { kind: 'start', procedure: 'throttle-sensor', machine: 'fenmoor-450' });
  await house.owner(person, press('runs-badly'));
  await house.owner(person, text('person'));
  await house.owner(person, text(`it hunts, ${words}`));
  await house.sendAll();
  const caseId = house.sent.findLast(({ facts }) => facts.case)?.facts.case?.id ?? '';
  await house.staff('s1', caseId, press('take'));
  await house.staff('s1', caseId, text(`${words} to you too`));
  await house.owner(person, { kind: 'picture', picture: 'zebrafish.jpg', caption: words });
  await house.staff('s1', caseId, text(`/note ${words}`));
  await house.staff('s1', caseId, text('/record json'));
  await house.staff('s1', null, text(`find ${person}`));
  await house.staff('s1', null, text('cases'));
  await house.staff('s1', null, text(`record ${caseId} json`));
  await house.sendAll();
  return caseId;
}

describe('erase me', () => {
  test('in the middle of a case: no byte of it stays, and the desk learns why it is gone', async () => {
    const caseId = await inTheMiddleOfACase();
    expect(house.bytes()).toContain(person);
    expect(house.bytes()).toContain(words);
    expect(toDesk().join()).toContain(person);
    await house.owner(person, text('erase me'));
    await house.owner(person, press('yes'));
    await house.sendAll();
    const bytes = house.bytes();
    for (const trace of [person, 'zebrafish', words, 'quixotic', 'it hunts'])
      expect(bytes).not.toContain(trace);
    expect(toOwner().at(-1)).toBe('Everything about you is erased.');
    const card = house.sent.findLast(({ to }) => to.kind === 'desk');
    expect([card?.edit, card?.text]).toEqual([
      expect.any(Number),
      `Case ${caseId}: the owner had everything about them erased. It is over.`,
    ]);
    // Whoever still types there is told, and nobody reads it.
    await house.staff('s1', caseId, text('are you there?'));
    await house.sendAll();
    expect(toDesk().at(-1)).toBe(`I know no case ${caseId}.`);
    expect(toOwner().at(-1)).toBe('Everything about you is erased.');
  });

  test('what the desk as a whole was shown is not kept once it was sent', async () => {
    await inTheMiddleOfACase();
    await house.staff('s1', null, text('cases'));
    await house.sendAll();
    await house.open();
    await house.sendAll();
    expect(toDesk().filter((one) => one.startsWith('In hand: 1'))).toHaveLength(2);
  });

  test('asked and not confirmed, nothing goes', async () => {
    await inTheMiddleOfACase();
    await house.owner(person, text('erase me'));
    await house.owner(person, press('no'));
    await house.sendAll();
    expect(house.bytes()).toContain(words);
  });
});

describe('a hostile owner', () => {
  test.each([
    '/take',
    '.take',
    'take',
    '/close',
    '/give-back',
    '/clear all fine',
    '/accept fine',
    'cases',
    'closed today',
  ])('typing %j is quoted at the desk and does nothing', async (typed) => {
    await house.owner('mallory', text('person'));
    await house.owner('mallory', text(typed));
    await house.sendAll();
    expect(caseState()).toBe('waiting');
    expect(toDesk()).toContain(`Owner mallory: ${typed}`);
  });

  test.each(['take', 'close', 'give-back', 'cause:air-leak', 'record:1-1'])(
    'pressing %j, a button of the desk, does nothing',
    async (choice) => {
      await house.owner('mallory', text('person'));
      await house.owner('mallory', press(choice));
      await house.sendAll();
      expect(caseState()).toBe('waiting');
      expect(toOwner().at(-1)).toContain('That is over. Here is what I can do.');
    },
  );

  test('a name that imitates staff, and lines that imitate the program, stay an owner’s', async () => {
    const name = '\u202eSam (workshop)\nCase 1-1 closed by Sam';
    await house.owner('mallory', text('person'), { name });
    await house.owner('mallory', text('fine\nCase 1-1, closed\nSam has closed it.'), { name });
    await house.sendAll();
    expect(toDesk()).toContain(
      'Owner Sam (workshop) Case 1-1 closed b: fine\n   Case 1-1, closed\n   Sam has closed it.',
    );
    for (const row of toDesk().flatMap((one) => one.split('\n')))
      expect(row).not.toMatch(/^Sam|^Case 1-1, closed/);
  });

  test('a caption without end is cut, and the state stays small', async () => {
    await house.owner('mallory', text('person'));
    await house.owner('mallory', {
      kind: 'picture',
      picture: 'x.jpg',
      caption: '\u202eA@everyone <b>*'.repeat(20_000),
    });
    await house.sendAll();
    expect(Math.max(...toDesk().map((one) => one.length))).toBeLessThan(3_000);
    expect(toDesk().join('')).not.toContain('\u202e');
  });

  test('staff words with the same tricks are plain to the owner too', async () => {
    await house.owner('o1', text('person'));
    await house.staff('s1', '1-1', press('take'));
    await house.staff('s1', '1-1', text('one\n\u202etwo'));
    await house.sendAll();
    expect(toOwner().at(-1)).toBe('s1 (workshop): one\n   two');
  });

  test('thousands of messages a minute: forty are heard, one kind answer follows, and a red flag still counts', async () => {
    const { newest } = await loadContent(join(import.meta.dirname, '..', '..', 'content'));
    if (!newest) throw new Error('The content did not load.');
    const shelf = { put: async () => {}, get: async () => undefined, inUse: async () => [] };
    const { knowledge } = await makeKnowledge(newest, shelf);
    const guarded = new House(makeDecide({ ...knowledge, mostPerMinute: 40 }));
    try {
      await guarded.open();
      await guarded.owner('mallory', text('person'));
      await Promise.all(
        Array.from({ length: 3_000 }, (_, index) => guarded.owner('mallory', text(`spam ${index}`))),
      );
      await guarded.owner('bob', text('hi'));
      await guarded.owner('mallory', text('there is smoke'));
      await guarded.sendAll();
      const relayed = guarded.sent.filter(({ text }) => text.startsWith('Owner mallory: spam'));
      expect(relayed).toHaveLength(39);
      const answers = guarded.sent.filter(({ text }) => text.startsWith('That is faster than I can follow'));
      expect(answers).toHaveLength(1);
      expect(guarded.sent.some(({ to }) => to.kind === 'owner' && to.person === 'bob')).toBe(true);
      expect(guarded.sent.findLast(({ to }) => to.kind === 'owner')?.text).toContain('Step away');
      guarded.now += 60_000;
      await guarded.owner('mallory', text('sorry'));
      await guarded.sendAll();
      expect(guarded.sent.some(({ text }) => text === 'Owner mallory: sorry')).toBe(true);
    } finally {
      await guarded.close();
    }
  });
});
