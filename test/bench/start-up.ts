// G11: both platforms loaded, and the whole bot connected to both: from the start until then, and what it holds in memory; against bare node.
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startDiscord } from '../loopback/discord/server.ts';
import { startTelegram } from '../loopback/telegram/server.ts';
import { alternate, type BenchOptions, type BenchResult, result } from './measure.ts';

const root = join(import.meta.dirname, '..', '..');
const patienceMs = 60_000;

interface Start {
  args: string[];
  environment: Record<string, string>;
  /** All of these stand in what it prints once it is ready. */
  signs: string[];
}

interface Started {
  readyMs: number;
  residentMb: number;
}

/** Starts a program, and ends it in order once it is ready: only then does it write its compile cache. */
async function start({ args, environment, signs }: Start): Promise<Started> {
  const { PATH = '', HOME = '' } = process.env;
  const began = performance.now();
  const child = spawn(process.execPath, args, { cwd: root, env: { PATH, HOME, ...environment } });
  const gone = new Promise((resolve) => child.once('exit', resolve));
  let printed = '';
  try {
    const readyMs = await new Promise<number>((resolve, reject) => {
      for (const stream of [child.stdout, child.stderr]) {
        stream.setEncoding('utf8').on('data', (text: string) => {
          printed += text;
          if (signs.every((sign) => printed.includes(sign))) resolve(performance.now() - began);
        });
      }
      child.once('exit', (code) => reject(new Error(`ended with ${code}: ${printed}`)));
      setTimeout(() => reject(new Error(`not ready: ${printed}`)), patienceMs).unref();
    });
    const kilobytes = execFileSync('ps', ['-o', 'rss=', '-p', String(child.pid)], { encoding: 'utf8' });
    return { readyMs, residentMb: Number(kilobytes) / 1024 };
  } finally {
    child.kill('SIGTERM');
    await gone;
  }
}

/** On platforms of its own: Discord lets nobody begin a session twice within five seconds. */
async function startBot(environment: Record<string, string>): Promise<Started> {
  const telegram = await startTelegram();
  const discord = await startDiscord();
  try {
    return await start({
      args: ['src/start.mjs', 'bot'],
      environment: {
        ...environment,
        TELEGRAM_TOKEN: telegram.token,
        TELEGRAM_API_ROOT: telegram.url,
        DISCORD_TOKEN: discord.token,
        DISCORD_API_ROOT: discord.url,
      },
      signs: ['Telegram is ready', 'Discord is ready'],
    });
  } finally {
    await telegram.close();
    await discord.close();
  }
}

const startBare = (environment: Record<string, string>) =>
  start({
    args: ['-e', 'process.stdout.write("ready"); setInterval(() => {}, 60_000)'],
    environment,
    signs: ['ready'],
  });

const startLoaded = (environment: Record<string, string>) =>
  start({ args: ['test/bench/loaded-bot.ts'], environment, signs: ['ready'] });

export async function measureStartUp(options: BenchOptions = {}): Promise<BenchResult[]> {
  const rounds = options.quick ? 3 : 15;
  const folder = mkdtempSync(join(tmpdir(), 'gaugehand-bench-'));
  const environment = { NODE_COMPILE_CACHE: join(folder, 'compiled'), DATA_DIR: join(folder, 'data') };
  const resident = { bare: [] as number[], loaded: [] as number[], connected: [] as number[] };
  const timed = (startOne: typeof startBare, kept: number[]) => async () => {
    const { readyMs, residentMb } = await startOne(environment);
    kept.push(residentMb);
    return readyMs;
  };
  const sides = {
    bare: timed(startBare, resident.bare),
    loaded: timed(startLoaded, resident.loaded),
    connected: timed(startBot, resident.connected),
  };
  try {
    // The first starts fill the compile cache.
    await alternate(1, sides);
    for (const kept of Object.values(resident)) kept.length = 0;
    const ready = await alternate(rounds, sides);
    const goals = [
      { kind: 'loaded', id: 'G11', what: 'both platforms loaded, compile cache warm' },
      { kind: 'connected', id: 'G11', what: 'the bot connected to both platforms, all content read' },
    ] as const;
    return goals.flatMap(({ kind, id, what }) => [
      result({
        id,
        what: `${what}: resident memory against bare node`,
        unit: 'MB',
        ours: resident[kind],
        other: resident.bare,
        goal: '<= 3.5',
      }),
      result({
        id,
        what: `${what}: from the start until then, against bare node`,
        unit: 'ms',
        ours: ready[kind],
        other: ready.bare,
        goal: '<= 16',
      }),
    ]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
