// The desk's channel on Discord: claimed by a code, a thread for each case, and what happens when somebody takes things away.
import { ChannelType } from 'discord.js';
import { expect } from 'vitest';
import { until } from '../../loopback/until.ts';
import { heard, test as onDiscord } from './on-discord.ts';

const test = onDiscord
  .extend('find', ({ discord }) => (content: string) => {
    return discord.world.messages.find((one) => one.content === content && !one.deleted);
  })
  .extend('claimed', ({ discord }) => async () => {
    const eve = discord.person('21', 'Eve');
    const desk = discord.channel(ChannelType.GuildText, 'desk');
    const command = eve.command('desk', desk, [{ name: 'code', value: 'open-sesame-9' }]);
    await until('the claim', () => command.said === 'This is the desk now. Cases come here.');
    return { eve, desk };
  })
  .extend('openCase', ({ discord, find }) => async () => {
    const ann = discord.person('11', 'Ann');
    ann.say('case');
    const card = await until('the card', () => find('Card: waiting'));
    const thread = discord.world.channels.get(card.channel_id);
    if (!thread) throw new Error('the card stands nowhere');
    return { ann, card, thread };
  });

test.beforeEach(async ({ bot }) => void bot);

test.afterEach(async ({ discord }) => {
  await until('everything is answered', () => discord.interactions.unanswered() === 0);
});

test('a case gets its thread; staff take it there, and words go both ways', async ({
  find,
  claimed,
  openCase,
}) => {
  const { eve, desk } = await claimed();
  const { ann, card, thread } = await openCase();
  expect([thread.parent, thread.name]).toEqual([desk.id, 'Case k1']);
  eve.press('Take');
  await until('the card is changed where it stands', () => card.content === 'Card: taken by Eve');
  eve.say('Which pin is the red lead in?', thread);
  await until('the owner reads it', () => heard(ann).includes('Eve: Which pin is the red lead in?'));
  ann.say('pin 2');
  const answer = await until('the answer', () => find('Ann: pin 2'));
  expect(answer.channel_id).toBe(thread.id);
});

test('a thread that somebody deleted is made anew for the next message', async ({
  discord,
  find,
  claimed,
  openCase,
}) => {
  await claimed();
  const { ann, thread } = await openCase();
  thread.deleted = true;
  ann.say('hello?');
  const next = await until('it goes on', () => find('Ann: hello?'));
  expect(next.channel_id).not.toBe(thread.id);
  expect(discord.world.channels.get(next.channel_id)?.name).toBe('Case k1');
});

test('a card in an archived thread is still kept current', async ({ claimed, openCase }) => {
  const { eve } = await claimed();
  const { card, thread } = await openCase();
  thread.archived = true;
  eve.press('Take');
  await until('the card is changed', () => card.content === 'Card: taken by Eve');
});

test('a wrong code, a used code and a direct message claim nothing', async ({ discord, claimed }) => {
  const mallory = discord.person('31', 'Mallory');
  const other = discord.channel();
  const code = [{ name: 'code', value: 'let-me-in-please' }];
  const wrong = mallory.command('desk', other, code);
  await until('the refusal', () => wrong.said === 'That code is wrong or used.');
  const direct = mallory.command('desk', undefined, [{ name: 'code', value: 'open-sesame-9' }]);
  await until('the hint', () => direct.said?.startsWith("Say this in the workshop's own"));
  await claimed();
  const used = mallory.command('desk', other, [{ name: 'code', value: 'open-sesame-9' }]);
  await until('the second refusal', () => used.said === 'That code is wrong or used.');
});

test('when the bot’s rights were taken away, that is said in the log, and the owner is answered all the same', async ({
  discord,
  bot,
  claimed,
}) => {
  const { desk } = await claimed();
  desk.forbidden = true;
  const ann = discord.person('11', 'Ann');
  ann.say('case');
  await until('the log says so', () => bot.log.join().includes('50001'));
  await until('the owner', () => heard(ann).includes('A person is called.'));
});
