// `npm run try -- telegram` (or discord): the real bot on a stand-in of the platform, in the terminal, with no account; for a first look.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { makeBotProgram } from './bot-program.ts';
import { openDiscordRoom, openTelegramRoom, type Room, type Shown } from './room.ts';
import { until } from './until.ts';

const rooms: Record<string, () => Promise<Room>> = {
  telegram: openTelegramRoom,
  discord: openDiscordRoom,
};
const usage = `Which platform? npm run try -- telegram, or npm run try -- discord\n`;
const deskCode = 'try-it-out';
const patienceMs = 30_000;
const lookEveryMs = 100;
/** So long nothing new came, and the next line of a script is taken. */
const quietMs = 1_500;

const hello = (
  platform: string,
) => `The bot runs on a stand-in of ${platform} on this machine; nothing leaves it, and nothing is kept.
What you type, the owner says.    #2      presses the second button.
desk: words    is said at the desk, in the latest case.    desk: #1    presses a button there.
Ctrl-C ends it.

`;

const openRoom = rooms[process.argv[2] ?? ''];
if (!openRoom) {
  process.stderr.write(usage);
  process.exitCode = 64;
} else {
  await tryOut(process.argv[2] ?? '', await openRoom());
}

async function tryOut(platform: string, room: Room): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'gaugehand-try-'));
  const program = makeBotProgram({
    ...room.settings,
    DATA_DIR: folder,
    DESK_CODE: deskCode,
    LOG_LEVEL: 'error',
  });
  const teller = makeTeller(room);
  const looking = setInterval(teller.tell, lookEveryMs);
  try {
    program.start();
    await until('the bot to connect', () => room.isConnected(), patienceMs);
    room.claimDesk(deskCode);
    process.stdout.write(hello(platform));
    const lines = createInterface({ input: process.stdin });
    process.once('SIGINT', () => lines.close());
    room.say('hello');
    for await (const line of lines) {
      // What is typed by hand comes slowly; a script waits until it has been answered.
      if (!process.stdin.isTTY) await teller.quiet();
      act(room, line.trim());
    }
    await teller.quiet();
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n${program.output()}`);
    process.exitCode = 1;
  } finally {
    clearInterval(looking);
    await program.stop();
    await room.close();
    await rm(folder, { recursive: true, force: true });
    for (const breach of room.violations)
      process.stderr.write(`a rule of the platform was broken: ${breach}\n`);
  }
}

function act(room: Room, line: string): void {
  const [, said] = /^desk:\s*(.*)$/iu.exec(line) ?? [];
  const where = said === undefined ? 'you' : 'desk';
  const text = said ?? line;
  const [, number] = /^#(\d+)$/u.exec(text) ?? [];
  if (text === '') return;
  if (number === undefined) return said === undefined ? room.say(text) : room.sayAtDesk(text);
  const latest = room.shown().findLast((one) => one.where === where && one.buttons.length > 0);
  const button = latest?.buttons[Number(number) - 1];
  if (button) button.press();
  else process.stdout.write(`There is no button ${number} just now.\n`);
}

/** Writes what is new or changed since it was looked at last. */
function makeTeller(room: Room) {
  const known = new Map<string, string>();
  let changedAt = Date.now();
  return {
    tell() {
      for (const shown of room.shown()) {
        const before = known.get(shown.id);
        if (before === faceOf(shown)) continue;
        changedAt = Date.now();
        known.set(shown.id, faceOf(shown));
        // Buttons that were pressed go away: nothing to tell.
        if (before?.startsWith(faceOf({ ...shown, buttons: [] }).trimEnd()) && shown.buttons.length === 0)
          continue;
        process.stdout.write(`${before === undefined ? '' : '(now reads)\n'}${faceOf(shown)}\n`);
      }
    },
    async quiet() {
      changedAt = Date.now();
      while (Date.now() - changedAt < quietMs) await new Promise((resolve) => setTimeout(resolve, 50));
    },
  };
}

function faceOf({ where, text, picture, buttons }: Shown): string {
  const margin = where === 'desk' ? 'desk | ' : '';
  const lines = [
    ...(picture ? ['[a picture]'] : []),
    ...text.split('\n'),
    ...buttons.map(({ label }, index) => `  #${index + 1}  ${label}`),
  ];
  return `${lines.map((line) => `${margin}${line}`.trimEnd()).join('\n')}\n`;
}
