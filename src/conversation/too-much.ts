// Keeps one person's flood from the program and the desk: so many messages a minute are taken, then one kind answer, then none; red flags always count.
import type { IncomingMessage } from '../chat/incoming-message.ts';
import { hear } from '../measurement/hear.ts';
import { line, say } from './say.ts';
import type { Turn } from './turn.ts';

const minute = 60_000;
/** Where a flag stands, it stands within so many characters. */
const longestFlag = 400;

export function isTooMuch(turn: Turn, { body }: IncomingMessage): boolean {
  const { state, scene } = turn;
  const { mostPerMinute, now } = scene;
  if (mostPerMinute === null) return false;
  const began = state.pace === null || now - state.pace.since >= minute;
  state.pace = began || state.pace === null ? { since: now, count: 0 } : state.pace;
  state.pace.count += 1;
  const over = state.pace.count - mostPerMinute;
  if (over <= 0 || isFlag(turn, body)) return false;
  if (over === 1) say(turn, { lines: [line('too-fast')] });
  return true;
}

function isFlag({ scene, state }: Turn, body: IncomingMessage['body']): boolean {
  const text = body.kind === 'text' ? body.text : body.kind === 'picture' ? body.caption : '';
  return hear(text.slice(0, longestFlag), null, scene.lexicons(state.language)).kind === 'red-flag';
}
