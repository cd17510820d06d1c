// A person's face of the console: shows messages wrapped with numbered choices, and takes what is typed, at a terminal or through a pipe.
import { access } from 'node:fs/promises';
import { createInterface, type Interface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { styleText } from 'node:util';
import type { Adapter } from '../../src/chat/adapter.ts';
import type { IncomingMessage } from '../../src/chat/incoming-message.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { arriving, decodeTyped, type Offer } from './decode-typed.ts';
import { keepPicture } from './keep-picture.ts';
import { asksFigure, layOutMessage, type Paint } from './lay-out-message.ts';
import { readLines } from './read-lines.ts';

export interface PersonOptions {
  input: Readable & { isTTY?: boolean };
  output: Writable & { isTTY?: boolean; columns?: number };
  colour: boolean;
  pictures: string | null;
  /** As the operating system reports it, `de` or `pt-BR`; null where it does not. */
  locale: string | null;
  /** Sends all that is queued. */
  settle: () => Promise<void>;
  alone: (work: () => Promise<void>) => Promise<void>;
  /** What to say of a line that could not be taken; throws on where nothing more can be done. */
  failed: (error: unknown) => string;
}

export interface PersonFace extends Adapter {
  /** Resolves when the person leaves: end of input, Ctrl-C, or told to stop. */
  ended: Promise<void>;
}

const styles = { margin: 'dim', number: 'bold', aside: 'dim' } as const;

export function makePersonFace(options: PersonOptions): PersonFace {
  const { input, output, colour, pictures, locale, settle, alone, failed } = options;
  const { promise: ended, resolve, reject } = Promise.withResolvers<void>();
  const stopping = new AbortController();
  const offers = new Map<string, Offer>();
  const cards = new Map<string, OutgoingMessage['choices']>();
  const terminal: Interface | null =
    input.isTTY && output.isTTY ? createInterface({ input, output, prompt: '> ' }) : null;
  const paint: Paint = (kind, text) =>
    colour ? styleText(styles[kind], text, { validateStream: false }) : text;

  function show(text: string): void {
    // The line being typed is taken off, and put back below.
    if (terminal !== null) output.write('\r\u001b[K');
    output.write(`${text}\n\n`);
    terminal?.prompt(true);
  }

  async function* typed(): AsyncGenerator<string> {
    if (terminal === null) {
      yield* readLines(input, stopping.signal);
      return;
    }
    terminal.on('SIGINT', () => terminal.close());
    terminal.prompt();
    yield* terminal;
    output.write('\n');
  }

  return {
    name: 'console',
    ended,
    async start(receive) {
      const take = (message: IncomingMessage) =>
        alone(async () => {
          try {
            await receive(message);
          } catch (error) {
            show(paint('aside', `  ${failed(error)}`));
          }
          await settle();
        });
      const run = async () => {
        await take(arriving(locale));
        for await (const line of typed()) {
          const { message, unknownChoice } = decodeTyped(line, offers, locale);
          if (unknownChoice) show(paint('aside', '  There is no choice with that number.'));
          else if (!(await isThere(message))) show(paint('aside', '  There is no such file.'));
          else if (line.trim() !== '') await take(message);
          terminal?.prompt();
        }
      };
      run().then(resolve, reject);
    },
    async send(sendable) {
      const { message } = sendable;
      const picture = await keepPicture(pictures, sendable);
      const before = cards.get(message.id) ?? null;
      const { text, seat } = layOutMessage(message, output.columns || 80, picture, paint, before);
      if (message.to.kind === 'desk') cards.set(message.id, message.choices);
      const figureAsked = asksFigure(message);
      const earlier = offers.get(seat);
      if (message.choices.length > 0) {
        offers.set(seat, { messageId: message.id, choices: message.choices, figureAsked });
      } else if (earlier !== undefined && message.facts.ask !== undefined) {
        earlier.figureAsked = figureAsked;
      }
      show(text);
      return { kind: 'sent', platformIds: [message.id] };
    },
    async stop() {
      stopping.abort();
      terminal?.close();
      input.destroy();
    },
  };
}

/** A picture is named by its file. */
async function isThere({ body }: IncomingMessage): Promise<boolean> {
  if (body.kind !== 'picture') return true;
  return access(body.picture).then(
    () => true,
    () => false,
  );
}
