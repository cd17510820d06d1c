// What the desk as a whole sees of cases and records: one entry of a list each; for its lists, its search and its summary.

export interface CaseListing {
  id: string;
  state: 'waiting' | 'taken' | 'returned' | 'closed';
  reason: string;
  takenBy: string | null;
  openedAt: number;
  changedAt: number;
  /** The words by which staff find it. */
  words: string;
  /** The case's record, as plain data. */
  body: unknown;
}

export interface RecordListing {
  code: string;
  at: number;
  procedure: string;
  machine: string;
  result: string;
  body: unknown;
  /** The owner's platform and person; null once they were erased. */
  key: string | null;
}

export interface Archive {
  cases: readonly CaseListing[];
  records: readonly RecordListing[];
}

/** Letter case does not matter, and every word has to be there; no words find nothing. */
export function findIn({ cases, records }: Archive, text: string): Archive {
  const words = text.toLowerCase().match(/\S+/gu) ?? [];
  const holds = (where: string) =>
    words.length > 0 && words.every((word) => where.toLowerCase().includes(word));
  return {
    cases: cases.filter((one) => holds(`${one.id} ${one.reason} ${one.words}`)),
    records: records.filter((one) => holds(`${one.code} ${one.machine} ${personOf(one.key)}`)),
  };
}

const personOf = (key: string | null): string => key?.slice(key.indexOf(':') + 1) ?? '';
