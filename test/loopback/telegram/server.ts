// A loopback Telegram for tests: speaks the Bot API over real sockets, strictly, and notes every breach of its published rules.
import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Call, type Fault, makeFaultScript } from '../faults.ts';
import { readBody } from '../read-body.ts';
import { spoilAnswer } from '../spoil-answer.ts';
import { makeMethods, Refusal } from './methods.ts';
import { makeActors } from './people.ts';
import { makeQueue } from './queue.ts';
import { makeRates } from './rates.ts';
import { isMethod, rules } from './rules.ts';
import { makeWorld } from './world.ts';

export type LoopbackTelegram = Awaited<ReturnType<typeof startTelegram>>;

const postingMethods: readonly string[] = [
  'sendMessage',
  'sendPhoto',
  'sendDocument',
  'editMessageText',
  'editMessageMedia',
];

export async function startTelegram({ token = '77:LOOPBACK', port = 0, answerWithinMs = 5_000 } = {}) {
  const world = makeWorld();
  const queue = makeQueue();
  const faults = makeFaultScript();
  const violations: string[] = [];
  const calls: (Call & { at: number })[] = [];
  const rates = makeRates((breach) => violations.push(breach));
  const presses = new Map<string, { at: number; answered: boolean }>();
  let revoked = false;
  let conflict = false;

  const methods = makeMethods(world, (query) => {
    const press = presses.get(query);
    if (!press || press.answered) return false;
    press.answered = true;
    if (Date.now() - press.at > answerWithinMs) violations.push('a press was answered late');
    return true;
  });

  const server = createServer(async (request, response) => {
    const path = request.url ?? '';
    const file = new RegExp(`^/file/bot${token}/photos/(.+)\\.jpg$`).exec(path)?.[1];
    if (file) return void response.end(world.files.get(file));
    const [, given, method = ''] = /^\/bot([^/]+)\/(\w+)$/.exec(path) ?? [];
    const { fields, files } = await readBody(request).catch(() => ({
      fields: {},
      files: new Map<string, Buffer>(),
    }));
    if (given !== token || revoked) return fail(response, new Refusal(401, 'Unauthorized'));
    calls.push({ method, body: fields, at: Date.now() });
    const fault = faults.take({ method, body: fields });
    if (fault && !(await before(fault, fields, response))) return;
    try {
      const result = await run(method, fields, files);
      if (fault && spoilAnswer(fault, { ok: true, result }, response)) return;
      send(response, 200, { ok: true, result });
    } catch (error) {
      if (error instanceof Refusal) fail(response, error);
      else fail(response, new Refusal(500, 'Internal Server Error'));
    }
  });

  async function run(
    method: string,
    fields: Record<string, unknown>,
    files: Map<string, Buffer>,
  ): Promise<unknown> {
    if (!isMethod(method)) {
      violations.push(`there is no method ${method}`);
      throw new Refusal(404, 'Not Found: method not found');
    }
    const parsed = rules[method].safeParse(fields);
    if (!parsed.success) {
      const what = parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`).join('; ');
      violations.push(`${method}: ${what}`);
      throw new Refusal(400, `Bad Request: ${what}`);
    }
    const valid = parsed.data as Record<string, unknown>;
    if (postingMethods.includes(method)) rates.count(String(valid.chat_id), world);
    if (method === 'getUpdates') return await getUpdates(valid);
    if (method === 'setWebhook') {
      const { url, secret_token } = valid as { url: string; secret_token?: string };
      queue.setWebhook(url === '' ? null : { url, secret: secret_token });
      return true;
    }
    if (method === 'deleteWebhook') {
      queue.setWebhook(null);
      return true;
    }
    return methods[method]?.(valid as Record<string, unknown>, files);
  }

  async function getUpdates(fields: { offset?: number; limit?: number; timeout?: number }): Promise<unknown> {
    if (queue.webhook()) {
      throw new Refusal(409, "Conflict: can't use getUpdates method while webhook is active");
    }
    const terminated =
      'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running';
    if (conflict) throw new Refusal(409, terminated);
    const updates = await queue.poll(fields.offset, fields.limit ?? 100, fields.timeout ?? 0);
    if (updates === 'conflict') throw new Refusal(409, terminated);
    return updates;
  }

  /** Whether the call still takes place. */
  async function before(
    fault: Fault,
    fields: Record<string, unknown>,
    response: ServerResponse,
  ): Promise<boolean> {
    if (fault.kind === 'slow') {
      await new Promise((resolve) => setTimeout(resolve, fault.ms));
      return true;
    }
    if (fault.kind === 'wait') {
      rates.hold(String(fields.chat_id ?? ''), fault.seconds);
      fail(
        response,
        new Refusal(429, `Too Many Requests: retry after ${fault.seconds}`, { retry_after: fault.seconds }),
      );
      return false;
    }
    if (fault.kind === 'status') {
      response.writeHead(fault.status, { 'content-type': 'text/html' }).end('<html>bad gateway</html>');
      return false;
    }
    if (fault.kind === 'reset' && !fault.after) {
      response.socket?.resetAndDestroy();
      return false;
    }
    return true;
  }

  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));

  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    token,
    world,
    faults,
    queue,
    calls,
    violations,
    ...makeActors(world, queue, presses),
    /** Every token is refused from now on. */
    revoke: () => {
      revoked = true;
    },
    /** Another program polls, as long as this is on. */
    setConflict: (on: boolean) => {
      conflict = on;
    },
    unanswered: () => [...presses.values()].filter(({ answered }) => !answered).length,
    async close() {
      queue.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

function fail(response: ServerResponse, { code, message, parameters }: Refusal): void {
  send(response, code, {
    ok: false,
    error_code: code,
    description: message,
    ...(parameters ? { parameters } : {}),
  });
}

function send(response: ServerResponse, status: number, body: unknown): void {
  response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(body));
}
