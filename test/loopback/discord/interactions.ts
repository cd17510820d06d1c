// The presses, forms and commands that wait for an answer on the loopback Discord: one answer each, within three seconds.
import { firstAnswer, laterAnswer } from './rules.ts';

const within = 3_000;

export type InteractionKind = 'command' | 'press' | 'form';

export interface Pending {
  id: string;
  token: string;
  kind: InteractionKind;
  at: number;
  /** The type of the first answer. */
  answered: number | null;
  /** What stands in place of the deferred answer; null once taken back. */
  said: string | null;
  form: { custom_id: string; title: string } | null;
}

export function makeInteractions(breach: (what: string) => void) {
  const pending = new Map<string, Pending>();

  /** The HTTP status and, if refused, the error. */
  function answer(id: string, token: string, body: unknown): { status: number; code?: number } {
    const one = pending.get(token);
    if (!one || one.id !== id) return { status: 404, code: 10062 };
    if (Date.now() - one.at > within) {
      breach(`the ${one.kind} ${id} was answered after three seconds`);
      return { status: 404, code: 10062 };
    }
    if (one.answered !== null) {
      breach(`the ${one.kind} ${id} was answered twice`);
      return { status: 400, code: 40060 };
    }
    const parsed = firstAnswer.safeParse(body);
    if (!parsed.success) {
      breach(
        `answer to a ${one.kind}: ${parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`)}`,
      );
      return { status: 400, code: 50035 };
    }
    if (parsed.data.type === 6 && one.kind === 'command')
      breach('an update was deferred where there is no message');
    if (parsed.data.type === 9) {
      if (one.kind === 'form') breach('a form was answered with a form');
      one.form = parsed.data.data;
    }
    one.answered = parsed.data.type;
    return { status: 204 };
  }

  function sayLater(token: string, body: unknown): { status: number; code?: number } {
    const one = pending.get(token);
    if (!one || one.answered === null) {
      breach('an interaction was added to before it was answered');
      return { status: 404, code: 10015 };
    }
    const parsed = laterAnswer.safeParse(body);
    if (!parsed.success) {
      breach(`later answer: ${parsed.error.issues.map(({ message }) => message)}`);
      return { status: 400, code: 50035 };
    }
    one.said = parsed.data.content;
    return { status: 200 };
  }

  return {
    pending,
    answer,
    sayLater,
    takeBack(token: string): { status: number; code?: number } {
      const one = pending.get(token);
      if (!one || one.answered === null) return { status: 404, code: 10008 };
      one.said = null;
      return { status: 204 };
    },
    add(one: Pending): void {
      pending.set(one.token, one);
    },
    unanswered: () => [...pending.values()].filter(({ answered }) => answered === null).length,
  };
}

export type Interactions = ReturnType<typeof makeInteractions>;
