// A loopback Discord for tests: REST and gateway over real sockets, strict, noting every breach of the published rules.
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Call, type Fault, makeFaultScript } from '../faults.ts';
import { readBody } from '../read-body.ts';
import { spoilAnswer } from '../spoil-answer.ts';
import { makeGateway } from './gateway.ts';
import { makeInteractions } from './interactions.ts';
import { makeActors } from './people.ts';
import { makeRates } from './rates.ts';
import { type Answer, makeRoutes } from './rest.ts';
import { makeWorld } from './world.ts';

export type LoopbackDiscord = Awaited<ReturnType<typeof startDiscord>>;

export async function startDiscord({ token = 'loopback.token', port = 0, heartbeatMs = 10_000 } = {}) {
  const world = makeWorld();
  const violations: string[] = [];
  const breach = (what: string) => void violations.push(what);
  const faults = makeFaultScript();
  const interactions = makeInteractions(breach);
  const rates = makeRates(breach);
  const calls: Call[] = [];
  let revoked = false;

  const server = createServer((request, response) => {
    handle(request, response).catch(() => send(response, { status: 500 }));
  });
  const address = () => (server.address() as AddressInfo).port;
  const gateway = makeGateway({
    server,
    world,
    token,
    breach,
    heartbeatMs,
    url: () => `ws://127.0.0.1:${address()}`,
  });
  const route = makeRoutes({
    world,
    interactions,
    breach,
    sessions: gateway.identified,
    gatewayUrl: () => `ws://127.0.0.1:${address()}`,
    dispatch: gateway.dispatch,
  });

  async function handle(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const url = new URL(request.url ?? '/', 'http://localhost');
    const method = request.method ?? 'GET';
    const { fields, files } = await readBody(request);
    const path = decodeURIComponent(url.pathname).replace(/^\/api\/v10/, '');
    if (!url.pathname.startsWith('/api/v10')) breach(`${path} is not below /api/v10`);
    const free = path.startsWith('/interactions/') || path.startsWith('/webhooks/');
    if (!free && (request.headers.authorization !== `Bot ${token}` || revoked)) {
      return send(response, { status: 401, code: 0 });
    }
    const body = (
      typeof fields.payload_json === 'string' ? JSON.parse(fields.payload_json) : fields
    ) as Call['body'];
    const call = { method: `${method} ${path}`, body };
    calls.push(call);
    const fault = faults.take(call);
    if (fault && !(await before(fault, call, response))) return;
    const limit = path.startsWith('/channels/') ? rates.count(call.method) : null;
    if (limit?.refused) return tooMany(response, limit.refused.retryAfter, limit.refused.everywhere);
    const answer = route({ method, path, query: url.searchParams, body, files: [...files.values()] });
    if (fault && spoilAnswer(fault, answer.body ?? {}, response)) return;
    send(response, answer, limit?.headers);
  }

  /** Whether the call still takes place. */
  async function before(fault: Fault, call: Call, response: ServerResponse): Promise<boolean> {
    switch (fault.kind) {
      case 'slow':
        await new Promise((resolve) => setTimeout(resolve, fault.ms));
        return true;
      case 'wait':
        rates.hold(call.method, fault.seconds, fault.everywhere ?? false);
        tooMany(response, fault.seconds, fault.everywhere ?? false);
        return false;
      case 'status':
        send(response, { status: fault.status });
        return false;
      case 'reset':
        if (fault.after) return true;
        response.socket?.resetAndDestroy();
        return false;
      default:
        return true;
    }
  }

  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));

  return {
    url: `http://127.0.0.1:${address()}/api`,
    token,
    world,
    faults,
    calls,
    violations,
    gateway,
    interactions,
    ...makeActors(world, interactions, gateway.dispatch),
    revoke: () => {
      revoked = true;
    },
    async close() {
      gateway.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

function tooMany(response: ServerResponse, retryAfter: number, everywhere: boolean): void {
  response.writeHead(429, {
    'content-type': 'application/json',
    'retry-after': String(retryAfter),
    'x-ratelimit-scope': everywhere ? 'global' : 'user',
    ...(everywhere ? { 'x-ratelimit-global': 'true' } : {}),
  });
  response.end(
    JSON.stringify({ message: 'You are being rate limited.', retry_after: retryAfter, global: everywhere }),
  );
}

function send(
  response: ServerResponse,
  { status, body, code }: Answer,
  headers: Record<string, string> = {},
): void {
  // Without a body there is no type of one either.
  if (status === 204) return void response.writeHead(204, headers).end();
  response.writeHead(status, { ...headers, 'content-type': 'application/json' });
  response.end(JSON.stringify(code === undefined ? (body ?? {}) : { code, message: `error ${code}` }));
}
