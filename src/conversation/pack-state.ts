// The stored form of a conversation's state: the same, but said once and short, since every message reads and writes all of it; for the inbox.
import { type Aside, type Conversation, type Kept, newSetUp, type SetUp } from './state.ts';

type Short = [
  value: number,
  resolution: number,
  result: Kept['result'],
  low: number | null,
  high: number | null,
  at: number,
];
type Weights = Record<string, number>;

interface PackedSetUp
  extends Partial<Omit<SetUp, 'passed' | 'been' | 'readings' | 'found' | 'asides' | 'evidence' | 'oddity'>> {
  /** Every stage that `been` and `passed` speak of, in their order, parted by spaces. */
  stages: string;
  /** Places in that list, as runs: "0-24 3 25-30". */
  been: string;
  passed: Partial<Record<SetUp['passed'][string], string>>;
  readings: Record<string, Short>;
  /** Only where it is not the latest reading too. */
  found: Record<string, Short>;
  asides: unknown[][];
  /** The causes that `evidence` and the detour weigh, parted by spaces. */
  causes: string;
  evidence: (number | null)[];
  oddity?: Omit<NonNullable<SetUp['oddity']>, 'weights'> & { weights: (number | null)[] };
}

export interface PackedState extends Omit<Conversation, 'setUp'> {
  setUp: PackedSetUp | null;
}

export const packState = (state: Conversation): PackedState => ({
  ...state,
  setUp: state.setUp && packSetUp(state.setUp),
});

export const unpackState = (stored: PackedState): Conversation => ({
  ...stored,
  setUp: stored.setUp && unpackSetUp(stored.setUp),
});

function packSetUp(setUp: SetUp): PackedSetUp {
  const { passed, been, readings, found, asides, evidence, oddity, ...rest } = setUp;
  const stages = [...new Set([...been, ...Object.keys(passed)])];
  const places = new Map(stages.map((stage, place) => [stage, place]));
  const runs = (ids: readonly string[]) => toRuns(ids.map((id) => places.get(id) ?? 0));
  const outcomes = [...new Set(Object.values(passed))];
  const causes = [...new Set([...Object.keys(evidence), ...Object.keys(oddity?.weights ?? {})])];
  const inOrder = (weights: Weights) => causes.map((cause) => weights[cause] ?? null);
  return {
    ...withoutUsual(rest),
    stages: stages.join(' '),
    been: runs(been),
    passed: Object.fromEntries(
      outcomes.map((outcome) => [outcome, runs(Object.keys(passed).filter((id) => passed[id] === outcome))]),
    ),
    readings: mapValues(readings, toShort),
    found: mapValues(
      Object.fromEntries(Object.entries(found).filter(([key, kept]) => !isSame(kept, readings[key]))),
      toShort,
    ),
    asides: asides.map((aside) => asideFields.map((field) => aside[field])),
    causes: causes.join(' '),
    evidence: inOrder(evidence),
    ...(oddity ? { oddity: { ...oddity, weights: inOrder(oddity.weights) } } : {}),
  };
}

function unpackSetUp(packed: PackedSetUp): SetUp {
  const {
    stages: listed,
    been,
    passed,
    readings: short,
    found,
    asides,
    causes: named,
    evidence,
    oddity,
    ...rest
  } = packed;
  const stages = listed.split(' ');
  const idsOf = (runs: string) => fromRuns(runs).map((place) => stages[place] ?? '');
  const causes = named.split(' ');
  const weigh = (weights: readonly (number | null)[]): Weights =>
    Object.fromEntries(
      causes.flatMap((cause, place): [string, number][] => {
        const weight = weights[place];
        return weight === null || weight === undefined ? [] : [[cause, weight]];
      }),
    );
  const readings = mapValues(short, fromShort);
  return {
    ...newSetUp('', '', '', '', '', 0),
    ...rest,
    been: idsOf(been),
    passed: Object.fromEntries(
      Object.entries(passed).flatMap(([outcome, runs]) => idsOf(runs).map((id) => [id, outcome] as const)),
    ) as SetUp['passed'],
    readings,
    found: { ...readings, ...mapValues(found, fromShort) },
    asides: asides.map(
      (values) =>
        Object.fromEntries(asideFields.map((field, place) => [field, values[place]])) as unknown as Aside,
    ),
    evidence: weigh(evidence),
    oddity: oddity ? { ...oddity, weights: weigh(oddity.weights) } : null,
  };
}

const asideFields = [
  'measure',
  'situation',
  'typed',
  'value',
  'resolution',
  'low',
  'high',
  'why',
  'at',
] as const satisfies readonly (keyof Aside)[];

/** What a new set-up has anyway need not be stored. */
const usual: Record<string, unknown> = { ...newSetUp('', '', '', '', '', 0) };

function withoutUsual<T extends object>(rest: T): Partial<T> {
  const own: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(rest)) if (!isSame(value, usual[key])) own[key] = value;
  return own as Partial<T>;
}

/** The same value, or the same plain values one level down; no more is needed of what is usual. */
function isSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => (a as Record<string, unknown>)[key] === (b as Record<string, unknown>)[key])
  );
}

const toShort = ({ value, resolution, result, low, high, at }: Kept): Short => [
  value,
  resolution,
  result,
  low,
  high,
  at,
];

const fromShort = ([value, resolution, result, low, high, at]: Short): Kept => ({
  value,
  resolution,
  result,
  low,
  high,
  at,
});

function mapValues<A, B>(given: Record<string, A>, change: (value: A) => B): Record<string, B> {
  return Object.fromEntries(Object.entries(given).map(([key, value]) => [key, change(value)]));
}

/** 0 1 2 3 7 becomes "0-3 7". */
function toRuns(places: readonly number[]): string {
  const runs: [from: number, to: number][] = [];
  for (const place of places) {
    const latest = runs.at(-1);
    if (latest && latest[1] === place - 1) latest[1] = place;
    else runs.push([place, place]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`)).join(' ');
}

function fromRuns(runs: string): number[] {
  if (runs === '') return [];
  return runs.split(' ').flatMap((run) => {
    const [from = 0, to = from] = run.split('-').map(Number);
    return Array.from({ length: to - from + 1 }, (_, step) => from + step);
  });
}
