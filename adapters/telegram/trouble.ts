// Reads from a failed call to Telegram what is the matter, for sending and for taking in.
import { GrammyError, HttpError } from 'grammy';

export type Trouble =
  | { kind: 'wait'; ms: number }
  | { kind: 'migrated'; chat: string }
  | { kind: 'revoked' }
  | { kind: 'conflict'; webhook: boolean }
  | { kind: 'topic-gone' }
  | { kind: 'message-gone' }
  | { kind: 'unchanged' }
  | { kind: 'no-topics' }
  | { kind: 'refused'; why: string }
  | { kind: 'passing'; why: string };

export const tokenRefused = 'Telegram does not take the token: TELEGRAM_TOKEN is wrong or was revoked.';

const meanings: [RegExp, Trouble['kind']][] = [
  [/message is not modified/i, 'unchanged'],
  [/thread not found|topic_?(deleted|closed|id_invalid)|topic (was )?(deleted|closed)/i, 'topic-gone'],
  [
    /message to (edit|delete|be replied) not found|message can't be edited|no text in the message/i,
    'message-gone',
  ],
  [
    /not a forum|forums? (is|are) disabled|rights to (create|manage) a? ?topic|chat_admin_required/i,
    'no-topics',
  ],
];

/** The texts hold no token: of a failed connection only the error's code is kept. */
export function readTrouble(error: unknown): Trouble {
  if (error instanceof HttpError) return { kind: 'passing', why: `no answer (${codeOf(error.error)})` };
  if (!(error instanceof GrammyError)) return { kind: 'passing', why: `no answer (${codeOf(error)})` };
  const { error_code: code, description, parameters } = error;
  if (parameters.retry_after !== undefined) return { kind: 'wait', ms: parameters.retry_after * 1000 };
  if (parameters.migrate_to_chat_id !== undefined) {
    return { kind: 'migrated', chat: String(parameters.migrate_to_chat_id) };
  }
  const why = `${code}: ${description}`;
  if (code === 401) return { kind: 'revoked' };
  if (code === 409) return { kind: 'conflict', webhook: /webhook/i.test(description) };
  if (code === 403 || code === 404) return { kind: 'refused', why };
  if (code === 400) {
    const meaning = meanings.find(([words]) => words.test(description))?.[1];
    return meaning === undefined ? { kind: 'refused', why } : ({ kind: meaning } as Trouble);
  }
  return { kind: 'passing', why };
}

function codeOf(error: unknown): string {
  if (typeof error !== 'object' || error === null) return 'unknown';
  const { code, name, cause } = error as { code?: unknown; name?: unknown; cause?: unknown };
  // Node's fetch wraps what went wrong.
  if (code === undefined && typeof cause === 'object' && cause !== null) return codeOf(cause);
  return String(code ?? name ?? 'unknown');
}
