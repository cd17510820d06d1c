// Discord in bad weather: waits, errors, broken connections, lost sessions, restarts, a revoked token; side by side, since these mostly wait.
import { describe, expect } from 'vitest';
import type { LoopbackDiscord } from '../../loopback/discord/server.ts';
import { until } from '../../loopback/until.ts';
import { echo } from '../echo.ts';
import { heard, test as onDiscord, type Person } from './on-discord.ts';

const test = onDiscord.override('heartbeatMs', 800);

const pathTo = (person: Person) => `POST /channels/${person.chat()}/messages`;
const postsTo = (discord: LoopbackDiscord, person: Person) =>
  discord.calls.filter(({ method }) => method === pathTo(person));

/** Discord lets a bot begin a session once in five seconds. */
const untilNextSession = () => new Promise((resolve) => setTimeout(resolve, 5_000));

describe.concurrent('Discord in bad weather', () => {
  test('asked to wait, it waits as long as told in that chat, and goes on in the others', async ({
    discord,
    begin,
  }) => {
    await begin();
    const ann = discord.person('11', 'Ann');
    const bob = discord.person('12', 'Bob');
    discord.faults.on(pathTo(ann), { kind: 'wait', seconds: 2 });
    ann.say('one');
    await until('the wait', () => postsTo(discord, ann).length === 1);
    bob.say('two');
    await until('the other chat', () => heard(bob).length === 1);
    expect(heard(ann)).toEqual([]);
    await until('the first chat', () => heard(ann).length === 1);
  });

  test('asked to wait everywhere, it waits everywhere', async ({ discord, begin }) => {
    await begin();
    const ann = discord.person('11', 'Ann');
    const bob = discord.person('12', 'Bob');
    discord.faults.on(pathTo(ann), { kind: 'wait', seconds: 2, everywhere: true });
    ann.say('one');
    await until('the wait', () => postsTo(discord, ann).length === 1);
    bob.say('two');
    // The loopback counts a call within the wait as a breach.
    await until('both', () => heard(ann).length === 1 && heard(bob).length === 1);
  });

  test.for([
    { name: 'a bad gateway', fault: { kind: 'status' as const, status: 502 } },
    { name: 'an internal error', fault: { kind: 'status' as const, status: 500 } },
    { name: 'a connection reset before the effect', fault: { kind: 'reset' as const, after: false } },
    { name: 'a connection reset after the effect', fault: { kind: 'reset' as const, after: true } },
    { name: 'an answer that breaks off', fault: { kind: 'half-body' as const } },
  ])('$name is survived: every message comes once and in order', async ({ fault }, { discord, begin }) => {
    await begin();
    const ann = discord.person('11', 'Ann');
    discord.faults.on(pathTo(ann), fault);
    ann.say('one');
    ann.say('two');
    await until('both', () => heard(ann).includes('echo: two'));
    expect(heard(ann)).toEqual(['echo: one', 'echo: two']);
  });

  test('a dropped connection is resumed, and what was said meanwhile is answered', async ({
    discord,
    begin,
  }) => {
    await begin();
    const ann = discord.person('11', 'Ann');
    discord.gateway.drop();
    ann.say('meanwhile');
    await until('the echo', () => heard(ann).includes('echo: meanwhile'));
    expect([discord.gateway.resumed(), discord.gateway.identified()]).toEqual([1, 1]);
  });

  test('asked to reconnect, it resumes', async ({ discord, begin }) => {
    await begin();
    discord.gateway.askToReconnect();
    await until('resumed', () => discord.gateway.resumed() === 1);
    const ann = discord.person('11', 'Ann');
    ann.say('after');
    await until('the echo', () => heard(ann).includes('echo: after'));
  });

  test('without answers to its heartbeats it reconnects by itself', async ({ discord, begin }) => {
    await begin();
    discord.gateway.setAcknowledging(false);
    await until('it gave the connection up', () => !discord.gateway.connected());
    discord.gateway.setAcknowledging(true);
    await until('resumed', () => discord.gateway.resumed() >= 1);
  });

  test('a session that is lost is begun anew, and active chats are caught up before they are answered', async ({
    discord,
    begin,
  }) => {
    const bot = await begin();
    const ann = discord.person('11', 'Ann');
    ann.say('one');
    await until('the echo', () => heard(ann).length === 1);
    await untilNextSession();
    ann.sayUnheard('two');
    discord.gateway.invalidate(false);
    await until('a new session', () => discord.gateway.identified() >= 1 && bot.log.length > 1);
    await until('caught up', () => heard(ann).includes('echo: two'));
    ann.say('three');
    await until('all', () => heard(ann).includes('echo: three'));
    expect(heard(ann)).toEqual(['echo: one', 'echo: two', 'echo: three']);
  });

  test('after a restart, what was said meanwhile is answered first, and nothing twice', async ({
    discord,
    begin,
  }) => {
    const bot = await begin();
    const ann = discord.person('11', 'Ann');
    ann.say('one');
    await until('the echo', () => heard(ann).length === 1);
    expect(await bot.stop()).toBe(0);
    ann.sayUnheard('two');
    ann.sayUnheard('three');
    await untilNextSession();
    const starting = begin();
    await until('connected', () => discord.gateway.connected());
    ann.say('four');
    await starting;
    await until('all', () => heard(ann).includes('echo: four'));
    expect(heard(ann)).toEqual(['one', 'two', 'three', 'four'].map((text) => `echo: ${text}`));
  });

  test('an interaction is answered in time however long the store takes', async ({ discord, begin }) => {
    const ann = discord.person('11', 'Ann');
    await begin((loaded, arrival) => {
      if (arrival.kind === 'message' && arrival.message.body.kind === 'choice' && Date.now() < slowUntil) {
        throw Object.assign(new Error('busy'), { code: 'SQLITE_BUSY' });
      }
      return echo(loaded, arrival);
    });
    ann.say('one');
    await until('the echo', () => heard(ann).length === 1);
    const slowUntil = Date.now() + 4_000;
    const press = ann.press('Yes');
    await until('answered at once', () => press.answered === 6, 2_500);
    await until('and acted on later', () => heard(ann).length === 2);
  });

  test('a wrong token ends the program with its own code and a sentence', async ({ discord, start }) => {
    discord.revoke();
    const bot = await start();
    expect(await bot.ended).toBe(77);
    expect(bot.said).toEqual(['Discord does not take the token: DISCORD_TOKEN is wrong or was reset.']);
  });

  test.for([
    { name: 'a token that the gateway refuses', close: 4004, code: 77, said: 'DISCORD_TOKEN is wrong' },
    { name: 'intents that are not switched on', close: 4014, code: 78, said: 'Message Content Intent' },
  ])('$name ends the program with a sentence', async ({ close, code, said }, { discord, start }) => {
    discord.gateway.refuse(close);
    const bot = await start();
    expect(await bot.ended).toBe(code);
    expect(bot.said.join()).toContain(said);
  });
});
