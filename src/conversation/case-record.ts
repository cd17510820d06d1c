// The whole record of one case as plain data, for the desk's lists, for reading later, and for other programs.
import type { Case, CaseEntry } from '../desk/case.ts';
import type { Turn } from './turn.ts';

export interface CaseRecord {
  id: string;
  state: Case['state'];
  reason: string;
  owner: { name: string | null; platform: string; person: string };
  machine: string | null;
  procedure: string | null;
  stage: string | null;
  code: string | null;
  opened: string;
  ended: string | null;
  takenBy: string | null;
  cause: string | null;
  job: string | null;
  accepted: { reading: string; value: number; by: string }[];
  ownWords: string[];
  history: { at: string; by: string | null; what: CaseEntry['what']; note: string | null }[];
  readings: Record<string, { value: number; low: number | null; high: number | null; result: string }>;
  found: Record<string, { value: number; low: number | null; high: number | null; result: string }>;
  beside: { measure: string; situation: string | null; typed: string; why: string }[];
}

const iso = (instant: number): string => new Date(instant).toISOString();

export function caseRecord({ state }: Turn, one: Case): CaseRecord {
  const { setUp, owner } = state;
  return {
    id: one.id,
    state: one.state,
    reason: one.reason,
    owner: { name: owner.name, platform: owner.platform, person: owner.person },
    machine: setUp?.machine ?? one.about?.machine ?? null,
    procedure: setUp?.procedure ?? one.about?.procedure ?? null,
    stage: setUp?.stage ?? null,
    code: setUp?.code ?? one.about?.code ?? null,
    opened: iso(one.openedAt),
    ended: one.endedAt === null ? null : iso(one.endedAt),
    takenBy: one.holder?.name ?? null,
    cause: one.cause,
    job: one.job,
    accepted: Object.entries(setUp?.accepted ?? {}).map(([reading, { by, value }]) => ({
      reading,
      value,
      by,
    })),
    ownWords: one.ownWords,
    history: one.history.map((entry) => ({ ...entry, at: iso(entry.at) })),
    readings: plain(setUp?.readings ?? {}),
    found: plain(setUp?.found ?? {}),
    beside: (setUp?.asides ?? []).map(({ measure, situation, typed, why }) => ({
      measure,
      situation,
      typed,
      why,
    })),
  };
}

function plain(kept: NonNullable<Turn['state']['setUp']>['readings']): CaseRecord['readings'] {
  return Object.fromEntries(
    Object.entries(kept).map(([key, { value, low, high, result }]) => [key, { value, low, high, result }]),
  );
}
