// The desk's group on Telegram: claimed by a code, a topic for each case, and what happens when somebody takes things away.
import { expect } from 'vitest';
import { until } from '../../loopback/until.ts';
import { test as onTelegram } from './on-telegram.ts';

const code = 'open-sesame-9';

const test = onTelegram
  .extend('claimed', ({ telegram, texts }) => async (options: { hasTopics: boolean }) => {
    const eve = telegram.person(21, 'Eve');
    const group = telegram.group(-300, {
      members: [21],
      bot: options.hasTopics ? 'administrator' : 'member',
      ...options,
    });
    eve.say(`/desk ${code}`, { group });
    await until('the claim', () => texts(-300).includes('This is the desk now. Cases come here.'));
    return { eve, group };
  })
  .extend('openCase', ({ telegram }) => async () => {
    const ann = telegram.person(11, 'Ann');
    ann.say('case');
    const card = await until('the card', () =>
      telegram.world.standing(-300).find(({ text }) => text === 'Card: waiting'),
    );
    return { ann, card };
  });

test.beforeEach(async ({ bot }) => void bot);

test('a case gets its topic; staff take it there, and words go both ways', async ({
  telegram,
  texts,
  claimed,
  openCase,
}) => {
  const { eve, group } = await claimed({ hasTopics: true });
  const { ann, card } = await openCase();
  expect(group.topics.get(card.topic as number)).toBe('Case k1');
  eve.press('Take');
  await until('the card is changed where it stands', () => card.text === 'Card: taken by Eve');
  expect(card.markup?.inline_keyboard.flat().map(({ text }) => text)).toEqual(['Close']);
  eve.say('Which pin is the red lead in?', { group, topic: card.topic as number });
  await until('the owner reads it', () => texts(11).includes('Eve: Which pin is the red lead in?'));
  ann.say('pin 2');
  const answer = await until('the answer', () =>
    telegram.world.standing(-300).find(({ text }) => text === 'Ann: pin 2'),
  );
  expect(answer.topic).toBe(card.topic);
});

test('an owner’s photo is passed on to the topic by its reference', async ({
  telegram,
  claimed,
  openCase,
}) => {
  await claimed({ hasTopics: true });
  const { ann, card } = await openCase();
  ann.sendPhoto('photo-of-the-plug', 'this plug');
  const photo = await until('the photo', () =>
    telegram.world.standing(-300).find(({ photo }) => photo !== null),
  );
  expect([photo.photo, photo.text, photo.topic]).toEqual([
    'photo-of-the-plug',
    'Ann: picture this plug',
    card.topic,
  ]);
});

test('without topics, replies to the case’s messages belong to it', async ({
  telegram,
  texts,
  claimed,
  openCase,
}) => {
  const { eve, group } = await claimed({ hasTopics: false });
  const { ann, card } = await openCase();
  expect(card.topic).toBeNull();
  ann.say('still there?');
  const question = await until('the question', () =>
    telegram.world.standing(-300).find(({ text }) => text === 'Ann: still there?'),
  );
  expect(question.repliesTo).toBe(card.messageId);
  eve.say('yes', { group, repliesTo: question });
  await until('the owner reads it', () => texts(11).includes('Eve: yes'));
});

test('a topic that somebody deleted is made anew for the next message', async ({
  telegram,
  claimed,
  openCase,
}) => {
  const { group } = await claimed({ hasTopics: true });
  const { ann, card } = await openCase();
  group.topics.delete(card.topic as number);
  ann.say('hello?');
  const next = await until('it goes on', () =>
    telegram.world.standing(-300).find(({ text }) => text === 'Ann: hello?'),
  );
  expect(group.topics.get(next.topic as number)).toBe('Case k1');
});

test('without the right to make topics, replies take their place and the log says what to do', async ({
  bot,
  claimed,
  openCase,
}) => {
  const { group } = await claimed({ hasTopics: true });
  group.bot = 'member';
  const { card } = await openCase();
  expect(card.topic).toBeNull();
  expect(bot.log.join()).toContain('give the bot the right to manage topics');
});

test('a wrong code, a used code and a private chat claim nothing', async ({ telegram, texts, claimed }) => {
  const mallory = telegram.person(31, 'Mallory');
  const other = telegram.group(-400, { members: [31], bot: 'member' });
  mallory.say('/desk let-me-in-please', { group: other });
  await until('the refusal', () => texts(-400).includes('That code is wrong or used.'));
  mallory.say(`/desk ${code}`);
  await until('the hint', () => texts(31).includes("Say this in the workshop's own group or channel."));
  await claimed({ hasTopics: true });
  mallory.say(`/desk ${code}`, { group: other });
  await until('the second refusal', () => texts(-400).length === 2);
  expect(texts(-400)[1]).toBe('That code is wrong or used.');
});

test('who has left the group has no say at the desk', async ({ bot, texts, claimed, openCase }) => {
  const { eve, group } = await claimed({ hasTopics: true });
  const { card } = await openCase();
  group.members.delete(21);
  eve.say('I am still here', { group, topic: card.topic as number });
  await until('the log says so', () => bot.log.join().includes('not a member'));
  expect(texts(11)).toEqual(['A person is called.']);
});

test('a group that becomes a supergroup stays the desk', async ({ telegram, texts, claimed }) => {
  const { group } = await claimed({ hasTopics: false });
  telegram.migrate(group, -500);
  telegram.person(11, 'Ann').say('case');
  await until('the card', () => texts(-500).includes('Card: waiting'));
});

test('when the bot was removed from the group, that is said in the log', async ({
  telegram,
  bot,
  texts,
  claimed,
}) => {
  const { group } = await claimed({ hasTopics: true });
  group.bot = 'left';
  telegram.person(11, 'Ann').say('case');
  await until('the log says so', () => bot.log.join().includes('kicked'));
  await until('the owner is answered all the same', () => texts(11).includes('A person is called.'));
});

test('a case that was called before there is a desk waits for one, also over a restart', async ({
  telegram,
  bot,
  begin,
  texts,
  claimed,
}) => {
  telegram.person(11, 'Ann').say('case');
  await until('the owner is told', () => texts(11).length === 1);
  await bot.stop();
  await begin();
  await claimed({ hasTopics: true });
  expect(texts(-300)).toEqual(['This is the desk now. Cases come here.']);
  expect(bot.log.join()).not.toContain('"level":"error"');
});
