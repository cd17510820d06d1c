// Takes updates that Telegram posts to us; each is answered 200 only once it is dealt with, so that Telegram repeats what was not.
import { hash, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { Update } from 'grammy/types';
import type { Lanes } from '../wire/lanes.ts';
import type { Surroundings } from '../wire/surroundings.ts';
import { laneOf } from './poll.ts';

export interface Webhook {
  /** Where Telegram posts to; only its path matters here. */
  url: string;
  secret: string;
  port: number;
}

export interface Listening {
  webhook: Webhook;
  take: (update: Update) => Promise<void>;
  lanes: Lanes;
  around: Surroundings;
}

const largestBody = 1024 * 1024;

/** The health endpoint says that the program lives, to whoever watches over it. */
const healthPath = '/health';

export async function listen({ webhook, take, lanes, around }: Listening): Promise<Server> {
  const path = new URL(webhook.url).pathname;
  const secret = digest(webhook.secret);
  const server = createServer((request, response) => {
    handle(request).then(
      (status) => respond(response, status),
      () => respond(response, 500),
    );
  });

  async function handle(request: IncomingMessage): Promise<number> {
    const [asked] = (request.url ?? '').split('?', 1);
    if (asked === healthPath) {
      if (request.method !== 'GET' && request.method !== 'HEAD') return 405;
      return around.isHealthy() ? 200 : 503;
    }
    if (asked !== path) return 404;
    if (request.method !== 'POST') return 405;
    if (!isSecret(request.headers['x-telegram-bot-api-secret-token'], secret)) return 401;
    const body = await readBody(request);
    if (body === null) return 413;
    const update = readUpdate(body);
    if (update === null) return 400;
    try {
      await lanes.run(laneOf(update), () => take(update));
      return 200;
    } catch {
      around.log.warn({ update: update.update_id }, 'an update was not taken; Telegram will send it again');
      return 500;
    }
  }

  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(webhook.port, resolve);
  });
  return server;
}

/** Secrets are compared hashed, so that neither length nor first difference shows in the time it takes. */
const digest = (text: string) => hash('sha256', text, 'buffer');

const isSecret = (given: string | string[] | undefined, secret: Buffer) =>
  typeof given === 'string' && timingSafeEqual(digest(given), secret);

/** Null where it is too large; the rest of it is then not waited for. */
function readBody(request: IncomingMessage): Promise<string | null> {
  if (Number(request.headers['content-length'] ?? 0) > largestBody) return Promise.resolve(null);
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    let size = 0;
    request.on('data', (chunk: Buffer) => {
      size += chunk.length;
      if (size > largestBody) return resolve(null);
      chunks.push(chunk);
    });
    request.on('end', () => resolve(Buffer.concat(chunks).toString('utf8')));
    request.on('error', reject);
  });
}

function readUpdate(body: string): Update | null {
  try {
    const update = JSON.parse(body) as Update | null;
    return typeof update?.update_id === 'number' ? update : null;
  } catch {
    return null;
  }
}

function respond(response: ServerResponse, status: number): void {
  // A body that was not read to its end would be taken for the next request.
  if (status === 413) response.setHeader('connection', 'close');
  const body = status === 200 ? '{"ok":true}' : '{"ok":false}';
  response.writeHead(status, { 'content-type': 'application/json', 'content-length': body.length });
  response.end(body);
}
