// Reads one file of words for the checks: each message's place, what it is filled in with, and what is wrong with its writing.
import { type BaseNode, FluentParser, type Junk, type SyntaxNode, Visitor } from '@fluent/syntax';
import { lineStarts, placeAt } from './place-in-text.ts';
import type { Place, Problem } from './problem.ts';

/** A name that a message uses, and where. */
interface Mention extends Place {
  name: string;
}

export interface Message extends Place {
  key: string;
  /** `$variables` it is filled in with, other messages, and `-terms` it is made of. */
  variables: Mention[];
  messages: Mention[];
  terms: Mention[];
  /** Its writing is wrong, so that nothing else is known of it. */
  broken?: true;
}

export interface FluentFile {
  file: string;
  /** In the order of the file; terms are among them, with their hyphen. */
  entries: Message[];
}

export function readFluent(file: string, text: string): { fluent: FluentFile; problems: Problem[] } {
  const starts = lineStarts(text);
  const problems: Problem[] = [];
  const complain = (offset: number, message: string, mend: string) => {
    problems.push({ level: 'error', file, ...placeAt(starts, offset), message, mend });
  };
  const entries: Message[] = [];
  for (const entry of new FluentParser({ withSpans: true }).parse(text).body) {
    if (entry.type === 'Junk') {
      const { offset, message } = faultOf(entry);
      // It is there, if broken: nobody shall be told to add it.
      const key = /^-?[a-z][a-zA-Z0-9_-]*/.exec(entry.content)?.[0];
      if (key)
        entries.push({
          key,
          ...placeAt(starts, startOf(entry)),
          variables: [],
          messages: [],
          terms: [],
          broken: true,
        });
      complain(offset, `This is not Fluent: ${message.replace(/\.$/, '')}.`, mendOf(entry));
    } else if (entry.type === 'Message' || entry.type === 'Term') {
      const key = entry.type === 'Term' ? `-${entry.id.name}` : entry.id.name;
      const start = placeAt(starts, startOf(entry));
      const reader = new PatternReader(text, starts);
      reader.visit(entry);
      const { variables, messages, terms } = reader;
      entries.push({ key, ...start, variables, messages, terms });
      if (!entry.value) complain(startOf(entry), `"${key}" says nothing.`, `Write a text after "${key} =".`);
      for (const { offset, message, mend } of reader.complaints)
        complain(offset, `"${key}" ${message}`, mend);
    }
  }
  return { fluent: { file, entries }, problems };
}

/** Collects what a message is made of. */
class PatternReader extends Visitor {
  variables: Mention[] = [];
  messages: Mention[] = [];
  terms: Mention[] = [];
  complaints: { offset: number; message: string; mend: string }[] = [];
  private readonly text: string;
  private readonly starts: readonly number[];

  constructor(text: string, starts: readonly number[]) {
    super();
    this.text = text;
    this.starts = starts;
  }

  override visitVariableReference = (node: BaseNode) => this.variables.push(this.mention(node));
  override visitMessageReference = (node: BaseNode) => this.messages.push(this.mention(node));
  override visitTermReference = (node: BaseNode) => this.terms.push(this.mention(node));

  override visitTextElement = (node: SyntaxNode) => this.findNumbers(node);
  override visitPlaceable = (node: BaseNode) => {
    const inner = node.expression as SyntaxNode;
    if (inner.type === 'NumberLiteral' || inner.type === 'StringLiteral') this.findNumbers(inner);
    this.genericVisit(node);
  };

  override visitFunctionReference = (node: SyntaxNode) => {
    const { name } = node.id as { name: string };
    const { named } = node.arguments as { named: unknown[] };
    if (name !== 'NUMBER' || named.length > 0) {
      const message = `calls ${name}${named.length > 0 ? ' with options' : ''}, which is not there.`;
      this.complaints.push({
        offset: startOf(node),
        message,
        mend: 'Write the variable alone: its number comes ready.',
      });
    }
    this.genericVisit(node);
  };

  /** A number written into the words would not stand in the facts that go with the text. */
  private findNumbers(node: SyntaxNode): void {
    const offset = startOf(node);
    for (const found of this.text.slice(offset, node.span?.end).matchAll(looseNumber)) {
      if (found[0] === '1/min') continue;
      this.complaints.push({
        offset: offset + found.index,
        message: `holds the number ${found[0]}, which its facts would not know.`,
        mend: 'Write a variable there and let the program or the content give the number, or say it in words.',
      });
    }
  }

  private mention(node: BaseNode): Mention {
    return { name: (node.id as { name: string }).name, ...placeAt(this.starts, startOf(node as SyntaxNode)) };
  }
}

/** Digits that are no part of a name, as the 25 of "T25" or the 3 of "c-3" is; a speed's unit is found whole. */
const looseNumber = /(?<![\p{L}\p{N}.,-])(1\/min|\d+(?:[.,]\d+)*)(?![\p{L}\p{N}]|-\p{L})/gu;

function faultOf(junk: Junk): { offset: number; message: string } {
  const [annotation] = junk.annotations;
  return {
    offset: annotation?.span?.start ?? startOf(junk),
    message: annotation?.message ?? 'it cannot be read',
  };
}

function mendOf(junk: Junk): string {
  switch (junk.annotations[0]?.code) {
    case 'E0005':
      return 'Write a text after the "=".';
    case 'E0002':
      return 'Begin each message at the start of a line with "key = text"; indent what belongs to it.';
    case 'E0003':
      return 'Close each brace, and write "=" between key and text.';
    case 'E0010':
    case 'E0011':
    case 'E0015':
      return 'Mark exactly one of the variants with a star, as "*[other]".';
    case 'E0027':
    case 'E0028':
      return 'Write variables as "{ $name }", and a brace that is to be seen as "{ "{" }".';
    default:
      return 'Write it as "key = text", with variables as "{ $name }".';
  }
}

function startOf(node: SyntaxNode): number {
  return node.span?.start ?? 0;
}
