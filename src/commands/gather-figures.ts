// Gathers what the store knows of ended set-ups and closed cases into what the workshop's figures are made of; for `report`.
import type { CaseRecord } from '../conversation/case-record.ts';
import type { TakenReading } from '../conversation/turn.ts';
import type { Store } from '../store/store.ts';
import type { ClosedCase, EndedSetUp } from '../tips/workshop-figures.ts';

/** The store hands out the latest only; a workshop has no more than this. */
const most = 1_000_000;

/** Oldest first. The readings of an owner who was erased or forgotten are gone, their records are not. */
export async function gatherEnded(store: Pick<Store, 'records' | 'readings'>): Promise<EndedSetUp[]> {
  const records = (await store.records()).toSorted((a, b) => a.at - b.at);
  const taken = new Map<string, TakenReading[]>();
  const ended: EndedSetUp[] = [];
  for (const { key, code, procedure, result, body } of records) {
    if (key !== null && !taken.has(key)) {
      const rows = await store.readings(key);
      taken.set(
        key,
        rows.map((row) => row.body as TakenReading),
      );
    }
    const readings = (key === null ? [] : (taken.get(key) ?? [])).filter(({ setUp }) => setUp === code);
    const { stage = '' } = body as { stage?: string };
    ended.push({ procedure, result, stage, readings });
  }
  return ended;
}

export async function gatherClosed(store: Pick<Store, 'listCases'>): Promise<ClosedCase[]> {
  const cases = await store.listCases({ states: ['closed'], limit: most });
  return cases.map(({ body, changedAt }) => {
    const { cause, ended } = body as Partial<CaseRecord>;
    return { cause: cause ?? null, at: ended ? Date.parse(ended) : changedAt };
  });
}
