// An owner's side of Discord, over real sockets against the strict loopback server.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect } from 'vitest';
import { until } from '../../loopback/until.ts';
import { heard, test as onDiscord, type Person } from './on-discord.ts';

const test = onDiscord.override('tipsChannel', ({ discord }) => discord.channel(undefined, 'tips').id);

test.beforeEach(async ({ bot }) => void bot);

test.afterEach(async ({ discord }) => {
  await until('everything is answered', () => discord.interactions.unanswered() === 0);
});

const labels = (person: Person) =>
  person.heard().map(({ components }) => {
    const rows = (components ?? []) as unknown as { components: { label?: string }[] }[];
    return rows.flatMap((row) => row.components.map(({ label }) => label));
  });

test('a typed message is answered with buttons, and a press is answered and acts', async ({ discord }) => {
  const ann = discord.person('11', 'Ann');
  ann.say('0.348');
  await until('the echo', () => heard(ann).includes('echo: 0.348'));
  const press = ann.press('Yes');
  await until('the press', () => heard(ann).includes('echo: \\[yes]') || heard(ann).includes('echo: [yes]'));
  expect(press.answered).toBe(6);
  await until('the old buttons are gone', () => labels(ann)[0]?.length === 0);
  expect(labels(ann).at(-1)).toEqual(['Yes', 'No']);
});

test('a command in a server is answered to its asker alone, and goes on in a direct message', async ({
  discord,
}) => {
  const ann = discord.person('11', 'Ann', 'de');
  const command = ann.command('begin', discord.channel());
  await until('the start', () => heard(ann).includes('echo: start null null'));
  await until('the asker is told', () => command.said?.includes(`/channels/@me/${ann.chat()}`));
  expect(command.said).toContain('Ich habe dir privat geschrieben');
});

test('a command in a direct message leaves nothing behind but its answer', async ({ discord }) => {
  const ann = discord.person('11', 'Ann');
  const command = ann.command('where');
  await until('the answer', () => heard(ann).includes('echo: repeat'));
  await until('taken back', () => command.said === null);
  expect(command.answered).toBe(5);
});

test('a reading can be typed into a form; a form sent late is never taken for the next answer', async ({
  discord,
}) => {
  const ann = discord.person('11', 'Ann');
  ann.say('reading');
  await until('the question', () => labels(ann)[0]?.includes('Type a reading'));
  const { form } = ann.press('Type a reading');
  const opened = await until('the form', () =>
    discord.interactions.pending.values().find((one) => one.form !== null),
  );
  expect(form).toBeNull();
  ann.fillIn(opened.form as { custom_id: string }, '0.348');
  await until('the reading', () => heard(ann).includes('echo: 0.348'));
  ann.fillIn(opened.form as { custom_id: string }, '0.999');
  await until('the late form', () => heard(ann).some((text) => text.includes('stale form')));
  expect(heard(ann).join()).not.toContain('0.999');
});

test('a long choice becomes a menu, and what is chosen there acts', async ({ discord }) => {
  const ann = discord.person('11', 'Ann');
  ann.say('menu');
  await until('the menu', () => heard(ann).includes('Which machine?'));
  ann.choose('Machine 27');
  await until('the choice', () => heard(ann).some((text) => text.includes('machine-27')));
});

test('a long text comes in parts that end with a sentence, with the buttons on the last', async ({
  discord,
}) => {
  const ann = discord.person('11', 'Ann');
  ann.say('long');
  await until('all parts', () => labels(ann).at(-1)?.length === 2);
  expect(heard(ann).every((text) => text.length <= 2000 && text.endsWith('again.'))).toBe(true);
  expect(heard(ann).join(' ')).toBe('This sentence is said again and again. '.repeat(150).trim());
});

test('what a person typed stays text: no markup, no mention', async ({ discord }) => {
  const ann = discord.person('11', 'Ann');
  ann.say('@everyone <@42> **0.5** 1. [here](https://example.org)');
  await until('the echo', () => heard(ann).length === 1);
  expect(heard(ann)[0]).toBe(
    'echo: @\u2060everyone \\<@42> \\*\\*0.5\\*\\* 1. \\[here](https://example.org)',
  );
});

test('who takes no direct messages gets a private room in the server, and stays there', async ({
  discord,
}) => {
  const ann = discord.person('11', 'Ann');
  ann.person.takesDirectMessages = false;
  const where = discord.channel();
  ann.command('begin', where);
  const room = await until('the room', () => discord.world.channels.values().find(({ type }) => type === 12));
  await until('the owner is in it', () => room.members.has('11'));
  expect([room.parent, [...room.members]]).toEqual([where.id, ['11']]);
  const inRoom = () => discord.world.standing(room.id).map(({ content }) => content);
  await until('the start', () => inRoom().includes('echo: start null null'));
  ann.say('0.348', room);
  discord.person('12', 'Bob').say('me too', room);
  await until('the echo', () => inRoom().includes('echo: 0.348'));
  expect(inRoom()).not.toContain('echo: me too');
});

test('in a server the bot only points to the private chat, and only when it is spoken to', async ({
  discord,
}) => {
  const ann = discord.person('11', 'Ann');
  const where = discord.channel();
  ann.say('0.348', where);
  ann.say('<@900> hello', where);
  const pointer = await until('the pointer', () =>
    discord.world.standing(where.id).find(({ author }) => author.bot),
  );
  expect(pointer.content).toBe('I only guide in private.');
  ann.press('Open our chat', pointer);
  await until('the start', () => heard(ann).includes('echo: start null null'));
});

test('a tip’s start button opens the private chat at its machine and procedure', async ({
  discord,
  tipsChannel,
}) => {
  const ann = discord.person('11', 'Ann');
  ann.say('tip');
  await until('the tip', () => discord.world.standing(tipsChannel ?? '').length === 1);
  const bob = discord.person('12', 'Bob');
  const press = bob.press('Start');
  await until('the start', () => heard(bob).includes('echo: start throttle-sensor any-single'));
  await until('only Bob is told', () => press.said?.includes('I wrote to you in private'));
});

test('an edited reading comes in as an edit; an unfolded link does not', async ({ discord }) => {
  const ann = discord.person('11', 'Ann');
  const message = ann.say('0.384');
  await until('the echo', () => heard(ann).length === 1);
  discord.gateway.dispatch('MESSAGE_UPDATE', discord.world.asEvent(message));
  ann.edit(message, '0.348');
  await until('the edit', () => heard(ann).includes('echo: edited to 0.348'));
  expect(heard(ann)).toHaveLength(2);
});

test('an owner’s picture is fetched from where it stands and passed on', async ({ discord, bot }) => {
  const pictures = createServer((_, response) => void response.end('bytes of a picture')).listen(
    0,
    '127.0.0.1',
  );
  await until('it listens', () => pictures.listening);
  const ann = discord.person('11', 'Ann');
  const eve = discord.person('21', 'Eve');
  const desk = discord.channel(undefined, 'desk');
  eve.command('desk', desk, [{ name: 'code', value: 'open-sesame-9' }]);
  await until('the desk', () => bot.log.join().includes('is the desk now'));
  ann.say('case');
  await until('the owner is told', () => heard(ann).length === 1);
  ann.sendPicture(`http://127.0.0.1:${(pictures.address() as AddressInfo).port}/a.png`, 'this plug');
  const passed = await until('the picture', () =>
    discord.world.messages.find(({ files }) => files.length > 0),
  );
  expect([passed.content, passed.files[0]?.toString()]).toEqual([
    'Ann: picture this plug',
    'bytes of a picture',
  ]);
  pictures.close();
});

test('the slash commands are registered on start, described in each language', async ({ discord }) => {
  const call = await until('the commands', () =>
    discord.calls.find(({ method }) => method.startsWith('PUT /applications/')),
  );
  const commands = call.body as unknown as {
    name: string;
    description_localizations: Record<string, string>;
  }[];
  expect(commands.map(({ name }) => name)).toEqual(['begin', 'where', 'help', 'person', 'desk']);
  expect(Object.keys(commands[0]?.description_localizations ?? {}).sort()).toEqual([
    'de',
    'es-ES',
    'fr',
    'it',
    'pt-BR',
  ]);
});
