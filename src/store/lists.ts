// The cold questions about cases, records and readings, for the desk's lists and for reports; one wording for both engines.
import type { Kysely } from 'kysely';
import { type CaseColumns, type RecordColumns, toCase, toReading, toRecord } from './rows.ts';
import type { Store } from './store.ts';

export interface Tables {
  conversations: { number: number; key: string };
  cases: Omit<CaseColumns, 'key'> & { conversation: number };
  records: Omit<RecordColumns, 'key'> & { conversation: number | null };
  readings: {
    conversation: number;
    number: number;
    at: number;
    stage: string;
    measure: string;
    body: string;
  };
}

type Lists = Pick<Store, 'listCases' | 'findCases' | 'records' | 'readings'>;

/** `connect` is called for the first question: to load the builder of questions would take a good part of every start. */
export function makeLists(connect: () => Promise<Kysely<Tables>>): Lists {
  let connected: Promise<Kysely<Tables>> | null = null;
  const database = () => {
    connected ??= connect();
    return connected;
  };
  const casesIn = (db: Kysely<Tables>) =>
    db
      .selectFrom('cases')
      .innerJoin('conversations', 'conversations.number', 'cases.conversation')
      .selectAll('cases')
      .select('conversations.key')
      .orderBy('cases.opened_at', 'desc')
      .orderBy('cases.id', 'desc');

  return {
    async listCases({ states, limit = 100 } = {}) {
      const cases = casesIn(await database());
      const all = states === undefined ? cases : cases.where('cases.state', 'in', states);
      return (await all.limit(limit).execute()).map(toCase);
    },
    async findCases(text, limit = 20) {
      const words = text.toLowerCase().split(/\s+/u).filter(Boolean);
      if (words.length === 0) return [];
      // Letter case is folded here: SQLite's own lower() knows ASCII only.
      const holds = (found: CaseColumns) => {
        const where = `${found.id} ${found.reason} ${found.words}`.toLowerCase();
        return words.every((word) => where.includes(word));
      };
      return (await casesIn(await database()).execute()).filter(holds).slice(0, limit).map(toCase);
    },
    async records({ code, key, since, until } = {}) {
      const db = await database();
      let found = db
        .selectFrom('records')
        .leftJoin('conversations', 'conversations.number', 'records.conversation')
        .select([
          'records.code',
          'records.at',
          'records.procedure',
          'records.machine',
          'records.result',
          'records.body',
          'conversations.key',
        ])
        .orderBy('records.at', 'desc')
        .orderBy('records.code', 'desc');
      if (code !== undefined) found = found.where('records.code', '=', code);
      if (key !== undefined) found = found.where('conversations.key', '=', key);
      if (since !== undefined) found = found.where('records.at', '>=', since);
      if (until !== undefined) found = found.where('records.at', '<', until);
      return (await found.execute()).map(toRecord);
    },
    async readings(key) {
      const db = await database();
      const found = await db
        .selectFrom('readings')
        .innerJoin('conversations', 'conversations.number', 'readings.conversation')
        .selectAll('readings')
        .where('conversations.key', '=', key)
        .orderBy('readings.number')
        .execute();
      return found.map(toReading);
    },
  };
}
