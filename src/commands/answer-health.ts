// The health endpoint of the bot, for whoever watches over it: well while every platform gives signs of life.
import { createServer, type Server } from 'node:http';
import type { PlatformAdapter } from '../../adapters/wire/surroundings.ts';

/** Longer than a long poll or a heartbeat with a few tries in between. */
const silenceMs = 5 * 60_000;

/** A platform that has not answered yet since the start is given as long. */
export function isHealthy(platforms: readonly PlatformAdapter[], now = Date.now()): boolean {
  const startedAt = now - process.uptime() * 1000;
  return platforms.every((platform) => now - (platform.lastSign() ?? startedAt) < silenceMs);
}

export async function answerHealth(port: number, healthy: () => boolean): Promise<Server> {
  const server = createServer((request, response) => {
    const found = request.url === '/health';
    const status = found ? (healthy() ? 200 : 503) : 404;
    response.writeHead(status, { 'content-type': 'application/json' });
    response.end(JSON.stringify({ ok: status === 200 }));
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, resolve);
  });
  server.unref();
  return server;
}
