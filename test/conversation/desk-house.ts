// A house with owners and a desk on the real store and queue: messages in, sent messages out, killed and opened again at will; for tests of the desk.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Body, IncomingMessage } from '../../src/chat/incoming-message.ts';
import type { OutgoingMessage } from '../../src/chat/outgoing-message.ts';
import { openSqliteStore, type SqliteStore } from '../../src/store/sqlite/open-sqlite-store.ts';
import type { Decide } from '../../src/store/store.ts';

export class House {
  now = Date.parse('2026-01-05T09:00:00Z');
  /** What platforms showed, once for each id and edit, in order. */
  readonly sent: OutgoingMessage[] = [];
  private readonly folder = mkdtempSync(join(tmpdir(), 'desk-house-'));
  private readonly decide: Decide;
  private store: SqliteStore | null = null;
  private count = 0;

  constructor(decide: Decide) {
    this.decide = decide;
  }

  /** A new process: what the last one had in hand is free again. */
  async open(): Promise<void> {
    await this.store?.close();
    this.store = await openSqliteStore({ file: join(this.folder, 'house.sqlite'), clock: () => this.now });
  }

  async owner(person: string, body: Body, more: Partial<IncomingMessage> = {}): Promise<void> {
    await this.take({ ...this.blank(person), name: person, body, ...more });
  }

  async staff(person: string, caseId: string | null, body: Body): Promise<void> {
    await this.take({ ...this.blank(person), name: person, role: 'staff', caseId, body });
  }

  async take(message: IncomingMessage): Promise<void> {
    await this.opened().turn({ kind: 'message', message }, this.decide);
  }

  async due(): Promise<void> {
    for (const key of await this.opened().calendar.due(this.now)) {
      await this.opened().turn({ kind: 'due', key }, this.decide);
    }
  }

  /** Sends up to so many; the last `unmarked` of them are sent, but the process dies before it can say so. */
  async send(limit: number, unmarked = 0): Promise<void> {
    let left = limit;
    while (left > 0) {
      const rows = await this.opened().outbox.claim(this.now, left);
      if (rows.length === 0) return;
      for (const [index, { row, message }] of rows.entries()) {
        const known = this.sent.some(({ id, edit }) => id === message.id && edit === message.edit);
        if (!known) this.sent.push(message);
        if (rows.length - index > unmarked) {
          await this.opened().outbox.mark({ kind: 'sent', row, at: this.now, progress: {} });
        }
      }
      left -= rows.length;
      if (unmarked > 0) return;
    }
  }

  sendAll = (): Promise<void> => this.send(Number.POSITIVE_INFINITY);

  /** Every byte that is kept. */
  bytes(): string {
    return readdirSync(this.folder)
      .map((file) => readFileSync(join(this.folder, file), 'latin1'))
      .join('\n');
  }

  async close(): Promise<void> {
    await this.store?.close();
    this.store = null;
    rmSync(this.folder, { recursive: true, force: true });
  }

  private opened(): SqliteStore {
    if (!this.store) throw new Error('The house is closed.');
    return this.store;
  }

  private blank(person: string): IncomingMessage {
    this.count += 1;
    return {
      platform: 'console',
      messageId: `m${this.count}`,
      person,
      name: null,
      role: 'owner',
      chat: person,
      caseId: null,
      locale: null,
      body: { kind: 'text', text: '' },
    };
  }
}

export const text = (words: string): Body => ({ kind: 'text', text: words });
export const press = (choice: string): Body => ({ kind: 'choice', choice, of: null });
