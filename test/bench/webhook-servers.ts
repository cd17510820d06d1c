// The two servers of G7, each a process of its own: the bot's webhook on a database file, and node:http that only parses. Prints its port.
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { createTelegram } from '../../adapters/telegram/bot.ts';
import { makeInbox } from '../../src/inbox/receive.ts';
import { openSqliteStore } from '../../src/store/sqlite/open-sqlite-store.ts';
import { decideBench } from './one-kilobyte.ts';

export const secret = 'a_secret-of-the-bench';

async function listen(server: Server): Promise<number> {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return (server.address() as AddressInfo).port;
}

function serveBare(): Promise<number> {
  const body = '{"ok":true}';
  const server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on('data', (chunk) => chunks.push(chunk));
    request.on('end', () => {
      JSON.parse(Buffer.concat(chunks).toString('utf8'));
      response.writeHead(200, { 'content-type': 'application/json', 'content-length': body.length });
      response.end(body);
    });
  });
  return listen(server);
}

/** The adapter with inbox and store as the bot has them, and a conversation of one kilobyte; nothing is sent. */
async function serveOurs(apiRoot: string): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'gaugehand-bench-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  const store = await openSqliteStore({ file: join(folder, 'a.db'), clock: Date.now });
  const spare = createServer();
  const port = await listen(spare);
  await new Promise((resolve) => spare.close(resolve));
  const webhook = { url: `http://127.0.0.1:${port}/updates`, secret, port };
  const adapter = createTelegram(
    { token: '77:LOOPBACK', apiRoot, webhook, tipsChannel: null },
    {
      links: store.links,
      words: { say: (text) => text, languages: ['en'], workshop: 'en' },
      log: { info() {}, warn() {}, error() {} },
      deskCode: null,
      isHealthy: () => true,
      onFatal(_, why) {
        throw new Error(why);
      },
      sentParts: (messageId) => store.outbox.sentParts(messageId, 'telegram'),
      fetchForeign: async () => null,
    },
  );
  await adapter.start(makeInbox(store, decideBench).receive);
  return port;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const [, , which, apiRoot = ''] = process.argv;
  process.once('SIGTERM', () => process.exit(0));
  process.stdout.write(`${which === 'bare' ? await serveBare() : await serveOurs(apiRoot)}\n`);
}
