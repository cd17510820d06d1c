// A whole set-up with a case in it, on Telegram and Discord at once, through faults and kills: the same conversation as on the console in calm.
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import type { Facts } from '../../src/chat/facts.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { copyEnglishContent } from '../kill/english-content.ts';
import { makeBotProgram } from './bot-program.ts';
import { startDiscord } from './discord/server.ts';
import type { Fault } from './faults.ts';
import { type DeskStage, discordStage, type Stage, telegramDesk, telegramStage } from './stage.ts';
import { startTelegram } from './telegram/server.ts';
import { owner, type ScriptStep, tellScript } from './tell-script.ts';
import { until } from './until.ts';

const patienceMs = 40_000;
const code = 'open-sesame-9';

const weather: Fault[] = [
  { kind: 'status', status: 502 },
  { kind: 'reset', after: false },
  { kind: 'wait', seconds: 1 },
  { kind: 'slow', ms: 400 },
  { kind: 'reset', after: true },
  { kind: 'status', status: 500 },
  { kind: 'half-body' },
];

test('one conversation is the same on console, Telegram and Discord, also in a storm', {
  timeout: 480_000,
}, async () => {
  const folder = await mkdtemp(join(tmpdir(), 'gaugehand-storm-'));
  const content = await contentAlwaysOpen(folder);
  const script = await tellScript(content, 12);
  const telegram = await startTelegram();
  const discord = await startDiscord();
  const group = telegram.group(-300, { members: [21] });
  const program = makeBotProgram(
    {
      TELEGRAM_TOKEN: telegram.token,
      TELEGRAM_API_ROOT: telegram.url,
      DISCORD_TOKEN: discord.token,
      DISCORD_API_ROOT: discord.url,
      DATA_DIR: join(folder, 'bot'),
      DESK_CODE: code,
    },
    ['--content', content],
  );
  try {
    program.start();
    const desk = telegramDesk(telegram, group);
    telegram.person(21, 's1').say(`/desk ${code}`, { group });
    await until('the desk is claimed', () => telegram.world.standing(-300).length === 1, patienceMs);
    await until('Discord is connected', () => discord.gateway.connected(), patienceMs);
    const stages = [telegramStage(telegram), discordStage(discord)];
    // A press that Discord hands to a program that dies is lost for good: what is typed is not.
    const typed = [...script.keys()].filter((index) => isTyped(script[index]));
    const killedAt = [typed[2], typed[9]];
    for (const [index, step] of script.entries()) {
      await act(script, index, step, stages, desk, async () => {
        if (index % 4 === 1) breakSomething(index);
        if (killedAt.includes(index)) {
          await program.kill();
          program.start();
        }
      });
    }
    expect(await program.stop()).toBe(0);
    expect(telegram.violations).toEqual([]);
    expect(discord.violations).toEqual([]);
    expect(program.output()).not.toContain(telegram.token);
    expect(program.output()).not.toContain(discord.token);
    const expected = script
      .flatMap(({ outputs }) => outputs)
      .filter(({ to }) => to === owner)
      .map(({ facts }) => plain(facts));
    for (const { name } of stages) expect(factsIn(join(folder, 'bot'), name)).toEqual(expected);
  } finally {
    await program.kill();
    await telegram.close();
    await discord.close();
    await rm(folder, { recursive: true, force: true });
  }

  function breakSomething(index: number): void {
    const fault = weather[index % weather.length] as Fault;
    telegram.faults.on(
      ({ method, body }) => method.startsWith('send') && String(body.chat_id) === '11',
      fault,
    );
    discord.faults.on(({ method }) => /^POST \/channels\/\d+\/messages$/.test(method), fault);
    if (index % 8 === 1) telegram.faults.on('getUpdates', { kind: 'status', status: 500 });
    if (index === 13) discord.gateway.drop();
    if (index === 21) discord.gateway.askToReconnect();
  }
});

/** Does what the script says on every stage, and waits until each shows what the console said. */
async function act(
  script: ScriptStep[],
  index: number,
  { line, outputs }: ScriptStep,
  stages: Stage[],
  desk: DeskStage,
  meanwhile: () => Promise<void>,
): Promise<void> {
  if ('role' in line) {
    if ('text' in line) desk.say(line.text);
    else {
      await until(
        `the desk offers ${line.choose}`,
        () => desk.offers(line.choose, stages.length),
        patienceMs,
      );
      desk.press(line.choose);
    }
  } else {
    for (const stage of stages) {
      if ('text' in line) stage.say(line.text);
      else if ('choose' in line) stage.press(line.choose);
    }
  }
  await meanwhile();
  const expected = collapse(
    script
      .slice(0, index + 1)
      .flatMap(({ outputs }) => outputs.filter(({ to }) => to === owner).map(({ text }) => text)),
  );
  const relayed =
    !('role' in line) && 'text' in line && outputs.some(({ to, edit }) => to === 'desk' && !edit);
  if (relayed && line.text !== 'human') {
    await until('the desk reads it', () => desk.reads(line.text), patienceMs);
  }
  for (const stage of stages) {
    const shows = () => sameBut(collapse(stage.shown()), expected);
    await until(`${stage.name} shows step ${index}`, shows, patienceMs).catch((error) => {
      throw new Error(
        `${error.message}\n--- shown\n${collapse(stage.shown()).slice(-600)}\n--- expected\n${expected.slice(-600)}`,
      );
    });
  }
}

const isTyped = (step: ScriptStep | undefined) =>
  step !== undefined && 'text' in step.line && !('role' in step.line);

const collapse = (texts: string[]) => texts.join(' ').replace(/\s+/g, ' ').trim();

const sameBut = (one: string, other: string) => withoutCodes(one) === withoutCodes(other);

/** Codes of records and cases differ from one conversation to the next. */
const withoutCodes = (text: string) => text.replace(/\b[0-9A-Z]{5}\b/g, 'CODE');

function plain(facts: Facts): unknown {
  return JSON.parse(
    withoutCodes(
      JSON.stringify(facts, (key, value) =>
        ['id', 'owner', 'code'].includes(key) && typeof value === 'string' ? '…' : value,
      ),
    ),
  );
}

function factsIn(folder: string, platform: string): unknown[] {
  const db = new DatabaseSync(join(folder, 'gaugehand.db'), { readOnly: true });
  const rows = db.prepare('SELECT message FROM outbox ORDER BY row').all() as { message: string }[];
  db.close();
  return rows
    .map(({ message }) => JSON.parse(message) as OutgoingMessage)
    .filter(({ to }) => to.kind === 'owner' && to.platform === platform)
    .map(({ facts }) => plain(facts));
}

/** The shipped content, with the desk open day and night: what an owner is told must not hang on the hour. */
async function contentAlwaysOpen(folder: string): Promise<string> {
  const content = copyEnglishContent(folder);
  const file = join(content, 'workshop.yaml');
  const text = await readFile(file, 'utf8');
  const days = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
  const hours = days.map((day) => `  ${day}: [["00:00", "24:00"]]`).join('\n');
  await writeFile(
    file,
    text.replace(/hours:\n(?: {2}.*\n)+/, `hours:\n${hours}\n`).replace(/holidays:.*\n/, ''),
  );
  return content;
}
