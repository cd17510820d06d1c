// G7: an update posted to the webhook until its 200, which says that the turn is on the disk, against bare node:http that only parses; 64 connections.
import { type ChildProcess, spawn } from 'node:child_process';
import { connect, type Socket } from 'node:net';
import { join } from 'node:path';
import { startTelegram } from '../loopback/telegram/server.ts';
import { alternate, type BenchOptions, type BenchResult, quantile, result } from './measure.ts';
import { secret } from './webhook-servers.ts';

const connections = 64;
/** Far more chats than connections, each on one connection: a platform asks for the next only once it has the 200. */
const chatsEach = 16;
/** Whatever goes wrong: so many requests on one connection in one round, and no more. */
const most = 20_000;

interface Served {
  port: number;
  child: ChildProcess;
}

/** In a process of its own, so that who asks and who answers have a core each. */
async function serve(which: 'bare' | 'ours', apiRoot: string): Promise<Served> {
  const program = join(import.meta.dirname, 'webhook-servers.ts');
  const child = spawn(process.execPath, [program, which, apiRoot], { stdio: ['ignore', 'pipe', 'inherit'] });
  const port = await new Promise<number>((resolve, reject) => {
    child.stdout.once('data', (said) => resolve(Number(said)));
    child.once('exit', (code) => reject(new Error(`the ${which} server ended with ${code}`)));
  });
  return { port, child };
}

async function stop({ child }: Served): Promise<void> {
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGTERM');
  await gone;
}

let updates = 1_000_000;

function requestOf(chat: number): string {
  updates += 1;
  const from = {
    id: 4_700_000_000 + chat,
    is_bot: false,
    first_name: 'Ann',
    username: `ann_example_${chat}`,
  };
  const body = JSON.stringify({
    update_id: updates,
    message: {
      message_id: updates,
      from: { ...from, language_code: 'en' },
      chat: { id: from.id, first_name: 'Ann', username: from.username, type: 'private' },
      date: 1_767_600_000,
      text: '0.348 V, closed',
    },
  });
  return `POST /updates HTTP/1.1\r\nhost: 127.0.0.1\r\ncontent-type: application/json\r\nx-telegram-bot-api-secret-token: ${secret}\r\ncontent-length: ${body.length}\r\n\r\n${body}`;
}

/** Posts for so long on every connection, one after the other; resolves to answers a second. */
async function load({ port }: Served, ms: number, waits: { p50: number[]; p99: number[] }): Promise<number> {
  const took: number[] = [];
  const began = performance.now();
  await Promise.all(Array.from({ length: connections }, (_, lane) => postOn(port, lane, began + ms, took)));
  const perSecond = (took.length * 1000) / (performance.now() - began);
  waits.p50.push(quantile(took, 0.5));
  waits.p99.push(quantile(took, 0.99));
  return perSecond;
}

function postOn(port: number, lane: number, until: number, took: number[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const socket: Socket = connect(port, '127.0.0.1');
    let sent = 0;
    let asked = 0;
    let heard = '';
    const ask = () => {
      if (performance.now() > until || sent >= most) return void socket.end(resolve);
      const chat = lane * chatsEach + (sent % chatsEach);
      sent += 1;
      asked = performance.now();
      socket.write(requestOf(chat));
    };
    socket.setNoDelay(true);
    socket.setEncoding('latin1');
    socket.on('connect', ask);
    socket.on('error', reject);
    socket.setTimeout(10_000, () => reject(new Error('no answer for ten seconds')));
    socket.on('data', (text: string) => {
      heard += text;
      // Both answer with this body, whole only together with it.
      if (!heard.endsWith('{"ok":true}')) return;
      if (!heard.startsWith('HTTP/1.1 200 ')) return reject(new Error(`answered: ${heard}`));
      heard = '';
      took.push(performance.now() - asked);
      ask();
    });
  });
}

export async function measureWebhook(options: BenchOptions = {}): Promise<BenchResult[]> {
  const rounds = options.quick ? 3 : 9;
  const ms = options.quick ? 300 : 800;
  const telegram = await startTelegram();
  const served: Served[] = [];
  try {
    const bare = await serve('bare', telegram.url);
    served.push(bare);
    const ours = await serve('ours', telegram.url);
    served.push(ours);
    const waits = { p50: [] as number[], p99: [] as number[] };
    const waitsOfBare = { p50: [] as number[], p99: [] as number[] };
    const sides = {
      bare: () => load(bare, ms, waitsOfBare),
      ours: () => load(ours, ms, waits),
    };
    // The first round warms up, and makes every chat its conversation.
    await alternate(1, sides);
    for (const kept of [waits, waitsOfBare]) for (const all of Object.values(kept)) all.length = 0;
    const rates = await alternate(rounds, sides);
    return [
      result({
        id: 'G7',
        what: `webhook to durable 200, ${connections} connections, against bare node:http with JSON.parse`,
        unit: 'updates/s',
        ours: rates.ours,
        other: rates.bare,
        goal: '>= 0.4',
      }),
    ];
  } finally {
    await Promise.all(served.map(stop));
    await telegram.close();
  }
}
