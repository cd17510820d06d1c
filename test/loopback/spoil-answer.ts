// Spoils the answer to a call that took effect, for the loopback platforms: the caller cannot know that it did.
import type { ServerResponse } from 'node:http';
import type { Fault } from './faults.ts';

/** `whole` is the answer as it would have been; false where this fault leaves it alone. */
export function spoilAnswer(fault: Fault, whole: unknown, response: ServerResponse): boolean {
  if (fault.kind === 'reset') {
    response.socket?.resetAndDestroy();
    return true;
  }
  if (fault.kind !== 'half-body') return false;
  const text = JSON.stringify(whole);
  response.writeHead(200, { 'content-type': 'application/json', 'content-length': text.length });
  response.write(text.slice(0, text.length / 2));
  setTimeout(() => response.socket?.destroy(), 5);
  return true;
}
